import { setTimeout as sleep } from 'node:timers/promises';
import { afterAll, beforeAll, describe, expect, it } from '@jest/globals';
import { withClient } from '../support/database.js';
import type { Answer, HttpClient } from '../support/http-client.js';
import { logFlights, recordChange } from '../support/scenario/acts.js';
import { daily, type InService, putInService } from '../support/scenario/in-service.js';
import { employ, type Office, openOffice } from '../support/scenario/office.js';
import { done, problemOf } from '../support/scenario/problem.js';

let office: Office;
let fleet: InService;
let signers: readonly HttpClient[];

beforeAll(async () => {
  office = await openOffice();
  fleet = await putInService(office.administrator, { days: 2 });
  const roles = ['certifying-staff'];
  signers = [
    await employ(office, { signInName: 'first', fullName: 'Fir St', roles, licence: 'CS 1' }),
    await employ(office, { signInName: 'second', fullName: 'Sec Ond', roles, licence: 'CS 2' }),
  ];
}, 120_000);

afterAll(() => office?.close(), 30_000);

const digestOf = async (id: string): Promise<string> =>
  done(await office.administrator.get<{ digest: string }>(`/api/packages/${id}/release-check`)).digest;

const sign = (client: HttpClient | undefined, id: string, digest: string): Promise<Answer> => {
  if (client === undefined) throw new Error('nobody to sign');
  const body = { password: office.founded.password, digest };
  return client.post(`/api/packages/${id}/release`, body, { ifMatch: '"v1"' });
};

const outcome = (answer: Answer): string => (answer.status === 201 ? 'signed' : problemOf(answer).code);

const count = (sql: string, values: unknown[]): Promise<number> =>
  withClient(office.database.adminUrl, async (client) =>
    Number((await client.query(sql, values)).rows[0]?.count),
  );

describe('two at once', () => {
  it('release a package once: the other is told so', async () => {
    const id = fleet.packages[1]?.id ?? '';
    const digest = await digestOf(id);

    const answers = await Promise.all(signers.map((signer) => sign(signer, id, digest)));

    expect(answers.map(outcome).sort()).toEqual(['ALREADY_RELEASED', 'signed']);
    expect(await count('SELECT count(*) FROM release WHERE package_id = $1', [id])).toBe(1);
  });

  it('never sign under a flight: it is in what was seen, or comes after the release', async () => {
    let installed = 'ZZ-E1';
    for (let round = 0; round < 6; round += 1) {
      // Days 2, 7, 12 …: one flight, a change after it, then four flights beside the signature.
      const day = 2 + round * 5;
      const [before] = daily(1, { from: day });
      if (before === undefined) throw new Error('no flight');
      done(await logFlights(office.administrator, fleet.airframe.id, [before]));
      const incoming = installed === 'ZZ-E3' ? 'ZZ-E4' : 'ZZ-E3';
      const { id } = done(
        await recordChange(office.administrator, {
          airframeId: fleet.airframe.id,
          positionNumber: 1,
          slot: 'engine',
          outgoingSerial: installed,
          incomingSerial: incoming,
          boundary: { kind: 'after-page', page: before.page },
        }),
      );
      installed = incoming;
      const digest = await digestOf(id);

      const [signed] = await Promise.all([
        sign(signers[0], id, digest),
        ...daily(4, { from: day + 1 }).map(async (flight, index) => {
          await sleep(40 + round * 20 + index * 15);
          return done(await logFlights(office.administrator, fleet.airframe.id, [flight]));
        }),
      ]);

      const flownUnder = await count(
        `SELECT count(*) FROM flight f, release r
          WHERE r.package_id = $1 AND f.log_page > $2 AND f.recorded_seq < r.recorded_seq`,
        [id, before.page],
      );
      expect([['signed', 'CHECK_CHANGED'].includes(outcome(signed)), flownUnder]).toEqual([true, 0]);
    }
  });
});
