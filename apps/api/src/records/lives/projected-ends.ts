import { type ProjectedEnd, projectedEnd } from '@strutbook/domain/life/projected-end.js';
import type { Tx } from '../../platform/database/database.js';
import { dayIn } from '../stays/day-zone.js';
import { dailyUse, type RunningClock, runningClocks } from '../usage/running-clocks.js';
import type { PartInLife } from './lives.js';

/** When a life is projected to end, and what that rests on. */
export interface LifeForecast {
  readonly end: ProjectedEnd | null;
  /** What it rests on, or why there is none. */
  readonly basis: string;
}

/** When lives end at the average use of the last 90 days before an instant (null: now), by their components' ids. */
export async function forecastsOf(
  tx: Tx,
  operatorId: number,
  parts: readonly PartInLife[],
  { at, now }: { readonly at: Date | null; readonly now: Date },
): Promise<ReadonlyMap<string, LifeForecast>> {
  const clocks = await runningClocks(
    tx,
    operatorId,
    parts.flatMap(({ running }) => running?.carrierId ?? []),
    { at, now },
  );
  return new Map(
    parts.map((part) => [
      part.componentId,
      forecastOf(part, clocks.get(part.running?.carrierId ?? ''), at ?? now),
    ]),
  );
}

function forecastOf({ life, running }: PartInLife, clock: RunningClock | undefined, now: Date): LifeForecast {
  const today = dayIn(clock?.dayZone ?? 'UTC', now);
  const end = projectedEnd(life, dailyUse(clock, running?.rule), today);
  return { end, basis: basisOf(life.kind, end, clock) };
}

function basisOf(
  kind: PartInLife['life']['kind'],
  end: ProjectedEnd | null,
  clock: RunningClock | undefined,
): string {
  if (kind === 'not-limited') return 'Not limited';
  if (kind !== 'limited') return 'Nothing can be projected from what is not known';
  if (end?.past === true) return end.by === 'days' ? 'Past its day' : 'Past its limit';
  if (end !== null) return end.by === 'days' ? 'By the calendar' : 'Average use of the last 90 days';
  return clock === undefined
    ? 'On no airframe: its clock stands still'
    : 'Its clock did not run in the last 90 days';
}
