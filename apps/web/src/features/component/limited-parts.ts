import type { Life, Part, Slot } from '../../server/wire.js';
import { markOfLife } from '../../ui/status/life-status.js';

/** A part with a life, or a place where one belongs and none is recorded. */
export interface LimitedPlace {
  readonly key: string;
  readonly slot: Slot;
  readonly part: Part | null;
}

const NO_NUMBER_FIRST = Number.NEGATIVE_INFINITY;

/** How urgent a life is: what is left in cycles, with hours and days beside them, and nothing known before any number. */
function urgency(life: Life | null): number {
  if (life === null || life.kind === 'unsubstantiated' || life.kind === 'not-authorised')
    return NO_NUMBER_FIRST;
  if (life.kind === 'not-limited') return Number.POSITIVE_INFINITY;
  const hours = life.remainingMinutes === null ? Number.POSITIVE_INFINITY : life.remainingMinutes / 120;
  // A day beside some flights of an ordinary day.
  const days = life.remainingDays === null ? Number.POSITIVE_INFINITY : life.remainingDays * 5;
  return Math.min(life.remainingCycles ?? Number.POSITIVE_INFINITY, hours, days);
}

/** Everything beneath that has a life or should have one, the most urgent first. */
export function limitedPlaces(slots: readonly Slot[]): readonly LimitedPlace[] {
  const found = slots.flatMap(placesIn);
  const rank = ({ part }: LimitedPlace): number =>
    part !== null && markOfLife(part.life) === 'over-limit' ? NO_NUMBER_FIRST : urgency(part?.life ?? null);
  return [...found].sort((a, b) => {
    const [left, right] = [rank(a), rank(b)];
    return left === right ? 0 : left - right;
  });
}

function placesIn(slot: Slot): readonly LimitedPlace[] {
  const { component: part } = slot;
  const own =
    part === null
      ? slot.lifeLimited
      : part.lifeLimited || (part.life !== null && part.life.kind !== 'not-limited');
  return [
    ...(own ? [{ key: slot.id, slot, part }] : []),
    ...(part === null ? [] : part.slots.flatMap(placesIn)),
  ];
}

/** The most urgent life at or beneath a part; null when nothing in it is limited. */
export function tightestIn(part: Part): LimitedPlace | null {
  return (
    limitedPlaces([{ id: part.id, name: '', kind: 'part', lifeLimited: false, component: part }])[0] ?? null
  );
}
