/** What never changes in a history: airframes, slots, components, rules and limits. Plain data for both sides. */

export interface AirframeInWorld {
  readonly id: string;
  readonly type: string;
  readonly positions: readonly string[];
  /** Whose hours a pod has here. */
  readonly podRunsOn: 'airframe' | 'position';
}

export const AIRFRAMES: readonly AirframeInWorld[] = [
  { id: 'A', type: 'T', positions: ['A1', 'A2'], podRunsOn: 'airframe' },
  { id: 'B', type: 'U', positions: ['B1', 'B2', 'B3'], podRunsOn: 'position' },
];

export type Kind = 'engine' | 'pod' | 'module' | 'part';

export interface SlotInWorld {
  readonly id: string;
  readonly kind: Kind;
  /** The position it is at, or the component it is in. */
  readonly position: string | null;
  readonly parent: string | null;
}

export interface ComponentInWorld {
  readonly id: string;
  readonly kind: Kind;
  readonly model: string | null;
  /** Used before the record begins, at 'low'; null cycles: unknown; no opening: nothing known. */
  readonly opening: { readonly minutes: number; readonly cycles: number | null } | null;
  /** The slot it is in when the record begins. */
  readonly startsIn: string | null;
}

const engines = ['E0', 'E1', 'E2', 'E3', 'E4', 'E5'];
const modules = ['M0', 'M1', 'M2', 'M3', 'M4', 'M5', 'M6', 'M7'];
const positions = AIRFRAMES.flatMap((airframe) => airframe.positions);

export const SLOTS: readonly SlotInWorld[] = [
  ...positions.flatMap((position): SlotInWorld[] => [
    { id: `${position}/engine`, kind: 'engine', position, parent: null },
    { id: `${position}/pod`, kind: 'pod', position, parent: null },
  ]),
  ...engines.flatMap((engine): SlotInWorld[] => [
    { id: `${engine}/front`, kind: 'module', position: null, parent: engine },
    { id: `${engine}/rear`, kind: 'module', position: null, parent: engine },
    { id: `${engine}/disk`, kind: 'part', position: null, parent: engine },
  ]),
  ...modules.map(
    (module): SlotInWorld => ({ id: `${module}/disk`, kind: 'part', position: null, parent: module }),
  ),
];

const opened = (minutes: number, cycles: number | null) => ({ minutes, cycles });

export const COMPONENTS: readonly ComponentInWorld[] = [
  ...engines.map((id, index): ComponentInWorld => {
    const startsIn = positions[index] === undefined ? null : `${positions[index]}/engine`;
    return {
      id,
      kind: 'engine',
      model: index < 4 ? 'X' : 'Y',
      opening: opened(6000 + index, 40 + index),
      startsIn,
    };
  }),
  ...modules.map((id, index): ComponentInWorld => {
    const engine = engines[index % engines.length];
    const startsIn = index < 6 ? `${engine}/front` : index === 6 ? `${engine}/rear` : null;
    return { id, kind: 'module', model: null, opening: opened(3000, 30 + index), startsIn };
  }),
  ...['P0', 'P1', 'P2', 'P3', 'P4', 'P5', 'P6', 'P7', 'P8', 'P9'].map((id, index): ComponentInWorld => {
    const startsIn = index < 5 ? `${modules[index]}/disk` : index < 9 ? `${engines[index - 5]}/disk` : null;
    const opening = index === 3 ? opened(100, null) : index === 4 ? null : opened(100 * index, index);
    return { id, kind: 'part', model: null, opening, startsIn };
  }),
  ...['N0', 'N1', 'N2', 'N3'].map((id, index): ComponentInWorld => {
    const startsIn = index < 3 ? `${positions[index]}/pod` : null;
    return { id, kind: 'pod', model: null, opening: opened(500, 5), startsIn };
  }),
];

export interface RuleInWorld {
  readonly id: string;
  readonly model: string;
  readonly type: string;
  readonly from: number | null;
  readonly perFlight: number;
  readonly perLanding: number;
  readonly perTouchAndGo: number;
  readonly perStart: number;
  readonly perAbortedTakeOff: number;
  readonly denominator: number;
}

const nothing = { perFlight: 0, perLanding: 0, perTouchAndGo: 0, perStart: 0, perAbortedTakeOff: 0 };

/** Cycle rules by engine model and airframe type; one is replaced at an instant of its own. */
export const RULES: readonly RuleInWorld[] = [
  { ...nothing, id: 'XT', model: 'X', type: 'T', from: null, perFlight: 1, denominator: 1 },
  {
    ...nothing,
    id: 'XT2',
    model: 'X',
    type: 'T',
    from: 6005,
    perFlight: 2,
    perTouchAndGo: 1,
    denominator: 2,
  },
  {
    ...nothing,
    id: 'XU',
    model: 'X',
    type: 'U',
    from: null,
    perFlight: 3,
    perTouchAndGo: 1,
    perAbortedTakeOff: 1,
    denominator: 3,
  },
  { ...nothing, id: 'YT', model: 'Y', type: 'T', from: null, perLanding: 4, denominator: 4 },
  { ...nothing, id: 'YU', model: 'Y', type: 'U', from: null, perFlight: 2, perStart: 1, denominator: 4 },
];

/** All denominators divide it. */
export const TWELFTHS = 12;

/** Ratings, and the rating at which each engine begins; one begins at none. */
export const RATINGS = ['low', 'high'] as const;
export const FIRST_RATING: Readonly<Record<string, string>> = {
  E0: 'low',
  E1: 'high',
  E2: 'low',
  E3: 'high',
  E4: 'low',
};

/** Life limits of every part, in cycles; odd parts count by the lowest limit. */
export const LIMITS = { low: 70, high: 45 } as const;
export const countsByLowest = (part: string): boolean => Number(part.slice(1)) % 2 === 1;
