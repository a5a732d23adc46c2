import { afterAll, beforeAll, describe, expect, it } from '@jest/globals';
import fc from 'fast-check';
import { formatHours, minutes, parseHours } from '../../../libs/domain/src/units/minutes.js';
import { instantAt } from '../../support/scenario/instants.js';
import { type Office, openOffice } from '../../support/scenario/office.js';
import { Register } from '../../support/scenario/register.js';
import type { Act, ToldFlight } from '../system/act.js';
import { type Foundation, makeFoundation, makeWorld, type SystemWorld } from '../system/system-world.js';
import { countersAt, outcomeOf, type Without } from './outcome.js';
import { type Story, shifted, stories } from './story.js';
import { importFile, inOrder, logInBatches, tellAll } from './tell-story.js';

/** MODEL_SEED plays a run again. */
const seed = Number(process.env['MODEL_SEED'] ?? Math.floor(Math.random() * 2 ** 31));
const FLIGHTS = 40;

let office: Office;
let foundation: Foundation;
let worlds = 0;

beforeAll(async () => {
  console.log(`MODEL_SEED=${seed}`);
  office = await openOffice();
  foundation = await makeFoundation(new Register(office.administrator));
}, 60_000);

afterAll(() => office?.close(), 30_000);

const newWorld = () => {
  worlds += 1;
  return makeWorld(foundation, `R${worlds}`);
};
const aStory = (nth: number): Story =>
  fc.sample(stories(FLIGHTS), { seed: seed + nth, numRuns: 1 })[0] as Story;
const plain = ({ flights }: Story): Story => ({
  flights: flights.map((flight) => ({ ...flight, exceptions: [] })),
  moves: [],
});

/** What two ways of telling lead to, each in a world of its own. */
async function bothWays(
  one: (world: SystemWorld) => Promise<void>,
  other: (world: SystemWorld) => Promise<void>,
  without: Without = {},
): Promise<readonly [string, string]> {
  const outcomes: string[] = [];
  for (const tell of [one, other]) {
    const world = await newWorld();
    await tell(world);
    outcomes.push(await outcomeOf(world, without));
  }
  return outcomes as [string, string];
}

const inTurn = (story: Story) => (world: SystemWorld) => tellAll(world, inOrder(story));

describe('totals and due lists are the same, byte for byte', () => {
  it('whatever ids and serial numbers things have', async () => {
    const story = aStory(1);
    const [one, other] = await bothWays(inTurn(story), inTurn(story));
    expect(other).toBe(one);
    // A comparison of nothing would hold too: the story has flown.
    const untouched = await outcomeOf(await newWorld());
    expect(one).not.toBe(untouched);
  }, 120_000);

  it('whether flights come one by one or in batches, before or after what was changed', async () => {
    const story = aStory(2);
    const [one, other] = await bothWays(inTurn(story), async (world) => {
      await tellAll(world, story.moves);
      await logInBatches(world, story.flights, 7);
    });
    expect(other).toBe(one);
  }, 120_000);

  it('when all of it happened some weeks later', async () => {
    const story = aStory(3);
    const [one, other] = await bothWays(inTurn(story), inTurn(shifted(story, 45 * 1440)), { when: true });
    expect(other).toBe(one);
  }, 120_000);

  it('when an engine was off for a minute in which nothing flew, but for what is since its installation', async () => {
    const story = aStory(4);
    const last = Math.max(...story.flights.map((flight) => flight.landing));
    const off = (slot: string, from: string | null, to: string | null, at: number): Act => {
      const boundary = { kind: 'instant', at } as const;
      return { kind: 'change', slot, off: from, on: to, boundary, rating: null };
    };
    const early = { ...story, moves: [] };
    const gap = story.flights[9]?.landing ?? last;
    const offAndOn = [off('A2/engine', 'E1', null, gap), off('A2/engine', null, 'E1', gap + 1)];
    const [one, other] = await bothWays(
      inTurn(early),
      async (world) => {
        await tellAll(world, inOrder(early));
        await tellAll(world, offAndOn);
      },
      { sinceInstalled: true },
    );
    expect(other).toBe(one);
  }, 120_000);

  it('when a flight was corrected and corrected back', async () => {
    const story = aStory(5);
    const wrongly = story.flights.filter((_, index) => index % 5 === 0);
    const shorter = (flight: ToldFlight) => ({ ...flight, landing: flight.landing - 7, touchAndGoes: 9 });
    const [one, other] = await bothWays(inTurn(story), async (world) => {
      await tellAll(world, inOrder(story));
      await tellAll(
        world,
        wrongly.map((flight) => ({ kind: 'correct', page: flight.page, flight: shorter(flight) })),
      );
      await tellAll(
        world,
        wrongly.map((flight) => ({ kind: 'correct', page: flight.page, flight })),
      );
    });
    expect(other).toBe(one);
  }, 120_000);

  it('whether a file brought the flights or the log', async () => {
    const story = plain(aStory(6));
    const [one, other] = await bothWays(inTurn(story), (world) => importFile(world, story.flights));
    expect(other).toBe(one);
  }, 120_000);

  it('whether two airframes are in one file or in a file each', async () => {
    const story = plain(aStory(7));
    const of = (name: string) => story.flights.filter(({ airframe }) => airframe === name);
    const [one, other] = await bothWays(
      (world) => importFile(world, [...story.flights].reverse()),
      async (world) => {
        await importFile(world, of('B'));
        await importFile(world, of('A'));
      },
    );
    expect(other).toBe(one);
  }, 120_000);

  it('now and as of now', async () => {
    const world = await newWorld();
    await tellAll(world, inOrder(aStory(8)));
    expect(await countersAt(world, new Date().toISOString().slice(0, 16).concat('Z'))).toBe(
      await countersAt(world, null),
    );
    expect(await countersAt(world, instantAt(0))).not.toBe(await countersAt(world, null));
  }, 120_000);
});

describe('hours and minutes', () => {
  it('are read as they were written', () => {
    fc.assert(
      fc.property(fc.nat({ max: 599_999_999 }), (count) => {
        expect(parseHours(formatHours(count))).toEqual({ ok: true, value: minutes(count) });
      }),
      { seed },
    );
  });
});
