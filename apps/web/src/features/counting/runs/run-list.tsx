import { useInfiniteQuery } from '@tanstack/react-query';
import { useState } from 'react';
import { counted } from '../../../format/counts.js';
import { hoursMinutes } from '../../../format/hours.js';
import { instantOf, utcDate, utcTime } from '../../../format/utc-date.js';
import { useMay } from '../../../server/authority.js';
import { useOfflineSince } from '../../../server/connection.js';
import { Button } from '../../../ui/actions/button.js';
import { RouteLink } from '../../../ui/actions/route-link.js';
import { Consequences } from '../../../ui/consequences/consequences.js';
import { announce } from '../../../ui/messages/announcements.js';
import { EmptyState } from '../../../ui/messages/empty-state.js';
import { OFF_WHILE_OFFLINE } from '../../../ui/messages/offline-bar.js';
import { SheetDialog } from '../../../ui/overlay/sheet-dialog.js';
import { SerialText } from '../../../ui/status/serial-text.js';
import type { Column } from '../../../ui/table/column.js';
import { DataTable } from '../../../ui/table/data-table.js';
import { readState } from '../../../ui/table/read-state.js';
import { type GroundRun, type GroundRunAnswer, type RunsOf, runsQuery, voidRun } from '../counting-data.js';
import { VoidDialog } from '../void-dialog.js';
import { RunForm, type RunPosition } from './run-form.js';
import './runs.css';

function spanText({ startedAt, endedAt }: GroundRun): string {
  const [from, to] = [instantOf(startedAt), instantOf(endedAt)];
  if (from === null || to === null) return `${startedAt} to ${endedAt}`;
  const nextDay = utcDate(from) === utcDate(to) ? '' : ' +1';
  return `${utcDate(from)} ${utcTime(from).slice(0, 5)}–${utcTime(to).slice(0, 5)}${nextDay}`;
}

function Remarks({ run }: { readonly run: GroundRun }) {
  return (
    <>
      {run.voided && <strong>Voided: “{run.voidReason ?? 'no reason recorded'}” </strong>}
      {run.purpose}
      {run.abortedTakeOffs > 0 && `; ${counted(run.abortedTakeOffs, 'aborted take-off')}`}
    </>
  );
}

function columnsFor(of: RunsOf, onVoid: ((run: GroundRun) => void) | null): readonly Column<GroundRun>[] {
  const where: Column<GroundRun> = {
    id: 'position',
    header: 'Position',
    cell: ({ positionNumber }) => positionNumber ?? '',
  };
  const acts: Column<GroundRun> = {
    id: 'acts',
    header: 'What can be done',
    cell: (run) =>
      run.voided || onVoid === null ? null : (
        <Button kind="quiet" aria-label={`Void the run of ${spanText(run)}`} onClick={() => onVoid(run)}>
          Void
        </Button>
      ),
  };
  return [
    { id: 'when', header: 'When (UTC)', namesRow: true, cell: spanText },
    ...(of.kind === 'airframe' ? [where] : []),
    {
      id: 'engine',
      header: 'Engine',
      cell: ({ engine }) =>
        engine === null ? (
          'None on record there'
        ) : (
          <RouteLink href={`/components/${engine.id}`}>
            <SerialText>{engine.serialNumber}</SerialText>
          </RouteLink>
        ),
    },
    { id: 'ran', header: 'Ran', align: 'figures', cell: ({ runMinutes }) => hoursMinutes(runMinutes) },
    {
      id: 'counts',
      header: 'Counts',
      align: 'figures',
      cell: ({ countedMinutes }) => hoursMinutes(countedMinutes),
    },
    { id: 'starts', header: 'Starts', align: 'figures', cell: ({ starts }) => starts },
    { id: 'remarks', header: 'What for', cell: (run) => <Remarks run={run} /> },
    { id: 'source', header: 'Document', cell: ({ source }) => source },
    ...(onVoid === null ? [] : [acts]),
  ];
}

interface RunListProps {
  readonly of: RunsOf;
  /** Whose runs: 'ZZ-417', or a test cell's name. */
  readonly named: string;
  readonly positions?: readonly RunPosition[];
  /** Why none can be entered now; null when one can. */
  readonly cannotRun?: string | null;
}

type Asked = { readonly act: 'record' } | { readonly act: 'void'; readonly run: GroundRun };

/** Runs of an airframe's engines on the ground, or in a test cell, with what may be done to each. */
export function RunList({ of, named, positions = [], cannotRun = null }: RunListProps) {
  const may = useMay('keep-records');
  const off = useOfflineSince() === null ? cannotRun : OFF_WHILE_OFFLINE;
  const runs = useInfiniteQuery(runsQuery(of));
  const rows = runs.data?.pages.flatMap((page) => page.rows) ?? [];
  const [asked, setAsked] = useState<Asked | null>(null);
  const [done, setDone] = useState<{ readonly what: string; readonly answer: GroundRunAnswer } | null>(null);
  const finish = (what: string) => (answer: GroundRunAnswer) => {
    announce(`${what}.`);
    setDone({ what, answer });
    setAsked(null);
  };
  return (
    <>
      {may && (
        <div className="no-print">
          <Button kind="primary" offBecause={off} onClick={() => setAsked({ act: 'record' })}>
            Record a run
          </Button>
        </div>
      )}
      {done !== null && (
        <section className="panel" aria-label={done.what}>
          <h2>{done.what}</h2>
          {done.answer.late && (
            <p>
              This lies before a change already recorded, so the counters at that change were computed again.
            </p>
          )}
          <Consequences broken={done.answer.consequences} />
          <Button onClick={() => setDone(null)}>Close this message</Button>
        </section>
      )}
      <DataTable
        caption={`Runs of ${named}, newest first. All times are UTC.`}
        columns={columnsFor(of, may ? (run) => setAsked({ act: 'void', run }) : null)}
        rows={rows}
        rowKey={({ id }) => id}
        struck={({ voided }) => voided}
        state={readState(runs)}
        empty={<EmptyState>No runs of {named} are on record.</EmptyState>}
      />
      {runs.isFetchNextPageError && (
        <p role="alert">Older runs could not be read. Those above stay. Try again.</p>
      )}
      {runs.hasNextPage && (
        <div>
          <Button busy={runs.isFetchingNextPage} onClick={() => void runs.fetchNextPage()}>
            Show older runs
          </Button>
        </div>
      )}
      {asked?.act === 'record' && (
        <SheetDialog title={`Record a run: ${named}`} shape="sheet" open onClose={() => setAsked(null)}>
          <RunForm of={of} positions={positions} onDone={finish('The run was recorded')} />
        </SheetDialog>
      )}
      {asked?.act === 'void' && (
        <VoidDialog
          id={asked.run.id}
          what="run"
          consequence="It stays on record, struck through, with your reason. What it counted goes from the engine that ran and from all in it."
          perform={voidRun}
          onClose={() => setAsked(null)}
          onDone={finish('The run was voided')}
        />
      )}
    </>
  );
}
