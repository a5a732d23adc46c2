import type { Life } from '../life/life.js';

/** Cycles as they are kept: whole units over a denominator. */
export interface BuiltCycles {
  readonly units: number;
  readonly denominator: number;
}

/** A pair of counters as they are kept: whole minutes and cycles; null where not known. */
export interface BuiltCounters {
  readonly minutes: number | null;
  readonly cycles: BuiltCycles | null;
}

/** What is left of a limited part: whole cycles, minutes and days; null where it is not limited so, or not known. */
export interface BuiltLife {
  readonly kind: Life['kind'];
  readonly remainingCycles: number | null;
  readonly remainingMinutes: number | null;
  readonly remainingDays: number | null;
  /** Why nothing can be told; null when a number stands. */
  readonly reason: string | null;
}

/** A component in a build, with its counters since new. */
export interface BuiltComponent {
  readonly componentId: string;
  readonly kind: string;
  readonly partNumber: string;
  readonly serialNumber: string;
  readonly description: string;
  readonly lifeLimited: boolean;
  readonly sinceNew: BuiltCounters;
  readonly life: BuiltLife | null;
}

/** A place in a build and what is in it; parents come before children. */
export interface BuiltSlot {
  readonly slotId: string;
  readonly name: string;
  /** The component whose place it is. */
  readonly parentId: string;
  readonly parentSerial: string;
  /** 1 directly beneath the component, 2 in what is there, and so on. */
  readonly depth: number;
  readonly component: BuiltComponent | null;
}

/** A requirement held against something in a build. */
export interface BuiltRequirement {
  readonly requirementId: string;
  readonly code: string;
  readonly title: string;
  readonly kind: string;
  readonly revision: string;
  readonly componentId: string | null;
  /** What it is held against, in words. */
  readonly subject: string;
  readonly status: string;
  /** What is left in what governs: minutes, cycles or days; null where nothing can be told or nothing is due. */
  readonly remaining: number | null;
  readonly governing: 'minutes' | 'cycles' | 'days' | 'months' | null;
  readonly lastDoneOn: string | null;
}

/** Everything that was in a component at an instant, with lives, counters and requirements: its build standard. */
export interface BuildStandard {
  /** 'YYYY-MM-DDTHH:MMZ' */
  readonly at: string;
  readonly ratingCode: string | null;
  readonly sinceNew: BuiltCounters;
  readonly sinceOverhaul: BuiltCounters | null;
  readonly sinceShopVisit: BuiltCounters | null;
  readonly sinceRepair: BuiltCounters | null;
  readonly life: BuiltLife | null;
  readonly slots: readonly BuiltSlot[];
  readonly requirements: readonly BuiltRequirement[];
}
