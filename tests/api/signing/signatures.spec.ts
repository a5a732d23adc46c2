import { afterAll, beforeAll, describe, expect, it } from '@jest/globals';
import { withClient } from '../../support/database.js';
import { employ } from '../../support/scenario/office.js';
import { done, problemOf } from '../../support/scenario/problem.js';
import { type Hangar, openChange, openHangar, openOneStep } from '../../support/signing/hangar.js';
import { capture, sign, statementOf, stepsOf, typed } from '../../support/signing/work-desk.js';

let hangar: Hangar;
const PIN = '271828';

beforeAll(async () => {
  hangar = await openHangar();
  for (const client of [hangar.technician, hangar.inspector])
    done(await client.post('/api/session/pin', { password: hangar.password, pin: PIN }));
}, 120_000);

afterAll(() => hangar?.close(), 30_000);

const note = { captures: [{ kind: 'text', key: 'note', label: 'Remark', required: true }] };

const entriesOf = (packageId: string) =>
  withClient(hangar.office.database.adminUrl, async (client) => {
    const { rows } = await client.query(
      `SELECT e.kind, p.full_name AS by, e.body FROM journal_entry e
         JOIN person p ON p.operator_id = e.operator_id AND p.id = e.person_id
        WHERE e.stream = $1 ORDER BY e.number`,
      [packageId],
    );
    return rows as { kind: string; by: string; body: string }[];
  });

describe('a step is signed', () => {
  it('by its words, with the password, and the journal has the very words', async () => {
    const { technician, password } = hangar;
    const { id, step } = await openOneStep(hangar);
    const seen = done(await statementOf(technician, step.id, { at: 5000 }));

    const given = done(await sign(technician, step.id, { at: 5000, secret: password }));

    expect(given).toMatchObject({
      person: 'Tec Nician',
      method: 'password',
      statement: seen.statement,
      contentHash: step.contentHash,
      moved: [],
    });
    expect(given.statement).toContain('Signed by Tec Nician, L tec');
    const [entry] = (await entriesOf(id)).filter((each) => each.kind === 'step-signed');
    expect(entry?.by).toBe('Tec Nician');
    expect(JSON.parse(entry?.body ?? '{}').done.signed.statement).toBe(given.statement);
    const after = (await stepsOf(technician, id))['+1'];
    expect(after).toMatchObject({ standing: 'to-inspect', version: given.version });
  });

  it('with a PIN, and by a second person at the same tablet whose act it is', async () => {
    const { technician, inspector } = hangar;
    const { id, step } = await openOneStep(hangar);
    done(await sign(technician, step.id, { at: 5000, secret: PIN, method: 'pin' }));

    const given = done(
      await sign(technician, step.id, {
        ...{ at: 5010, secret: PIN, method: 'pin', meaning: 'inspection', signInName: 'ins' },
      }),
    );

    expect([given.person, given.statement.split('\n')[0]]).toEqual([
      'Ins Pector',
      'I inspected the work signed by Tec Nician, which I did not do, and found it satisfactory.',
    ]);
    const inspected = (await entriesOf(id)).find((each) => each.kind === 'step-inspected');
    expect(inspected?.by).toBe('Ins Pector');
    const whoseTablet = done(await technician.get<{ person: { fullName: string } }>('/api/session'));
    expect(whoseTablet.person.fullName).toBe('Tec Nician');
    expect((await stepsOf(inspector, id))['+1']?.standing).toBe('signed');
  });

  it('once for one request, however often it arrives', async () => {
    const { technician, password } = hangar;
    const { id, step } = await openOneStep(hangar);
    const once = { idempotencyKey: 'sign-once-and-again' };
    const digest = done(await statementOf(technician, step.id, { at: 5000 })).digest;
    const toSign = { at: 5000, secret: password, digest };

    const [first, second] = [
      done(await sign(technician, step.id, toSign, once)),
      done(await sign(technician, step.id, toSign, once)),
    ];

    expect(second).toEqual(first);
    expect((await stepsOf(technician, id))['+1']?.signatures).toHaveLength(1);
  });
});

