import { setTimeout as sleep } from 'node:timers/promises';
import { afterAll, beforeAll, describe, expect, it } from '@jest/globals';
import { withClient } from '../../support/database.js';
import type { Answer, HttpClient } from '../../support/http-client.js';
import { AT_ONCE, fifty } from '../../support/scenario/at-once.js';
import { employ } from '../../support/scenario/office.js';
import { done, problemOf } from '../../support/scenario/problem.js';
import { type Hangar, openHangar, openOneStep } from '../../support/signing/hangar.js';
import { capture, sign, statementOf, stepsOf, typed } from '../../support/signing/work-desk.js';

let hangar: Hangar;
let signers: readonly HttpClient[];

beforeAll(async () => {
  hangar = await openHangar({ days: 0 });
  signers = await fifty((index) =>
    employ(hangar.office, { signInName: `s${index}`, fullName: `Signer ${index}`, roles: ['technician'] }),
  );
}, 180_000);

afterAll(() => hangar?.close(), 30_000);

const note = { captures: [{ kind: 'text', key: 'note', label: 'Remark', required: true }] };

/** Repeats with the same key while the server says that it is busy, as every client does. */
async function patiently<T>(
  send: (options: { idempotencyKey: string }) => Promise<Answer<T>>,
): Promise<Answer<T>> {
  const idempotencyKey = crypto.randomUUID();
  for (let attempt = 1; ; attempt += 1) {
    const answer = await send({ idempotencyKey });
    if (answer.status < 300 || problemOf(answer).code !== 'BUSY' || attempt === 8) return answer;
    await sleep(250);
  }
}

const signaturesOf = (stepId: string) =>
  withClient(hangar.office.database.adminUrl, async (client) => {
    const { rows } = await client.query(
      `SELECT encode(ss.content_hash, 'hex') AS hash, s.statement FROM step_signature ss
         JOIN signature s ON s.operator_id = ss.operator_id AND s.id = ss.signature_id WHERE ss.step_id = $1`,
      [stepId],
    );
    return rows as { hash: string; statement: string }[];
  });

describe('at once', () => {
  it('of fifty signers one signs, and all others are told who and when', async () => {
    const { step } = await openOneStep(hangar);

    const answers = await fifty((index) =>
      patiently((options) => {
        const signer = signers[index];
        if (signer === undefined) throw new Error('nobody to sign');
        return sign(signer, step.id, { at: 5000, secret: hangar.password }, options);
      }),
    );

    const winners = answers.filter((answer) => answer.status === 201);
    expect(winners).toHaveLength(1);
    const [winner] = winners;
    const losers = answers
      .filter((answer) => answer.status !== 201)
      .map((answer) => [problemOf(answer).code, (answer.body as unknown as { by: string }).by]);
    expect(losers).toEqual(
      Array.from({ length: AT_ONCE - 1 }, () => ['ALREADY_SIGNED', winner?.body.person]),
    );
    expect(await signaturesOf(step.id)).toHaveLength(1);
  }, 60_000);

  it('signing and editing leave no signature over content its signer did not see', async () => {
    const { technician, certifier, password: secret } = hangar;
    const outcomes: string[] = [];
    for (let round = 0; round < 15; round += 1) {
      const { id, step } = await openOneStep(hangar, note);
      done(await capture(technician, step.id, typed.note('Clean')));
      const seen = done(await statementOf(certifier, step.id, { at: 5000 }));

      const [signed, edited] = await Promise.all([
        patiently((options) => sign(certifier, step.id, { at: 5000, secret, digest: seen.digest }, options)),
        sleep(round * 4).then(() => capture(technician, step.id, typed.note('A dent'))),
      ]);

      done(edited);
      outcomes.push(signed.status === 201 ? 'signed' : problemOf(signed).code);
      for (const { hash, statement } of await signaturesOf(step.id))
        expect([hash, statement]).toEqual([seen.contentHash, seen.statement]);
      const after = (await stepsOf(technician, id))['+1'];
      expect(after?.standing).toBe(signed.status === 201 ? 'changed' : 'open');
    }
    expect(outcomes.every((outcome) => ['signed', 'CHECK_CHANGED'].includes(outcome))).toBe(true);
  }, 60_000);

  it('nothing is signed after its signer’s authorisation was taken away', async () => {
    const { office, password: secret } = hangar;
    const outcomes: string[] = [];
    for (let round = 0; round < 12; round += 1) {
      const person = { signInName: `t${round}`, fullName: `Taken ${round}`, roles: ['technician'] };
      const client = await employ(office, person, { authorised: false });
      const { person: of } = done(await client.get<{ person: { id: string } }>('/api/session'));
      const held = done(
        await office.administrator.post<{ id: string }>('/api/authorisations', {
          ...{ personId: of.id, scope: 'work', fromOn: '2020-01-01', reference: 'List 1' },
        }),
      );
      const { step } = await openOneStep(hangar);
      const { digest } = done(await statementOf(client, step.id, { at: 5000 }));

      const [signed, taken] = await Promise.all([
        patiently((options) => sign(client, step.id, { at: 5000, secret, digest }, options)),
        sleep(round * 5).then(() =>
          office.administrator.post(`/api/authorisations/${held.id}/void`, { reason: 'Left' }),
        ),
      ]);

      done(taken);
      outcomes.push(signed.status === 201 ? 'signed' : problemOf(signed).code);
    }
    const late = await withClient(office.database.adminUrl, async (client) => {
      const { rows } = await client.query(
        `SELECT count(*)::int AS n FROM signature s JOIN authorisation a ON a.person_id = s.person_id
          WHERE a.voided_seq IS NOT NULL AND s.recorded_seq > a.voided_seq`,
      );
      return rows[0]?.n as number;
    });
    expect([late, outcomes.filter((each) => !['signed', 'NOT_AUTHORISED_TODAY'].includes(each))]).toEqual([
      0,
      [],
    ]);
  }, 60_000);
});
