import type {
  BuildStandard,
  BuiltComponent,
  BuiltCounters,
  BuiltRequirement,
  BuiltSlot,
} from './build-standard.js';

/** A place whose component differs; null: it was, or is, empty or not there. */
export interface SlotDifference {
  readonly slotId: string;
  readonly name: string;
  readonly parentSerial: string;
  readonly before: BuiltComponent | null;
  readonly after: BuiltComponent | null;
}

/** A counter of the component itself that differs. */
export interface CounterDifference {
  readonly counter: 'sinceNew' | 'sinceOverhaul' | 'sinceShopVisit' | 'sinceRepair';
  readonly before: BuiltCounters | null;
  readonly after: BuiltCounters | null;
}

/** A requirement whose state or last accomplishment differs; null: it was, or is, not held against it. */
export interface RequirementDifference {
  readonly requirementId: string;
  readonly code: string;
  readonly subject: string;
  readonly before: BuiltRequirement | null;
  readonly after: BuiltRequirement | null;
}

/** What changed between two build standards of one component. */
export interface BuildDifference {
  readonly rating: { readonly before: string | null; readonly after: string | null } | null;
  readonly slots: readonly SlotDifference[];
  readonly counters: readonly CounterDifference[];
  readonly requirements: readonly RequirementDifference[];
  /** The fewest cycles left among its limited parts; null where none is limited in cycles. */
  readonly tightestCycles: { readonly before: number | null; readonly after: number | null };
}

const COUNTERS = ['sinceNew', 'sinceOverhaul', 'sinceShopVisit', 'sinceRepair'] as const;

/**
 * What differs between two build standards of a component: places, its own counters, rating and requirements.
 *
 * A place is the same place by its id: one in a module that was replaced is told with the module alone where nothing
 * was there before. Counters are compared exactly. Total.
 */
export function buildDifference(before: BuildStandard, after: BuildStandard): BuildDifference {
  return {
    rating:
      before.ratingCode === after.ratingCode ? null : { before: before.ratingCode, after: after.ratingCode },
    slots: slotDifferences(before.slots, after.slots),
    counters: COUNTERS.flatMap((counter) =>
      sameCounters(before[counter], after[counter])
        ? []
        : [{ counter, before: before[counter], after: after[counter] }],
    ),
    requirements: requirementDifferences(before.requirements, after.requirements),
    tightestCycles: { before: tightest(before), after: tightest(after) },
  };
}

function slotDifferences(before: readonly BuiltSlot[], after: readonly BuiltSlot[]): SlotDifference[] {
  const was = new Map(before.map((slot) => [slot.slotId, slot]));
  const is = new Map(after.map((slot) => [slot.slotId, slot]));
  const all = [...before, ...after.filter((slot) => !was.has(slot.slotId))];
  return all.flatMap(({ slotId, name, parentSerial }) => {
    const [left, right] = [was.get(slotId)?.component ?? null, is.get(slotId)?.component ?? null];
    if (left?.componentId === right?.componentId) return [];
    return [{ slotId, name, parentSerial, before: left, after: right }];
  });
}

function sameCounters(a: BuiltCounters | null, b: BuiltCounters | null): boolean {
  if (a === null || b === null) return a === b;
  if (a.minutes !== b.minutes) return false;
  if (a.cycles === null || b.cycles === null) return a.cycles === b.cycles;
  return a.cycles.units * b.cycles.denominator === b.cycles.units * a.cycles.denominator;
}

function requirementDifferences(
  before: readonly BuiltRequirement[],
  after: readonly BuiltRequirement[],
): RequirementDifference[] {
  const key = (row: BuiltRequirement) => `${row.code} ${row.componentId ?? ''}`;
  const was = new Map(before.map((row) => [key(row), row]));
  const is = new Map(after.map((row) => [key(row), row]));
  const all = [...after, ...before.filter((row) => !is.has(key(row)))];
  return all.flatMap((row) => {
    const [left, right] = [was.get(key(row)) ?? null, is.get(key(row)) ?? null];
    const isSame =
      left !== null &&
      right !== null &&
      left.status === right.status &&
      left.lastDoneOn === right.lastDoneOn &&
      left.remaining === right.remaining;
    if (isSame) return [];
    const { requirementId, code, subject } = row;
    return [{ requirementId, code, subject, before: left, after: right }];
  });
}

function tightest({ slots, life }: BuildStandard): number | null {
  const left = [life, ...slots.map((slot) => slot.component?.life ?? null)].flatMap(
    (part) => part?.remainingCycles ?? [],
  );
  return left.length === 0 ? null : Math.min(...left);
}
