import type { Objection } from './objection.js';
import type { LoggedLeg } from './snapshot.js';

/** In what the log jumps: its page numbers, or its stations. */
export type GapKind = 'pages' | 'stations';

/** Where the log may hide flights: between a flight and the one before it. */
export interface LogGap {
  /** The flight after the gap, and its page. */
  readonly flightId: string;
  readonly page: string | null;
  readonly kind: GapKind;
  /** The page, or the station of arrival, of the flight before. */
  readonly before: string;
  /** The page, or the station of departure, of the flight itself. */
  readonly after: string;
}

/** Why a gap hides no flight. It stands for the gap that was found, not for another that came in its place. */
export interface GapNote extends Pick<LogGap, 'kind' | 'before' | 'after'> {
  readonly note: string;
  readonly voided: boolean;
}

/**
 * Where the flight log may hide flights: a flight that leaves from elsewhere than the one before arrived, or
 * page numbers that jump or run back.
 *
 * Flights in any order; page numbers are compared where both end in digits after the same letters. Total.
 */
export function gapsInLog(flights: readonly Omit<LoggedLeg, 'notes'>[]): readonly LogGap[] {
  const legs = [...flights].sort((a, b) => a.takeOffAt - b.takeOffAt);
  return legs.flatMap((leg, index) => {
    const last = legs[index - 1];
    return last === undefined ? [] : [...stationGap(last, leg), ...pageGap(last, leg)];
  });
}

/** The note that explains a gap; null where none does. Total. */
export function noteOf<Note extends Omit<GapNote, 'note'>>(gap: LogGap, notes: readonly Note[]): Note | null {
  const explains = ({ voided, kind, before, after }: Note) =>
    !voided && kind === gap.kind && before === gap.before && after === gap.after;
  return notes.find(explains) ?? null;
}

/**
 * What the log holds against a release: a gap blocks, since it may hide cycles of every engine and part that flew; one
 * that a note explains is told with its note, for whoever signs takes the note as true. Total.
 */
export function logGaps(flights: readonly LoggedLeg[]): readonly Objection[] {
  const notes = new Map(flights.map((leg) => [leg.flightId, leg.notes]));
  return gapsInLog(flights).map((gap) => objection(gap, noteOf(gap, notes.get(gap.flightId) ?? [])));
}

type Leg = Omit<LoggedLeg, 'notes'>;

function stationGap(last: Leg, { flightId, page, from }: Leg): readonly LogGap[] {
  if (last.to === null || from === null || last.to === from) return [];
  return [{ flightId, page, kind: 'stations', before: last.to, after: from }];
}

function pageGap(last: Leg, { flightId, page }: Leg): readonly LogGap[] {
  if (last.page === null || page === null) return [];
  const [known, next] = [pageNumber(last.page), pageNumber(page)];
  if (known === null || next === null || known.letters !== next.letters) return [];
  const step = next.number - known.number;
  // Several flights may stand on one page.
  if (step === 0n || step === 1n) return [];
  return [{ flightId, page, kind: 'pages', before: last.page, after: page }];
}

function pageNumber(page: string): { readonly letters: string; readonly number: bigint } | null {
  const [, letters, digits] = /^(.*?)(\d+)$/.exec(page) ?? [];
  return letters === undefined || digits === undefined ? null : { letters, number: BigInt(digits) };
}

function objection({ flightId, page, kind, before, after }: LogGap, note: GapNote | null): Objection {
  const found =
    kind === 'stations'
      ? { reason: kind, arrivedAt: before, leftFrom: after, page }
      : { reason: kind, pageBefore: before, page };
  return {
    code: note === null ? 'LOG_GAP' : 'LOG_GAP_EXPLAINED',
    severity: note === null ? 'blocking' : 'advisory',
    positionNumber: null,
    record: { kind: 'flight', id: flightId },
    detail: note === null ? found : { ...found, note: note.note },
  };
}
