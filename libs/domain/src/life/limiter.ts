import type { Life } from './limited-life.js';

/** A part of an engine with its life. */
export interface PartLife {
  readonly componentId: string;
  readonly life: Life;
}

/** The tightest part of an engine, by each measure; null when no part is limited by it. */
export interface Limiters {
  /** The limiter: a part not authorised or not substantiated before any number, then the fewest cycles left. */
  readonly byCycles: PartLife | null;
  readonly byMinutes: PartLife | null;
}
