import { ProblemError } from '@strutbook/api-client/problem-error.js';
import { useQuery } from '@tanstack/react-query';
import { instantOf, utcMoment } from '../../format/utc-date.js';
import { useAct } from '../../server/act.js';
import { Button } from '../../ui/actions/button.js';
import { announce } from '../../ui/messages/announcements.js';
import { ConflictPanel } from '../../ui/messages/conflict-panel.js';
import { ProblemPanel } from '../../ui/messages/problem-panel.js';
import { SheetDialog } from '../../ui/overlay/sheet-dialog.js';
import { disablePerson, PEOPLE_KEY, type Person, peopleQuery } from './people-data.js';

interface DisableDialogProps {
  /** The person as seen when it was asked. */
  readonly person: Person;
  readonly offBecause: string | null;
  readonly onClose: () => void;
}

const CHANGED = new Set([409, 412]);

const standing = ({ disabledAt }: Person): string => {
  const at = disabledAt === null ? null : instantOf(disabledAt);
  return at === null ? 'May sign in' : `Disabled since ${utcMoment(at)}`;
};

/** Asks before somebody is disabled. */
export function DisableDialog({ person, offBecause, onClose }: DisableDialogProps) {
  const now = useQuery(peopleQuery).data?.find((entry) => entry.id === person.id) ?? person;
  const disabling = useAct({
    perform: disablePerson,
    refresh: [PEOPLE_KEY],
    onDone: () => {
      announce(`${person.fullName} is disabled. What they signed stays.`);
      onClose();
    },
  });
  const { error } = disabling;
  const changed = error instanceof ProblemError && CHANGED.has(error.status);
  const again = () => disabling.mutate({ id: person.id, version: now.version });
  return (
    <SheetDialog
      title={`Disable ${person.fullName}?`}
      open
      onClose={onClose}
      actions={
        <>
          <Button kind="primary" busy={disabling.isPending} offBecause={offBecause} onClick={again}>
            Disable
          </Button>
          <Button onClick={onClose}>Leave as it is</Button>
        </>
      }
    >
      <p>
        They are signed out everywhere and cannot sign in again. Everything they recorded and signed stays on
        record under their name.
      </p>
      {changed && (
        <ConflictPanel
          recordedBy="Read again just now"
          lines={[
            {
              term: 'Access',
              yours: 'Disabled',
              onRecord: standing(now),
              differs: now.disabledAt === null,
            },
            {
              term: 'Roles',
              yours: person.roles.join(', '),
              onRecord: now.roles.join(', '),
              differs: person.roles.join() !== now.roles.join(),
            },
          ]}
          {...(now.disabledAt === null
            ? { onRecordMine: again, recordMineWord: 'Disable all the same' }
            : {})}
          onDiscardMine={onClose}
        />
      )}
      {error !== null && !changed && <ProblemPanel error={error} doing="Disabling the person" />}
    </SheetDialog>
  );
}
