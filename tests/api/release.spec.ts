import { createHash, randomUUID } from 'node:crypto';
import { afterAll, beforeAll, describe, expect, it } from '@jest/globals';
import { canonical, type Json } from '../../libs/journal/src/canonical.js';
import { withClient } from '../support/database.js';
import type { Answer, HttpClient } from '../support/http-client.js';
import { logFlights, recordChange } from '../support/scenario/acts.js';
import { daily, type InService, putInService } from '../support/scenario/in-service.js';
import { instantAt } from '../support/scenario/instants.js';
import { employ, type Office, openOffice } from '../support/scenario/office.js';
import { done, problemOf } from '../support/scenario/problem.js';
import { storedRows } from '../support/scenario/stored-rows.js';

interface Objection {
  readonly code: string;
  readonly severity: string;
  readonly subject: { readonly label: string };
  readonly reason: string;
  readonly fix: string;
}

interface Check {
  readonly asOf: string;
  readonly statement: string;
  readonly summary: string;
  readonly digest: string;
  readonly objections: readonly Objection[];
  readonly passed: readonly { readonly label: string; readonly count: number; readonly of: number }[];
  readonly released: boolean;
  readonly version: number;
}

interface Note {
  readonly id: string;
  readonly number: string;
  readonly statement: string;
  readonly contentHash: string;
  readonly snapshotHash: string;
  readonly person: string;
  readonly licence: string;
  readonly objections: readonly Objection[];
}

let office: Office;
let fleet: InService;
let certifier: HttpClient;
let password: string;

beforeAll(async () => {
  office = await openOffice();
  password = office.founded.password;
  fleet = await putInService(office.administrator, { days: 3 });
  certifier = await employ(office, {
    signInName: 'roe',
    fullName: 'Lee Roe',
    roles: ['certifying-staff'],
    licence: 'CS 4711',
  });
}, 120_000);

afterAll(() => office?.close(), 30_000);

const checkOf = async (id: string, client = certifier) =>
  done(await client.get<Check>(`/api/packages/${id}/release-check`));

const sign = (
  id: string,
  { client = certifier, ...body }: { client?: HttpClient; digest: string; password?: string },
  version = 1,
  idempotencyKey = randomUUID() as string,
): Promise<Answer<Note>> =>
  client.post(
    `/api/packages/${id}/release`,
    { password, ...body },
    { ifMatch: `"v${version}"`, idempotencyKey },
  );

const packageOf = (index: number): string => fleet.packages[index]?.id ?? '';

/** A new engine change on the first airframe: engine `off` for engine `on` at position 1, after everything flown so far. */
async function changeEngine(off: string, on: string): Promise<string> {
  const last = done(
    await office.administrator.get<{ airframe: { lastLogPage: string } }>(
      `/api/airframes/${fleet.airframe.id}/positions`,
    ),
  ).airframe.lastLogPage;
  const change = { airframeId: fleet.airframe.id, positionNumber: 1, slot: 'engine' as const };
  return done(
    await recordChange(office.administrator, {
      ...change,
      outgoingSerial: off,
      incomingSerial: on,
      boundary: { kind: 'after-page', page: last },
    }),
  ).id;
}

const rows = <T>(sql: string, values: unknown[] = []) =>
  withClient(office.database.adminUrl, async (client) => (await client.query(sql, values)).rows as T[]);

