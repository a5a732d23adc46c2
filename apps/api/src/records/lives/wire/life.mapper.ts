import type { CountedDay } from '@strutbook/domain/life/calendar-life.js';
import { statusOfLife } from '@strutbook/domain/life/life-status.js';
import type { LimitInForce } from '@strutbook/domain/life/limits-in-force.js';
import { toCycles } from '../../../platform/http/counters.dto.js';
import { dayToWire, fromInstant } from '../../../platform/http/instants.js';
import type { RecordedLimit } from '../life-limits.js';
import { type RatingCodes, reasonInFull, whyNoNumber } from '../life-words.js';
import type { PartInLife } from '../lives.js';
import type { LifeForecast } from '../projected-ends.js';
import type { CalendarLifeDto, LifeDto, LifeSourceDto, LimiterDto } from './life.dto.js';

/** A life as the wire has it. Total. */
export function lifeToWire(part: PartInLife, forecast: LifeForecast, ratings: RatingCodes): LifeDto {
  const { life, limit, ratingId } = part;
  const base: LifeDto = {
    kind: life.kind,
    status: statusOfLife(life),
    used: null,
    cyclesUsed: null,
    minutesUsed: null,
    cycleLimit: null,
    remainingCycles: null,
    minuteLimit: null,
    remainingMinutes: null,
    calendar: null,
    goodThrough: null,
    remainingDays: null,
    flagged: false,
    acceptedBy: [],
    reasons:
      life.kind === 'unsubstantiated'
        ? life.reasons.map((reason) => ({ code: reason.code, text: reasonInFull(reason, ratings) }))
        : [],
    ratingCode: ratingId === null ? null : (ratings.get(ratingId) ?? null),
    document: limit?.governs.authorisation.document ?? null,
    revision: limit?.governs.authorisation.revision ?? null,
    sources: limit === null ? [] : sourcesOf(limit, part),
    projectedOn: forecast.end?.on ?? null,
    projectedBy: forecast.end?.by ?? null,
    basis: forecast.basis,
  };
  if (life.kind !== 'limited') return base;
  return {
    ...base,
    used: toCycles(life.used),
    cyclesUsed: life.cyclesUsed === null ? null : toCycles(life.cyclesUsed),
    minutesUsed: life.minutesUsed,
    cycleLimit: life.limit,
    remainingCycles: life.remaining,
    minuteLimit: life.minutesLimit,
    remainingMinutes: life.remainingMinutes,
    calendar: calendarToWire(part),
    goodThrough: life.goodThrough,
    remainingDays: life.remainingDays,
    flagged: life.flagged,
    acceptedBy: life.flagged ? part.acceptances.map(({ by, reference }) => ({ by, reference })) : [],
  };
}

function calendarToWire({ life, days }: PartInLife): CalendarLifeDto | null {
  if (life.kind !== 'limited' || life.calendar === null) return null;
  const { span, unit, countedFrom, monthRule } = life.calendar;
  return { span, unit, countedFrom, monthRule, countedOn: dayCounted(days?.[countedFrom] ?? null) };
}

/** The day counted from; null where it is not known, or has not come. Total. */
export function dayCounted(day: CountedDay): string | null {
  return day === 'not-yet' ? null : day;
}

/** The documents a limit is from: the manual's row, and each directive's that lowers it. */
function sourcesOf(limit: LimitInForce<RecordedLimit>, { life }: PartInLife): LifeSourceDto[] {
  const calendarId = life.kind === 'limited' ? life.calendar?.limitId : undefined;
  return [...(limit.manual === null ? [] : [limit.manual]), ...limit.directives].map((row) => ({
    basis: row.basis,
    document: row.document,
    revision: row.revision,
    effectiveOn: dayToWire(fromInstant(row.effectiveAt)),
    governs: [
      ...(row === limit.governs.cycles ? (['cycles'] as const) : []),
      ...(row === limit.governs.minutes ? (['minutes'] as const) : []),
      ...(row.id === calendarId ? (['days'] as const) : []),
      ...(limit.kind !== 'limited' && row === limit.governs.authorisation
        ? (['authorisation'] as const)
        : []),
    ],
  }));
}

/** The part that limits, as the wire has it. Total. */
export function limiterToWire(
  part: {
    readonly id: string;
    readonly description: string;
    readonly partNumber: string;
    readonly serialNumber: string;
  },
  { life }: PartInLife,
  { end, basis }: LifeForecast,
  ratings: RatingCodes,
): LimiterDto {
  const { id: componentId, description, partNumber, serialNumber } = part;
  const limited = life.kind === 'limited';
  return {
    componentId,
    description,
    partNumber,
    serialNumber,
    status: statusOfLife(life),
    remainingCycles: limited ? life.remaining : null,
    remainingMinutes: limited ? life.remainingMinutes : null,
    remainingDays: limited ? life.remainingDays : null,
    goodThrough: limited ? life.goodThrough : null,
    flagged: limited && life.flagged,
    projectedOn: end?.on ?? null,
    projectedBy: end?.by ?? null,
    basis,
    reason: whyNoNumber(life, ratings),
  };
}