describe('a step is not signed', () => {
  const refused = async (stepId: string, toSign: Parameters<typeof sign>[2]) => {
    const { code, detail, fields } = problemOf(await sign(hangar.technician, stepId, toSign));
    return { code, detail, field: fields?.[0]?.field };
  };

  it('over words that were not seen, or in the future', async () => {
    const { password: secret } = hangar;
    const { step } = await openOneStep(hangar);

    expect(await refused(step.id, { at: 5000, secret, digest: 'a'.repeat(64) })).toMatchObject({
      code: 'CHECK_CHANGED',
    });
    const { digest } = done(await statementOf(hangar.technician, step.id, { at: 5000 }));
    expect(await refused(step.id, { at: 5001, secret, digest })).toMatchObject({ code: 'CHECK_CHANGED' });
    expect(await refused(step.id, { at: 60 * 24 * 365 * 5, secret })).toMatchObject({
      code: 'IN_THE_FUTURE',
      field: 'performedAt',
    });
  });

  it('by words that were shown to somebody else', async () => {
    const { technician, password: secret } = hangar;
    const { step } = await openOneStep(hangar);
    const { digest } = done(await statementOf(technician, step.id, { at: 5000 }));

    expect(await refused(step.id, { at: 5000, secret, digest, signInName: 'cer' })).toMatchObject({
      code: 'CHECK_CHANGED',
    });
  });

  it('while another comes first, or something is missing or not accepted', async () => {
    const { technician, password: secret } = hangar;
    const { steps } = await openChange(hangar, {
      ...{ positionNumber: 1, outgoingSerial: 'ZZ-E1', incomingSerial: 'ZZ-E3' },
    });
    const [safe, remove, remark] = [steps['make-safe'], steps['remove'], steps['remark']];
    if (!safe || !remove || !remark) throw new Error('no steps');

    const blocked = await refused(remove.id, { at: 5000, secret });
    expect([blocked.code, blocked.detail]).toEqual([
      'STEP_BLOCKED',
      'Step 1 is not signed. Finish what comes first, then sign this one.',
    ]);
    expect(await refused(safe.id, { at: 5000, secret })).toMatchObject({ code: 'CAPTURES_MISSING' });
    done(await capture(technician, safe.id, { capture: 'safe', typed: { kind: 'check', seen: false } }));
    expect(await refused(safe.id, { at: 5000, secret })).toMatchObject({
      code: 'CAPTURES_MISSING',
      detail: 'Breakers pulled and tagged is not accepted. Enter it, then sign.',
    });
    const inspecting = { at: 5000, secret, meaning: 'inspection', signInName: 'ins' } as const;
    expect(await refused(remark.id, inspecting)).toMatchObject({ code: 'CAPTURES_MISSING' });
    expect(await refused(safe.id, inspecting)).toMatchObject({ code: 'WRONG_STATE' });
  });

  it('before what it waits for was performed, nor inspected before it was done', async () => {
    const { technician, password: secret } = hangar;
    const { steps } = await openChange(hangar, {
      ...{ positionNumber: 1, outgoingSerial: 'ZZ-E1', incomingSerial: 'ZZ-E3' },
    });
    const [safe, remove, remark] = [steps['make-safe'], steps['remove'], steps['remark']];
    if (!safe || !remove || !remark) throw new Error('no steps');
    done(await capture(technician, safe.id, typed.safe));
    done(await sign(technician, safe.id, { at: 5000, secret }));
    done(await capture(technician, remove.id, typed.off('ZZ-E1', '1')));
    done(await capture(technician, remark.id, typed.note('Nothing found')));
    done(await sign(technician, remark.id, { at: 5000, secret }));

    expect(await refused(remove.id, { at: 4999, secret })).toMatchObject({ field: 'performedAt' });
    const early = { at: 4999, secret, meaning: 'inspection', signInName: 'ins' } as const;
    expect(await refused(remark.id, early)).toMatchObject({ field: 'performedAt' });
  });

  it('a second time: the other is told who signed and when', async () => {
    const { technician, certifier, password: secret } = hangar;
    const { step } = await openOneStep(hangar);
    done(await sign(technician, step.id, { at: 5000, secret }));

    const answer = await sign(certifier, step.id, { at: 5000, secret });

    expect([problemOf(answer).code, answer.status]).toEqual(['ALREADY_SIGNED', 409]);
    expect(answer.body).toMatchObject({ by: 'Tec Nician', at: expect.stringMatching(/T.*Z$/) });
  });

  it('by a wrong password or PIN, nor without a PIN chosen, nor by a name that is nobody’s', async () => {
    const { office, password } = hangar;
    const guesser = { signInName: 'gue', fullName: 'Gue Sser', roles: ['technician'] };
    const client = await employ(office, guesser);
    const { step } = await openOneStep(hangar);
    const code = async (toSign: Partial<Parameters<typeof sign>[2]>) =>
      problemOf(await sign(client, step.id, { at: 5000, secret: 'wrong', digest: '0'.repeat(64), ...toSign }))
        .code;

    expect(await code({})).toBe('WRONG_PASSWORD');
    expect(await code({ method: 'pin', secret: PIN })).toBe('WRONG_PIN');
    expect(await code({ signInName: 'ins' })).toBe('SIGNER_NOT_PROVEN');
    expect(await code({ signInName: 'nobody', secret: password })).toBe('SIGNER_NOT_PROVEN');
    const tries = [];
    for (let attempt = 0; attempt < 7; attempt += 1) tries.push(await code({ method: 'pin' }));
    expect(tries.at(-1)).toBe('TOO_MANY_ATTEMPTS');
    expect(await code({ secret: password })).toBe('TOO_MANY_ATTEMPTS');
  });
});

