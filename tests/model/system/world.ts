/** What a history begins with, as plain data for both sides. Everything is in its place, and rated, at minute 0. */

export type Kind = 'engine' | 'pod' | 'module' | 'part';

export interface AirframeInWorld {
  readonly name: string;
  readonly type: string;
  readonly dayZone: string;
  /** How far its days are ahead of UTC, in minutes. */
  readonly dayOffset: number;
  readonly positions: number;
  readonly opening: { readonly minutes: number; readonly flights: number };
}

export const AIRFRAMES: readonly AirframeInWorld[] = [
  {
    name: 'A',
    type: 'T',
    dayZone: 'UTC',
    dayOffset: 0,
    positions: 2,
    opening: { minutes: 9000, flights: 70 },
  },
  {
    name: 'B',
    type: 'U',
    dayZone: 'Asia/Tokyo',
    dayOffset: 540,
    positions: 2,
    opening: { minutes: 0, flights: 0 },
  },
];

/** A slot is named after what it is in: 'A1/engine', 'E0/front', 'M0/hub'. */
export interface SlotInWorld {
  readonly name: string;
  readonly kind: Kind;
  readonly airframe: string | null;
  readonly position: number | null;
  /** The component it is in. */
  readonly parent: string | null;
}

export interface ComponentInWorld {
  readonly name: string;
  readonly kind: Kind;
  /** The model of an engine, or the one a part is recorded for. */
  readonly model: string | null;
  readonly podClock: 'airframe' | 'position' | null;
  /** What it had used when the record begins; cycles null: nobody knows; no opening: nothing known. */
  readonly opening: { readonly minutes: number; readonly cycles: number | null } | null;
  /** Its slot at minute 0; null is the store. */
  readonly startsIn: string | null;
}

export interface RuleInWorld {
  readonly model: string;
  readonly type: string;
  readonly perFlight: number;
  readonly perLanding: number;
  readonly perTouchAndGo: number;
  readonly perStart: number;
  readonly perAbortedTakeOff: number;
  readonly denominator: number;
}

const ENGINES = ['E0', 'E1', 'E2', 'E3'];
const MODULES = ['M0', 'M1', 'M2', 'M3', 'M4'];

export const SLOTS: readonly SlotInWorld[] = [
  ...AIRFRAMES.flatMap(({ name, positions }) =>
    Array.from({ length: positions }, (_, index) => index + 1).flatMap((position): SlotInWorld[] => [
      { name: `${name}${position}/engine`, kind: 'engine', airframe: name, position, parent: null },
      { name: `${name}${position}/pod`, kind: 'pod', airframe: name, position, parent: null },
    ]),
  ),
  ...ENGINES.flatMap((parent): SlotInWorld[] => [
    { name: `${parent}/front`, kind: 'module', airframe: null, position: null, parent },
    { name: `${parent}/disk`, kind: 'part', airframe: null, position: null, parent },
  ]),
  ...MODULES.map(
    (parent): SlotInWorld => ({
      name: `${parent}/hub`,
      kind: 'part',
      airframe: null,
      position: null,
      parent,
    }),
  ),
];

const opened = (minutes: number, cycles: number | null) => ({ minutes, cycles });
const plain = { podClock: null, model: null };

export const COMPONENTS: readonly ComponentInWorld[] = [
  ...ENGINES.map(
    (name, index): ComponentInWorld => ({
      ...plain,
      name,
      kind: 'engine',
      model: index < 3 ? 'X' : 'Y',
      opening: opened(6000 + index, 40 + index),
      startsIn: ['A1/engine', 'A2/engine', 'B1/engine'][index] ?? null,
    }),
  ),
  ...MODULES.map(
    (name, index): ComponentInWorld => ({
      ...plain,
      name,
      kind: 'module',
      model: 'X',
      opening: opened(3000, 30 + index),
      startsIn: index < 4 ? `E${index}/front` : null,
    }),
  ),
  ...Array.from(
    { length: 8 },
    (_, index): ComponentInWorld => ({
      ...plain,
      name: `P${index}`,
      kind: 'part',
      model: index === 3 ? 'Y' : 'X',
      // Of one the cycles are not known, of another nothing is.
      opening: index === 5 ? opened(100, null) : index === 6 ? null : opened(100 * index, index),
      startsIn: index < 4 ? `M${index}/hub` : index < 7 ? `E${index - 4}/disk` : null,
    }),
  ),
  ...['N0', 'N1', 'N2'].map(
    (name, index): ComponentInWorld => ({
      ...plain,
      name,
      kind: 'pod',
      podClock: index === 1 ? 'position' : 'airframe',
      opening: opened(500, 5),
      startsIn: ['A1/pod', 'B1/pod'][index] ?? null,
    }),
  ),
];

const nothing = { perFlight: 0, perLanding: 0, perTouchAndGo: 0, perStart: 0, perAbortedTakeOff: 0 };

/** Nobody knows how Y counts on U. */
export const RULES: readonly RuleInWorld[] = [
  { ...nothing, model: 'X', type: 'T', perFlight: 2, perTouchAndGo: 1, denominator: 2 },
  { ...nothing, model: 'X', type: 'U', perLanding: 3, perAbortedTakeOff: 1, denominator: 3 },
  { ...nothing, model: 'Y', type: 'T', perFlight: 2, perStart: 1, denominator: 4 },
];

/** All denominators divide it. */
export const TWELFTHS = 12;

/** The rating at which each engine begins; one begins at none. */
export const FIRST_RATING: Readonly<Record<string, string>> = { E0: 'X low', E1: 'X high', E2: 'X low' };
export const RATINGS: Readonly<Record<string, readonly string[]>> = {
  X: ['X low', 'X high'],
  Y: ['Y low', 'Y high'],
};

/** Life limits of every part, in cycles. Y counts all use against the lowest limit of any rating used. */
export const LIMITS: Readonly<Record<string, number>> = {
  'X low': 70,
  'X high': 45,
  'Y low': 60,
  'Y high': 50,
};
export const COUNTS_BY_LOWEST = 'Y';
