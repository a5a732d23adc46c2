import { afterAll, beforeAll, describe, expect, it } from '@jest/globals';
import fc from 'fast-check';
import { runChild } from '../../../apps/launcher/serving/run-child.mjs';
import { brokenInvariants } from '../../support/scenario/invariants.js';
import { type Office, openOffice } from '../../support/scenario/office.js';
import { done } from '../../support/scenario/problem.js';
import { Register } from '../../support/scenario/register.js';
import type { Choice } from './choose.js';
import { play, type Tally } from './play.js';
import { type Foundation, makeFoundation, makeWorld } from './system-world.js';

/** How many histories are played: SYSTEM_MODEL_RUNS, or 8. */
const runs = Number(process.env['SYSTEM_MODEL_RUNS'] ?? 8);
/** MODEL_SEED plays a run again. */
const seed = Number(process.env['MODEL_SEED'] ?? Math.floor(Math.random() * 2 ** 31));
/** MODEL_SHRINK=1 looks for a shorter history that fails too, which takes many minutes. */
const shrinks = process.env['MODEL_SHRINK'] === '1';
/** SYSTEM_MODEL_ACTS: so many acts in each; else between 60 and 150. */
const exactly = process.env['SYSTEM_MODEL_ACTS'];
const ACTS =
  exactly === undefined
    ? { minLength: 60, maxLength: 150 }
    : { minLength: Number(exactly), maxLength: Number(exactly) };

const number = fc.nat({ max: 9999 });
const choice: fc.Arbitrary<Choice> = fc.record({
  what: fc.nat({ max: 99 }),
  a: number,
  b: number,
  c: number,
  d: number,
});
const histories = fc.array(choice, { ...ACTS, size: 'max' });

let office: Office;
let foundation: Foundation;

beforeAll(async () => {
  office = await openOffice();
  foundation = await makeFoundation(new Register(office.administrator));
}, 60_000);

afterAll(() => office?.close(), 30_000);

describe('the running system, against plain lists summed from the beginning', () => {
  it(
    `takes what can have been, refuses what can not, and agrees in every figure over ${runs} histories`,
    async () => {
      console.log(`MODEL_SEED=${seed} SYSTEM_MODEL_RUNS=${runs}`);
      const tally: Tally = { recorded: new Map(), refused: 0 };
      const begun = performance.now();
      let world = 0;
      const property = fc.asyncProperty(histories, async (choices) => {
        world += 1;
        await play(await makeWorld(foundation, `W${world}`), choices, tally);
        expect(await brokenInvariants(office.database.adminUrl)).toEqual({});
        const balance = done(await office.administrator.get<{ balanced: boolean }>('/api/trial-balance'));
        expect(balance.balanced).toBe(true);
      });
      await fc.assert(property, { seed, numRuns: runs, endOnFailure: !shrinks });
      await runChild('apps/api/dist/rebuild.js', { env: { DATABASE_URL: office.database.appUrl } });
      const counts = [...tally.recorded].map(([kind, count]) => `${kind} ${count}`).join(', ');
      console.log(`${counts}; refused ${tally.refused}; ${Math.round(performance.now() - begun)} ms`);
      // Each kind of act does happen, and some are refused: else the comparison would prove nothing.
      expect([...tally.recorded.keys()].sort()).toEqual(
        ['fly', 'void', 'correct', 'change', 'place', 'rate', 'void-stay'].sort(),
      );
      expect(Math.min(...tally.recorded.values(), tally.refused)).toBeGreaterThan(0);
    },
    25 * 60_000,
  );
});
