import { combinedStatus } from '@strutbook/domain/due/combine.js';
import { statusOfDimension } from '@strutbook/domain/due/dimension-due.js';
import { DIMENSIONS } from '@strutbook/domain/due/requirement.js';
import type { Status } from '@strutbook/domain/life/status.js';
import { addDays, type CalendarDate } from '@strutbook/domain/units/calendar.js';
import { reasonInWords, statusOfDue } from '../../records/due-points/windows.js';
import type { DueDimensionDto, DueRequirementDto, DueRowDto } from './due-list.dto.js';
import type { ToldRow } from './sql/told-text.sql.js';
import type { Basis } from './sql/use.sql.js';

// A date further off than this says nothing.
const FARTHEST_DAYS = 36_500;

/** The day it is, and by what is projected. */
export interface Projecting {
  readonly today: CalendarDate;
  readonly basis: Basis;
  readonly days: number;
}

/** A row as it is told on a day. Total. */
export function dueRow(row: ToldRow, projecting: Projecting): DueRowDto {
  const { today } = projecting;
  const { remaining, daysLeft } = row;
  const days = daysLeft === null || daysLeft > FARTHEST_DAYS ? null : daysLeft;
  const dimension = dimensionOf(row.dimension);
  const dues = duesOf(row, today);
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
    projectedOn: row.dueOn ?? dayAfter(today, days),
    basis: basisOf(row, days, projecting),
    reason: reasonInWords(row.reason),
    flagged: row.flagged,
  };
}

function dimensionOf(dimension: string): DueRowDto['dimension'] {
  return DIMENSIONS.find((known) => known === (dimension === 'flights' ? 'cycles' : dimension)) ?? 'none';
}

function requirementOf(row: ToldRow): DueRequirementDto | null {
  const { requirementId: id, requirementCode: code, requirementTitle: title, combine } = row;
  if (id === null || code === null || title === null || combine === null) return null;
  return { id, code, title, kind: row.requirementKind as DueRequirementDto['kind'], combine };
}

function duesOf(row: ToldRow, today: CalendarDate): DueDimensionDto[] {
  const { dues, limit, remaining, daysLeft, dueOn } = row;
  const dimension = dimensionOf(row.dimension);
  // A life of one dimension is its own row.
  if (dues === null && dimension !== 'none' && remaining !== null)
    return [
      {
        ...{ dimension, interval: limit, remaining, untilLatest: remaining, isBound: false, dueOn },
        projectedOn: dueOn ?? dayAfter(today, daysLeft),
      },
    ];
  return (dues ?? [])
    .map((due) => ({
      dimension: due.dimension === 'flights' ? ('cycles' as const) : due.dimension,
      interval: due.span,
      remaining: due.remaining,
      untilLatest: due.latest,
      isBound: due.bound,
      dueOn: due.dueOn,
      projectedOn: due.dueOn ?? (due.remaining < 0 ? null : dayAfter(today, due.days)),
    }))
    .sort((a, b) => DIMENSIONS.indexOf(a.dimension) - DIMENSIONS.indexOf(b.dimension));
}

function dayAfter(today: CalendarDate, days: number | null): CalendarDate | null {
  return days === null || days > FARTHEST_DAYS ? null : addDays(today, days);
}

function statusOfRow(row: ToldRow, dues: readonly DueDimensionDto[]): Status {
  if (row.kind !== 'requirement') return statusOfLife(row, dues);
  if (row.verdict === 'not-verified') return 'not-verified';
  // Whichever comes first is past: what is not known beside it changes nothing.
  if (row.rank === 0) return 'over';
  const statusesOf = (isBound: boolean) =>
    dues
      .filter((due) => due.isBound === isBound)
      .map((due) =>
        statusOfDimension(
          { dimension: due.dimension, interval: due.interval ?? 0 },
          { remaining: due.remaining, latest: due.untilLatest },
        ),
      );
  const own = statusesOf(false);
  const combined = own.length === 0 ? [] : [combinedStatus(own, row.combine ?? 'first')];
  return combinedStatus([...combined, ...statusesOf(true)], 'first');
}

// The nearest of its dimensions is a life's status.
function statusOfLife({ verdict, dimension, remaining }: ToldRow, dues: readonly DueDimensionDto[]): Status {
  if (verdict !== 'limited' || dues.length < 2) return statusOfDue(verdict, dimension, remaining);
  return combinedStatus(
    dues.map((due) => statusOfDue(verdict, due.dimension, due.remaining)),
    'first',
  );
}

const NOT_RUN: Readonly<Record<Basis, (days: number) => string>> = {
  average: (days) => `Its clock did not run in the last ${days} days`,
  rate: () => 'No rate is planned that runs its clock',
  flights: () => 'No flights are planned that run its clock',
};

const USED: Readonly<Record<Basis, (days: number) => string>> = {
  average: (days) => `Average use of the last ${days} days`,
  rate: () => 'Planned rate',
  flights: () => 'Average of the flights planned',
};

function basisOf(row: ToldRow, daysLeft: number | null, { basis, days }: Projecting): string {
  if (row.verdict !== 'limited') return 'Nothing can be projected from what is not known';
  if (row.dimension === 'event') return 'Due at an event that has been';
  if (row.rank === 0) return row.dueOn === null ? 'Past its limit' : 'Past its day';
  if (row.dueOn !== null) return 'By the calendar';
  if (row.airframeId === null) return 'On no airframe: its clock stands still';
  if (row.rank === 3) return NOT_RUN[basis](days);
  const used = USED[basis](days);
  return daysLeft === null ? `More than a hundred years: ${used}` : used;
}
