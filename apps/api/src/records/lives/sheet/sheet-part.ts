import type { CalendarLimit } from '@strutbook/domain/life/calendar-life.js';
import { type CountersDto, toCycles } from '../../../platform/http/counters.dto.js';
import type { RatingCodes } from '../life-words.js';
import type { PartInLife } from '../lives.js';
import type { LifeForecast } from '../projected-ends.js';
import type { CalendarLifeDto } from '../wire/life.dto.js';
import { dayCounted, lifeToWire } from '../wire/life.mapper.js';
import type { SheetLimitDto, SheetPartDto, SheetUseDto } from '../wire/life-sheet.dto.js';

/** What a row of the sheet is made of. */
export interface SheetPartFacts {
  readonly module: string;
  readonly place: string;
  readonly life: PartInLife;
  readonly forecast: LifeForecast;
  readonly sinceNew: CountersDto;
  readonly ratings: RatingCodes;
}

/** A limited part as the sheet tells it. Total. */
export function sheetPart(
  part: { readonly description: string; readonly partNumber: string; readonly serialNumber: string },
  { module, place, life, forecast, sinceNew, ratings }: SheetPartFacts,
): SheetPartDto {
  const { description, partNumber, serialNumber } = part;
  const told = lifeToWire(life, forecast, ratings);
  return {
    module,
    place,
    componentId: life.componentId,
    description,
    partNumber,
    serialNumber,
    limits: life.limits.map((limit) => limitOf(limit, life, ratings)).sort(byRating),
    usedAt: life.usedAt
      .map(
        ({ ratingId, cycles, minutes }): SheetUseDto => ({
          ratingCode: codeOf(ratingId, ratings),
          cycles: cycles === null ? null : toCycles(cycles),
          minutes,
        }),
      )
      .sort(byRating),
    sinceNew,
    life: told,
    trace: traceOf(life),
    flags: [
      // A gap is told with its days.
      ...told.reasons.filter(({ code }) => code !== 'TRACE_GAP').map(({ text }) => text),
      ...(told.flagged
        ? told.acceptedBy.map(({ by, reference }) => `Worst case accepted by ${by}, ${reference}`)
        : []),
      ...life.gaps.map(
        ({ fromAt, toAt, note, accepted }) =>
          `Gap ${dayText(fromAt)} to ${dayText(toAt)}, ${accepted ? 'accepted' : 'not accepted'}: ${note}`,
      ),
      ...(told.kind === 'not-authorised' ? ['Not authorised in this model at this rating'] : []),
      ...(told.sources.some(({ basis }) => basis === 'directive') ? ['Lowered by a directive'] : []),
    ],
  };
}

function traceOf({ life, gaps }: PartInLife): SheetPartDto['trace'] {
  if (life.kind === 'unsubstantiated' || gaps.some(({ accepted }) => !accepted)) return 'not-verified';
  return life.kind === 'limited' && life.flagged ? 'worst-case' : 'verified';
}

/** By the code, what holds at any rating or at one nobody knows last. Total. */
function byRating(
  a: { readonly ratingCode: string | null },
  b: { readonly ratingCode: string | null },
): number {
  return (a.ratingCode ?? '\uFFFF').localeCompare(b.ratingCode ?? '\uFFFF');
}

/** A place where a limited part is expected and none is recorded. Total. */
export function missingPart(module: string, place: string): SheetPartDto {
  return {
    module,
    place,
    componentId: null,
    description: place,
    partNumber: '',
    serialNumber: '',
    limits: [],
    usedAt: [],
    sinceNew: { minutes: null, cycles: null },
    life: null,
    trace: 'not-verified',
    flags: ['A life-limited part is expected here and none is recorded'],
  };
}

function limitOf(
  limit: PartInLife['limits'][number],
  { days }: PartInLife,
  ratings: RatingCodes,
): SheetLimitDto {
  const limited = limit.kind === 'limited' ? limit : null;
  const calendarToWire = ({ span, unit, countedFrom, monthRule }: CalendarLimit): CalendarLifeDto => ({
    ...{ span, unit, countedFrom, monthRule },
    countedOn: dayCounted(days?.[countedFrom] ?? null),
  });
  return {
    ratingCode: codeOf(limit.ratingId, ratings),
    authorisation: limit.kind,
    cycles: limited?.cycles ?? null,
    minutes: limited?.minutes ?? null,
    calendar: (limited?.calendar ?? []).map(calendarToWire),
  };
}

function codeOf(ratingId: string | null, ratings: RatingCodes): string | null {
  return ratingId === null ? null : (ratings.get(ratingId) ?? null);
}

function dayText(at: Date): string {
  return at.toISOString().slice(0, 10);
}
