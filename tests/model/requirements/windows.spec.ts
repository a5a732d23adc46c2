import { afterAll, beforeAll, describe, expect, it } from '@jest/globals';
import fc from 'fast-check';
import { runChild } from '../../../apps/launcher/serving/run-child.mjs';
import { logFlights } from '../../support/scenario/acts.js';
import { slotOf } from '../../support/scenario/fleet.js';
import { instantAt, minutesOf } from '../../support/scenario/instants.js';
import { brokenInvariants } from '../../support/scenario/invariants.js';
import { type Office, openOffice } from '../../support/scenario/office.js';
import { done } from '../../support/scenario/problem.js';
import { Register } from '../../support/scenario/register.js';
import { accomplish, recordRequirement, type StatusAnswer } from '../../support/scenario/requirements.js';
import {
  FIRST_DAY,
  type Measure,
  OPENING,
  type PlainFlight,
  type PlainRule,
  type PlainTier,
  plainDue,
} from './plain-duty.js';

/** MODEL_SEED plays a run again. */
const seed = Number(process.env['MODEL_SEED'] ?? Math.floor(Math.random() * 2 ** 31));
/** How many duties are played: REQUIREMENT_MODEL_RUNS, or 25. */
const runs = Number(process.env['REQUIREMENT_MODEL_RUNS'] ?? 25);
const MEASURES = ['minutes', 'cycles', 'days', 'months'] as const;

const some = <T>(value: fc.Arbitrary<T>) => fc.option(value, { nil: undefined });
const granted = fc
  .record({
    minutes: some(fc.integer({ min: 200, max: 6_000 })),
    cycles: some(fc.integer({ min: 2, max: 20 })),
    days: some(fc.integer({ min: 5, max: 120 })),
    months: some(fc.integer({ min: 1, max: 7 })),
  })
  .filter((interval) => MEASURES.some((measure) => interval[measure] !== undefined));
const tiersOf = (most: number, longest: number): fc.Arbitrary<readonly PlainTier[]> =>
  fc
    .tuple(
      fc.integer({ min: 2, max: longest }),
      fc.array(
        fc.record({
          percent: some(fc.integer({ min: 1, max: 40 })),
          atMost: some(fc.integer({ min: 1, max: most })),
        }),
        {
          minLength: 1,
          maxLength: 2,
        },
      ),
    )
    .filter(([, tiers]) => tiers.every((tier) => tier.percent !== undefined || tier.atMost !== undefined))
    .map(([upTo, tiers]) =>
      tiers.map((tier, index) => (index === tiers.length - 1 ? tier : { upTo, ...tier })),
    );
const grants = fc.record({
  minutes: some(tiersOf(900, 4_000)),
  cycles: some(tiersOf(5, 10)),
  days: some(tiersOf(20, 60)),
  months: some(tiersOf(2, 4)),
});
const from = fc.constantFrom('from-done' as const, 'from-due' as const);
const rules = fc.record({
  threshold: fc.option(granted),
  repeat: granted,
  early: grants,
  late: grants,
  rebase: fc.record({ early: from, within: from, beyond: from }),
  monthRule: fc.constantFrom('same-day' as const, 'month-end' as const),
  combine: fc.constantFrom('first' as const, 'last' as const),
}) as fc.Arbitrary<PlainRule>;

interface Play {
  readonly rule: PlainRule;
  readonly flights: readonly PlainFlight[];
  /** In the order in which they are entered; those that are voided again are negative. */
  readonly done: readonly number[];
  /** How many flights are logged before anything is accomplished; the others come late. */
  readonly inTime: number;
}

const legs = fc.array(
  fc.record({
    ground: fc.integer({ min: 60, max: 20_000 }),
    minutes: fc.integer({ min: 10, max: 800 }),
    touchAndGoes: fc.nat({ max: 2 }),
  }),
  { minLength: 12, maxLength: 24 },
);

const plays: fc.Arbitrary<Play> = fc
  .tuple(
    rules,
    legs,
    fc.uniqueArray(fc.integer({ min: 1, max: 300_000 }), { maxLength: 8 }),
    fc.nat({ max: 12 }),
  )
  .map(([rule, flown, minutes, inTime]) => {
    let now = 0;
    const flights = flown.map(({ ground, minutes: aloft, touchAndGoes }) => {
      const takeOff = now + ground;
      now = takeOff + aloft;
      return { takeOff, landing: now, touchAndGoes };
    });
    // At the minute of a landing, too, which is in what was flown by then.
    const done = minutes.map((minute, index) => {
      const landing = flights[index]?.landing;
      return index % 3 === 1 && landing !== undefined && !minutes.includes(landing) ? landing : minute;
    });
    return { rule, flights, done: done.map((minute, index) => (index % 4 === 3 ? -minute : minute)), inTime };
  });

let office: Office;
let register: Register;
let typeId: string;
let modelId: string;
let played = 0;

