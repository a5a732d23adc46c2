import { addDays, type CalendarDate } from '@strutbook/domain/units/calendar.js';
import { reasonInWords, statusOfDue } from '../../records/due-points/windows.js';
import type { DueRowDto } from './due-list.dto.js';
import type { DuePageRow } from './due-page.sql.js';

// A date further off than this says nothing.
const FARTHEST_DAYS = 36_500;

/** A row as it is told on a day. Total. */
export function dueRow(row: DuePageRow, today: CalendarDate): DueRowDto {
  const { verdict, dimension, remaining, daysLeft } = row;
  const days = daysLeft === null || daysLeft > FARTHEST_DAYS ? null : daysLeft;
  return {
    id: row.id,
    componentId: row.componentId,
    description: row.description,
    partNumber: row.partNumber,
    serialNumber: row.serialNumber,
    engineId: row.engineId,
    engineSerial: row.engineSerial,
    airframeId: row.airframeId,
    airframe: row.registration,
    positionNumber: row.positionNumber,
    status: statusOfDue(verdict, dimension, remaining),
    dimension: dimension === 'cycles' || dimension === 'minutes' ? dimension : 'none',
    remainingCycles: dimension === 'cycles' ? remaining : null,
    remainingMinutes: dimension === 'minutes' ? remaining : null,
    limit: row.limit,
    document: row.document,
    revision: row.revision,
    projectedOn: days === null ? null : addDays(today, days),
    basis: basisOf(row, days),
    reason: reasonInWords(row.reason),
    flagged: row.flagged,
  };
}

function basisOf({ verdict, rank, airframeId }: DuePageRow, days: number | null): string {
  if (verdict !== 'limited') return 'Nothing can be projected from what is not known';
  if (rank === 0) return 'Past its limit';
  if (airframeId === null) return 'On no airframe: its clock stands still';
  if (rank === 3) return 'Its clock did not run in the last 90 days';
  return days === null
    ? 'More than a hundred years at the average use of the last 90 days'
    : 'Average use of the last 90 days';
}
