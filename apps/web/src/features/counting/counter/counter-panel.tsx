import { useQuery } from '@tanstack/react-query';
import { useState } from 'react';
import { hoursMinutes, thousands } from '../../../format/hours.js';
import { momentText } from '../../../format/when.js';
import { useMay } from '../../../server/authority.js';
import { useOfflineSince } from '../../../server/connection.js';
import { Button } from '../../../ui/actions/button.js';
import { Consequences } from '../../../ui/consequences/consequences.js';
import { announce } from '../../../ui/messages/announcements.js';
import { Answered } from '../../../ui/messages/answered.js';
import { EmptyState } from '../../../ui/messages/empty-state.js';
import { OFF_WHILE_OFFLINE } from '../../../ui/messages/offline-bar.js';
import { SheetDialog } from '../../../ui/overlay/sheet-dialog.js';
import type { Column } from '../../../ui/table/column.js';
import { DataTable } from '../../../ui/table/data-table.js';
import {
  type CounterAnswer,
  type CounterReading,
  type CounterReadings,
  readingsQuery,
  voidReading,
} from '../counting-data.js';
import { VoidDialog } from '../void-dialog.js';
import { CorrectionForm, ReadingForm, ReplacementForm } from './reading-forms.js';

const KINDS: Readonly<Record<CounterReading['kind'], string>> = {
  installed: 'Installed',
  removed: 'Removed',
  read: 'Read',
  replaced: 'Counter replaced',
};

const figuresText = ({ minutes, starts }: { readonly minutes: number; readonly starts: number }): string =>
  `${hoursMinutes(minutes)} h, ${thousands(starts)} ${starts === 1 ? 'start' : 'starts'}`;

type Asked =
  | { readonly act: 'read' | 'replace' }
  | { readonly act: 'correct' | 'void'; readonly reading: CounterReading };

function What({ reading }: { readonly reading: CounterReading }) {
  return (
    <>
      {KINDS[reading.kind]}
      {reading.first !== null && <>. The new one began at {figuresText(reading.first)}.</>}
      {reading.voided && <strong> Voided: “{reading.voidReason ?? 'no reason recorded'}”</strong>}
    </>
  );
}

function columnsFor(onAsk: ((asked: Asked) => void) | null): readonly Column<CounterReading>[] {
  const acts: Column<CounterReading> = {
    id: 'acts',
    header: 'What can be done',
    cell: (reading) =>
      reading.voided || onAsk === null ? null : (
        <span className="row no-print">
          <Button
            kind="quiet"
            aria-label={`Correct the reading of ${momentText(reading.at)}`}
            onClick={() => onAsk({ act: 'correct', reading })}
          >
            Correct
          </Button>
          {(reading.kind === 'read' || reading.kind === 'replaced') && (
            <Button
              kind="quiet"
              aria-label={`Void the reading of ${momentText(reading.at)}`}
              onClick={() => onAsk({ act: 'void', reading })}
            >
              Void
            </Button>
          )}
        </span>
      ),
  };
  return [
    { id: 'at', header: 'When (UTC)', namesRow: true, cell: ({ at }) => momentText(at) },
    { id: 'kind', header: 'What', cell: (reading) => <What reading={reading} /> },
    { id: 'hours', header: 'Hours', align: 'figures', cell: ({ minutes }) => hoursMinutes(minutes) },
    { id: 'starts', header: 'Starts', align: 'figures', cell: ({ starts }) => thousands(starts) },
    {
      id: 'ran',
      header: 'Ran since the one before',
      cell: ({ ran }) => (ran === null ? '–' : figuresText(ran)),
    },
    { id: 'source', header: 'Document', cell: ({ source }) => source ?? 'With the change' },
    ...(onAsk === null ? [] : [acts]),
  ];
}

function Readings({ found, componentId }: { readonly found: CounterReadings; readonly componentId: string }) {
  const may = useMay('keep-records');
  const off = useOfflineSince() === null ? null : OFF_WHILE_OFFLINE;
  const [asked, setAsked] = useState<Asked | null>(null);
  const [done, setDone] = useState<{ readonly what: string; readonly answer: CounterAnswer } | null>(null);
  const finish = (what: string) => (answer: CounterAnswer) => {
    announce(`${what}.`);
    setDone({ what, answer });
    setAsked(null);
  };
  const close = () => setAsked(null);
  return (
    <>
      <p>
        {found.readAt === null
          ? 'Its counter was never read: hours and starts are not verified once it was installed.'
          : `Counted ${figuresText(found.counted)} from its first reading on; last read ${momentText(found.readAt)}.`}
      </p>
      {may && (
        <div className="row no-print">
          <Button offBecause={off} onClick={() => setAsked({ act: 'read' })}>
            Record a reading
          </Button>
          <Button offBecause={off} onClick={() => setAsked({ act: 'replace' })}>
            The counter was replaced
          </Button>
        </div>
      )}
      {done !== null && (
        <section className="panel" aria-label={done.what}>
          <h3>{done.what}</h3>
          <Consequences broken={done.answer.consequences} />
          <Button onClick={() => setDone(null)}>Close this message</Button>
        </section>
      )}
      <DataTable
        caption={`Readings of the counter of ${found.serialNumber}, newest first`}
        columns={columnsFor(may ? setAsked : null)}
        rows={found.readings}
        rowKey={({ id }) => id}
        struck={({ voided }) => voided}
        empty={<EmptyState>No reading is on record. The first is recorded as it is installed.</EmptyState>}
      />
      {asked?.act === 'read' && (
        <SheetDialog title="Record a reading" shape="sheet" open onClose={close}>
          <ReadingForm componentId={componentId} onDone={finish('The reading was recorded')} />
        </SheetDialog>
      )}
      {asked?.act === 'replace' && (
        <SheetDialog title="The counter was replaced" shape="sheet" open onClose={close}>
          <ReplacementForm componentId={componentId} onDone={finish('The replacement was recorded')} />
        </SheetDialog>
      )}
      {asked?.act === 'correct' && (
        <SheetDialog
          title={`Correct the reading of ${momentText(asked.reading.at)}`}
          shape="sheet"
          open
          onClose={close}
        >
          <CorrectionForm reading={asked.reading} onDone={finish('The reading was corrected')} />
        </SheetDialog>
      )}
      {asked?.act === 'void' && (
        <VoidDialog
          id={asked.reading.id}
          what="reading"
          consequence="It stays on record, struck through, with your reason. Hours and starts are counted again from the readings around it."
          perform={voidReading}
          onClose={close}
          onDone={finish('The reading was voided')}
        />
      )}
    </>
  );
}

/** The counter of an auxiliary power unit: what it showed when, and what may be recorded of it. */
export function CounterPanel({ componentId }: { readonly componentId: string }) {
  const query = useQuery(readingsQuery(componentId));
  return (
    <section className="stack" aria-labelledby="counter-heading">
      <h2 id="counter-heading" className="section-heading">
        Its own counter
      </h2>
      <Answered query={query} doing="Reading the counter" lines={4}>
        {(found) => <Readings found={found} componentId={componentId} />}
      </Answered>
    </section>
  );
}
