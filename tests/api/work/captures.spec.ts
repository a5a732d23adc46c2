import { afterAll, beforeAll, beforeEach, describe, expect, it } from '@jest/globals';
import { withClient } from '../../support/database.js';
import { faultsOfRefusal } from '../../support/scenario/impossible.js';
import { done, problemOf } from '../../support/scenario/problem.js';
import { engineChange, openShop, type Shop } from '../../support/work/shop.js';
import {
  capture,
  captureAll,
  type ShownPackage,
  type ShownStep,
  stepOf,
  torque,
  workOf,
} from '../../support/work/work-desk.js';

let shop: Shop;
let change: ShownPackage;

beforeAll(async () => {
  shop = await openShop();
}, 120_000);

afterAll(() => shop?.close(), 30_000);

beforeEach(async () => {
  change = await engineChange(shop);
});

const step = async (key: string): Promise<ShownStep> => stepOf(await workOf(shop.technician, change.id), key);

const enter = async (key: string, of: string, typed: object, toolId?: string) =>
  capture(shop.technician, (await step(key)).id, {
    capture: of,
    typed,
    ...(toolId === undefined ? {} : { toolId }),
  });

const bolt = async (point: string, indication: string) =>
  done(await enter('install', 'mount-bolts', torque(point, indication), shop.toolId));

const reasons = (shown: ShownStep) =>
  shown.entries.at(-1)?.judgement.reasons.map(({ code }) => code) ?? ['no entry'];

describe('a torque', () => {
  it.each([
    ['118.4', 'rejected', ['ABOVE_RANGE']],
    ['112,5', 'accepted', []],
    ['1e2', 'rejected', ['NOT_A_NUMBER']],
    ['105.0', 'accepted', []],
    ['115.0', 'accepted', []],
    ['115.01', 'rejected', ['ABOVE_RANGE']],
    ['104.99', 'rejected', ['BELOW_RANGE']],
    [' 110 ', 'accepted', []],
  ])('typed as "%s" is kept so, and %s', async (typed, verdict, codes) => {
    const shown = await bolt('1', typed);
    const [entry] = shown.entries;
    expect(entry?.typed).toEqual(torque('1', typed));
    expect(entry?.judgement.verdict).toBe(verdict);
    expect(reasons(shown)).toEqual(codes);
    const kept = await withClient(shop.office.database.adminUrl, (client) =>
      client.query<{ typed: string }>('SELECT typed FROM step_entry WHERE id = $1', [entry?.id]),
    );
    expect(JSON.parse(kept.rows[0]?.typed ?? 'null')).toEqual(torque('1', typed));
  });

  it('is tried again and again, and every attempt stays; the last one counts', async () => {
    await bolt('1', '118.4');
    await bolt('1', '110.0');
    const shown = await bolt('1', '116');
    expect(shown.entries.map(({ typed, judgement }) => [typed, judgement.verdict])).toEqual([
      [torque('1', '118.4'), 'rejected'],
      [torque('1', '110.0'), 'accepted'],
      [torque('1', '116'), 'rejected'],
    ]);
    expect(shown.standing).toBe('rejected');
    expect(shown.missing.filter(({ code }) => code === 'CAPTURE_REJECTED').map(({ point }) => point)).toEqual(
      ['1'],
    );
  });

  it('out of the order of its points is told so, and kept', async () => {
    await bolt('1', '110');
    expect(reasons(await bolt('2', '110'))).toEqual(['OUT_OF_ORDER']);
    expect(reasons(await bolt('3', '110'))).toEqual([]);
  });

  it('without a tool is told so, and kept', async () => {
    expect(reasons(done(await enter('install', 'mount-bolts', torque('1', '110'))))).toContain(
      'TOOL_MISSING',
    );
  });

  it('by a tool past its calibration is told so, and kept', async () => {
    const { administrator } = shop.office;
    const { id } = done(
      await administrator.post<{ id: string }>('/api/tools', {
        serialNumber: `OLD-${change.number}`,
        description: 'Torque wrench',
        kind: 'torque-wrench',
        unit: 'N·m',
        rangeLow: '20',
        rangeHigh: '200',
      }),
    );
    const dates = { calibratedOn: '2024-01-01', dueOn: '2025-01-01', certificate: 'C-0' };
    done(await administrator.post(`/api/tools/${id}/calibrations`, dates));
    const shown = done(await enter('install', 'mount-bolts', torque('1', '110'), id));
    expect(reasons(shown)).toEqual(['TOOL_OUT_OF_DATE']);
    expect(shown.entries[0]?.tool).toBe(`OLD-${change.number}`);
  });
});

