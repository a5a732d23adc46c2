import { execFile } from 'node:child_process';
import { promisify } from 'node:util';
import { afterAll, beforeAll, describe, expect, it } from '@jest/globals';
import { logFlights } from '../support/scenario/acts.js';
import { statuses } from '../support/scenario/at-once.js';
import { DAY, daily, type InService, putInService } from '../support/scenario/in-service.js';
import { instantAt } from '../support/scenario/instants.js';
import { type Office, openOffice } from '../support/scenario/office.js';

let office: Office;
let fleet: InService;

beforeAll(async () => {
  office = await openOffice();
  fleet = await putInService(office.administrator, { days: 3 });
}, 120_000);

afterAll(() => office?.close(), 30_000);

describe('acts at once on what hangs together', () => {
  it('leave the projections as the facts say', async () => {
    const { administrator } = office;
    const [first, second] = fleet.engines;
    if (first === undefined || second === undefined) throw new Error('no engines');
    const gap = (componentId: string, day: number) =>
      administrator.post('/api/trace-gaps', {
        componentId,
        from: instantAt(day * DAY),
        to: instantAt((day + 1) * DAY),
        note: 'a page of the log is lost',
      });
    const rating = (componentId: string, day: number) =>
      administrator.post('/api/rating-changes', {
        componentId,
        at: instantAt(day * DAY + 60),
        ratingCode: day % 2 === 0 ? 'A' : 'B',
        source: 'order',
      });
    const parts = [...first.partIds, ...second.partIds];
    const acts = [
      ...parts.flatMap((id) => [gap(id, 1), gap(id, 2)]),
      ...[first, second].flatMap((engine) => [gap(engine.id, 1), rating(engine.id, 1), rating(engine.id, 2)]),
      ...daily(6, { from: 3 }).map((flight) => logFlights(administrator, fleet.airframe.id, [flight])),
    ];
    const answers = await Promise.all(acts);

    // A wait for a lock may end in 409 with nothing changed; nothing may fail otherwise.
    expect(Object.keys(statuses(answers)).filter((status) => status !== '201' && status !== '409')).toEqual(
      [],
    );
    expect(statuses(answers)[201]).toBeGreaterThan(acts.length / 2);

    const { stdout } = await promisify(execFile)(process.execPath, ['apps/api/dist/rebuild.js'], {
      env: { ...process.env, DATABASE_URL: office.database.appUrl },
    });
    expect(stdout).toMatch(/exposures: \d+ looked at, all as the facts say/);
    expect(stdout).toMatch(/due points: \d+ looked at, all as the facts say/);
  }, 60_000);
});
