import type { ConsequencesDto } from '../../records/consequences/consequences.dto.js';
import type { AirframeOnRecord, CheckedRows } from './flights-file/check-rows.js';
import type { RowError } from './flights-file/row-error.js';

/** What applying a file adds to one airframe. */
export interface ImportEffect {
  readonly airframeId: string;
  readonly registration: string;
  readonly flights: number;
  readonly minutes: number;
}

/** What is kept of a check, and of what applying did. */
export interface ImportReport extends ConsequencesDto {
  readonly errors: readonly RowError[];
  readonly effect: readonly ImportEffect[];
  readonly root: string | null;
}

export const NO_REPORT: ImportReport = {
  errors: [],
  effect: [],
  newlyOver: [],
  newlyUnknown: [],
  overruns: [],
  root: null,
};

/** What the ready rows add, airframe by airframe, by registration. Total. */
export function effectOf(
  { ready }: CheckedRows,
  records: ReadonlyMap<string, AirframeOnRecord>,
): ImportEffect[] {
  return [...records.values()]
    .map(({ airframeId, registration }) => {
      const rows = ready.filter((row) => row.airframeId === airframeId);
      return {
        airframeId,
        registration,
        flights: rows.length,
        minutes: rows.reduce((sum, { flight }) => sum + flight.landingAt - flight.takeOffAt, 0),
      };
    })
    .filter((effect) => effect.flights > 0)
    .sort((a, b) => (a.registration < b.registration ? -1 : 1));
}

/** A report as its row keeps it. Total. */
export function reportFrom(json: unknown): ImportReport {
  // Written by this feature alone.
  return { ...NO_REPORT, ...(json as ImportReport | null | undefined) };
}
