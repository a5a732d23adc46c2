import { combinedStatus } from '@strutbook/domain/due/combine.js';
import { statusOfDimension } from '@strutbook/domain/due/dimension-due.js';
import { DIMENSIONS } from '@strutbook/domain/due/requirement.js';
import type { Status } from '@strutbook/domain/life/status.js';
import { addDays, type CalendarDate } from '@strutbook/domain/units/calendar.js';
import { reasonInWords, statusOfDue } from '../../records/due-points/windows.js';
import type { DueDimensionDto, DueRequirementDto, DueRowDto } from './due-list.dto.js';
import type { DuePageRow } from './due-page.sql.js';

// A date further off than this says nothing.
const FARTHEST_DAYS = 36_500;

/** A row as it is told on a day. Total. */
export function dueRow(row: DuePageRow, today: CalendarDate): DueRowDto {
  const { remaining, daysLeft } = row;
  const days = daysLeft === null || daysLeft > FARTHEST_DAYS ? null : daysLeft;
  const dimension = dimensionOf(row.dimension);
  const dues = duesOf(row);
  return {
    id: row.id,
    kind: row.kind,
    requirement: requirementOf(row),
    componentId: row.componentId,
    description: row.description,
    partNumber: row.partNumber,
    serialNumber: row.serialNumber,
    engineId: row.engineId,
    engineSerial: row.engineSerial,
    airframeId: row.airframeId,
    airframe: row.registration,
    positionNumber: row.positionNumber,
    status: statusOfRow(row, dues),
    dimension,
    remainingCycles: dimension === 'cycles' ? remaining : null,
    remainingMinutes: dimension === 'minutes' ? remaining : null,
    remainingDays: row.dueOn === null ? null : remaining,
    dueOn: row.dueOn,
    dues,
    limit: row.limit,
    document: row.document,
    revision: row.revision,
    projectedOn: row.dueOn ?? (days === null ? null : addDays(today, days)),
    basis: basisOf(row, days),
    reason: reasonInWords(row.reason),
    flagged: row.flagged,
  };
}

function dimensionOf(dimension: string): DueRowDto['dimension'] {
  return DIMENSIONS.find((known) => known === (dimension === 'flights' ? 'cycles' : dimension)) ?? 'none';
}

function requirementOf(row: DuePageRow): DueRequirementDto | null {
  const { requirementId: id, requirementCode: code, requirementTitle: title, combine } = row;
  if (id === null || code === null || title === null || combine === null) return null;
  return { id, code, title, kind: row.requirementKind as DueRequirementDto['kind'], combine };
}

function duesOf({ dues }: DuePageRow): DueDimensionDto[] {
  return (dues ?? [])
    .map(({ dimension, span, remaining, latest, bound, dueOn }) => ({
      dimension: dimension === 'flights' ? ('cycles' as const) : dimension,
      interval: span,
      remaining,
      untilLatest: latest,
      isBound: bound,
      dueOn,
    }))
    .sort((a, b) => DIMENSIONS.indexOf(a.dimension) - DIMENSIONS.indexOf(b.dimension));
}

function statusOfRow(row: DuePageRow, dues: readonly DueDimensionDto[]): Status {
  if (row.kind !== 'requirement') return statusOfDue(row.verdict, row.dimension, row.remaining);
  if (row.verdict === 'not-verified') return 'not-verified';
  // Whichever comes first is past: what is not known beside it changes nothing.
  if (row.rank === 0) return 'over';
  const statusesOf = (isBound: boolean) =>
    dues
      .filter((due) => due.isBound === isBound)
      .map((due) => statusOfDimension(due, { remaining: due.remaining, latest: due.untilLatest }));
  const own = statusesOf(false);
  const combined = own.length === 0 ? [] : [combinedStatus(own, row.combine ?? 'first')];
  return combinedStatus([...combined, ...statusesOf(true)], 'first');
}

function basisOf(row: DuePageRow, days: number | null): string {
  if (row.verdict !== 'limited') return 'Nothing can be projected from what is not known';
  if (row.dimension === 'event') return 'Due at an event that has been';
  if (row.rank === 0) return row.dueOn === null ? 'Past its limit' : 'Past its day';
  if (row.dueOn !== null) return 'By the calendar';
  if (row.airframeId === null) return 'On no airframe: its clock stands still';
  if (row.rank === 3) return 'Its clock did not run in the last 90 days';
  return days === null
    ? 'More than a hundred years at the average use of the last 90 days'
    : 'Average use of the last 90 days';
}