beforeAll(async () => {
  console.log(`MODEL_SEED=${seed} REQUIREMENT_MODEL_RUNS=${runs}`);
  office = await openOffice();
  register = new Register(office.administrator);
  typeId = await register.airframeType('V', 2);
  const rule = { perFlight: 2, perTouchAndGo: 1, denominator: 2, airframeTypeId: typeId };
  modelId = await register.engineModel('W', { ratings: ['A'], rules: [rule] });
  await register.location('Store');
}, 60_000);

afterAll(() => office?.close(), 30_000);

/** Plays a duty against the running system. Answers what it says is due, beside what the plain lists say. */
async function differences({ rule, flights, done: met, inTime }: Play): Promise<string[]> {
  played += 1;
  const partNumber = `W-${played}`;
  const airframe = await register.airframe(`V-${played}`, typeId);
  await register.opening({ airframeId: airframe.id }, [{ ratingCode: null, minutes: 0, cycles: 0 }]);
  const engine = await register.component({
    kind: 'engine',
    serialNumber: `E-${played}`,
    partNumber,
    engineModelId: modelId,
  });
  await register.opening({ componentId: engine.id }, [{ ratingCode: 'A', ...OPENING }]);
  await register.rating(engine.id, 'A');
  await register.place(engine.id, { slotId: slotOf(airframe, 1, 'engine') });
  const { threshold, repeat, early, late, rebase, monthRule, combine } = rule;
  const { id: requirementId } = done(
    await recordRequirement(office.administrator, `D-${played}`, {
      ...{ anchor: 'part', partNumber, threshold, repeat, monthRule, combine, rebase },
      ...{ window: { early, late }, countedFrom: 'date', fromOn: '2025-01-01' },
    }),
  );
  const log = async (some: readonly PlainFlight[]) => {
    for (const flight of some) {
      const page = `p${flight.takeOff}`;
      done(await logFlights(office.administrator, airframe.id, [{ ...flight, page, starts: 1 }]));
    }
  };
  await log(flights.slice(0, inTime));
  for (const minute of met) {
    const { id } = done(
      await accomplish(office.administrator, {
        requirementId,
        componentId: engine.id,
        at: instantAt(Math.abs(minute)),
      }),
    );
    if (minute < 0)
      done(
        await office.administrator.post(`/api/accomplishments/${id}/void`, { reason: 'Of another engine' }),
      );
  }
  await log([...flights.slice(inTime)].reverse());
  const statuses = done(
    await office.administrator.get<readonly StatusAnswer[]>(`/api/components/${engine.id}/requirements`),
  );
  const said = statuses.find((status) => status.code === `D-${played}`);
  return said === undefined
    ? ['the duty is not held against the engine']
    : told(said, rule, { flights, done: met.filter((minute) => minute > 0), now: minutesOf(new Date()) });
}

function told(said: StatusAnswer, rule: PlainRule, facts: Parameters<typeof plainDue>[2]): string[] {
  const found: string[] = [];
  const compare = (what: string, system: unknown, lists: unknown) => {
    if (system !== lists)
      found.push(`${what}: the system says ${String(system)}, the lists ${String(lists)}`);
  };
  const plain = MEASURES.flatMap((measure) => {
    const due = plainDue(measure, rule, facts);
    return due === null ? [] : [{ measure, ...due }];
  });
  compare(
    'measures',
    said.dues.map(({ dimension }) => dimension).join(),
    plain.map(({ measure }) => measure).join(),
  );
  for (const { measure, due, latest, left } of plain) {
    const row = said.dues.find(({ dimension }) => dimension === measure);
    compare(`${measure} due`, written(measure, row?.dueAt ?? null, row?.dueOn ?? null), `${due}`);
    compare(`${measure} latest`, written(measure, row?.latestAt ?? null, row?.latestOn ?? null), `${latest}`);
    compare(`${measure} left`, row?.remaining, left);
  }
  const isOver = plain[rule.combine === 'first' ? 'some' : 'every'](({ isOver: over }) => over);
  compare('over', said.status === 'over', isOver);
  return found;
}

function written(measure: Measure, at: number | null, on: string | null): string {
  if (measure === 'minutes' || measure === 'cycles') return `${at}`;
  return on === null ? 'null' : `${FIRST_DAY + Math.round(minutesOf(`${on}T00:00Z`) / 1440)}`;
}

describe('requirements with windows, tiers and rebase rules', () => {
  it(
    `fall due where plain lists say, over ${runs} duties with late flights, late entries and voids`,
    async () => {
      await fc.assert(
        fc.asyncProperty(plays, async (play) => {
          expect(await differences(play)).toEqual([]);
        }),
        { seed, numRuns: runs, endOnFailure: true },
      );
      expect(await brokenInvariants(office.database.adminUrl)).toEqual({});
      await runChild('apps/api/dist/rebuild.js', { env: { DATABASE_URL: office.database.appUrl } });
    },
    10 * 60_000,
  );
});