describe('the release check', () => {
  it('tells what was done, the statement of the rule set and what passed', async () => {
    const check = await checkOf(packageOf(0));

    expect(check.objections).toEqual([]);
    expect(check.summary).toMatch(/engine change on ZZ-101\. Engine at position 1: serial ZZ-E1 installed/);
    expect(check.statement).toMatch(/^The work specified/);
    expect(check.passed).toContainEqual({ label: 'Life-limited parts with life in hand', count: 4, of: 4 });
    expect(check).toMatchObject({ released: false, version: 1 });
  });

  it('is the same a while later while nothing was recorded, and another when a flight was', async () => {
    const before = await checkOf(packageOf(1));
    expect((await checkOf(packageOf(1))).digest).toBe(before.digest);

    done(await logFlights(office.administrator, fleet.airframe.id, daily(1, { from: 3 })));

    expect((await checkOf(packageOf(1))).digest).not.toBe(before.digest);
  });

  it('is blocked by a missing log page until the flight is entered', async () => {
    done(await logFlights(office.administrator, fleet.airframe.id, daily(1, { from: 5 })));

    const gap = {
      code: 'LOG_GAP',
      severity: 'blocking',
      subject: expect.objectContaining({ label: 'Log page P1005' }),
    };
    expect((await checkOf(packageOf(1))).objections).toEqual([
      expect.objectContaining({
        ...gap,
        reason: expect.stringContaining('left from KRN, but the flight before arrived at VDL'),
      }),
      expect.objectContaining({ ...gap, reason: expect.stringContaining('follows page P1003') }),
    ]);

    done(await logFlights(office.administrator, fleet.airframe.id, daily(1, { from: 4 })));
    expect((await checkOf(packageOf(1))).objections).toEqual([]);
  });
});

