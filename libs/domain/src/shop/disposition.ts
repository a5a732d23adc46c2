/** How a removed life-limited part is controlled. */
export type DispositionMethod =
  | 'record'
  | 'tag'
  | 'temporary-mark'
  | 'permanent-mark'
  | 'segregated'
  | 'mutilated'
  | 'other';

/** A life-limited part that came off a serial-numbered product, and where it went next. */
export interface RemovedLimitedPart {
  /** The engine, or other serial-numbered product, it came off. */
  readonly removedFromId: string;
  /** The one it is fitted to again; null while it is fitted to none. */
  readonly refittedToId: string | null;
  /** Whether it ran between; null where that is not known. */
  readonly timeAccrued: boolean | null;
}

/**
 * Whether a removed life-limited part must be controlled by a record, a tag, a mark, segregation or the like.
 *
 * None is needed for a part removed and fitted again to the same serial-numbered product with its life status unchanged
 * and no time accrued; what is not known is not taken for none. Total.
 *
 * Source: 14 CFR 43.10(c).
 */
export function needsDisposition({ removedFromId, refittedToId, timeAccrued }: RemovedLimitedPart): boolean {
  return refittedToId !== removedFromId || timeAccrued !== false;
}
