import type { Dimension } from '../../../../format/due-words.js';
import { parseHours } from '../../../../format/hours.js';
import type { Faults } from '../../../../ui/fields/act-form.js';
import { whole } from '../../plain-checks.js';
import type { NewRequirement } from '../requirement-acts.js';

/** What is granted of one dimension for intervals up to a length, as typed. */
export interface TypedTier {
  readonly dimension: Dimension;
  /** In hours as h:mm where it is of hours. */
  readonly upTo: string;
  readonly percent: string;
  readonly atMost: string;
  /** Of months alone. */
  readonly atMostDays: string;
}

export const BLANK_TIER: TypedTier = {
  dimension: 'minutes',
  upTo: '',
  percent: '',
  atMost: '',
  atMostDays: '',
};

export const DIMENSION_WORDS = [
  { value: 'minutes', label: 'Hours' },
  { value: 'cycles', label: 'Cycles' },
  { value: 'days', label: 'Days' },
  { value: 'months', label: 'Months' },
] as const;

type Grants = NonNullable<NewRequirement['variation']>;
type Tier = NonNullable<Grants['minutes']>[number];

/** The server's path of a tier: its place among those of its dimension. */
export function tierPath(tiers: readonly TypedTier[], place: number): string {
  const dimension = tiers[place]?.dimension ?? 'minutes';
  return `${dimension}.${tiers.slice(0, place).filter((tier) => tier.dimension === dimension).length}`;
}

const amount = (dimension: Dimension, typed: string): number | null => {
  if (dimension !== 'minutes') return whole(typed);
  const time = parseHours(typed);
  return time.ok ? time.minutes : null;
};

/** What is plainly wrong with tiers, by the server's field names. */
export function faultsOfTiers(tiers: readonly TypedTier[]): Faults {
  return Object.assign(
    {},
    ...tiers.map((tier, place) => {
      const path = tierPath(tiers, place);
      const how =
        tier.dimension === 'minutes' ? 'Enter hours and minutes, for example 50:00' : 'Enter a whole number';
      const wrong = (name: 'upTo' | 'atMost'): Faults =>
        tier[name].trim() !== '' && amount(tier.dimension, tier[name]) === null
          ? { [`${path}.${name}`]: how }
          : {};
      return {
        ...wrong('upTo'),
        ...wrong('atMost'),
        ...(tier.percent.trim() !== '' && whole(tier.percent) === null
          ? { [`${path}.percent`]: 'Enter a whole share, for example 10' }
          : {}),
        ...(tier.atMostDays.trim() !== '' && whole(tier.atMostDays) === null
          ? { [`${path}.atMostDays`]: 'Enter whole days' }
          : {}),
      };
    }),
  );
}

function tierOf(tier: TypedTier): Tier {
  const given = {
    upTo: amount(tier.dimension, tier.upTo),
    percent: whole(tier.percent),
    atMost: amount(tier.dimension, tier.atMost),
    atMostDays: tier.dimension === 'months' ? whole(tier.atMostDays) : null,
  };
  return Object.fromEntries(Object.entries(given).filter(([, value]) => value !== null));
}

/** Tiers as they are sent, by dimension; null when nothing is granted. */
export function grantsOf(tiers: readonly TypedTier[]): Grants | null {
  if (tiers.length === 0) return null;
  const of = (dimension: Dimension) => tiers.filter((tier) => tier.dimension === dimension).map(tierOf);
  return Object.fromEntries(
    DIMENSION_WORDS.map(({ value }) => [value, of(value)] as const).filter(([, rows]) => rows.length > 0),
  );
}