describe('signing a release', () => {
  it('is for certifying staff alone, and for none without a certificate number', async () => {
    const { digest } = await checkOf(packageOf(0));
    const unlicensed = await employ(office, {
      signInName: 'nolicence',
      fullName: 'Nola Licence',
      roles: ['certifying-staff'],
    });

    const byAdministrator = await sign(packageOf(0), { client: office.administrator, digest });
    const without = await sign(packageOf(0), { client: unlicensed, digest });

    expect([byAdministrator.status, problemOf(byAdministrator).code]).toEqual([403, 'NOT_ALLOWED']);
    // 14 CFR 43.9(a): the approver's certificate number is part of the entry.
    expect([without.status, problemOf(without).code]).toEqual([403, 'LICENCE_MISSING']);
  });

  it('refuses a wrong password, another version, no version, and what was not seen, and changes nothing', async () => {
    const { digest } = await checkOf(packageOf(0));
    const before = await storedRows(office.database.adminUrl);

    const wrong = await sign(packageOf(0), { digest, password: 'not the password 12' });
    const stale = await sign(packageOf(0), { digest }, 7);
    const unconditional = await certifier.post(`/api/packages/${packageOf(0)}/release`, { password, digest });
    const unseen = await sign(packageOf(0), { digest: 'f'.repeat(64) });

    expect([wrong.status, problemOf(wrong).code]).toEqual([403, 'WRONG_PASSWORD']);
    expect([stale.status, problemOf(stale).code]).toEqual([412, 'STALE']);
    expect([unconditional.status, problemOf(unconditional).code]).toEqual([428, 'MISSING_IF_MATCH']);
    expect([unseen.status, problemOf(unseen).code]).toEqual([409, 'CHECK_CHANGED']);
    expect(unseen.body).toMatchObject({ seenDigest: 'f'.repeat(64), presentDigest: digest });
    expect(await storedRows(office.database.adminUrl)).toEqual(before);
  });

  it('signs what was seen, closes the package and answers the note; the same act again answers the same', async () => {
    const { digest } = await checkOf(packageOf(0));
    const key = randomUUID();

    const signed = await sign(packageOf(0), { digest }, 1, key);
    const again = await sign(packageOf(0), { digest }, 1, key);

    expect([signed.status, signed.etag]).toEqual([201, '"v2"']);
    expect([again.status, again.body]).toEqual([201, signed.body]);
    const note = signed.body;
    expect(note).toMatchObject({ person: 'Lee Roe', licence: 'CS 4711', objections: [] });
    expect(note.statement).toMatch(
      /Package EC-\d+, engine change on ZZ-101\..*signed by Lee Roe, certificate CS 4711, \d{4}-\d\d-\d\d at \d\d:\d\d UTC\.$/,
    );
    expect(done(await certifier.get<Note>(`/api/releases/${note.id}`))).toEqual(note);
    const work = done(
      await certifier.get<{ status: string; version: number; release: { number: string } }>(
        `/api/packages/${packageOf(0)}`,
      ),
    );
    expect(work).toMatchObject({ status: 'released', version: 2, release: { number: note.number } });
  });

  it('binds the signature to the statement, the signer and the frozen content', async () => {
    const [release] = await rows<{
      snapshot: string;
      snapshot_hash: Buffer;
      content_hash: Buffer;
      number: string;
    }>(
      `SELECT r.snapshot, r.snapshot_hash, s.content_hash, s.recorded_seq AS number FROM release r JOIN signature s ON s.id = r.signature_id WHERE r.package_id = $1`,
      [packageOf(0)],
    );
    const [entry] = await rows<{ body: string }>('SELECT body FROM journal_entry WHERE number = $1', [
      release?.number,
    ]);
    const { signed } = (JSON.parse(entry?.body ?? '{}') as { done: { signed: Json } }).done;

    const sha256 = (text: string) => createHash('sha256').update(text).digest('hex');
    expect(sha256(release?.snapshot ?? '')).toBe(release?.snapshot_hash.toString('hex'));
    expect(signed).toMatchObject({
      contentHash: release?.snapshot_hash.toString('hex'),
      signer: { name: 'Lee Roe', certificate: 'CS 4711' },
    });
    expect(sha256(canonical(signed))).toBe(release?.content_hash.toString('hex'));
  });

  it('cannot be done twice', async () => {
    const second = await sign(packageOf(0), { digest: (await checkOf(packageOf(0))).digest }, 2);

    expect([second.status, problemOf(second).code]).toEqual([409, 'ALREADY_RELEASED']);
  });

  it('freezes the check: flights, changes and corrections recorded later do not show in it', async () => {
    const frozen = await checkOf(packageOf(0));
    expect(frozen.released).toBe(true);

    const flown = done(await logFlights(office.administrator, fleet.airframe.id, daily(2, { from: 6 })));
    done(
      await office.administrator.post(`/api/flights/${flown.flights[0]?.id}/void`, {
        reason: 'Entered twice',
      }),
    );
    await office.administrator.post(`/api/trace-gaps`, {
      componentId: fleet.engines[0]?.partIds[0],
      from: instantAt(-90_000),
      to: instantAt(-80_000),
      note: 'No records from the earlier operator',
    });

    expect(await checkOf(packageOf(0))).toEqual(frozen);
  });

  it('shows in the history of the airframe and of the engine, with who signed it', async () => {
    for (const path of [`airframes/${fleet.airframe.id}`, `components/${fleet.engines[0]?.id}`]) {
      const { lines } = done(
        await certifier.get<{ lines: { title: string; detail: string; entry: { by: string } }[] }>(
          `/api/${path}/history`,
        ),
      );
      const line = lines.find((each) => each.title === 'Released to service');
      expect(line?.entry.by).toBe('Lee Roe');
      expect(line?.detail).toMatch(
        /^Release RN-\d+ of package EC-\d+, signed by Lee Roe, certificate CS 4711; content [0-9a-f]{16}$/,
      );
    }
  });

  it('is refused, with each reason, while something blocks it', async () => {
    const check = await checkOf(packageOf(1));
    const refused = await sign(packageOf(1), { digest: check.digest });

    expect(check.objections[0]).toMatchObject({ code: 'LIMITED_PART_UNTRACED', severity: 'blocking' });
    expect([refused.status, problemOf(refused).code]).toEqual([422, 'RELEASE_BLOCKED']);
    const { objections } = refused.body as unknown as { objections: Objection[] };
    expect(objections).toEqual(check.objections.filter((each) => each.severity === 'blocking'));
    expect(objections[0]?.fix).toMatch(/trace/i);
  });

  it('goes on once the engine with the untraced part is changed', async () => {
    // The page that was voided above is missing in the log until it is entered again.
    done(await logFlights(office.administrator, fleet.airframe.id, daily(1, { from: 6 })));
    const id = await changeEngine('ZZ-E1', 'ZZ-E3');
    const { digest, objections } = await checkOf(id);

    expect(objections.filter((each) => each.severity === 'blocking')).toEqual([]);
    expect((await sign(id, { digest })).status).toBe(201);
  });
});
