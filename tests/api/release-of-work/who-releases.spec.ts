import { afterAll, beforeAll, describe, expect, it } from '@jest/globals';
import type { HttpClient } from '../../support/http-client.js';
import { readPdf } from '../../support/pdf-text.js';
import { DAY } from '../../support/scenario/in-service.js';
import { employ } from '../../support/scenario/office.js';
import { done, problemOf } from '../../support/scenario/problem.js';
import { type Hangar, openHangar, openOneStep } from '../../support/signing/hangar.js';
import { blocking, checkOf, release, withCertificate } from '../../support/signing/release-desk.js';
import { openPackage, sign, stepsOf } from '../../support/signing/work-desk.js';

let hangar: Hangar;

beforeAll(async () => {
  hangar = await openHangar();
}, 120_000);

afterAll(() => hangar?.close(), 30_000);

interface Person {
  readonly id: string;
  readonly signInName: string;
}
interface Authorisation {
  readonly id: string;
  readonly scope: string;
}

const personId = async (signInName: string): Promise<string> =>
  done(await hangar.office.administrator.get<{ rows: readonly Person[] }>('/api/people')).rows.find(
    (person) => person.signInName === signInName,
  )?.id ?? '';

const grant = async (signInName: string, scope: string, dates: object = { fromOn: '2020-01-01' }) =>
  done(
    await hangar.office.administrator.post('/api/authorisations', {
      ...{ personId: await personId(signInName), scope, reference: 'List 2', ...dates },
    }),
  );

async function takeAway(signInName: string, scope: string): Promise<void> {
  const { administrator } = hangar.office;
  const held = done(
    await administrator.get<readonly Authorisation[]>(
      `/api/authorisations?personId=${await personId(signInName)}`,
    ),
  );
  for (const { id } of held.filter((each) => each.scope === scope))
    done(
      await administrator.post(`/api/authorisations/${id}/void`, { reason: 'Entered for the wrong person' }),
    );
}

/** A package whose one step is done and inspected. */
async function finishedStep(): Promise<string> {
  const { technician, inspector, password: secret } = hangar;
  const { id, step } = await openOneStep(hangar);
  done(await sign(technician, step.id, { at: 3 * DAY, secret }));
  done(await sign(inspector, step.id, { at: 3 * DAY + 5, secret, meaning: 'inspection' }));
  return id;
}

describe('who releases', () => {
  it('needs an authorisation in force today, and is told so in the check before', async () => {
    const { office, certifier, password } = hangar;
    const id = await finishedStep();
    const unauthorised = await employ(
      office,
      { signInName: 'newc', fullName: 'New Certifier', roles: ['certifying-staff'], licence: 'L new' },
      { authorised: false },
    );

    const check = await checkOf(unauthorised, id);
    expect(blocking(check)).toEqual(['RELEASER_NOT_AUTHORISED']);
    expect(check.objections[0]).toMatchObject({ subject: { kind: 'person', label: 'New Certifier' } });
    // The work is the same, whoever looks: nothing is held against another, and what was seen is the same.
    expect(await checkOf(certifier, id)).toMatchObject({ objections: [], digest: check.digest });

    const refused = await release(unauthorised, id, password);
    expect([refused.status, problemOf(refused).code]).toEqual([422, 'RELEASE_BLOCKED']);

    await grant('newc', 'release', { fromOn: '2020-01-01', toOn: '2020-12-31' });
    expect(blocking(await checkOf(unauthorised, id))).toEqual(['RELEASER_NOT_AUTHORISED']);
    await grant('newc', 'release', { fromOn: '2021-01-01' });
    expect((await release(unauthorised, id, password)).status).toBe(201);
  });

  it('needs a certificate number', async () => {
    const { office } = hangar;
    const id = await finishedStep();
    const unlicensed = await employ(office, {
      ...{ signInName: 'nolic', fullName: 'No Licence', roles: ['certifying-staff'] },
    });
    expect(blocking(await checkOf(unlicensed, id))).toEqual(['RELEASER_WITHOUT_LICENCE']);
  });
});

describe('who signed', () => {
  it('blocks the release when the authorisation no longer stands for the day of signing', async () => {
    const { certifier, password } = hangar;
    const id = await finishedStep();
    const seen = await checkOf(certifier, id);
    await takeAway('tec', 'work');

    const check = await checkOf(certifier, id);
    expect(blocking(check)).toEqual(['SIGNER_NOT_AUTHORISED']);
    expect(check.objections[0]).toMatchObject({ subject: { kind: 'person', label: 'Tec Nician' } });
    expect(problemOf(await release(certifier, id, password, seen)).code).toBe('RELEASE_BLOCKED');

    await grant('tec', 'work', { fromOn: '2020-06-01' });
    expect(blocking(await checkOf(certifier, id))).toEqual([]);
    expect((await release(certifier, id, password)).status).toBe(201);
  });
});

describe('a package on a component in the store', () => {
  const packageOn = async (client: HttpClient): Promise<string> => {
    const { fleet, technician, inspector, password: secret } = hangar;
    const id = await openPackage(client, {
      ...{ kind: 'inspection', componentId: fleet.engines[3]?.id, ruleSet: 'us-121' },
      steps: [{ title: 'Look at the compressor.', inspection: 'independent' }],
    });
    const [step] = Object.values(await stepsOf(client, id));
    done(await sign(technician, step?.id ?? '', { at: 3 * DAY, secret }));
    done(await sign(inspector, step?.id ?? '', { at: 3 * DAY, secret, meaning: 'inspection' }));
    return id;
  };

  it('is released under its own rule set, with the engine’s counters and parts looked at', async () => {
    const { planner, certifier, password } = hangar;
    const id = await packageOn(planner);
    const check = await checkOf(certifier, id);

    expect(check.objections).toEqual([]);
    expect(check.summary).toMatch(/^Package [A-Z]+-\d+, inspection on .* ZZ-E4\. Test\. Completed /);
    expect(check.summary).toMatch(/ Completed 2025-01-04 at 00:00 UTC\.$/);
    expect(check.passed).toContainEqual({ label: 'Life-limited parts with life in hand', count: 2, of: 2 });
    const released = done(await release(certifier, id, password));
    expect(released.subject).toContain('ZZ-E4');

    // 14 CFR 121.709(b)(2)(i) to (iv), and the certificate number of 43.9(a); in our own words, the lists from memory.
    const { certificate } = await withCertificate(certifier, released.id);
    const pdf = await readPdf((await certifier.get(`/api/documents/${certificate?.documentId}`)).bytes);
    const text = pdf.pages.map((page) => page.text).join(' ');
    for (const field of [
      `Airworthiness release ${released.number}`,
      'part number',
      'serial number ZZ-E4',
      'Component serial number ZZ-E4, 1000:00 hours, 1000 cycles',
      '(a) The work was done in accordance with the requirements of the operator’s manual.',
      '(b) Every item required to be inspected was inspected by an authorised person who found it satisfactory.',
      '(c) No condition is known that makes the aircraft unairworthy.',
      '(d) So far as the work performed is concerned the aircraft is in condition for safe operation.',
      '14 CFR 121.709',
      'Signed by Cer Tifier',
      'Certificate number L cer',
    ])
      expect(text).toContain(field);
  });
});