describe('a serial', () => {
  const plate = (kind: string, serialNumber: string, positionNumber: string | null = '1') => ({
    kind,
    serialNumber,
    partNumber: null,
    positionNumber,
  });

  it('as ordered is accepted, with what the register knows of it', async () => {
    const shown = done(await enter('install', 'on', plate('component-on', 'ZZ-E3')));
    expect(shown.entries[0]?.judgement).toMatchObject({
      verdict: 'accepted',
      computed: { partNumber: 'PN-engine', place: 'Store' },
    });
  });

  it('that is not the ordered one is told so; one that no register has too', async () => {
    expect(reasons(done(await enter('install', 'on', plate('component-on', 'ZZ-E4'))))).toEqual([
      'SERIAL_DIFFERS',
    ]);
    expect(reasons(done(await enter('remove', 'off', plate('component-off', 'ZZ-E11'))))).toEqual([
      'SERIAL_DIFFERS',
      'NOT_IN_REGISTER',
    ]);
  });

  it('at another position is told so', async () => {
    expect(reasons(done(await enter('remove', 'off', plate('component-off', 'ZZ-E1', '2'))))).toEqual([
      'POSITION_DIFFERS',
    ]);
    expect(reasons(done(await enter('remove', 'off', plate('component-off', 'ZZ-E1', null))))).toEqual([
      'POSITION_DIFFERS',
    ]);
  });

  it('on the plate must be the one on its papers', async () => {
    const papers = {
      kind: 'papers',
      plateSerial: 'ZZ-E3',
      documentSerial: 'ZZ-E4',
      documentNumber: 'F1-0815',
      tag: 'serviceable',
    };
    expect(reasons(done(await enter('install', 'papers', papers)))).toEqual(['PAPERS_DIFFER']);
    const right = { ...papers, documentSerial: 'ZZ-E3' };
    expect(reasons(done(await enter('install', 'papers', { ...right, tag: 'unserviceable' })))).toEqual([
      'TAGGED_UNSERVICEABLE',
    ]);
    expect(reasons(done(await enter('install', 'papers', { ...right, documentNumber: '' })))).toEqual([
      'PAPERS_MISSING',
    ]);
    expect(reasons(done(await enter('install', 'papers', right)))).toEqual([]);
  });
});

