import type { EntryReason, StepEntry } from '@strutbook/domain/work/entry.js';
import type { AccountableItem, StepDefinition, StepGroup } from '@strutbook/domain/work/step.js';
import type { PackageKind, PackageStatus } from '../../../server/work.js';

/** How a step stands. */
export type Standing = 'blocked' | 'open' | 'to-inspect' | 'signed' | 'changed' | 'rejected';

/** What a step waits for. */
export interface Blocker {
  readonly code: 'STEP_UNSIGNED' | 'INSPECTION_MISSING';
  readonly stepId: string;
  readonly number: number;
  readonly title: string;
}

/** What must still be captured before a step can be signed. */
export interface Missing {
  readonly code: 'CAPTURE_MISSING' | 'CAPTURE_REJECTED';
  readonly capture: string;
  readonly point: string | null;
  readonly label: string;
  readonly reasons: readonly EntryReason[];
}

/** An entry as it was recorded; struck out, it stays in sight. */
export interface Entry extends StepEntry {
  readonly enteredAt: string;
  readonly photoId: string | null;
  readonly voided: boolean;
  readonly voidReason: string | null;
}

export type Meaning = 'done' | 'inspection';

/** A signature as it was given; undone or overtaken, it stays in sight. */
export interface Signature {
  readonly id: string;
  readonly meaning: Meaning;
  readonly personId: string;
  readonly personName: string;
  readonly licence: string | null;
  readonly performedAt: string;
  readonly signedAt: string;
  readonly undone: boolean;
  readonly undoneReason: string | null;
  readonly reinspectionReason: string | null;
  /** Whether it still holds for the step as it is now. */
  readonly counts: boolean;
}

export interface Step {
  readonly id: string;
  readonly version: number;
  readonly contentHash: string;
  readonly standing: Standing;
  readonly blockers: readonly Blocker[];
  readonly missing: readonly Missing[];
  readonly definition: StepDefinition;
  readonly entries: readonly Entry[];
  readonly signatures: readonly Signature[];
}

export interface OrderedComponent {
  readonly id: string;
  readonly partNumber: string;
  readonly serialNumber: string;
}

/** What the package is ordered to change. */
export interface WorkOrder {
  readonly positionNumber: number | null;
  readonly slot: string;
  readonly outgoing: OrderedComponent | null;
  readonly incoming: OrderedComponent | null;
  readonly ratingCode: string | null;
  readonly removedToLocation: string | null;
  readonly reason: string;
  readonly confirmedBy: string | null;
}

export type Counted = 'tags' | 'blanks' | 'tools';

/** Null where nothing was counted yet: that is not nought. */
export interface CountLine {
  readonly what: Counted;
  readonly out: number | null;
  readonly in: number | null;
}

export interface OpenItem {
  readonly item: AccountableItem;
  readonly openedBy: { readonly stepId: string; readonly number: number; readonly title: string };
}

export interface WorkHead {
  readonly id: string;
  readonly number: string;
  readonly kind: PackageKind;
  readonly title: string;
  readonly status: PackageStatus;
  /** The code of the rule set it is released under. */
  readonly ruleSet: string;
  readonly airframe: { readonly id: string; readonly registration: string } | null;
  readonly component: { readonly id: string; readonly serialNumber: string } | null;
}

/** A package worked by steps, whole. */
export interface Work {
  readonly package: WorkHead;
  readonly order: WorkOrder | null;
  readonly groups: readonly StepGroup[];
  readonly items: readonly AccountableItem[];
  readonly counts: readonly CountLine[];
  readonly openItems: readonly OpenItem[];
  readonly steps: readonly Step[];
}
