import type { Objection } from '../release/objection.js';
import type { UnfitComponent } from '../serviceability/unfit.js';
import type { Boundary, LoggedFlight, Precision } from '../stays/boundary.js';
import type { Instant } from '../units/minutes.js';
import type { Stay } from '../usage/flatten-exposures.js';

/** A change at one slot: something comes off, something goes on, or both, as one act. */
export interface ChangeRequest {
  readonly slotId: string;
  readonly off: {
    /** The serial number on the order: what must be there, and come off. */
    readonly expectedSerial: string;
    readonly boundary: Boundary;
    readonly toLocationId: string;
  } | null;
  readonly on: { readonly componentId: string; readonly boundary: Boundary } | null;
}

/** A component as a change knows it. */
export interface ChangingComponent {
  readonly id: string;
  readonly serial: string;
  readonly kind: string;
  readonly modelId: string | null;
  readonly serviceable: boolean | null;
  /** Why its tag, or a shop it was not returned from, forbids fitting it; left out where nothing does. */
  readonly unfit?: UnfitComponent | null;
  /** The last day its preservation holds, 'YYYY-MM-DD'; left out where none is recorded. */
  readonly preservedUntil?: string | null;
  readonly opening: { readonly at: Instant; readonly source: string } | null;
  readonly manufacturedAt: Instant | null;
  readonly scrappedAt: Instant | null;
  /** All its stays that are not voided. */
  readonly stays: readonly Stay[];
}

/** What is recorded around a change. */
export interface ChangeFacts {
  readonly slot: {
    readonly id: string;
    /** The kind of component it takes: an engine, a pod, an auxiliary power unit. */
    readonly kind: string;
    /** Null for a place inside a component. */
    readonly positionNumber: number | null;
    /** Models authorised there; null when no list is recorded. */
    readonly authorisedModelIds: readonly string[] | null;
    /** All stays in it that are not voided. */
    readonly stays: readonly Stay[];
  };
  /** The components of those stays, and the one to go on. */
  readonly components: ReadonlyMap<string, ChangingComponent>;
  /** The airframe's flights around both boundaries. */
  readonly flights: readonly LoggedFlight[];
  readonly offsetMinutes: number;
  /** Objections against lives of what goes on (at its limit, untraced, …), found by the caller's lives. */
  readonly lifeObjections: readonly Objection[];
}

/** A stay to open by a change; `to` is set when the same act ends it again. */
export interface OpenedStay {
  readonly componentId: string;
  readonly slotId: string | null;
  readonly locationId: string | null;
  readonly from: Instant;
  readonly to: Instant | null;
  readonly precision: Precision;
}

/** A stay to end by a change. */
export interface EndedStay {
  readonly stayId: string;
  readonly at: Instant;
  readonly precision: Precision;
}

/** What a change does to the record. */
export interface ChangePlan {
  readonly ends: readonly EndedStay[];
  readonly opens: readonly OpenedStay[];
  /** What happened and breaks a rule: recorded with the change, never a reason to turn it away. */
  readonly objections: readonly Objection[];
}
