import { createHash } from 'node:crypto';
import { afterAll, beforeAll, describe, expect, it } from '@jest/globals';
import { readPdf } from '../../support/pdf-text.js';
import { DAY } from '../../support/scenario/in-service.js';
import { instantAt } from '../../support/scenario/instants.js';
import { done, problemOf } from '../../support/scenario/problem.js';
import { type Hangar, openChange, openHangar } from '../../support/signing/hangar.js';
import {
  blocking,
  checkOf,
  idOf,
  release,
  type ShownRelease,
  type Steps,
  withCertificate,
  workChange,
} from '../../support/signing/release-desk.js';
import { capture, type GivenSignature, sign, typed } from '../../support/signing/work-desk.js';

let hangar: Hangar;
let work: { readonly id: string; readonly steps: Steps };
let given: Readonly<Record<string, GivenSignature>>;
let released: ShownRelease;

beforeAll(async () => {
  hangar = await openHangar();
  work = await openChange(hangar, { positionNumber: 1, outgoingSerial: 'ZZ-E1', incomingSerial: 'ZZ-E3' });
}, 120_000);

afterAll(() => hangar?.close(), 30_000);

interface Line {
  readonly title: string;
  readonly detail: string;
  readonly at: string;
  readonly struck: { readonly by: string; readonly reason: string } | null;
  readonly entry: { readonly by: string };
}
const historyOf = async (path: string): Promise<readonly Line[]> =>
  done(await hangar.certifier.get<{ lines: readonly Line[] }>(`/api/${path}/history`)).lines;

const START = 3 * DAY;

/** The end of the work as the certificate tells it. */
const completedWords = (minutes: number): string => {
  const at = instantAt(minutes);
  return `Completed ${at.slice(0, 10)} at ${at.slice(11, 16)} UTC`;
};

describe('the release of an engine change worked by steps', () => {
  it('is blocked by each step that is not signed and by the change that was not made', async () => {
    const check = await checkOf(hangar.certifier, work.id);

    expect(blocking(check)).toEqual(['ORDER_NOT_MADE', ...Array.from({ length: 5 }, () => 'STEP_UNSIGNED')]);
    expect(check.objections[0]?.reason).toBe(
      'Ordered: serial ZZ-E1 off, serial ZZ-E3 on. Nothing was changed there.',
    );
    expect(
      check.objections.filter(({ code }) => code === 'STEP_UNSIGNED').map(({ subject }) => subject),
    ).toContainEqual({
      kind: 'step',
      id: idOf(work.steps, 'install'),
      label: 'Step 4, Step install',
    });
    const refused = await release(hangar.certifier, work.id, hangar.password);
    expect([refused.status, problemOf(refused).code]).toEqual([422, 'RELEASE_BLOCKED']);
  });

  it('waits for the step that was changed after it was signed, and for the inspection that asks for another person', async () => {
    const { technician, certifier, password: secret } = hangar;
    given = await workChange(hangar, work.steps, { off: 'ZZ-E1', on: 'ZZ-E3', position: '1', at: START });
    expect(blocking(await checkOf(certifier, work.id))).toEqual([]);

    const step = idOf(work.steps, 'remark');
    done(await capture(technician, step, typed.note('Drain mast scratched')));
    const changed = await checkOf(certifier, work.id);
    expect(changed.summary).not.toContain('Completed');
    expect(blocking(changed)).toEqual(['STEP_UNSIGNED']);
    expect(changed.objections[0]?.reason).toMatch(/changed after Tec Nician signed it/);

    done(await sign(technician, step, { at: START + 70, secret }));
    const again = await checkOf(certifier, work.id);
    expect(blocking(again)).toEqual(['INSPECTION_MISSING']);

    done(await sign(hangar.inspector, step, { at: START + 80, secret, meaning: 'inspection' }));
    expect(blocking(await checkOf(certifier, work.id))).toEqual([]);
  });

  it('is not signed over a step that was undone since the check was seen', async () => {
    const { technician, inspector, certifier, password: secret } = hangar;
    const seen = await checkOf(certifier, work.id);
    const safe = given['make-safe']?.id ?? '';
    done(
      await technician.post(`/api/step-signatures/${safe}/undo`, {
        reason: 'Wrong breaker',
        method: 'password',
        secret,
      }),
    );

    const refused = await release(certifier, work.id, secret, seen);
    expect([refused.status, problemOf(refused).code]).toEqual([422, 'RELEASE_BLOCKED']);

    done(await sign(technician, idOf(work.steps, 'make-safe'), { at: START + 5, secret }));
    const unseen = await release(inspector, work.id, secret, seen);
    expect([unseen.status, problemOf(unseen).code]).toEqual([403, 'NOT_ALLOWED']);
    const changed = await release(certifier, work.id, secret, seen);
    expect([changed.status, problemOf(changed).code]).toEqual([409, 'CHECK_CHANGED']);
  });

  it('tells what passed, and freezes the package with its steps', async () => {
    const { technician, certifier, password: secret } = hangar;
    const check = await checkOf(certifier, work.id);
    expect(check.passed).toEqual(
      expect.arrayContaining([
        { label: 'Steps signed as they stand', count: 5, of: 5 },
        { label: 'Inspections by another person', count: 2, of: 2 },
        { label: 'Ordered changes made as ordered', count: 1, of: 1 },
      ]),
    );

    released = done(await release(certifier, work.id, secret));

    const entered = await capture(technician, idOf(work.steps, 'remark'), typed.note('Too late'));
    const undone = await technician.post(`/api/step-signatures/${given['remove']?.id}/undo`, {
      ...{ reason: 'Too late', method: 'password', secret },
    });
    expect([entered, undone].map((answer) => [answer.status, problemOf(answer).code])).toEqual([
      [409, 'WRONG_STATE'],
      [409, 'WRONG_STATE'],
    ]);
    expect(await checkOf(certifier, work.id)).toMatchObject({ released: true, digest: check.digest });
  });
});