describe('a signature', () => {
  it('is undone by its signer or by certifying staff, with the reason, and takes its inspection along', async () => {
    const { technician, inspector, password: secret } = hangar;
    const { id, step } = await openOneStep(hangar);
    const given = done(await sign(technician, step.id, { at: 5000, secret }));
    done(await sign(inspector, step.id, { at: 5001, secret, meaning: 'inspection' }));
    const undoing = { reason: 'The wrong inlet', method: 'password', secret };

    const byInspector = await inspector.post(`/api/step-signatures/${given.id}/undo`, undoing);
    expect(problemOf(byInspector)).toMatchObject({ code: 'NOT_ALLOWED', holders: ['certifying-staff'] });
    done(await technician.post(`/api/step-signatures/${given.id}/undo`, undoing));

    const after = (await stepsOf(technician, id))['+1'];
    expect(after?.standing).toBe('open');
    expect(after?.signatures.map(({ meaning, undone, counts }) => [meaning, undone, counts])).toEqual([
      ['done', true, false],
      ['inspection', false, false],
    ]);
    const again = await technician.post(`/api/step-signatures/${given.id}/undo`, undoing);
    expect(problemOf(again).code).toBe('ALREADY_VOIDED');
    const undone = (await entriesOf(id)).find((each) => each.kind === 'step-signature-undone');
    expect(JSON.parse(undone?.body ?? '{}').done).toMatchObject({
      reason: 'The wrong inlet',
      meaning: 'done',
    });
    done(await sign(technician, step.id, { at: 5000, secret }));
  });

  it('stays in sight and no longer counts once the content is another', async () => {
    const { technician, password: secret } = hangar;
    const { id, step } = await openOneStep(hangar, note);
    done(await capture(technician, step.id, typed.note('Clean')));
    done(await sign(technician, step.id, { at: 5000, secret }));

    done(await capture(technician, step.id, typed.note('A dent at four o’clock')));

    const changed = (await stepsOf(technician, id))['+1'];
    expect(changed?.standing).toBe('changed');
    expect(changed?.signatures.map(({ undone, counts }) => [undone, counts])).toEqual([[false, false]]);
    done(await sign(technician, step.id, { at: 5000, secret }));
    expect((await stepsOf(technician, id))['+1']?.signatures.map((each) => each.counts)).toEqual([
      false,
      true,
    ]);
  });

  it('of one person twice needs a rule set that allows it, and its reason in the words', async () => {
    const { certifier, password: secret } = hangar;
    const { step } = await openOneStep(hangar);
    done(await sign(certifier, step.id, { at: 5000, secret }));
    const twice = { at: 5001, secret, meaning: 'inspection' } as const;

    expect(problemOf(await sign(certifier, step.id, twice)).code).toBe('SAME_PERSON');
    const given = done(
      await sign(certifier, step.id, { ...twice, reinspectionReason: 'Alone at the outstation' }),
    );
    expect(given.statement).toContain('Why alone: Alone at the outstation');
  });
});

describe('a PIN', () => {
  it('is chosen with the password, and told by the session', async () => {
    const { planner, password } = hangar;
    const choose = (pin: string, given = password) =>
      planner.post('/api/session/pin', { password: given, pin });

    expect(done(await planner.get('/api/session'))).toMatchObject({ hasPin: false });
    expect(problemOf(await choose('123456')).code).toBe('PASSWORD_TOO_WEAK');
    expect(problemOf(await choose('12345')).code).toBe('INVALID_FIELDS');
    expect(problemOf(await choose('271828', 'not the password')).code).toBe('WRONG_PASSWORD');
    expect(done(await choose('271828'))).toMatchObject({ hasPin: true });
  });
});
