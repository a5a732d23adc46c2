/** What a tag says of a component. */
export type TagStatus = 'serviceable' | 'unserviceable' | 'quarantine';

/** What the records hold against fitting a component, its lives apart. */
export interface UnfitComponent {
  readonly why: 'unserviceable' | 'quarantine' | 'in-shop';
  /** The tag's number, or the order of the shop visit that is not returned from. */
  readonly reference: string;
}

/** What is recorded of a component's serviceability at an instant. */
export interface ServiceabilityFacts {
  /** The newest tag that is not voided; null where none is recorded. */
  readonly tag: { readonly status: TagStatus; readonly tagNumber: string } | null;
  /** The order of a shop visit without return; null where it is in no shop. */
  readonly openVisit: string | null;
}

/**
 * What is held against fitting a component: its newest tag, then a shop visit it was not returned from; null when nothing
 * is. A tag counts before the shop: it says more. Total.
 *
 * Source: M.A.504 (components that are unserviceable are segregated), M.A.501 (released before fitting).
 */
export function unfitBecause({ tag, openVisit }: ServiceabilityFacts): UnfitComponent | null {
  if (tag !== null && tag.status !== 'serviceable') return { why: tag.status, reference: tag.tagNumber };
  return openVisit === null ? null : { why: 'in-shop', reference: openVisit };
}

/** Whether a preservation no longer holds on a day: it is good through its last day. Total. */
export function isPreservationOver(goodUntil: string, on: string): boolean {
  return on > goodUntil;
}
