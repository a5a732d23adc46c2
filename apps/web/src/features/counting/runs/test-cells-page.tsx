import { useQuery } from '@tanstack/react-query';
import { useState } from 'react';
import { useAct } from '../../../server/act.js';
import { holderWords, useMay } from '../../../server/authority.js';
import { useOfflineSince } from '../../../server/connection.js';
import { ActionLink } from '../../../ui/actions/action-link.js';
import { Button } from '../../../ui/actions/button.js';
import { RouteLink } from '../../../ui/actions/route-link.js';
import { useActForm } from '../../../ui/fields/act-form.js';
import { TextField } from '../../../ui/fields/text-field.js';
import { announce } from '../../../ui/messages/announcements.js';
import { Answered } from '../../../ui/messages/answered.js';
import { AuthorityNote } from '../../../ui/messages/authority-note.js';
import { EmptyState } from '../../../ui/messages/empty-state.js';
import { ErrorSummary } from '../../../ui/messages/error-summary.js';
import { OFF_WHILE_OFFLINE } from '../../../ui/messages/offline-bar.js';
import { SheetDialog } from '../../../ui/overlay/sheet-dialog.js';
import { PageHeading } from '../../../ui/page/page-heading.js';
import { SerialText } from '../../../ui/status/serial-text.js';
import { addTestCell, COUNTING_KEY, type TestCell, testCellsQuery } from '../counting-data.js';
import { MoveIn, MoveOut } from './cell-moves.js';
import { RunList } from './run-list.js';

function CellForm({ onAdded }: { readonly onAdded: (cell: TestCell) => void }) {
  const offline = useOfflineSince() !== null;
  const act = useAct({ perform: addTestCell, refresh: [COUNTING_KEY], onDone: onAdded });
  const form = useActForm({
    start: { name: '' },
    check: ({ name }) => (name.trim() === '' ? { name: 'Enter what the test cell is called' } : {}),
    words: ({ name }) => ({ name: name.trim() }),
    act,
  });
  return (
    <form className="stack" noValidate onSubmit={form.submit}>
      <ErrorSummary messages={form.messages} attempt={form.attempt} />
      <TextField
        {...form.field('name')}
        label="Name"
        hint="With its place, for example Test cell 2, Tarnwick"
        maxLength={80}
        value={form.typed.name}
        onChange={({ target }) => form.change({ name: target.value })}
      />
      <div>
        <Button type="submit" kind="primary" busy={form.busy} offBecause={offline ? OFF_WHILE_OFFLINE : null}>
          Add the test cell
        </Button>
      </div>
    </form>
  );
}

function Cell({ cell }: { readonly cell: TestCell }) {
  const may = useMay('keep-records');
  const off = useOfflineSince() === null ? null : OFF_WHILE_OFFLINE;
  const [moving, setMoving] = useState(false);
  const { engine } = cell;
  const word = engine === null ? 'Put an engine in' : 'Take the engine out';
  const done = () => {
    announce(engine === null ? 'The engine is in the test cell.' : 'The engine left the test cell.');
    setMoving(false);
  };
  return (
    <section className="sheet stack" aria-label={cell.name}>
      <h2>{cell.name}</h2>
      <p>
        {engine === null ? (
          'No engine is in it now. A run of the past is entered for the engine that was there then.'
        ) : (
          <>
            In it now:{' '}
            <RouteLink href={`/components/${engine.id}`}>
              <SerialText strong>{engine.serialNumber}</SerialText>
            </RouteLink>
          </>
        )}
      </p>
      {may && (
        <div className="no-print">
          <Button offBecause={off} onClick={() => setMoving(true)}>
            {word}
          </Button>
        </div>
      )}
      <RunList of={{ kind: 'cell', id: cell.id }} named={cell.name} />
      {moving && (
        <SheetDialog title={`${word}: ${cell.name}`} shape="sheet" open onClose={() => setMoving(false)}>
          {engine === null ? (
            <MoveIn slotId={cell.slotId} onDone={done} />
          ) : (
            <MoveOut componentId={engine.id} onDone={done} />
          )}
        </SheetDialog>
      )}
    </section>
  );
}

/** Places where engines run off the wing, with what was run in them. */
export function TestCellsPage() {
  const cells = useQuery(testCellsQuery);
  const may = useMay('keep-records');
  const off = useOfflineSince() === null ? null : OFF_WHILE_OFFLINE;
  const [adding, setAdding] = useState(false);
  return (
    <>
      <PageHeading
        title="Test cells"
        below={
          !may && <AuthorityNote act="Test cells and runs are entered" by={holderWords('keep-records')} />
        }
        actions={
          <>
            <ActionLink href="/flights/runs">Ground runs</ActionLink>
            {may && (
              <Button offBecause={off} onClick={() => setAdding(true)}>
                Add a test cell
              </Button>
            )}
          </>
        }
      />
      <Answered query={cells} doing="Reading the test cells">
        {(all) =>
          all.length === 0 ? (
            <EmptyState>
              No test cell is recorded. Add one, put an engine in it, and its runs count for the engine and
              all in it.
            </EmptyState>
          ) : (
            <div className="stack">
              {all.map((cell) => (
                <Cell key={cell.id} cell={cell} />
              ))}
            </div>
          )
        }
      </Answered>
      {adding && (
        <SheetDialog title="Add a test cell" open onClose={() => setAdding(false)}>
          <CellForm
            onAdded={({ name }) => {
              announce(`${name} was added.`);
              setAdding(false);
            }}
          />
        </SheetDialog>
      )}
    </>
  );
}
