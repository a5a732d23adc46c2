import { describe, expect, it } from '@jest/globals';
import { withClient } from '../../support/database.js';
import { fleetDesk } from '../../support/logbook/fleet-desk.js';
import { LONG_AGO, oldRecords } from '../../support/logbook/old-records.js';
import { type FlightToLog, logFlights } from '../../support/scenario/acts.js';
import { done } from '../../support/scenario/problem.js';
import { recordRequirement } from '../../support/scenario/requirements.js';

const desk = fleetDesk({ engines: 1, airframes: 1 });

/** Where on their clocks the requirements with some codes are due, by code. */
const dueOnClocks = (codes: readonly string[]) =>
  withClient(desk.office.database.adminUrl, async (client) => {
    const { rows } = await client.query<{ code: string; due_at: string }>(
      `SELECT r.code, d.due_at FROM due_point d JOIN requirement r ON r.operator_id = d.operator_id AND r.id = d.requirement_id
        WHERE r.code = ANY ($1) AND d.carrier_id IS NOT NULL ORDER BY r.code`,
      [codes],
    );
    return rows.map(({ code, due_at }) => [code, Number(due_at)]);
  });

describe('a duty that counts from the day it became effective', () => {
  it.each([
    ['an engine', { anchor: 'engine' }],
    ['a position', { anchor: 'position', positionNumber: 1 }],
    ['an airframe', { anchor: 'airframe' }],
  ])('on %s is due later by a flight before that day, entered late', async (_name, anchor) => {
    const { airframe } = await oldRecords(desk);
    const log = async (flight: FlightToLog) =>
      done(await logFlights(desk.office.administrator, airframe.id, [flight]));
    await log({ page: 'N1', takeOff: 100, landing: 160 });
    const code = `E-${anchor.anchor}`;
    const of =
      anchor.anchor === 'engine'
        ? { engineModelId: desk.fleet.modelId }
        : { airframeTypeId: desk.fleet.typeId };
    const requirement = done(
      await recordRequirement(desk.office.administrator, code, {
        ...{
          ...anchor,
          ...of,
          repeat: { minutes: 600 },
          countedFrom: 'effective',
          effectiveOn: '2020-01-01',
        },
      }),
    );
    expect(requirement.inForce).toBe(true);
    const before = await dueOnClocks([code]);
    expect(before).toContainEqual([code, 600]);

    const answer = await log({ page: 'P1', takeOff: LONG_AGO + 100, landing: LONG_AGO + 160 });

    expect(answer).toMatchObject({ late: true });
    expect(await dueOnClocks([code])).toContainEqual([code, 660]);
  });
});
