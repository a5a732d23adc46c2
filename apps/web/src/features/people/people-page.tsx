import { useQuery } from '@tanstack/react-query';
import { useState } from 'react';
import { counted } from '../../format/counts.js';
import { instantOf, utcDate } from '../../format/utc-date.js';
import { holderWords, roleWords, useMay } from '../../server/authority.js';
import { useOfflineSince } from '../../server/connection.js';
import { useSession } from '../../server/session.js';
import { Button } from '../../ui/actions/button.js';
import { announce } from '../../ui/messages/announcements.js';
import { AuthorityNote } from '../../ui/messages/authority-note.js';
import { EmptyState } from '../../ui/messages/empty-state.js';
import { Checking } from '../../ui/messages/loading.js';
import { OFF_WHILE_OFFLINE } from '../../ui/messages/offline-bar.js';
import { SheetDialog } from '../../ui/overlay/sheet-dialog.js';
import { PageHeading } from '../../ui/page/page-heading.js';
import { StatusMark } from '../../ui/status/status-mark.js';
import type { Column } from '../../ui/table/column.js';
import { DataTable } from '../../ui/table/data-table.js';
import { readState } from '../../ui/table/read-state.js';
import { AuthorisationList } from './authorisations/authorisation-list.js';
import { DisableDialog } from './disable-dialog.js';
import { type Person, peopleQuery } from './people-data.js';
import { PersonForm } from './person-form.js';

const rolesOf = (person: Person): string => roleWords(person.roles);

function Standing({ person }: { readonly person: Person }) {
  const at = person.disabledAt === null ? null : instantOf(person.disabledAt);
  if (at !== null) return <StatusMark status="closed" word={`Disabled ${utcDate(at)}`} />;
  return <>{person.mustChangePassword ? 'First password not changed yet' : 'May sign in'}</>;
}

const columns = (onDisable: ((person: Person) => void) | null, ownId: string): readonly Column<Person>[] => [
  {
    id: 'name',
    header: 'Name',
    cell: (person) => person.fullName,
    sortBy: (person) => person.fullName,
    namesRow: true,
  },
  {
    id: 'signIn',
    header: 'Sign-in name',
    cell: (person) => person.signInName,
    sortBy: (person) => person.signInName,
  },
  { id: 'roles', header: 'Roles', cell: rolesOf, sortBy: rolesOf },
  {
    id: 'licence',
    header: 'Licence',
    cell: (person) => <span className="serial">{person.licence ?? 'None'}</span>,
  },
  { id: 'access', header: 'Access', cell: (person) => <Standing person={person} /> },
  ...(onDisable === null
    ? []
    : [
        {
          id: 'act',
          header: 'Act',
          cell: (person: Person) =>
            person.disabledAt !== null ? null : person.id === ownId ? (
              'You'
            ) : (
              <Button
                kind="quiet"
                aria-label={`Disable ${person.fullName}`}
                onClick={() => onDisable(person)}
              >
                Disable
              </Button>
            ),
        },
      ]),
];

function PeopleList({ may, onAdd }: { readonly may: boolean; readonly onAdd: () => void }) {
  const people = useQuery(peopleQuery);
  const offline = useOfflineSince() !== null;
  const ownId = useSession()?.person.id ?? '';
  const [leaving, setLeaving] = useState<Person | null>(null);
  const rows = people.data ?? [];
  return (
    <>
      <p className="row">
        {people.data !== undefined &&
          counted(rows.filter((row) => row.disabledAt === null).length, 'person may', 'people may') +
            ' sign in'}
        {people.isFetching && people.data !== undefined && <Checking />}
      </p>
      <DataTable
        caption="People"
        captionHidden
        columns={columns(may ? setLeaving : null, ownId)}
        rows={rows}
        rowKey={(person) => person.id}
        order={{ column: 'name', descending: false }}
        state={readState(people)}
        empty={
          <EmptyState action={may ? <Button onClick={onAdd}>Add a person</Button> : undefined}>
            Nobody is recorded here.
          </EmptyState>
        }
      />
      {leaving !== null && (
        <DisableDialog
          person={leaving}
          offBecause={offline ? OFF_WHILE_OFFLINE : null}
          onClose={() => setLeaving(null)}
        />
      )}
    </>
  );
}

/** Those who may sign in: read by auditors, kept by administrators. */
export function PeoplePage() {
  const sees = useMay('see-people');
  const may = useMay('manage-people');
  const offline = useOfflineSince() !== null;
  const [adding, setAdding] = useState(false);
  return (
    <>
      <PageHeading
        title="People"
        below={
          !may && <AuthorityNote act="People are added and disabled" by={holderWords('manage-people')} />
        }
        actions={
          may ? (
            <Button
              kind="primary"
              offBecause={offline ? OFF_WHILE_OFFLINE : null}
              onClick={() => setAdding(true)}
            >
              Add a person
            </Button>
          ) : undefined
        }
      />
      {sees ? (
        <PeopleList may={may} onAdd={() => setAdding(true)} />
      ) : (
        <EmptyState>
          The list of people is open to {holderWords('see-people')}. Your own name and roles stand in the menu
          under your name.
        </EmptyState>
      )}
      <AuthorisationList />
      <SheetDialog title="Add a person" shape="sheet" open={adding} onClose={() => setAdding(false)}>
        <PersonForm
          onAdded={(person) => {
            announce(`${person.fullName} was added. Hand over the first password in person.`);
            setAdding(false);
          }}
        />
      </SheetDialog>
    </>
  );
}
