import type { ReactNode } from 'react';
import { dueIn, leftIn } from '../../../format/due-words.js';
import { calendarDate } from '../../../format/utc-date.js';
import { heldKey, type RequirementStatus } from '../../../server/requirements.js';
import { Button } from '../../../ui/actions/button.js';
import { RouteLink } from '../../../ui/actions/route-link.js';
import { markOf } from '../../../ui/status/near.js';
import { SerialText } from '../../../ui/status/serial-text.js';
import { StatusMark } from '../../../ui/status/status-mark.js';
import type { Column } from '../../../ui/table/column.js';
import { DataTable } from '../../../ui/table/data-table.js';
import type { DimensionStatus } from './requirement-queries.js';
import { subjectHref } from './requirement-words.js';
import './requirements.css';

/** The dimension that governs first, then the others as the server has them. */
function inOrder({ dues, governing }: RequirementStatus): readonly DimensionStatus[] {
  return [...dues].sort((a, b) => Number(b.dimension === governing) - Number(a.dimension === governing));
}

const eachLine = (row: RequirementStatus, text: (due: DimensionStatus) => string): ReactNode =>
  inOrder(row).map((due) => (
    <span key={due.dimension} className="duty-line">
      {due.dimension === row.governing ? <strong>{text(due)}</strong> : text(due)}
    </span>
  ));

function Subject({ row }: { readonly row: RequirementStatus }) {
  const href = subjectHref(row);
  return href === null ? (
    row.subject
  ) : (
    <RouteLink href={href}>
      <SerialText>{row.subject}</SerialText>
    </RouteLink>
  );
}

function projectedText({ status, governing, projectedOn, dues }: RequirementStatus): ReactNode {
  if (status === 'closed' || status === 'not-applicable') return '';
  const due = dues.find(({ dimension }) => dimension === governing);
  if (due === undefined) return 'No date';
  if (due.remaining < 0) return 'Past';
  if (projectedOn === null) return 'No date: its clock did not run in the last 90 days';
  return (
    <>
      {calendarDate(projectedOn)}
      <span className="duty-line small quiet">
        {due.dueOn === null
          ? `In ${due.daysText ?? ''} days at the use of the last 90 days`
          : 'By the calendar'}
      </span>
    </>
  );
}

const STATUS: Column<RequirementStatus> = {
  id: 'status',
  header: 'Status',
  cell: ({ status, reason }) => (
    <>
      <StatusMark status={markOf(status)} />
      {reason !== null && <span className="duty-reason small">{reason}</span>}
    </>
  ),
};

const REQUIREMENT: Column<RequirementStatus> = {
  id: 'requirement',
  header: 'Requirement',
  namesRow: true,
  cell: ({ requirementId, code, title }) => (
    <>
      <RouteLink href={`/requirements/${requirementId}`}>
        <SerialText>{code}</SerialText>
      </RouteLink>
      <span className="duty-title">{title}</span>
    </>
  ),
};

const SUBJECT: Column<RequirementStatus> = {
  id: 'subject',
  header: 'Held against',
  cell: (row) => <Subject row={row} />,
};

const DUE: readonly Column<RequirementStatus>[] = [
  { id: 'left', header: 'Left', cell: (row) => eachLine(row, (due) => leftIn(due.dimension, due.remaining)) },
  {
    id: 'due',
    header: 'Due',
    cell: (row) => (
      <>
        {eachLine(row, dueIn)}
        {row.dues.length > 1 && <span className="duty-line small quiet">Whichever comes {row.combine}</span>}
      </>
    ),
  },
  { id: 'projected', header: 'Projected', cell: projectedText },
  {
    id: 'done',
    header: 'Last met',
    cell: ({ lastDone }) =>
      lastDone === null ? (
        'Never recorded'
      ) : (
        <>
          {calendarDate(lastDone.on)}
          <span className="duty-reason small quiet">{lastDone.evidence}</span>
        </>
      ),
  },
];

interface StatusTableProps {
  readonly caption: string;
  readonly rows: readonly RequirementStatus[];
  /** Whether the rows are of one requirement: its name stands above them then. */
  readonly ofOne?: boolean;
  /** Asks to record that a row was met; left out for who may not. */
  readonly onMet?: ((row: RequirementStatus) => void) | undefined;
  readonly empty: ReactNode;
}

/** Requirements and what they are held against, the most pressing first. */
export function StatusTable({ caption, rows, ofOne = false, onMet, empty }: StatusTableProps) {
  const act: readonly Column<RequirementStatus>[] =
    onMet === undefined
      ? []
      : [
          {
            id: 'act',
            header: 'Record',
            cell: (row) =>
              row.status === 'not-applicable' ? (
                ''
              ) : (
                <Button onClick={() => onMet(row)} aria-label={`It was met: ${row.code}, ${row.subject}`}>
                  It was met
                </Button>
              ),
          },
        ];
  const columns = ofOne
    ? [STATUS, { ...SUBJECT, namesRow: true }, ...DUE, ...act]
    : [STATUS, REQUIREMENT, SUBJECT, ...DUE, ...act];
  return (
    <DataTable caption={caption} captionHidden columns={columns} rows={rows} rowKey={heldKey} empty={empty} />
  );
}
