import { calendarDate } from '../../../format/utc-date.js';
import { parseDate } from '../../../format/utc-moment.js';
import { useAct } from '../../../server/act.js';
import { useOfflineSince } from '../../../server/connection.js';
import { Button } from '../../../ui/actions/button.js';
import { type Faults, useActForm } from '../../../ui/fields/act-form.js';
import { TextAreaField } from '../../../ui/fields/text-area-field.js';
import { TextField } from '../../../ui/fields/text-field.js';
import { announce } from '../../../ui/messages/announcements.js';
import { ErrorSummary } from '../../../ui/messages/error-summary.js';
import { OFF_WHILE_OFFLINE } from '../../../ui/messages/offline-bar.js';
import { SheetDialog } from '../../../ui/overlay/sheet-dialog.js';
import {
  AUTHORISATIONS_KEY,
  type Authorisation,
  type Ending,
  endAuthorisation,
} from './authorisation-data.js';
import { scopeWord, typeText } from './authorisation-words.js';

interface EndDialogProps {
  readonly authorisation: Authorisation;
  readonly onClose: () => void;
}

interface Typed {
  readonly lastOn: string;
  readonly reason: string;
}

function check({ lastOn, reason }: Typed): Faults {
  const last = lastOn.trim() === '' ? null : parseDate(lastOn);
  return {
    ...(last === null || last.ok ? {} : { lastOn: last.reason }),
    ...(reason.trim() === '' ? { reason: 'Enter why it ends' } : {}),
  };
}

const told = (name: string, lastOn: string | null): string =>
  lastOn === null
    ? `The authorisation of ${name} is taken back.`
    : `The authorisation of ${name} is good through ${calendarDate(lastOn)}.`;

/** Asks when an authorisation ends, and why. */
export function EndDialog({ authorisation, onClose }: EndDialogProps) {
  const { id, personName, scope } = authorisation;
  const offline = useOfflineSince() !== null;
  const act = useAct({
    perform: endAuthorisation,
    refresh: [AUTHORISATIONS_KEY],
    onDone: (_, { lastOn }) => {
      announce(told(personName, lastOn));
      onClose();
    },
  });
  const form = useActForm({
    start: { lastOn: '', reason: '' } satisfies Typed,
    check,
    words: ({ lastOn, reason }): Ending => ({
      ...{ id, reason: reason.trim(), lastOn: lastOn.trim() === '' ? null : lastOn.trim() },
    }),
    act,
  });
  const { typed, change, field } = form;
  const atOnce = typed.lastOn.trim() === '';
  return (
    <SheetDialog title="End the authorisation?" open onClose={onClose}>
      <form className="stack" noValidate onSubmit={form.submit}>
        <ErrorSummary messages={form.messages} attempt={form.attempt} />
        <p>
          {personName}: {scopeWord(scope).toLowerCase()}, {typeText(authorisation)}. What was signed under it
          stays.
        </p>
        <TextField
          {...field('lastOn')}
          label="Last day"
          hint="Year-month-day. Left empty, it is taken back at once."
          optional
          mono
          value={typed.lastOn}
          onChange={({ target }) => change({ lastOn: target.value })}
          autoFocus
        />
        <TextAreaField
          {...field('reason')}
          label="Reason"
          value={typed.reason}
          onChange={({ target }) => change({ reason: target.value })}
        />
        <div className="row">
          <Button
            type="submit"
            kind="primary"
            busy={form.busy}
            offBecause={offline ? OFF_WHILE_OFFLINE : null}
          >
            {atOnce ? 'Take it back at once' : 'End it with that day'}
          </Button>
          <Button onClick={onClose}>Leave as it is</Button>
        </div>
      </form>
    </SheetDialog>
  );
}
