import { afterAll, beforeAll, describe, expect, it } from '@jest/globals';
import { DAY } from '../../support/scenario/in-service.js';
import { done, problemOf } from '../../support/scenario/problem.js';
import { type Hangar, openHangar } from '../../support/signing/hangar.js';
import { blocking, checkOf, idOf, release, type Steps } from '../../support/signing/release-desk.js';
import { openPackage, sign, stepsOf } from '../../support/signing/work-desk.js';

let hangar: Hangar;
let procedureId: string;
let tool: { readonly id: string; readonly calibrationId: string };

const day = (fromToday: number): string =>
  new Date(Date.now() + fromToday * 86_400_000).toISOString().slice(0, 10);

const count = (key: string, direction: 'out' | 'in') => ({
  ...{ kind: 'count', key, label: `Blanks ${direction}`, what: 'blanks', direction },
});

/** Open a cowl and count blanks out; torque; look for leaks; count blanks in and close. */
const STEPS = [
  { key: 'open', captures: [count('out', 'out')], opens: ['cowl'] },
  {
    key: 'torque',
    captures: [
      {
        ...{ kind: 'torque', key: 'bolts', label: 'Mount bolts', points: ['1', '2'], low: '90', high: '110' },
        ...{ unit: 'N·m', thread: 'dry', runOn: { rule: 'none', low: null, high: null }, binds: 'range' },
      },
    ],
  },
  {
    key: 'leaks',
    captures: [{ kind: 'leak-check', key: 'leaks', label: 'Leak check', minMinutes: 5, power: 'idle' }],
  },
  { key: 'close', captures: [count('in', 'in')], closes: ['cowl'] },
];

beforeAll(async () => {
  hangar = await openHangar();
  const { administrator } = hangar.office;
  procedureId = done(
    await administrator.post<{ readonly id: string }>('/api/procedures', {
      ...{ code: 'TEST-COWL', revision: '1', title: 'Look under the cowl', kind: 'inspection' },
      ...{ document: 'Test manual', documentRevision: '1' },
      content: {
        groups: [{ key: 'all', letter: 'A', title: 'All', lane: 'both', place: 'fan-cowls' }],
        items: [{ key: 'cowl', kind: 'cowl', name: 'Fan cowl', side: 'left' }],
        steps: STEPS.map(({ key, captures, opens = [], closes = [] }, index) => ({
          ...{
            key,
            number: index + 1,
            group: 'all',
            title: `Do ${key}`,
            text: null,
            cautions: [],
            source: null,
          },
          ...{ waitsFor: [], inspection: 'none', captures, opens, closes, moves: null },
        })),
      },
    }),
  ).id;
  const made = done(
    await administrator.post<{ readonly id: string }>('/api/tools', {
      ...{ serialNumber: 'TW-1', description: 'Wrench', kind: 'torque-wrench', unit: 'N·m' },
      ...{ rangeLow: '20', rangeHigh: '200', deviation: '3' },
    }),
  );
  const calibrated = done(
    await administrator.post<{ readonly calibrations: readonly { readonly id: string }[] }>(
      `/api/tools/${made.id}/calibrations`,
      { calibratedOn: day(-30), dueOn: day(30), certificate: 'C-1' },
    ),
  );
  tool = { id: made.id, calibrationId: calibrated.calibrations[0]?.id ?? '' };
}, 120_000);

afterAll(() => hangar?.close(), 30_000);

async function open(): Promise<{ readonly id: string; readonly steps: Steps }> {
  const id = await openPackage(hangar.planner, {
    ...{ kind: 'inspection', airframeId: hangar.fleet.airframe.id, procedureId },
  });
  return { id, steps: await stepsOf(hangar.planner, id) };
}

const enter = async (steps: Steps, key: string, capture: string, typed: object, toolId?: string) =>
  done(
    await hangar.technician.post(`/api/steps/${idOf(steps, key)}/entries`, {
      ...{ capture, typed },
      ...(toolId === undefined ? {} : { toolId }),
    }),
  );

const torque = (steps: Steps, point: string, indication: string) =>
  enter(
    steps,
    'torque',
    'bolts',
    { kind: 'torque', point, indication, unit: 'N·m', method: 'set-value', runOn: null, extension: null },
    tool.id,
  );

const leakCheck = (steps: Steps, minutes: string, power: string, found: 'none' | 'leak' = 'none') =>
  enter(steps, 'leaks', 'leaks', { kind: 'leak-check', minutes, power, found });

const countOf = (steps: Steps, direction: 'out' | 'in', number: string) =>
  enter(steps, direction === 'out' ? 'open' : 'close', direction, { kind: 'count', number });