describe('a step', () => {
  it('that waits for others is captured all the same, and stays blocked', async () => {
    const shown = done(
      await enter('leak-check', 'leaks', { kind: 'leak-check', minutes: '6', power: 'idle', found: 'none' }),
    );
    expect(shown.standing).toBe('blocked');
    expect(shown.blockers.map(({ code, number }) => [code, number])).toEqual([['STEP_UNSIGNED', 6]]);
    expect(shown.missing).toEqual([]);
  });

  it('has nothing missing once every capture is accepted', async () => {
    const shown = await captureAll(shop.technician, await step('install'), {
      outgoingSerial: 'ZZ-E1',
      incomingSerial: 'ZZ-E3',
      positionNumber: '1',
      toolId: shop.toolId,
    });
    expect(shown.missing).toEqual([]);
    expect(shown.entries.map(({ point }) => point)).toEqual([null, null, '1', '3', '2', '4']);
  });

  it('gets another content, another hash and a higher version by each entry, and the first hash again by striking it out', async () => {
    const before = await step('make-safe');
    const after = done(await enter('make-safe', 'tags-out', { kind: 'count', number: '4' }));
    expect([after.version, after.contentHash === before.contentHash]).toEqual([before.version + 1, false]);
    const voided = done(
      await shop.technician.post<ShownStep>(`/api/step-entries/${after.entries[0]?.id ?? ''}/void`, {
        reason: 'Counted wrongly',
      }),
    );
    expect(voided.contentHash).toBe(before.contentHash);
    expect(voided.entries.map((entry) => [entry.voided, entry.voidReason])).toEqual([
      [true, 'Counted wrongly'],
    ]);
    expect(voided.missing.map(({ code }) => code)).toEqual(['CAPTURE_MISSING']);
    const again = await shop.technician.post(`/api/step-entries/${after.entries[0]?.id ?? ''}/void`, {
      reason: 'Again',
    });
    expect(problemOf(again)).toMatchObject({ status: 409, code: 'ALREADY_VOIDED' });
  });

  it('is entered once for one key, however often it is sent', async () => {
    const { id } = await step('make-safe');
    const words = { capture: 'tags-out', typed: { kind: 'count', number: '4' } };
    const options = { idempotencyKey: `entry-${change.id}` };
    const first = await shop.technician.post<ShownStep>(`/api/steps/${id}/entries`, words, options);
    const second = await shop.technician.post<ShownStep>(`/api/steps/${id}/entries`, words, options);
    expect(second.body).toEqual(first.body);
    expect((await step('make-safe')).entries).toHaveLength(1);
  });

  it('keeps what many enter at once', async () => {
    const { id } = await step('make-safe');
    const numbers = Array.from({ length: 8 }, (_, index) => String(index));
    const answers = await Promise.all(
      numbers.map((number) =>
        capture(shop.technician, id, { capture: 'tags-out', typed: { kind: 'count', number } }),
      ),
    );
    expect(answers.map(({ status }) => status)).toEqual(numbers.map(() => 201));
    const shown = await step('make-safe');
    expect(shown.entries).toHaveLength(8);
    expect(shown.version).toBe(9);
  });

  it('takes entries of technicians, inspectors and certifying staff only', async () => {
    const { id } = await step('make-safe');
    const words = { capture: 'tags-out', typed: { kind: 'count', number: '4' } };
    expect(problemOf(await capture(shop.planner, id, words)).status).toBe(403);
    done(await capture(shop.inspector, id, words));
  });
});

describe('an entry that cannot be read', () => {
  it.each([
    ['a capture the step has not', { capture: 'none', typed: { kind: 'count', number: '1' } }, 'capture'],
    ['another kind', { capture: 'mount-bolts', typed: { kind: 'count', number: '1' } }, 'typed.kind'],
    ['an unknown kind', { capture: 'mount-bolts', typed: { kind: 'weight' } }, 'typed.kind'],
    ['a point there is none', { capture: 'mount-bolts', typed: torque('7', '110') }, 'typed.point'],
    ['nothing typed', { capture: 'mount-bolts', typed: torque('1', '') }, 'typed.indication'],
    ['too much typed', { capture: 'mount-bolts', typed: torque('1', '1'.repeat(41)) }, 'typed.indication'],
    [
      'a number for text',
      { capture: 'mount-bolts', typed: { ...torque('1', ''), indication: 110 } },
      'typed.indication',
    ],
    [
      'an unknown unit',
      { capture: 'mount-bolts', typed: { ...torque('1', '110'), unit: 'Nm' } },
      'typed.unit',
    ],
    [
      'a sign that does not print',
      { capture: 'mount-bolts', typed: torque('1', '11\u200b0') },
      'typed.indication',
    ],
    [
      'a tool that is none',
      { capture: 'mount-bolts', typed: torque('1', '110'), toolId: 'TW-014' },
      'toolId',
    ],
  ])('names the field for %s, and stores nothing', async (_, body: object, field) => {
    const { id } = await step('install');
    const expected = { body, status: 400, code: 'INVALID_FIELDS', field };
    expect(
      await faultsOfRefusal(shop.office.database.adminUrl, expected, (sent) =>
        shop.technician.post(`/api/steps/${id}/entries`, sent),
      ),
    ).toEqual([]);
  });

  it('names the tool that is in no register', async () => {
    const { id } = await step('install');
    const answer = await capture(shop.technician, id, {
      capture: 'mount-bolts',
      typed: torque('1', '110'),
      toolId: change.id,
    });
    expect(problemOf(answer)).toMatchObject({ status: 404, fields: [{ field: 'toolId' }] });
  });
});
