import type { Life, UnsubstantiatedReason } from '@strutbook/domain/life/limited-life.js';
import { toCycles } from '../../platform/http/counters.dto.js';
import type { PartInLife } from '../../records/lives/lives.js';
import type { LifeDto, LimiterDto } from './component-view.dto.js';

/** The codes of ratings by their ids. */
export type RatingCodes = ReadonlyMap<string, string>;

/** A life as the wire has it. Total. */
export function lifeToWire({ life, limit, ratingId }: PartInLife, ratings: RatingCodes): LifeDto {
  const base: LifeDto = {
    kind: life.kind,
    used: null,
    cyclesUsed: null,
    minutesUsed: null,
    cycleLimit: null,
    remainingCycles: null,
    minuteLimit: null,
    remainingMinutes: null,
    flagged: false,
    reasons:
      life.kind === 'unsubstantiated' ? life.reasons.map((reason) => reasonToWire(reason, ratings)) : [],
    ratingCode: ratingId === null ? null : (ratings.get(ratingId) ?? null),
    document: limit?.document ?? null,
    revision: limit?.revision ?? null,
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
    flagged: life.flagged,
  };
}

/** The part that limits, as the wire has it. Total. */
export function limiterToWire(
  part: {
    readonly id: string;
    readonly description: string;
    readonly partNumber: string;
    readonly serialNumber: string;
  },
  life: Life,
  ratings: RatingCodes,
): LimiterDto {
  const { id: componentId, description, partNumber, serialNumber } = part;
  const limited = life.kind === 'limited';
  return {
    componentId,
    description,
    partNumber,
    serialNumber,
    remainingCycles: limited ? life.remaining : null,
    remainingMinutes: limited ? life.remainingMinutes : null,
    reason: whyNoNumber(life, ratings),
  };
}

function whyNoNumber(life: Life, ratings: RatingCodes): string | null {
  if (life.kind === 'not-authorised') return 'Not authorised at the rating of this engine.';
  if (life.kind !== 'unsubstantiated') return null;
  return life.reasons.map((reason) => reasonToWire(reason, ratings).text).join(' ');
}

function reasonToWire(reason: UnsubstantiatedReason, ratings: RatingCodes): { code: string; text: string } {
  const { code } = reason;
  switch (reason.code) {
    case 'TRACE_GAP':
      return { code, text: `The records have a gap: ${reason.gap.description}` };
    case 'RATING_UNKNOWN':
      return { code, text: 'It is not known at which rating some of its cycles were flown.' };
    case 'CYCLES_UNKNOWN':
      return { code, text: 'Its cycles since new are not known.' };
    case 'MINUTES_UNKNOWN':
      return { code, text: 'Its hours since new are not known.' };
    case 'NO_LIMIT_RECORDED': {
      const rating = reason.ratingId === null ? '' : ` at rating ${ratings.get(reason.ratingId) ?? ''}`;
      return { code, text: `No life limit is recorded for it${rating}.` };
    }
  }
}