let minute = 3 * DAY;
async function signStep(steps: Steps, key: string): Promise<void> {
  minute += 1;
  done(await sign(hangar.technician, idOf(steps, key), { at: minute, secret: hangar.password }));
}

async function finish(steps: Steps): Promise<void> {
  await countOf(steps, 'out', '14');
  await torque(steps, '1', '100');
  await torque(steps, '2', '100');
  await leakCheck(steps, '5', 'idle');
  await countOf(steps, 'in', '14');
  for (const key of ['open', 'torque', 'leaks', 'close']) await signStep(steps, key);
}

const held = async (id: string) => blocking(await checkOf(hangar.certifier, id));

describe('the release check of work under a cowl', () => {
  it('holds the last torque out of range; the attempt before it holds nothing up', async () => {
    const { id, steps } = await open();
    await torque(steps, '1', '118.4');
    const check = await checkOf(hangar.certifier, id);
    expect(check.objections.find(({ code }) => code === 'TORQUE_OUT_OF_RANGE')).toMatchObject({
      subject: { kind: 'step', id: idOf(steps, 'torque'), label: 'Step 2, Do torque: Mount bolts, point 1' },
      reason: expect.stringContaining('118.4'),
    });

    await torque(steps, '1', '105.0');
    expect(await held(id)).not.toContain('TORQUE_OUT_OF_RANGE');
    const { lines } = done(
      await hangar.certifier.get<{ lines: readonly { readonly title: string; readonly detail: string }[] }>(
        `/api/airframes/${hangar.fleet.airframe.id}/history`,
      ),
    );
    expect(lines.filter(({ title }) => title === 'Attempt not accepted').map(({ detail }) => detail)).toEqual(
      [
        expect.stringMatching(
          /step 2: Do torque; Mount bolts 1: 118\.4 N·m.*tool TW-1; rejected; .*118\.4 N·m is above/,
        ),
      ],
    );
  });

  it('holds a cowl that is open until the step that closes it is signed', async () => {
    const { id, steps } = await open();
    await countOf(steps, 'out', '14');
    await signStep(steps, 'open');
    const check = await checkOf(hangar.certifier, id);
    expect(check.objections.find(({ code }) => code === 'ITEM_OPEN')).toMatchObject({
      subject: { kind: 'step', id: idOf(steps, 'open'), label: 'Fan cowl, left' },
    });

    await countOf(steps, 'in', '14');
    await signStep(steps, 'close');
    expect(await held(id)).not.toContain('ITEM_OPEN');
  });

  it('holds 14 blanks out and 13 in, though every step is signed', async () => {
    const { id, steps } = await open();
    await finish(steps);
    await countOf(steps, 'in', '13');
    await signStep(steps, 'close');
    expect(await held(id)).toEqual(['COUNTS_DIFFER']);

    await countOf(steps, 'in', '14');
    await signStep(steps, 'close');
    expect(await held(id)).toEqual([]);
  });

  it('holds a look for leaks without duration or power, and a leak', async () => {
    const { id, steps } = await open();
    for (const [minutes, power, found, code] of [
      ['', 'idle', 'none', 'LEAK_CHECK_INCOMPLETE'],
      ['5', '', 'none', 'LEAK_CHECK_INCOMPLETE'],
      ['4', 'idle', 'none', 'LEAK_CHECK_INCOMPLETE'],
      ['5', 'idle', 'leak', 'LEAK_FOUND'],
    ] as const) {
      await leakCheck(steps, minutes, power, found);
      expect(await held(id)).toContain(code);
    }
    await leakCheck(steps, '5', 'idle');
    expect((await held(id)).filter((code) => code.startsWith('LEAK'))).toEqual([]);
  });

  it('holds a tool whose calibration was voided after it was used, until another covers that day', async () => {
    const { administrator } = hangar.office;
    const { id, steps } = await open();
    await finish(steps);
    const seen = await checkOf(hangar.certifier, id);
    expect(blocking(seen)).toEqual([]);

    done(
      await administrator.post(`/api/tool-calibrations/${tool.calibrationId}/void`, {
        reason: 'Another tool',
      }),
    );
    const check = await checkOf(hangar.certifier, id);
    expect(new Set(blocking(check))).toEqual(new Set(['TOOL_NOT_USABLE']));
    expect(check.objections[0]).toMatchObject({ subject: { kind: 'tool', id: tool.id } });
    expect(problemOf(await release(hangar.certifier, id, hangar.password, seen)).code).toBe(
      'RELEASE_BLOCKED',
    );

    done(
      await administrator.post(`/api/tools/${tool.id}/calibrations`, {
        ...{ calibratedOn: day(-10), dueOn: day(90), certificate: 'C-2' },
      }),
    );
    expect(await held(id)).toEqual([]);
    expect((await release(hangar.certifier, id, hangar.password)).status).toBe(201);
  });
});
