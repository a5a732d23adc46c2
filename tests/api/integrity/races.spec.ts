import { afterAll, beforeAll, describe, expect, it } from '@jest/globals';
import { withClient } from '../../support/database.js';
import type { Answer } from '../../support/http-client.js';
import {
  asRequest,
  atMinute,
  type ChangeToRecord,
  logFlights,
  previewChange,
  recordChange,
} from '../../support/scenario/acts.js';
import { AT_ONCE, fifty, statuses, unhelpful } from '../../support/scenario/at-once.js';
import { buildEngine, type Fleet, makeFleet, slotOf } from '../../support/scenario/fleet.js';
import { brokenInvariants } from '../../support/scenario/invariants.js';
import { type Office, openOffice } from '../../support/scenario/office.js';
import { done } from '../../support/scenario/problem.js';
import { Register } from '../../support/scenario/register.js';

let office: Office;
let fleet: Fleet;

beforeAll(async () => {
  office = await openOffice();
  fleet = await makeFleet(new Register(office.administrator), { airframes: 25, engines: 2 });
}, 120_000);

afterAll(() => office?.close(), 30_000);

const rows = (sql: string, values: readonly unknown[]): Promise<number> =>
  withClient(office.database.adminUrl, async (client) =>
    Number((await client.query(sql, [...values])).rows[0]?.count),
  );

const openStays = (componentId: string) =>
  rows('SELECT count(*) FROM stay WHERE component_id = $1 AND voided_seq IS NULL AND to_at IS NULL', [
    componentId,
  ]);

describe('fifty at once who install one engine, each at another position', () => {
  let answers: Answer[];
  let engineId: string;

  beforeAll(async () => {
    const engine = await buildEngine(fleet.register, fleet.modelId, 'ZZ-RACE');
    engineId = engine.id;
    const changes = await fifty(async (index): Promise<object> => {
      const airframeId = fleet.airframes[index % fleet.airframes.length]?.id ?? '';
      const change: ChangeToRecord = {
        airframeId,
        positionNumber: 1 + Math.floor(index / fleet.airframes.length),
        slot: 'engine',
        outgoingSerial: null,
        incomingSerial: engine.serialNumber,
        boundary: atMinute(1000 + index),
      };
      const { digest } = done(await previewChange(office.administrator, change));
      return { ...asRequest(change), confirmDigest: digest };
    });
    answers = await Promise.all(changes.map((change) => office.administrator.post('/api/changes', change)));
  }, 60_000);

  it('have one winner, and nobody’s fault is the server’s', () => {
    expect(statuses(answers)).toEqual({ 201: 1, 409: AT_ONCE - 1 });
  });

  it('tell each loser which field, why and what to do', () => {
    expect(unhelpful(answers)).toEqual([]);
  });

  it('leave the engine at one position, with one package', async () => {
    expect(await openStays(engineId)).toBe(1);
    expect(await rows('SELECT count(*) FROM package_change WHERE incoming_id = $1', [engineId])).toBe(1);
  });
});

describe('fifty at once who put fifty engines into one place', () => {
  it('have one winner', async () => {
    const [airframe] = fleet.airframes;
    const spares: string[] = [];
    for (let index = 0; index < AT_ONCE; index += 1) {
      const { id } = await fleet.register.component({
        kind: 'pod',
        serialNumber: `ZZ-SPARE-${index}`,
        podClock: 'airframe',
      });
      spares.push(id);
    }
    const slotId = slotOf(airframe!, 2, 'pod');

    const answers = await fifty((index) =>
      office.administrator.post('/api/placements', {
        componentId: spares[index],
        slotId,
        boundary: atMinute(500 + index),
      }),
    );

    expect(statuses(answers)).toEqual({ 201: 1, 409: AT_ONCE - 1 });
    expect(unhelpful(answers)).toEqual([]);
    expect(await rows('SELECT count(*) FROM stay WHERE slot_id = $1 AND voided_seq IS NULL', [slotId])).toBe(
      1,
    );
  }, 60_000);
});

