import { setTimeout as sleep } from 'node:timers/promises';
import { afterAll, beforeAll, describe, expect, it } from '@jest/globals';
import { withClient } from '../../support/database.js';
import type { Answer } from '../../support/http-client.js';
import { logFlights } from '../../support/scenario/acts.js';
import { DAY, daily } from '../../support/scenario/in-service.js';
import { employ } from '../../support/scenario/office.js';
import { done, problemOf } from '../../support/scenario/problem.js';
import { type Hangar, openHangar, openOneStep } from '../../support/signing/hangar.js';
import { checkOf, release } from '../../support/signing/release-desk.js';
import { capture, sign } from '../../support/signing/work-desk.js';

let hangar: Hangar;

beforeAll(async () => {
  hangar = await openHangar();
}, 120_000);

afterAll(() => hangar?.close(), 30_000);

const ROUNDS = 6;
const outcome = (answer: Answer): string => (answer.status === 201 ? 'done' : problemOf(answer).code);
const note = (text: string) => ({ capture: 'note', typed: { kind: 'text', text } });

const count = (sql: string, values: unknown[]): Promise<number> =>
  withClient(hangar.office.database.adminUrl, async (client) =>
    Number((await client.query(sql, values)).rows[0]?.count),
  );

/** A package whose one step holds a remark and is signed. */
async function ready() {
  const { technician, password: secret } = hangar;
  const { id, step } = await openOneStep(hangar, {
    inspection: 'none',
    captures: [{ kind: 'text', key: 'note', label: 'Remark', required: true }],
  });
  done(await capture(technician, step.id, note('Nothing found')));
  const given = done(await sign(technician, step.id, { at: 3 * DAY, secret }));
  return { id, stepId: step.id, signatureId: given.id, seen: await checkOf(hangar.certifier, id) };
}

/** What was recorded in the steps of a package after its release, or before it without its check seeing it signed. */
const unseen = (id: string): Promise<number> =>
  count(
    `SELECT count(*) FROM release r
      WHERE r.package_id = $1 AND (
        EXISTS (SELECT FROM step_entry e WHERE e.package_id = r.package_id AND greatest(e.recorded_seq, e.voided_seq) > r.recorded_seq)
        OR EXISTS (SELECT FROM step_signature s WHERE s.package_id = r.package_id AND greatest(s.recorded_seq, s.voided_seq) > r.recorded_seq)
        OR EXISTS (SELECT FROM work_step w WHERE w.package_id = r.package_id AND NOT EXISTS (SELECT FROM step_signature s
             WHERE s.step_id = w.id AND s.content_hash = w.content_hash AND s.voided_seq IS NULL)))`,
    [id],
  );

