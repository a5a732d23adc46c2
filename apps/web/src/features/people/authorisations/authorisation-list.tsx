import { useQuery } from '@tanstack/react-query';
import { useState } from 'react';
import { counted } from '../../../format/counts.js';
import { holderWords, useMay } from '../../../server/authority.js';
import { useOfflineSince } from '../../../server/connection.js';
import { Button } from '../../../ui/actions/button.js';
import { CheckField } from '../../../ui/fields/check-field.js';
import { TextField } from '../../../ui/fields/text-field.js';
import { announce } from '../../../ui/messages/announcements.js';
import { AuthorityNote } from '../../../ui/messages/authority-note.js';
import { EmptyState } from '../../../ui/messages/empty-state.js';
import { OFF_WHILE_OFFLINE } from '../../../ui/messages/offline-bar.js';
import { SheetDialog } from '../../../ui/overlay/sheet-dialog.js';
import { DataTable } from '../../../ui/table/data-table.js';
import { readState } from '../../../ui/table/read-state.js';
import { listColumns } from './authorisation-columns.js';
import { type Authorisation, authorisationsQuery } from './authorisation-data.js';
import { AuthorisationForm } from './authorisation-form.js';
import { counts, isLive, scopeWord, typeText } from './authorisation-words.js';
import { EndDialog } from './end-dialog.js';
import './authorisations.css';

const holds = (entry: Authorisation, wanted: string): boolean =>
  [entry.personName, scopeWord(entry.scope), typeText(entry), entry.reference].some((text) =>
    text.toLowerCase().includes(wanted),
  );

interface NarrowProps {
  readonly find: string;
  readonly onFind: (next: string) => void;
  readonly ended: boolean;
  readonly onEnded: (next: boolean) => void;
}

function Narrow({ find, onFind, ended, onEnded }: NarrowProps) {
  return (
    <search className="field-row">
      <TextField
        label="Find"
        hint="Name, type or reference"
        type="search"
        value={find}
        onChange={({ target }) => onFind(target.value)}
      />
      <CheckField
        label="Ended and voided too"
        checked={ended}
        onChange={({ target }) => onEnded(target.checked)}
      />
    </search>
  );
}

/** Who may sign what, and until when: read by everyone, kept by administrators. */
export function AuthorisationList() {
  const authorisations = useQuery(authorisationsQuery);
  const may = useMay('manage-people');
  const offline = useOfflineSince() !== null;
  const [find, setFind] = useState('');
  const [ended, setEnded] = useState(false);
  const [adding, setAdding] = useState(false);
  const [ending, setEnding] = useState<Authorisation | null>(null);
  const all = authorisations.data ?? [];
  const wanted = find.trim().toLowerCase();
  const rows = all.filter((entry) => (ended || isLive(entry)) && (wanted === '' || holds(entry, wanted)));
  return (
    <div className="stack">
      <div className="authorisations-head">
        <div>
          <h2>Who may sign what</h2>
          <p className="quiet">
            {authorisations.data !== undefined &&
              `${counted(all.filter(counts).length, 'authorisation')} in force today. `}
            A signature needs a role and an authorisation in force on that day.
          </p>
          {!may && <AuthorityNote act="Authorisations are kept" by={holderWords('manage-people')} />}
        </div>
        {may && (
          <Button offBecause={offline ? OFF_WHILE_OFFLINE : null} onClick={() => setAdding(true)}>
            Add an authorisation
          </Button>
        )}
      </div>
      <Narrow {...{ find, ended }} onFind={setFind} onEnded={setEnded} />
      <DataTable
        caption="Who may sign what"
        captionHidden
        columns={listColumns(may ? setEnding : null)}
        rows={rows}
        rowKey={({ id }) => id}
        order={{ column: 'person', descending: false }}
        struck={({ voided }) => voided}
        state={readState(authorisations)}
        empty={
          <EmptyState>
            {all.length > 0
              ? 'No authorisation matches what is asked for above.'
              : 'Nobody is authorised yet: no step and no release can be signed.'}
          </EmptyState>
        }
      />
      <SheetDialog title="Add an authorisation" shape="sheet" open={adding} onClose={() => setAdding(false)}>
        <AuthorisationForm
          onAdded={({ personName, scope }) => {
            announce(`${personName} is authorised: ${scopeWord(scope).toLowerCase()}.`);
            setAdding(false);
          }}
        />
      </SheetDialog>
      {ending !== null && <EndDialog authorisation={ending} onClose={() => setEnding(null)} />}
    </div>
  );
}
