import type { ReactNode } from 'react';
import { exactCycles } from '../../../../format/cycles.js';
import { dueIn, leftIn } from '../../../../format/due-words.js';
import { hoursMinutes } from '../../../../format/hours.js';
import { calendarDate } from '../../../../format/utc-date.js';
import type { RequirementStatus } from '../../../../server/requirements.js';
import { RouteLink } from '../../../../ui/actions/route-link.js';
import { markOf } from '../../../../ui/status/near.js';
import { SerialText } from '../../../../ui/status/serial-text.js';
import { StatusMark } from '../../../../ui/status/status-mark.js';
import type { Column } from '../../../../ui/table/column.js';
import { toleranceText } from '../held/tolerance-words.js';
import type { Requirement } from '../requirement-queries.js';
import { kindWord } from '../requirement-words.js';

/** A directive or bulletin as it stands on one subject, with the requirement itself. */
export interface SheetRow {
  readonly status: RequirementStatus;
  readonly requirement: Requirement | undefined;
}

/** One-time, repetitive, ended by another or closed: how long it goes on. */
export function courseText({ status, requirement }: SheetRow): string {
  if (status.closedBy !== null) {
    const ended = status.reasonCodes.includes('SUPERSEDED') ? 'Superseded by' : 'Ended by';
    return `${ended} ${status.closedBy.code}`;
  }
  if (status.status === 'closed') return 'One time, met';
  if (requirement === undefined) return '';
  return requirement.repeat === null ? 'One time' : 'Repetitive';
}

function Applicability({ status: { status, reason, reasonCodes, assessment } }: SheetRow) {
  const unknown = reasonCodes.includes('NEVER_ASSESSED');
  const not = status === 'not-applicable';
  return (
    <>
      <strong>{unknown ? 'Never assessed' : not ? 'Not applicable' : 'Applies'}</strong>
      {(not || unknown) && reason !== null && <span className="duty-reason small">{reason}</span>}
      {assessment !== null && (
        <span className="duty-reason small">
          {assessment.reason !== null && assessment.reason !== reason && `${assessment.reason}. `}
          {calendarDate(assessment.on)}, {assessment.assessedBy}, {assessment.reference}
        </span>
      )}
    </>
  );
}

function Met({ status: { lastDone } }: SheetRow) {
  if (lastDone === null) return 'Never recorded';
  const { on, minutes, cycles, evidence } = lastDone;
  return (
    <>
      <span className="duty-line">{calendarDate(on)}</span>
      <span className="duty-line small">
        {minutes === null ? 'Hours by the flights logged' : `${hoursMinutes(minutes)} h`}
      </span>
      <span className="duty-line small">
        {cycles === null ? 'Cycles by the flights logged' : `${exactCycles(cycles)} cycles`}
      </span>
      <span className="duty-reason small quiet">{evidence}</span>
    </>
  );
}

function NextDue({ status: { status, dues, reason, projectedOn } }: SheetRow): ReactNode {
  if (status === 'not-applicable' || status === 'closed')
    return <span className="duty-reason small">Nothing is due</span>;
  if (dues.length === 0) return <span className="duty-reason small">{reason ?? 'Not known'}</span>;
  return (
    <>
      {[...dues]
        .sort((a, b) => Number(b.governs) - Number(a.governs))
        .map((due) => (
          <span key={`${due.dimension} ${due.isBound}`} className="duty-reason">
            {dueIn(due)}: {leftIn(due.dimension, due.remaining)}
            {toleranceText(due) !== null && (
              <span className="duty-reason small quiet">{toleranceText(due)}</span>
            )}
          </span>
        ))}
      {projectedOn !== null && (
        <span className="duty-line small quiet">Projected {calendarDate(projectedOn)}</span>
      )}
    </>
  );
}

/** The columns of the sheet: number and revision, subject, applicability, method, met, course, next due. */
export const SHEET_COLUMNS: readonly Column<SheetRow>[] = [
  {
    id: 'number',
    header: 'Number, revision',
    namesRow: true,
    cell: ({ status: { requirementId, code, kind, revision }, requirement }) => (
      <>
        <RouteLink href={`/requirements/${requirementId}`}>
          <SerialText>{code}</SerialText>
        </RouteLink>
        <span className="duty-line small">
          {kindWord(kind)}, revision <span className="serial">{revision}</span>
        </span>
        {requirement !== undefined && (
          <span className="duty-line small quiet">Effective {calendarDate(requirement.effectiveOn)}</span>
        )}
      </>
    ),
    sortBy: ({ status }) => status.code,
  },
  {
    id: 'title',
    header: 'Subject',
    cell: ({ status }) => <span className="duty-title">{status.title}</span>,
  },
  {
    id: 'held',
    header: 'On',
    cell: ({ status }) => <SerialText>{status.subject}</SerialText>,
    sortBy: ({ status }) => status.subject,
  },
  { id: 'applicability', header: 'Applicability', cell: (row) => <Applicability {...row} /> },
  {
    id: 'method',
    header: 'Method',
    cell: ({ status: { lastDone, assessment } }) => lastDone?.method ?? assessment?.method ?? '',
  },
  { id: 'met', header: 'Met', cell: (row) => <Met {...row} /> },
  { id: 'course', header: 'Course', cell: courseText },
  {
    id: 'next',
    header: 'Next due',
    cell: (row) => (
      <>
        <StatusMark status={markOf(row.status.status)} />
        <NextDue {...row} />
      </>
    ),
  },
];
