import { execFile } from 'node:child_process';
import { randomUUID } from 'node:crypto';
import { setTimeout as sleep } from 'node:timers/promises';
import { promisify } from 'node:util';
import { afterAll, beforeAll, describe, expect, it } from '@jest/globals';
import type { Answer } from '../support/http-client.js';
import { onTheWire } from '../support/scenario/acts.js';
import { statuses } from '../support/scenario/at-once.js';
import { DAY, daily, type InService, putInService } from '../support/scenario/in-service.js';
import { instantAt } from '../support/scenario/instants.js';
import { type Office, openOffice } from '../support/scenario/office.js';
import { newRequirement } from '../support/scenario/requirements.js';

let office: Office;
let fleet: InService;

beforeAll(async () => {
  office = await openOffice();
  fleet = await putInService(office.administrator, { days: 3 });
}, 120_000);

afterAll(() => office?.close(), 30_000);

/** Posts until the server is not busy with the others, always with the same key. */
async function persistently(path: string, body: object): Promise<Answer> {
  const idempotencyKey = randomUUID();
  for (let attempt = 1; ; attempt += 1) {
    const answer = await office.administrator.post(path, body, { idempotencyKey });
    if (answer.status !== 409 || attempt === 40) return answer;
    await sleep(100);
  }
}

describe('acts at once on what hangs together', () => {
  it('leave the projections as the facts say', async () => {
    const [first, second] = fleet.engines;
    if (first === undefined || second === undefined) throw new Error('no engines');
    const gap = (componentId: string, day: number) =>
      persistently('/api/trace-gaps', {
        componentId,
        from: instantAt(day * DAY),
        to: instantAt((day + 1) * DAY),
        note: 'a page of the log is lost',
      });
    const rating = (componentId: string, day: number) =>
      persistently('/api/rating-changes', {
        componentId,
        at: instantAt(day * DAY + 60),
        ratingCode: day % 2 === 0 ? 'A' : 'B',
        source: 'order',
      });
    const acts = [
      ...[...first.partIds, ...second.partIds].flatMap((id) => [gap(id, 1), gap(id, 2)]),
      ...[first, second].flatMap(({ id }) => [gap(id, 1), rating(id, 1), rating(id, 2)]),
      ...daily(6, { from: 3 }).map((flight) =>
        persistently(`/api/airframes/${fleet.airframe.id}/flights`, { flights: [onTheWire(flight)] }),
      ),
    ];

    // A requirement is computed for the whole fleet, while all of it moves on.
    const requirements = [
      newRequirement('R-1'),
      newRequirement('R-2', { repeat: { minutes: 30_000 } }),
      newRequirement('R-3', { anchor: 'airframe', airframeTypeId: fleet.typeId, repeat: { months: 6 } }),
      newRequirement('R-4', { anchor: 'position', repeat: { cycles: 100 } }),
    ];
    acts.push(...requirements.map((requirement) => persistently('/api/requirements', requirement)));

    expect(statuses(await Promise.all(acts))).toEqual({ 201: acts.length });

    const { stdout } = await promisify(execFile)(process.execPath, ['apps/api/dist/rebuild.js'], {
      env: { ...process.env, DATABASE_URL: office.database.appUrl },
    });
    expect(stdout).toMatch(/exposures: \d+ looked at, all as the facts say/);
    expect(stdout).toMatch(/due points: \d+ looked at, all as the facts say/);
  }, 120_000);
});