describe('its certificate', () => {
  it('is printed by the server and kept with its hash', async () => {
    released = await withCertificate(hangar.certifier, released.id);
    const file = await hangar.certifier.get(`/api/documents/${released.certificate?.documentId}`);

    expect(createHash('sha256').update(file.bytes).digest('hex')).toBe(released.certificate?.sha256);
    expect(released.certificate?.fileName).toBe(`release-${released.number}-ZZ-101.pdf`);
    const again = done(
      await hangar.certifier.post<{ jobId: string }>('/api/documents', {
        ...{ kind: 'release-certificate', subjectKind: 'release', subjectId: released.id },
      }),
    );
    expect(again.jobId).toMatch(/^[0-9a-f-]{36}$/);
    expect((await withCertificate(hangar.certifier, released.id)).certificate).toEqual(released.certificate);
  });

  // Regulation (EU) 1321/2014, 145.A.50: the statement, the work, who certifies, when and for whom; from memory.
  it('states field by field what the rule set asks for', async () => {
    const file = await hangar.certifier.get(`/api/documents/${released.certificate?.documentId}`);
    const pdf = await readPdf(file.bytes);
    const text = pdf.pages.map((page) => page.text).join(' ');

    expect(pdf).toMatchObject({
      tagged: true,
      language: 'en-GB',
      title: `Certificate of release to service ${released.number}, ZZ-101`,
    });
    expect(pdf.pages[0]?.roles).toEqual(expect.arrayContaining(['H1', 'H2', 'P']));
    for (const field of [
      `Release ${released.number}`,
      'Aircraft ZZ-101',
      'Engine at position 1: serial ZZ-E1 removed; Engine at position 1: serial ZZ-E3 installed',
      // 14 CFR 43.9(a)(2): the date of completion, here of the last look at a step, not of the installation.
      completedWords(START + 80),
      'Steps 5 of 5 signed',
      'Test manual, chapter 71, revision 1; procedure TEST-EC, revision 1',
      'Engine 1 serial number ZZ-E3, 1000:00 hours, 1000 cycles',
      '(a) The work specified, except as otherwise specified, was carried out in accordance with Part-145.',
      '(b) In respect to that work the aircraft or component is considered ready for release to service.',
      '145.A.50',
      'Limitations and open points None.',
      'Signed by Cer Tifier',
      'Certificate number L cer',
      'Authorisation Authorisation list 1',
      'Organisation Test operator',
      `Signed on ${released.signedAt.slice(0, 10)} at ${released.signedAt.slice(11, 16)} UTC`,
      released.statement,
    ])
      expect(text).toContain(field);
    for (const hash of [released.contentHash, released.snapshotHash])
      expect(text.replace(/\s/g, '')).toContain(`SHA-256${hash}`);
  });

  it('is made of a release alone', async () => {
    const wrong = await hangar.certifier.post('/api/documents', {
      ...{ kind: 'release-certificate', subjectKind: 'airframe', subjectId: hangar.fleet.airframe.id },
    });
    const nothing = await hangar.certifier.post('/api/documents', {
      ...{ kind: 'release-certificate', subjectKind: 'release', subjectId: hangar.fleet.airframe.id },
    });
    expect([wrong, nothing].map((answer) => [answer.status, problemOf(answer).code])).toEqual([
      [422, 'REFUSED_BY_FACTS'],
      [404, 'NOT_FOUND'],
    ]);
  });
});

describe('the history', () => {
  it('tells the whole change on the airframe and on both engines, corrections struck', async () => {
    const { fleet } = hangar;
    for (const path of [
      `airframes/${fleet.airframe.id}`,
      `components/${fleet.engines[0]?.id}`,
      `components/${fleet.engines[2]?.id}`,
    ]) {
      const lines = await historyOf(path);
      const ofTitle = (title: string) => lines.filter((line) => line.title === title);

      expect(ofTitle('Package opened').map(({ detail }) => detail)).toEqual([
        expect.stringMatching(/^Package EC-\d+: Test; procedure TEST-EC, revision 1$/),
      ]);
      expect(ofTitle('Change ordered').map(({ detail }) => detail)).toEqual([
        expect.stringContaining('engine at position 1: ZZ-E1 off, ZZ-E3 on; Test'),
      ]);
      // Five steps, one of them undone and signed again, one changed and signed again.
      expect(ofTitle('Step signed')).toHaveLength(7);
      expect(ofTitle('Step inspected')).toHaveLength(3);
      expect(ofTitle('Step signed').filter(({ struck }) => struck !== null)).toEqual([
        expect.objectContaining({
          at: instantAt(START),
          struck: expect.objectContaining({ by: 'Tec Nician', reason: 'Signature undone: Wrong breaker' }),
        }),
      ]);
      expect(ofTitle('Step signed').map(({ detail }) => detail)).toContainEqual(
        expect.stringMatching(
          /step 4: Step install; Serial on: serial ZZ-E3, position 1; accepted; signed by Tec Nician, licence L tec$/,
        ),
      );
      expect(ofTitle('Released to service').at(-1)?.entry.by).toBe('Cer Tifier');
      expect(lines.at(-1)?.title).toBe('Released to service');
    }
  });
});
