import type { components } from '@strutbook/api-client/schema.gen.js';
import type { EntryReason, StepEntry } from '@strutbook/domain/work/entry.js';
import type { AccountableItem, StepDefinition, StepGroup } from '@strutbook/domain/work/step.js';
import type { Order, OrderedComponent as Ordered } from '../../../server/work.js';

type Shapes = components['schemas'];
type SentStep = Shapes['StepDto'];
type SentEntry = Shapes['StepEntryDto'];

// The server's own shapes, with definitions and entries as the core has them, and as far as they are used here.

/** How a step stands. */
export type Standing = SentStep['standing'];

/** What must still be captured before a step can be signed. */
export type Missing = Omit<Shapes['MissingDto'], 'reasons'> & { readonly reasons: readonly EntryReason[] };

/** An entry as it was recorded; struck out, it stays in sight. */
export type Entry = StepEntry & Pick<SentEntry, 'enteredAt' | 'photoId' | 'voided' | 'voidReason'>;

/** A signature as it was given; undone or overtaken, it stays in sight. */
export type Signature = Omit<Shapes['ShownSignatureDto'], 'contentHash' | 'coversId' | 'method'>;

export type Meaning = Signature['meaning'];

export interface Step extends Readonly<Pick<SentStep, 'id' | 'version' | 'contentHash' | 'standing'>> {
  readonly blockers: readonly Shapes['BlockerDto'][];
  readonly missing: readonly Missing[];
  readonly definition: StepDefinition;
  readonly entries: readonly Entry[];
  readonly signatures: readonly Signature[];
}

export type OrderedComponent = Pick<Ordered, 'id' | 'partNumber' | 'serialNumber'>;

/** What the package is ordered to change. */
export interface WorkOrder
  extends Readonly<
    Pick<Order, 'positionNumber' | 'slot' | 'ratingCode' | 'removedToLocation' | 'reason' | 'confirmedBy'>
  > {
  readonly outgoing: OrderedComponent | null;
  readonly incoming: OrderedComponent | null;
}

/** Null where nothing was counted yet: that is not nought. */
export type CountLine = Shapes['CountAccountDto'];

export interface OpenItem {
  readonly item: AccountableItem;
  readonly openedBy: Shapes['OpenedByDto'];
}

/** A package worked by steps, whole. */
export interface Work {
  readonly package: Readonly<
    Pick<Shapes['WorkPackageDto'], 'id' | 'number' | 'kind' | 'title' | 'status' | 'ruleSet'>
  > & {
    readonly airframe: Shapes['WorkAirframeDto'] | null;
    readonly component: Pick<Shapes['WorkComponentDto'], 'id' | 'serialNumber'> | null;
  };
  readonly order: WorkOrder | null;
  readonly groups: readonly StepGroup[];
  readonly items: readonly AccountableItem[];
  readonly counts: readonly CountLine[];
  readonly openItems: readonly OpenItem[];
  readonly steps: readonly Step[];
}
