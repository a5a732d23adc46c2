import type { FlightGap } from '../flights-data.js';

type Jump = Pick<FlightGap, 'kind' | 'before' | 'after'>;

/** The gap in three words, beside its mark. */
export const gapMark = ({ kind }: Pick<FlightGap, 'kind'>): string =>
  kind === 'pages' ? 'Page missing before' : 'Left from elsewhere';

/** 'Page 0419 follows page 0416' */
export const gapText = ({ kind, before, after }: Jump): string =>
  kind === 'pages'
    ? `Page ${after} follows page ${before}`
    : `Left from ${after}, but the flight before arrived at ${before}`;
