import { ProblemError } from '@strutbook/api-client/problem-error.js';
import { hoursMinutes } from '../format/hours.js';
import { RouteLink } from '../ui/actions/route-link.js';
import { EmptyState } from '../ui/messages/empty-state.js';
import { PrintSheet, SignatureBlank } from '../ui/print/print-sheet.js';
import { Counter } from '../ui/status/counter.js';
import { LifeBar } from '../ui/status/life-bar.js';
import { SerialText } from '../ui/status/serial-text.js';
import { StatusMark } from '../ui/status/status-mark.js';
import { ALL_STATUSES, type Status } from '../ui/status/statuses.js';
import type { Column } from '../ui/table/column.js';
import { DataTable } from '../ui/table/data-table.js';
import { GallerySection } from './gallery-section.js';

interface Line {
  readonly part: string;
  readonly serial: string;
  readonly minutes: number | null;
  readonly left: number | null;
  readonly status: Status;
  readonly voided?: boolean;
}

const ROWS: readonly Line[] = [
  { part: 'Turbine disk 1', serial: 'D77120', minutes: 1_092_246, left: 2019, status: 'in-limits' },
  { part: 'Fan shaft', serial: 'F00981', minutes: 1_019_424, left: 229, status: 'soon' },
  { part: 'Turbine disk 3', serial: 'D80114', minutes: 1_206_774, left: -4, status: 'over-limit' },
  {
    part: 'Turbine disk 2',
    serial: 'MRK0000-8BIl1O0-7719',
    minutes: null,
    left: null,
    status: 'not-verified',
  },
  { part: 'Compressor spool', serial: 'C10023', minutes: 654_004, left: 861, status: 'plan', voided: true },
];

const COLUMNS: readonly Column<Line>[] = [
  { id: 'part', header: 'Part', cell: (line) => line.part, sortBy: (line) => line.part, namesRow: true },
  {
    id: 'serial',
    header: 'Serial',
    cell: (line) => (
      <RouteLink href="/register">
        <SerialText>{line.serial}</SerialText>
      </RouteLink>
    ),
    sortBy: (line) => line.serial,
  },
  {
    id: 'hours',
    header: 'Hours',
    align: 'figures',
    cell: (line) => (line.minutes === null ? 'Not verified' : hoursMinutes(line.minutes)),
    sortBy: (line) => line.minutes,
  },
  {
    id: 'left',
    header: 'Cycles left',
    align: 'figures',
    cell: (line) => (line.left === null ? 'Not known' : line.left),
    sortBy: (line) => line.left,
  },
  { id: 'status', header: 'Status', cell: (line) => <StatusMark status={line.status} /> },
];

const failed = new ProblemError({
  type: 'about:blank',
  title: 'The server failed',
  status: 500,
  detail: 'The records could not be read.',
  code: 'HTTP_500',
  fields: [],
  requestId: '01J9-8A11-07',
});

const rowKey = (line: Line): string => line.serial;

/** Statuses, totals and lives. */
export function GalleryStatuses() {
  return (
    <GallerySection title="Statuses and totals">
      <ul className="row gallery-marks">
        {ALL_STATUSES.map((status) => (
          <li key={status}>
            <StatusMark status={status} />
          </li>
        ))}
      </ul>
      <div className="gallery-columns">
        <Counter minutes={1_288_836} cycles={9214} />
        <Counter minutes={186_620} cycles={1204} since="Since visit" style="tenths" />
        <Counter minutes={null} cycles={null} />
        <LifeBar status="in-limits" used={8981} limit={11_000} unit="cycles" />
        <LifeBar status="soon" used={8771} limit={9000} unit="cycles" />
        <LifeBar status="over-limit" used={10_004} limit={9000} unit="cycles" />
        <LifeBar status="not-verified" used={null} limit={12_000} unit="cycles" />
      </div>
    </GallerySection>
  );
}

/** Tables in every state. */
export function GalleryTables() {
  return (
    <GallerySection title="Tables">
      <DataTable
        caption="Limited parts"
        columns={COLUMNS}
        rows={ROWS}
        rowKey={rowKey}
        order={{ column: 'left', descending: false }}
        struck={(line) => line.voided === true}
      />
      <DataTable
        caption="Parts being read"
        columns={COLUMNS}
        rows={[]}
        rowKey={rowKey}
        state={{ kind: 'loading', lines: 3 }}
      />
      <DataTable
        caption="Parts that could not be read"
        columns={COLUMNS}
        rows={[]}
        rowKey={rowKey}
        state={{ kind: 'failed', error: failed, onRetry: () => undefined }}
      />
      <DataTable
        caption="No parts"
        columns={COLUMNS}
        rows={[]}
        rowKey={rowKey}
        empty={<EmptyState>No limited parts are recorded in this engine.</EmptyState>}
      />
    </GallerySection>
  );
}

/** A sheet for paper. */
export function GalleryPrint() {
  return (
    <GallerySection title="On paper">
      <PrintSheet title="Change EC-0231" subject="ZZ-417" madeAt={29_904_365}>
        <p>Step 27. Torque the forward mount bolt, position A.</p>
        <SignatureBlank what="Step 27, reading in N·m" />
      </PrintSheet>
    </GallerySection>
  );
}
