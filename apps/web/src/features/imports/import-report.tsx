import { counted } from '../../format/counts.js';
import { hoursMinutes, thousands } from '../../format/hours.js';
import { RouteLink } from '../../ui/actions/route-link.js';
import { Consequences } from '../../ui/consequences/consequences.js';
import type { Column } from '../../ui/table/column.js';
import { DataTable } from '../../ui/table/data-table.js';
import '../../ui/actions/button.css';
import type { ImportError, ImportFile } from './imports-data.js';

interface ReportProps {
  readonly file: ImportFile;
}

/** How many rows of each kind. */
export function ImportCounts({ file }: ReportProps) {
  const counts = [
    ['Rows', file.rows],
    [file.state === 'applied' ? 'Recorded' : 'New', file.ready],
    ['On record already', file.already],
    ['With errors', file.failed],
  ] as const;
  return (
    <dl className="import-counts">
      {counts.map(([term, count]) => (
        <div key={term}>
          <dt>{term}</dt>
          <dd>{thousands(count)}</dd>
        </div>
      ))}
    </dl>
  );
}

const ERROR_COLUMNS: readonly Column<ImportError & { readonly key: string }>[] = [
  {
    id: 'line',
    header: 'Line',
    align: 'figures',
    cell: (error) => error.line,
    sortBy: (error) => error.line,
    namesRow: true,
  },
  {
    id: 'column',
    header: 'Column',
    cell: (error) => error.column ?? 'Whole line',
    sortBy: (error) => error.column,
  },
  {
    id: 'value',
    header: 'In the file',
    cell: (error) => <span className="import-value">{error.value}</span>,
  },
  { id: 'reason', header: 'Problem', cell: (error) => error.reason, sortBy: (error) => error.reason },
  { id: 'fix', header: 'What to do', cell: (error) => error.fix },
];

/** The errors by the file's own lines. Nothing is applied while there is one. */
export function ImportErrors({ file }: ReportProps) {
  if (file.errors.length === 0) return null;
  const rows = file.errors.map((error, place) => ({ ...error, key: `${error.line} ${place}` }));
  const more = file.errorsLeftOut;
  return (
    <section className="stack">
      <DataTable
        caption={`${counted(file.failed, 'row')} with errors. Line numbers are the file’s own.`}
        columns={ERROR_COLUMNS}
        rows={rows}
        rowKey={({ key }) => key}
        tall
      />
      {more > 0 && <p>{counted(more, 'further error')} in the file to download.</p>}
      <div>
        {/* The server's own file, not a page. */}
        <a className="button button-secondary" href={`/api/imports/${file.id}/errors.csv`} download>
          Download rows with errors
        </a>
      </div>
    </section>
  );
}

const EFFECT_COLUMNS: readonly Column<ImportFile['effect'][number]>[] = [
  {
    id: 'airframe',
    header: 'Airframe',
    cell: (row) => (
      <RouteLink href={`/flights?airframe=${row.airframeId}`}>
        <span className="serial">{row.registration}</span>
      </RouteLink>
    ),
    sortBy: (row) => row.registration,
    namesRow: true,
  },
  {
    id: 'flights',
    header: 'Flights',
    align: 'figures',
    cell: (row) => thousands(row.flights),
    sortBy: (row) => row.flights,
  },
  {
    id: 'hours',
    header: 'Hours',
    align: 'figures',
    cell: (row) => hoursMinutes(row.minutes),
    sortBy: (row) => row.minutes,
  },
];

/** What applying adds, or added, to each airframe. */
export function ImportEffect({ file }: ReportProps) {
  if (file.effect.length === 0) return null;
  return (
    <div className="import-effect">
      <DataTable
        caption={file.state === 'applied' ? 'Added to each airframe' : 'What applying adds to each airframe'}
        columns={EFFECT_COLUMNS}
        rows={file.effect}
        rowKey={({ airframeId }) => airframeId}
      />
    </div>
  );
}

/** What the file's flights newly break. */
export function ImportReached({ file }: ReportProps) {
  if (file.state !== 'applied') return null;
  return (
    <section className="stack" aria-label="What they break">
      <h2 className="visually-hidden">What they break</h2>
      <Consequences broken={file} />
    </section>
  );
}
