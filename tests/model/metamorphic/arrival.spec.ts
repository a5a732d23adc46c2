import { afterAll, beforeAll, describe, expect, it } from '@jest/globals';
import fc from 'fast-check';
import { type Office, openOffice } from '../../support/scenario/office.js';
import { Register } from '../../support/scenario/register.js';
import type { Act, ToldFlight } from '../system/act.js';
import { after } from '../system/apply-act.js';
import { differences } from '../system/compare.js';
import { firstRecord, type PlainRecord } from '../system/plain-record.js';
import { type Foundation, makeFoundation, makeWorld } from '../system/system-world.js';
import { outcomeOf } from './outcome.js';
import { type Story, stories } from './story.js';
import { inOrder, tellAll } from './tell-story.js';

/** MODEL_SEED plays a run again. */
const seed = Number(process.env['MODEL_SEED'] ?? Math.floor(Math.random() * 2 ** 31));
const FLIGHTS = 200;
const ORDERS = 3;

let office: Office;
let foundation: Foundation;

beforeAll(async () => {
  console.log(`MODEL_SEED=${seed}`);
  office = await openOffice();
  foundation = await makeFoundation(new Register(office.administrator));
}, 60_000);

afterAll(() => office?.close(), 30_000);

/** Acts that must keep their order among themselves; what stands in different lines may come in any. */
function linesOf({ flights, moves }: Story): (readonly Act[])[] {
  return [
    moves,
    ...flights.map((flight, index): readonly Act[] => {
      if (index % 6 === 1)
        return [
          { kind: 'fly', flight: wrongly(flight) },
          { kind: 'correct', page: flight.page, flight },
        ];
      if (index % 11 === 2)
        return [{ kind: 'fly', flight }, { kind: 'fly', flight: neverFlown(flight) }, voided(flight)];
      return [{ kind: 'fly', flight }];
    }),
  ];
}

// Within the span of the right one, so that it fits wherever the right one does.
const wrongly = (flight: ToldFlight): ToldFlight => ({
  ...flight,
  takeOff: flight.takeOff + 3,
  landing: flight.landing - 4,
  touchAndGoes: 5,
  exceptions: [],
});
const neverFlown = (flight: ToldFlight): ToldFlight => ({
  ...flight,
  page: `${flight.page}x`,
  takeOff: flight.takeOff - 20,
  landing: flight.takeOff - 5,
});
const voided = ({ airframe, page }: ToldFlight): Act => ({ kind: 'void', airframe, page: `${page}x` });

/** One of the orders in which the lines may arrive. */
function shuffled(lines: readonly (readonly Act[])[], nth: number): Act[] {
  const turns = lines.flatMap((line, index) => line.map(() => index));
  const [order] = fc.sample(fc.shuffledSubarray(turns, { minLength: turns.length }), {
    seed: seed + nth,
    numRuns: 1,
  }) as [number[]];
  const next = lines.map((line) => line.values());
  return order.map((index) => next[index]?.next().value as Act);
}

describe('flights that come late, in any order, with corrections and voids across engine changes', () => {
  it(
    `lead to what plain lists say in ${ORDERS} orders of ${FLIGHTS} flights, and to the same text as those in order`,
    async () => {
      const [story] = fc.sample(stories(FLIGHTS), { seed, numRuns: 1 }) as [Story];
      const record = inOrder(story).reduce<PlainRecord>((known, act) => {
        const next = after(known, act);
        if (next === null) throw new Error(`the lists refuse ${JSON.stringify(act)}`);
        return next;
      }, firstRecord());
      const middle = story.flights[FLIGHTS / 2]?.landing ?? 0;
      expect(story.moves.length).toBeGreaterThan(5);

      const inTurn = await makeWorld(foundation, 'T0');
      await tellAll(inTurn, inOrder(story));
      expect(await differences(inTurn, record, middle)).toEqual([]);
      const expected = await outcomeOf(inTurn);

      for (let nth = 1; nth <= ORDERS; nth += 1) {
        const world = await makeWorld(foundation, `T${nth}`);
        await tellAll(world, shuffled(linesOf(story), nth));
        expect(await differences(world, record, middle)).toEqual([]);
        expect(await outcomeOf(world)).toBe(expected);
      }
    },
    10 * 60_000,
  );
});
