import type { Objection } from './objection.js';
import type { LoggedLeg } from './snapshot.js';

/**
 * Where the flight log may hide flights: a flight that leaves from elsewhere than the one before arrived, or
 * page numbers that jump or run back. Advisory: a page may be spoilt, a station not told.
 *
 * Flights in any order; page numbers are compared where both end in digits after the same letters. Total.
 */
export function logGaps(flights: readonly LoggedLeg[]): readonly Objection[] {
  const legs = [...flights].sort((a, b) => a.takeOffAt - b.takeOffAt);
  return legs.flatMap((leg, index) => {
    const before = legs[index - 1];
    return before === undefined ? [] : [...stationGap(before, leg), ...pageGap(before, leg)];
  });
}

function stationGap(before: LoggedLeg, leg: LoggedLeg): readonly Objection[] {
  if (before.to === null || leg.from === null || before.to === leg.from) return [];
  return [gap(leg, { reason: 'stations', arrivedAt: before.to, leftFrom: leg.from, page: leg.page })];
}

function pageGap(before: LoggedLeg, leg: LoggedLeg): readonly Objection[] {
  const [last, next] = [pageNumber(before.page), pageNumber(leg.page)];
  if (last === null || next === null || last.letters !== next.letters) return [];
  const step = next.number - last.number;
  // Several flights may stand on one page.
  if (step === 0n || step === 1n) return [];
  return [gap(leg, { reason: 'pages', pageBefore: before.page, page: leg.page })];
}

function pageNumber(page: string | null): { readonly letters: string; readonly number: bigint } | null {
  const [, letters, digits] = /^(.*?)(\d+)$/.exec(page ?? '') ?? [];
  return letters === undefined || digits === undefined ? null : { letters, number: BigInt(digits) };
}

function gap(leg: LoggedLeg, detail: Objection['detail']): Objection {
  return {
    code: 'LOG_GAP',
    severity: 'advisory',
    positionNumber: null,
    record: { kind: 'flight', id: leg.flightId },
    detail,
  };
}
