import { fraction } from '@strutbook/domain/units/fraction.js';
import { instant } from '@strutbook/domain/units/minutes.js';
import type { CycleRule } from '@strutbook/domain/usage/cycle-rule.js';
import type {
  CycleRuleInForce,
  RatingChange,
  SlotPlace,
  Stay,
} from '@strutbook/domain/usage/flatten-exposures.js';
import type { Opening } from '@strutbook/domain/usage/totals.js';
import { AIRFRAMES, COMPONENTS, FIRST_RATING, RULES, SLOTS } from './world.js';

/** The world in the core's shapes. */

const placeOfSlot = (slot: (typeof SLOTS)[number]): SlotPlace => {
  if (slot.parent !== null) return { kind: 'component', componentId: slot.parent };
  const airframe = AIRFRAMES.find(({ positions }) => positions.includes(slot.position ?? ''));
  if (airframe === undefined || slot.position === null) throw new Error(`a slot of nothing: ${slot.id}`);
  const own = slot.kind === 'pod' && airframe.podRunsOn === 'airframe' ? airframe.id : slot.position;
  return { kind: 'position', positionCarrierId: own, airframeId: airframe.id, airframeTypeId: airframe.type };
};

export const slotPlaces: ReadonlyMap<string, SlotPlace> = new Map(
  SLOTS.map((slot) => [slot.id, placeOfSlot(slot)]),
);

export const modelOf: ReadonlyMap<string, string> = new Map(
  COMPONENTS.flatMap(({ id, model }) => (model === null ? [] : [[id, model] as const])),
);

export const rulesInForce: readonly CycleRuleInForce[] = RULES.map((rule) => ({
  cycleRuleId: rule.id,
  modelId: rule.model,
  airframeTypeId: rule.type,
  from: rule.from === null ? null : instant(rule.from),
}));

export const cycleRules: ReadonlyMap<string, CycleRule> = new Map(RULES.map((rule) => [rule.id, rule]));

export const openings: ReadonlyMap<string, readonly Opening[]> = new Map(
  COMPONENTS.map(({ id, opening }) => {
    if (opening === null) return [id, []];
    const cycles = opening.cycles === null ? null : fraction(opening.cycles);
    return [id, [{ at: instant(0), ratingId: 'low', minutes: opening.minutes, cycles }]];
  }),
);

/** The stays in which everything begins. */
export function firstStays(): Stay[] {
  return COMPONENTS.map(({ id, startsIn }) => ({
    id: `${id}#0`,
    componentId: id,
    slotId: startsIn,
    locationId: startsIn === null ? 'store' : null,
    from: instant(0),
    to: null,
  }));
}

/** The ratings at which engines begin. */
export function firstRatings(): RatingChange[] {
  return Object.entries(FIRST_RATING).map(([componentId, ratingId]) => ({
    componentId,
    at: instant(0),
    ratingId,
  }));
}
