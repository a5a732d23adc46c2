import type { ReactNode } from 'react';
import { counted } from '../../../../format/counts.js';
import { dueIn, leftIn } from '../../../../format/due-words.js';
import { calendarDate } from '../../../../format/utc-date.js';
import { heldKey, type RequirementStatus } from '../../../../server/requirements.js';
import { RouteLink } from '../../../../ui/actions/route-link.js';
import { markOf } from '../../../../ui/status/near.js';
import { SerialText } from '../../../../ui/status/serial-text.js';
import { StatusMark } from '../../../../ui/status/status-mark.js';
import type { Column } from '../../../../ui/table/column.js';
import { DataTable } from '../../../../ui/table/data-table.js';
import type { DimensionStatus } from '../requirement-queries.js';
import { subjectHref } from '../requirement-words.js';
import { type HeldActs, RowActs } from './held-acts.js';
import { toleranceText } from './tolerance-words.js';
import '../requirements.css';

/** The dimension that governs first, then the others as the server has them. */
function inOrder({ dues }: RequirementStatus): readonly DimensionStatus[] {
  return [...dues].sort((a, b) => Number(b.governs) - Number(a.governs));
}

const NEVER_ASSESSED = 'NEVER_ASSESSED';

/** Whether it applies is not known of these: they come before all others. */
const neverAssessed = ({ reasonCodes }: RequirementStatus): boolean => reasonCodes.includes(NEVER_ASSESSED);

const eachLine = (row: RequirementStatus, text: (due: DimensionStatus) => string): ReactNode =>
  inOrder(row).map((due) => (
    <span key={`${due.dimension} ${due.isBound}`} className="duty-line">
      {due.governs && row.dues.length > 1 ? <strong>{text(due)}</strong> : text(due)}
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

function projectedText({ status, projectedOn, dues }: RequirementStatus): ReactNode {
  if (status === 'closed' || status === 'not-applicable') return '';
  const due = dues.find(({ governs }) => governs);
  if (due === undefined) return 'No date';
  if (due.remaining < 0) return 'Past';
  if (projectedOn === null) return 'No date: its clock did not run in the last 90 days';
  return (
    <>
      {calendarDate(projectedOn)}
      <span className="duty-reason small quiet">
        {due.dueOn === null
          ? `${due.days === null ? '' : `In ${counted(due.days, 'day')}, `}at the use of the last 90 days`
          : 'By the calendar'}
      </span>
    </>
  );
}

const EVENT_WORDS = {
  'shop-visit': 'At the next shop visit',
  installation: 'At the next installation',
  removal: 'At the next removal',
  'main-base-return': 'At the next return to the main base',
} as const;

const eventText = ({ kind, happenedOn }: NonNullable<RequirementStatus['event']>): string =>
  happenedOn === null ? EVENT_WORDS[kind] : `${EVENT_WORDS[kind]}, which was ${calendarDate(happenedOn)}`;

function Tolerance({ row }: { readonly row: RequirementStatus }) {
  const texts = inOrder(row).flatMap((due) => toleranceText(due) ?? []);
  const { variation } = row;
  return (
    <>
      {texts.length === 0 && variation === null && <span className="quiet">None</span>}
      {texts.map((text) => (
        <span key={text} className="duty-reason">
          {text}
        </span>
      ))}
      {variation !== null && (
        <span className="duty-reason small">
          Varied by {variation.approvedBy}, {variation.reference}
        </span>
      )}
    </>
  );
}

const STATUS: Column<RequirementStatus> = {
  id: 'status',
  header: 'Status',
  cell: ({ status, reason, closedBy, assessment }) => (
    <>
      <StatusMark status={markOf(status)} />
      {reason !== null && <span className="duty-reason small">{reason}</span>}
      {closedBy !== null && (
        <RouteLink href={`/requirements/${closedBy.id}`}>
          <SerialText>{closedBy.code}</SerialText>
        </RouteLink>
      )}
      {assessment !== null && (
        <span className="duty-reason small quiet">
          Assessed {calendarDate(assessment.on)}, {assessment.assessedBy}
          {assessment.method !== null && `, ${assessment.method}`}
        </span>
      )}
    </>
  ),
};

const REQUIREMENT: Column<RequirementStatus> = {
  id: 'requirement',
  header: 'Requirement',
  namesRow: true,
  cell: ({ requirementId, code, title, revision }) => (
    <>
      <RouteLink href={`/requirements/${requirementId}`}>
        <SerialText>{code}</SerialText>
      </RouteLink>
      <span className="duty-title">{title}</span>
      <span className="small quiet">
        Revision <span className="serial">{revision}</span>
      </span>
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
        {eachLine(row, (due) => (due.isBound ? `${dueIn(due)}, outer bound` : dueIn(due)))}
        {row.event !== null && <span className="duty-line">{eventText(row.event)}</span>}
        {row.dues.filter(({ isBound }) => !isBound).length > 1 && (
          <span className="duty-line small quiet">Whichever comes {row.combine}</span>
        )}
      </>
    ),
  },
  { id: 'tolerance', header: 'Tolerance', cell: (row) => <Tolerance row={row} /> },
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
  readonly acts: HeldActs;
  readonly empty: ReactNode;
}

/** Requirements and what they are held against: never assessed first, then the most pressing. */
export function StatusTable({ caption, rows, ofOne = false, acts, empty }: StatusTableProps) {
  const act: readonly Column<RequirementStatus>[] = rows.some((row) => acts.offered(row).length > 0)
    ? [{ id: 'act', header: 'Record', cell: (row) => <RowActs acts={acts} row={row} /> }]
    : [];
  const columns = ofOne
    ? [STATUS, { ...SUBJECT, namesRow: true }, ...DUE, ...act]
    : [STATUS, REQUIREMENT, SUBJECT, ...DUE, ...act];
  const first = [...rows].sort((a, b) => Number(neverAssessed(b)) - Number(neverAssessed(a)));
  return (
    <DataTable
      caption={caption}
      captionHidden
      columns={columns}
      rows={first}
      rowKey={heldKey}
      empty={empty}
    />
  );
}
