import type { Instant } from '../units/minutes.js';

/** Where a component was over `[from, to)`; open while `to` is null. In a slot, or at a location. */
export interface Stay {
  readonly id: string;
  readonly componentId: string;
  readonly slotId: string | null;
  readonly locationId: string | null;
  readonly from: Instant;
  readonly to: Instant | null;
}

/**
 * What a slot belongs to.
 *
 * At a position, `positionCarrierId` is the carrier that what is in this slot runs on: the position
 * for an engine; for a pod whose hours are the airframe's, the airframe's own carrier.
 */
export type SlotPlace =
  | {
      readonly kind: 'position';
      readonly positionCarrierId: string;
      readonly airframeId: string;
      readonly airframeTypeId: string;
    }
  | { readonly kind: 'component'; readonly componentId: string }
  | { readonly kind: 'test-cell'; readonly carrierId: string };

/** From `at` on, the engine runs at this rating; null where the rating is not known. */
export interface RatingChange {
  readonly componentId: string;
  readonly at: Instant;
  readonly ratingId: string | null;
}

/** From `from` on (always, when null) this rule counts for the model on the airframe type (null: in a test cell). */
export interface CycleRuleInForce {
  readonly cycleRuleId: string;
  readonly modelId: string;
  readonly airframeTypeId: string | null;
  readonly from: Instant | null;
}

/** A stay flattened down the tree: one component, one carrier, one rating, one cycle rule, one span `[from, to)`. */
export interface ExposureSpan {
  readonly componentId: string;
  readonly carrierId: string;
  readonly from: Instant;
  readonly to: Instant | null;
  readonly ratingId: string | null;
  readonly cycleRuleId: string | null;
}

/** An auxiliary power unit's own counter: the carrier it runs on wherever it is, from its first known reading on. */
export interface OwnCounter {
  readonly carrierId: string;
  readonly from: Instant;
}

/** What the flattening of one component needs to know. */
export interface FlattenFacts {
  readonly componentId: string;
  /** The stays of the component and of everything it was ever in; others do no harm. */
  readonly stays: readonly Stay[];
  readonly slots: ReadonlyMap<string, SlotPlace>;
  readonly ratingChanges: readonly RatingChange[];
  readonly cycleRules: readonly CycleRuleInForce[];
  /** The model of each engine, by component. */
  readonly modelOf: ReadonlyMap<string, string>;
  /** The components that count by a counter of their own. */
  readonly countersOf?: ReadonlyMap<string, OwnCounter>;
}

/**
 * The exposures of one component: its stays flattened down the tree.
 *
 * A part in a module in an engine at a position runs on the position's carrier, at the engine's rating,
 * under the rule for the engine's model on that airframe type. A component with a counter of its own, and what
 * is in it, runs on that wherever it is. Spans are split where any stay on the way
 * up, the rating or the rule changes, and joined where nothing does. In store nothing runs, and a slot
 * that is not among the slots is passed by as a location. Answers spans in order of time. Total.
 */
export function flattenExposures(facts: FlattenFacts): readonly ExposureSpan[] {
  return joinSpans(spansUnder(facts, facts.componentId, { from: null, to: null }));
}

interface Window {
  readonly from: Instant | null;
  readonly to: Instant | null;
}

/** The part of `[from, to)` inside the window, or null when nothing is left. */
function within(window: Window, { from, to }: { readonly from: Instant; readonly to: Instant | null }) {
  const start = window.from === null || from > window.from ? from : window.from;
  const end = window.to === null ? to : to === null || window.to < to ? window.to : to;
  return end !== null && end <= start ? null : { from: start, to: end };
}

/** The spans of the component asked for, while `carrying` (itself, or what it is in) is where the window says. */
function spansUnder(facts: FlattenFacts, carrying: string, window: Window): readonly ExposureSpan[] {
  const counter = facts.countersOf?.get(carrying);
  if (counter !== undefined) {
    const span = within(window, { from: counter.from, to: null });
    const { carrierId } = counter;
    return span === null
      ? []
      : splitAtChanges(facts, { carrierId, airframeTypeId: null, engineId: carrying, span });
  }
  return facts.stays.flatMap((stay) => {
    const span = stay.componentId === carrying ? within(window, stay) : null;
    const place = stay.slotId === null ? undefined : facts.slots.get(stay.slotId);
    if (span === null || place === undefined) return [];
    if (place.kind === 'component') return spansUnder(facts, place.componentId, span);
    const carrier =
      place.kind === 'position'
        ? { carrierId: place.positionCarrierId, airframeTypeId: place.airframeTypeId }
        : { carrierId: place.carrierId, airframeTypeId: null };
    return splitAtChanges(facts, { ...carrier, engineId: carrying, span });
  });
}

interface Running {
  readonly carrierId: string;
  readonly airframeTypeId: string | null;
  readonly engineId: string;
  readonly span: { readonly from: Instant; readonly to: Instant | null };
}

function splitAtChanges(
  facts: FlattenFacts,
  { carrierId, airframeTypeId, engineId, span }: Running,
): ExposureSpan[] {
  const ratings = facts.ratingChanges.filter((change) => change.componentId === engineId);
  const modelId = facts.modelOf.get(engineId);
  const rules = facts.cycleRules.filter(
    (rule) => rule.modelId === modelId && rule.airframeTypeId === airframeTypeId,
  );
  const cuts = [...ratings.map((change) => change.at), ...rules.flatMap((rule) => rule.from ?? [])]
    .filter((at) => at > span.from && (span.to === null || at < span.to))
    .sort((a, b) => a - b);
  const starts = [...new Set([span.from, ...cuts])];
  return starts.map((from, index) => ({
    componentId: facts.componentId,
    carrierId,
    from,
    to: starts[index + 1] ?? span.to,
    ratingId: latest(ratings, from, (change) => change.at)?.ratingId ?? null,
    cycleRuleId: latest(rules, from, (rule) => rule.from ?? Number.NEGATIVE_INFINITY)?.cycleRuleId ?? null,
  }));
}

/** The newest of those that hold at the instant; of two from the same instant, the one named last. */
function latest<T>(changes: readonly T[], at: Instant, since: (change: T) => number): T | undefined {
  let found: T | undefined;
  for (const change of changes) {
    if (since(change) <= at && (found === undefined || since(change) >= since(found))) found = change;
  }
  return found;
}

function joinSpans(spans: readonly ExposureSpan[]): readonly ExposureSpan[] {
  const joined: ExposureSpan[] = [];
  for (const span of [...spans].sort((a, b) => a.from - b.from)) {
    const last = joined.at(-1);
    const continues =
      last !== undefined &&
      last.to === span.from &&
      last.carrierId === span.carrierId &&
      last.ratingId === span.ratingId &&
      last.cycleRuleId === span.cycleRuleId;
    if (continues) joined[joined.length - 1] = { ...last, to: span.to };
    else joined.push(span);
  }
  return joined;
}
