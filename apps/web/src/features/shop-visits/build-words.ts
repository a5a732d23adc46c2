import { exactCycles } from '../../format/cycles.js';
import { hoursMinutes } from '../../format/hours.js';
import { remainingCycles, remainingDays, remainingMinutes } from '../../format/remaining.js';
import type { BuildStandard, BuiltComponent } from '../../server/shops/shop-records.js';

type Pair = BuildStandard['sinceNew'];
type BuiltLife = NonNullable<BuiltComponent['life']>;

export const COUNTER_WORDS = {
  sinceNew: 'Since new',
  sinceOverhaul: 'Since overhaul',
  sinceShopVisit: 'Since shop visit',
  sinceRepair: 'Since repair',
} as const;

/** '1,000:00 h, 1,000 cycles'; 'not known' where something is missing. */
export function pairText(pair: Pair | null): string {
  if (pair === null) return 'Never';
  const hours = pair.minutes === null ? 'hours not known' : `${hoursMinutes(pair.minutes)} h`;
  const cycles = pair.cycles === null ? 'cycles not known' : `${exactCycles(pair.cycles)} cycles`;
  return `${hours}, ${cycles}`;
}

/** What is left of a limited part. */
export function lifeText(life: BuiltLife | null): string {
  if (life === null || life.kind === 'not-limited') return 'No limit';
  if (life.kind === 'not-authorised') return 'Not authorised';
  if (life.kind === 'unsubstantiated') return 'Not verified';
  const { remainingCycles: cycles, remainingMinutes: minutes, remainingDays: days } = life;
  return [
    ...(cycles === null ? [] : [remainingCycles(cycles)]),
    ...(minutes === null ? [] : [remainingMinutes(minutes)]),
    ...(days === null ? [] : [remainingDays(days)]),
  ].join(', ');
}

export const DISPOSITIONS = [
  { value: 'record', label: 'By record' },
  { value: 'tag', label: 'By tag' },
  { value: 'temporary-mark', label: 'By a temporary mark' },
  { value: 'permanent-mark', label: 'By a permanent mark' },
  { value: 'segregated', label: 'Segregated' },
  { value: 'mutilated', label: 'Mutilated' },
  { value: 'other', label: 'In another accepted way' },
] as const;

/** How a part is controlled, in words. */
export const dispositionText = (method: string | null): string =>
  DISPOSITIONS.find(({ value }) => value === method)?.label ?? '';
