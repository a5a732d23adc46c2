import fc from 'fast-check';
import type { Act, ToldFlight } from '../system/act.js';

/** What happened to two airframes, in the order in which it happened. */
export interface Story {
  readonly flights: readonly ToldFlight[];
  /** Each depends on those before it alone, never on a flight. */
  readonly moves: readonly Act[];
}

/** What one flight of a story is made of. */
export interface Leg {
  readonly airframe: boolean;
  readonly minutes: number;
  readonly ground: number;
  readonly touchAndGoes: number;
  readonly starts: number;
  readonly abortedTakeOffs: number;
  readonly exception: number;
  readonly moves: boolean;
}

const leg: fc.Arbitrary<Leg> = fc.record({
  airframe: fc.boolean(),
  minutes: fc.integer({ min: 20, max: 900 }),
  ground: fc.integer({ min: 30, max: 600 }),
  touchAndGoes: fc.nat({ max: 3 }),
  starts: fc.nat({ max: 2 }),
  abortedTakeOffs: fc.nat({ max: 1 }),
  exception: fc.nat({ max: 9 }),
  moves: fc.boolean(),
});

/** Stories of exactly so many flights, without shrinking: each is played over HTTP. */
export const stories = (flights: number): fc.Arbitrary<Story> =>
  fc.noShrink(fc.array(leg, { minLength: flights, maxLength: flights, size: 'max' }).map(storyOf));

/** Engines, a module and a rating go back and forth; every second of these undoes the one before. */
const MOVES: readonly ((at: number) => readonly Act[])[] = [
  (at) => [change('A1/engine', 'E0', 'E3', at, 'Y low')],
  (at) => [change('A1/engine', 'E3', 'E0', at, 'X high')],
  (at) => [place('M1', null, at), place('M4', 'E1/front', at)],
  (at) => [place('M4', null, at), place('M1', 'E1/front', at)],
  (at) => [change('A2/engine', 'E1', null, at, null)],
  (at) => [change('A2/engine', null, 'E1', at, null)],
  (at) => [{ kind: 'rate', engine: 'E2', rating: 'X high', at }],
  (at) => [{ kind: 'rate', engine: 'E2', rating: 'X low', at }],
  (at) => [change('B1/pod', 'N1', 'N2', at, null)],
  (at) => [change('B1/pod', 'N2', 'N1', at, null)],
];

function storyOf(legs: readonly Leg[]): Story {
  const flights: ToldFlight[] = [];
  const moves: Act[] = [];
  let now = 60;
  for (const [index, each] of legs.entries()) {
    const takeOff = now + each.ground;
    const landing = takeOff + each.minutes;
    flights.push(flightOf(each, `s${index}`, takeOff, landing));
    now = landing;
    // At the very minute of a landing, which the one that leaves keeps.
    if (each.moves && index % 4 === 0) moves.push(...nextOf(moves, now));
  }
  return { flights, moves };
}

/** The next of the moves in their turn, so that each finds what it needs. */
function nextOf(moves: readonly Act[], at: number): readonly Act[] {
  let counted = 0;
  for (let turn = 0; ; turn += 1) {
    const acts = MOVES[turn % MOVES.length]?.(at) ?? [];
    if (counted === moves.length) return acts;
    counted += acts.length;
  }
}

function flightOf(each: Leg, page: string, takeOff: number, landing: number): ToldFlight {
  const { touchAndGoes, starts, abortedTakeOffs, exception } = each;
  const exceptions =
    exception < 2 ? [{ position: 1 + exception, shutDownMinutes: exception === 0 ? null : 10 }] : [];
  const airframe = each.airframe ? 'A' : 'B';
  return { airframe, page, takeOff, landing, touchAndGoes, starts, abortedTakeOffs, exceptions };
}

function change(slot: string, off: string | null, on: string | null, at: number, rating: string | null): Act {
  return { kind: 'change', slot, off, on, boundary: { kind: 'instant', at }, rating };
}

function place(component: string, slot: string | null, at: number): Act {
  return { kind: 'place', component, slot, boundary: { kind: 'instant', at }, until: null };
}

/** The same story so many minutes later. */
export function shifted({ flights, moves }: Story, by: number): Story {
  return {
    flights: flights.map((flight) => ({
      ...flight,
      takeOff: flight.takeOff + by,
      landing: flight.landing + by,
    })),
    moves: moves.map((act): Act => {
      if (act.kind === 'rate') return { ...act, at: act.at + by };
      if ((act.kind !== 'change' && act.kind !== 'place') || act.boundary.kind !== 'instant') return act;
      return { ...act, boundary: { kind: 'instant', at: act.boundary.at + by } };
    }),
  };
}
