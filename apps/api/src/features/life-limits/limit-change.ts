import { LIFE_WINDOWS, statusOfLife } from '@strutbook/domain/life/life-status.js';
import { toCycles } from '../../platform/http/counters.dto.js';
import { type RatingCodes, whyNoNumber } from '../../records/lives/life-words.js';
import type { PartInLife } from '../../records/lives/lives.js';
import type { LimitChangeDto, LimitSideDto } from './limit-preview.dto.js';

/** A life by some limits, as the wire has it. Total. */
export function sideOf({ life, limit }: PartInLife, ratings: RatingCodes): LimitSideDto {
  const limited = life.kind === 'limited' ? life : null;
  const from = limit?.governs.authorisation ?? null;
  return {
    kind: life.kind,
    status: statusOfLife(life),
    used: limited === null ? null : toCycles(limited.used),
    cycleLimit: limited?.limit ?? null,
    remainingCycles: limited?.remaining ?? null,
    minuteLimit: limited?.minutesLimit ?? null,
    remainingMinutes: limited?.remainingMinutes ?? null,
    goodThrough: limited?.goodThrough ?? null,
    remainingDays: limited?.remainingDays ?? null,
    flagged: limited?.flagged ?? false,
    basis: from?.basis ?? null,
    document: from?.document ?? null,
    revision: from?.revision ?? null,
    reason: whyNoNumber(life, ratings),
  };
}

/** What a change does to a life; null when it stays as it was. Total. */
export function effectOf(before: LimitSideDto, after: LimitSideDto): LimitChangeDto['effect'] | null {
  if (JSON.stringify(before) === JSON.stringify(after)) return null;
  if (after.kind === 'not-authorised') return before.kind === after.kind ? 'document' : 'not-authorised';
  if (after.kind === 'unsubstantiated') return before.kind === after.kind ? 'document' : 'not-verified';
  if (after.status === 'over' && before.status !== 'over') return 'over';
  if (after.status === 'soon' && before.status !== 'soon' && before.status !== 'over') return 'short';
  return leastLeft(before, after);
}

/** Whether less or more is left, in the dimension that moves most of its planning window. */
function leastLeft(before: LimitSideDto, after: LimitSideDto): 'less' | 'more' | 'document' {
  const moved = [
    movedBy(before.remainingCycles, after.remainingCycles, LIFE_WINDOWS.cycles.planning),
    movedBy(before.remainingMinutes, after.remainingMinutes, LIFE_WINDOWS.minutes.planning),
    movedBy(before.remainingDays, after.remainingDays, LIFE_WINDOWS.days.planning),
  ];
  if (moved.some((by) => by < 0)) return 'less';
  return moved.some((by) => by > 0) ? 'more' : 'document';
}

// Where nothing limits, everything is left.
function movedBy(before: number | null, after: number | null, window: number): number {
  if (before === null || after === null) return (after === null ? 1 : 0) - (before === null ? 1 : 0);
  return (after - before) / window;
}

const ORDER: readonly LimitChangeDto['effect'][] = [
  'over',
  'not-authorised',
  'not-verified',
  'short',
  'less',
  'more',
  'document',
];

/** What a revision does worst first, then what has the least left. Total. */
export function byEffect(a: LimitChangeDto, b: LimitChangeDto): number {
  return (
    ORDER.indexOf(a.effect) - ORDER.indexOf(b.effect) ||
    shareLeft(a.after) - shareLeft(b.after) ||
    a.serialNumber.localeCompare(b.serialNumber) ||
    a.componentId.localeCompare(b.componentId)
  );
}

function shareLeft({ remainingCycles, remainingMinutes, remainingDays }: LimitSideDto): number {
  const share = (left: number | null, window: number) =>
    left === null ? Number.POSITIVE_INFINITY : left / window;
  const least = Math.min(
    share(remainingCycles, LIFE_WINDOWS.cycles.planning),
    share(remainingMinutes, LIFE_WINDOWS.minutes.planning),
    share(remainingDays, LIFE_WINDOWS.days.planning),
  );
  return Number.isFinite(least) ? least : Number.MAX_SAFE_INTEGER;
}
