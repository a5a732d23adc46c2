import { beforeEach, describe, expect, it } from '@jest/globals';
import { fleetDesk } from '../../support/logbook/fleet-desk.js';
import { LONG_AGO, type OldRecords, oldRecords } from '../../support/logbook/old-records.js';
import { type FlightToLog, logFlights } from '../../support/scenario/acts.js';
import { instantAt } from '../../support/scenario/instants.js';
import { done } from '../../support/scenario/problem.js';
import { accomplish, recordRequirement } from '../../support/scenario/requirements.js';

const desk = fleetDesk({ engines: 1, airframes: 1 });
let old: OldRecords;
let page = 0;

interface Overrun {
  readonly requirement: string | null;
  readonly isOpen: boolean;
}

const flight = (name: string, after: number): FlightToLog => ({
  page: name,
  takeOff: LONG_AGO + after,
  landing: LONG_AGO + after + 60,
});
const log = async (...flights: FlightToLog[]) =>
  done(await logFlights(desk.office.administrator, old.airframe.id, flights));
const overrunsOf = async (id: string) =>
  done(await desk.office.administrator.get<Overrun[]>(`/api/components/${id}/overruns`));

beforeEach(async () => {
  page += 1;
  old = await oldRecords(desk);
});

describe('a duty with a window', () => {
  const duty = async () => (await overrunsOf(old.diskId)).filter((each) => each.requirement !== null);
  const meet = async (requirementId: string, after: number) =>
    done(
      await accomplish(desk.office.administrator, {
        ...{ requirementId, componentId: old.diskId, at: instantAt(LONG_AGO + after) },
      }),
    );
  const record = async (more: object) =>
    done(
      await recordRequirement(desk.office.administrator, `W-${page}`, {
        ...{ anchor: 'part', partNumber: `K-SHORT-${page}`, repeat: { cycles: 2 } },
        ...{ countedFrom: 'accomplishment', effectiveOn: '2010-01-01', ...more },
      }),
    ).id;

  it('was flown beyond its end alone, not beyond what the window grants', async () => {
    await record({ window: { late: { cycles: [{ atMost: 1 }] } } }).then((id) => meet(id, 50));
    await log(flight('P1', 100), flight('P2', 300), flight('P3', 500));
    // Due at 1,002, granted up to 1,003.
    expect(await duty()).toEqual([]);

    await log(flight('P4', 700));

    expect(await duty()).toMatchObject([
      { dimension: 'cycles', by: 1, isOpen: true, flights: 1, limit: 1_003, first: { logPage: 'P4' } },
    ]);
  });

  it('that keeps planned times leaves less until the next after a late one, and that it was late is told', async () => {
    const id = await record({ window: { late: { cycles: [{ atMost: 1 }] } } });
    await meet(id, 50);
    await log(flight('P1', 100), flight('P2', 300), flight('P3', 500));
    // At 1,003 inside the window of 1,002: the next is due at 1,004, granted up to 1,005.
    await meet(id, 600);
    await log(flight('P4', 700), flight('P5', 900), flight('P6', 1_100));
    await meet(id, 1_200);

    expect(await duty()).toMatchObject([
      { by: 1, isOpen: false, flights: 1, limit: 1_005, first: { logPage: 'P6' } },
    ]);
  });

  it('is told by its outer bound where that was passed and the rest was not', async () => {
    const id = await record({ repeat: { cycles: 20, notToExceed: { minutes: 150 } } });
    await meet(id, 50);
    await log(flight('P1', 100), flight('P2', 300), flight('P3', 500));
    await meet(id, 600);

    expect(await duty()).toMatchObject([
      { dimension: 'minutes', by: 30, isOpen: false, flights: 1, first: { logPage: 'P3' } },
    ]);
  });
});
