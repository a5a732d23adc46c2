import { calendarDate } from '../../../format/utc-date.js';
import { parseDate } from '../../../format/utc-moment.js';
import { useAct } from '../../../server/act.js';
import { useOfflineSince } from '../../../server/connection.js';
import { Button } from '../../../ui/actions/button.js';
import { type Faults, useActForm } from '../../../ui/fields/act-form.js';
import { SelectField } from '../../../ui/fields/select-field.js';
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
import { scopeWord } from './authorisation-words.js';

interface EndDialogProps {
  readonly authorisation: Authorisation;
  readonly onClose: () => void;
}

interface Typed {
  readonly what: 'ends' | 'wrong';
  readonly lastOn: string;
  readonly reason: string;
}

const START: Typed = { what: 'ends', lastOn: '', reason: '' };

const CHOICES = [
  { value: 'ends', label: 'It ends with a day' },
  { value: 'wrong', label: 'It was recorded wrongly, and never counted' },
] as const;

const CONSEQUENCE = {
  ends: 'What was signed up to that day stays good.',
  wrong:
    'It is voided. What was signed under it stays in sight, and is held against packages that are not released yet.',
} as const;

function check({ what, lastOn, reason }: Typed): Faults {
  const last = parseDate(lastOn);
  return {
    ...(what === 'wrong' || last.ok ? {} : { lastOn: last.reason }),
    ...(reason.trim() === '' ? { reason: 'Enter why' } : {}),
  };
}

const told = (name: string, lastOn: string | null): string =>
  lastOn === null
    ? `The authorisation of ${name} is voided.`
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
    start: START,
    check,
    words: ({ what, lastOn, reason }): Ending => ({
      ...{ id, reason: reason.trim(), lastOn: what === 'wrong' ? null : lastOn.trim() },
    }),
    act,
  });
  const { typed, change, field } = form;
  return (
    <SheetDialog title="End the authorisation?" open onClose={onClose}>
      <form className="stack" noValidate onSubmit={form.submit}>
        <ErrorSummary messages={form.messages} attempt={form.attempt} />
        <p>
          {personName}: {scopeWord(scope).toLowerCase()} on {authorisation.airframeType ?? 'all types'}.
        </p>
        <SelectField
          {...field('what')}
          label="What happened"
          hint={CONSEQUENCE[typed.what]}
          options={CHOICES}
          value={typed.what}
          onChange={({ target }) =>
            change({ what: CHOICES.find(({ value }) => value === target.value)?.value ?? 'ends' })
          }
        />
        {typed.what === 'ends' && (
          <TextField
            {...field('lastOn')}
            label="Last day"
            hint="Year-month-day. It is good through this day; yesterday’s date ends it at once."
            mono
            value={typed.lastOn}
            onChange={({ target }) => change({ lastOn: target.value })}
          />
        )}
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
            {typed.what === 'ends' ? 'End it with that day' : 'Void it'}
          </Button>
          <Button onClick={onClose}>Leave as it is</Button>
        </div>
      </form>
    </SheetDialog>
  );
}