describe('two at once who change one engine, each for another', () => {
  it('have one winner, in each of twenty rounds', async () => {
    const { administrator } = office;
    const airframeId = fleet.airframes[24]?.id ?? '';
    const position = { airframeId, positionNumber: 2, slot: 'engine' } as const;
    const serials = await Promise.all(
      ['ZZ-SW0', 'ZZ-SW1', 'ZZ-SW2'].map(
        async (serial) => (await buildEngine(fleet.register, fleet.modelId, serial)).serialNumber,
      ),
    );
    let there = serials[0] ?? '';
    done(
      await recordChange(administrator, {
        ...position,
        outgoingSerial: null,
        incomingSerial: there,
        boundary: atMinute(3000),
      }),
    );

    for (let round = 1; round <= 20; round += 1) {
      const changes = serials
        .filter((serial) => serial !== there)
        .map(
          (incomingSerial): ChangeToRecord => ({
            ...position,
            outgoingSerial: there,
            incomingSerial,
            boundary: atMinute(3000 + round * 10),
          }),
        );
      const answers = await Promise.all(changes.map((change) => recordChange(administrator, change)));

      expect([round, statuses(answers)]).toEqual([round, { 201: 1, 409: 1 }]);
      expect(unhelpful(answers)).toEqual([]);
      there = changes[answers.findIndex(({ status }) => status === 201)]?.incomingSerial ?? '';
    }
  }, 60_000);
});

describe('flights at once', () => {
  it('that overlap have one winner', async () => {
    const airframeId = fleet.airframes[1]?.id ?? '';

    const answers = await fifty((index) =>
      logFlights(office.administrator, airframeId, [
        { page: `over-${index}`, takeOff: 5000 + index, landing: 5100 + index },
      ]),
    );

    expect(statuses(answers)).toEqual({ 201: 1, 409: AT_ONCE - 1 });
    expect(unhelpful(answers)).toEqual([]);
  }, 60_000);

  it('that follow each other are all taken, and all counted', async () => {
    const airframeId = fleet.airframes[2]?.id ?? '';

    const answers = await fifty((index) =>
      logFlights(office.administrator, airframeId, [
        { page: `row-${index}`, takeOff: 5000 + index * 60, landing: 5060 + index * 60 },
      ]),
    );

    expect(statuses(answers)).toEqual({ 201: AT_ONCE });
    expect(await rows('SELECT minutes AS count FROM carrier WHERE id = $1', [airframeId])).toBe(AT_ONCE * 60);
  }, 60_000);

  it('and a change inside one of them have one winner, in each of twenty rounds', async () => {
    const airframeId = fleet.airframes[3]?.id ?? '';
    const { serialNumber } = await buildEngine(fleet.register, fleet.modelId, 'ZZ-MID');
    let isThere = false;
    for (let round = 1; round <= 20; round += 1) {
      const takeOff = 6000 + round * 100;
      const change: ChangeToRecord = {
        airframeId,
        positionNumber: 1,
        slot: 'engine',
        outgoingSerial: isThere ? serialNumber : null,
        incomingSerial: isThere ? null : serialNumber,
        boundary: atMinute(takeOff + 30),
      };
      const [flight, changed] = await Promise.all([
        logFlights(office.administrator, airframeId, [
          { page: `mid-${round}`, takeOff, landing: takeOff + 60 },
        ]),
        recordChange(office.administrator, change),
      ]);

      expect([round, [flight.status, changed.status].filter((status) => status === 201)]).toEqual([
        round,
        [201],
      ]);
      expect(unhelpful([flight, changed])).toEqual([]);
      if (changed.status === 201) isThere = !isThere;
    }
  }, 60_000);
});

describe('after all of it', () => {
  it('everything still adds up', async () => {
    expect(await brokenInvariants(office.database.adminUrl)).toEqual({});
  });
});