describe('a release beside other acts at once', () => {
  it('is never given over an entry its check did not see: one of the two is refused', async () => {
    for (let round = 0; round < ROUNDS; round += 1) {
      const { id, stepId, seen } = await ready();
      const [released, entered] = await Promise.all([
        release(hangar.certifier, id, hangar.password, seen),
        // The release first proves its signer, which takes longer: the entry starts beside it.
        sleep(20 + round * 25).then(() => capture(hangar.technician, stepId, note('A scratch'))),
      ]);
      expect([
        ['done', 'WRONG_STATE'],
        ['RELEASE_BLOCKED', 'done'],
      ]).toContainEqual([outcome(released), outcome(entered)]);
      expect(await unseen(id)).toBe(0);
    }
  });

  it('is never given over a signature that was undone', async () => {
    for (let round = 0; round < ROUNDS; round += 1) {
      const { id, signatureId, seen } = await ready();
      const [released, undone] = await Promise.all([
        release(hangar.certifier, id, hangar.password, seen),
        sleep(round * 15).then(() =>
          hangar.technician.post(`/api/step-signatures/${signatureId}/undo`, {
            ...{ reason: 'Wrong step', method: 'password', secret: hangar.password },
          }),
        ),
      ]);
      const ended = [outcome(released), undone.status < 300 ? 'done' : problemOf(undone).code];
      expect([
        ['done', 'WRONG_STATE'],
        ['RELEASE_BLOCKED', 'done'],
      ]).toContainEqual(ended);
      expect(await unseen(id)).toBe(0);
    }
  });

  it('is never given under a flight: it is in what was seen, or comes after', async () => {
    for (let round = 0; round < ROUNDS; round += 1) {
      const { id, seen } = await ready();
      const [flight] = daily(1, { from: 3 + round });
      if (flight === undefined) throw new Error('no flight');
      const [released] = await Promise.all([
        release(hangar.certifier, id, hangar.password, seen),
        sleep(20 + round * 25).then(async () =>
          done(await logFlights(hangar.office.administrator, hangar.fleet.airframe.id, [flight])),
        ),
      ]);
      const under = await count(
        `SELECT count(*) FROM flight f, release r WHERE r.package_id = $1 AND f.log_page = $2 AND f.recorded_seq < r.recorded_seq`,
        [id, flight.page],
      );
      expect([['done', 'CHECK_CHANGED'].includes(outcome(released)), under]).toEqual([true, 0]);
    }
  });

  it('is never given by whose authorisation was taken away before it', async () => {
    const { office, password } = hangar;
    for (let round = 0; round < ROUNDS; round += 1) {
      const { id } = await ready();
      const person = { signInName: `c${round}`, fullName: `Taken ${round}`, licence: `L c${round}` };
      const releaser = await employ(
        office,
        { ...person, roles: ['certifying-staff'] },
        { authorised: false },
      );
      const { person: of } = done(await releaser.get<{ person: { id: string } }>('/api/session'));
      const held = done(
        await office.administrator.post<{ id: string }>('/api/authorisations', {
          ...{ personId: of.id, scope: 'release', fromOn: '2020-01-01', reference: 'List 1' },
        }),
      );
      const seen = await checkOf(releaser, id);
      const [released, taken] = await Promise.all([
        release(releaser, id, password, seen),
        sleep(20 + round * 20).then(() =>
          office.administrator.post(`/api/authorisations/${held.id}/void`, { reason: 'Left' }),
        ),
      ]);
      done(taken);
      expect(['done', 'RELEASE_BLOCKED']).toContain(outcome(released));
    }
    const late = await count(
      `SELECT count(*) FROM signature s JOIN authorisation a ON a.person_id = s.person_id AND a.scope = 'release'
        WHERE s.meaning = 'release' AND a.voided_seq IS NOT NULL AND s.recorded_seq > a.voided_seq`,
      [],
    );
    expect(late).toBe(0);
  }, 60_000);

  it('is never given over a calibration that was voided before it', async () => {
    const { office, technician, certifier, password } = hangar;
    for (let round = 0; round < ROUNDS; round += 1) {
      const tool = done(
        await office.administrator.post<{ id: string }>('/api/tools', {
          ...{ serialNumber: `G-${round}`, description: 'Pressure gauge', kind: 'gauge' },
        }),
      );
      const { calibrations } = done(
        await office.administrator.post<{ calibrations: readonly { id: string }[] }>(
          `/api/tools/${tool.id}/calibrations`,
          { calibratedOn: '2025-01-01', dueOn: '2099-01-01', certificate: `K-${round}` },
        ),
      );
      const rows = [{ key: 'p', label: 'Oil pressure', unit: 'psi', low: '40', high: null }];
      const { id, step } = await openOneStep(hangar, {
        inspection: 'none',
        captures: [{ kind: 'readings', key: 'run', label: 'Idle', rows }],
      });
      const typed = { kind: 'readings', values: { p: '45' } };
      const read = { capture: 'run', typed, toolId: tool.id };
      done(await capture(technician, step.id, read));
      done(await sign(technician, step.id, { at: 3 * DAY, secret: password }));
      const seen = await checkOf(certifier, id);
      const [released, voided] = await Promise.all([
        release(certifier, id, password, seen),
        sleep(20 + round * 20).then(() =>
          office.administrator.post(`/api/tool-calibrations/${calibrations[0]?.id}/void`, {
            reason: 'Wrong gauge',
          }),
        ),
      ]);
      done(voided);
      expect(['done', 'RELEASE_BLOCKED']).toContain(outcome(released));
    }
    const late = await count(
      `SELECT count(*) FROM release r JOIN step_entry e ON e.package_id = r.package_id
         JOIN tool_calibration k ON k.tool_id = e.tool_id WHERE k.voided_seq < r.recorded_seq`,
      [],
    );
    expect(late).toBe(0);
  }, 60_000);
});
