import { afterAll, beforeAll, describe, expect, it } from '@jest/globals';
import { withClient } from '../support/database.js';
import type { HttpClient } from '../support/http-client.js';
import { releasePackage } from '../support/isolation/full-register.js';
import {
  atMinute,
  type LoggedFlights,
  logFlights,
  onTheWire,
  recordChange,
} from '../support/scenario/acts.js';
import { makeFleet } from '../support/scenario/fleet.js';
import { DAY, daily } from '../support/scenario/in-service.js';
import { employ, type Office, openOffice } from '../support/scenario/office.js';
import { done, problemOf } from '../support/scenario/problem.js';
import { Register } from '../support/scenario/register.js';

interface Note {
  readonly id: string;
  readonly kind: string;
  readonly note: string;
  readonly voided: boolean;
}

interface Row {
  readonly id: string;
  readonly logPage: string;
  readonly gaps: readonly { readonly kind: string; readonly noteId: string | null }[];
  readonly gapNotes: readonly Note[];
}

interface Check {
  readonly digest: string;
  readonly objections: readonly {
    readonly code: string;
    readonly severity: string;
    readonly reason: string;
    readonly subject: { readonly kind: string; readonly id: string };
  }[];
}

let office: Office;
let certifier: HttpClient;
let airframes: { readonly id: string }[];
let engines: { readonly serialNumber: string }[];

beforeAll(async () => {
  office = await openOffice();
  certifier = await employ(office, {
    ...{ signInName: 'roe', fullName: 'Lee Roe', roles: ['certifying-staff'], licence: 'CS 4711' },
  });
  const fleet = await makeFleet(new Register(office.administrator), { airframes: 9, engines: 11 });
  airframes = [...fleet.airframes];
  engines = [...fleet.engines];
}, 120_000);

afterAll(() => office?.close(), 30_000);

/** An airframe with its engines, on whose change the release check is asked. */
interface Gapped {
  readonly airframe: { readonly id: string };
  readonly packageId: string;
  readonly after: string;
}

/**
 * An airframe whose last flight follows neither by its page nor by its station: P1001 to VDL, then P1003 from KRN.
 * Engines are at both its positions, or at the first alone where no release is signed.
 */
async function withGap({ positions = 1 } = {}): Promise<Gapped> {
  const airframe = airframes.pop();
  if (airframe === undefined) throw new Error('all airframes are in use');
  let packageId = '';
  for (const positionNumber of [1, 2].slice(0, positions)) {
    const change = {
      airframeId: airframe.id,
      positionNumber,
      slot: 'engine' as const,
      boundary: atMinute(60),
    };
    const on = { outgoingSerial: null, incomingSerial: engines.pop()?.serialNumber ?? null };
    packageId = done(await recordChange(office.administrator, { ...change, ...on })).id;
  }
  const log = daily(4).filter(({ page }) => page !== 'P1002');
  const { flights } = done(await logFlights(office.administrator, airframe.id, log));
  return { airframe, packageId, after: flights.at(-1)?.id ?? '' };
}

const explain = (
  flightId: string,
  kind: 'pages' | 'stations',
  { note = 'Page P1002 is spoilt', by = office.administrator } = {},
) => by.post<Note>(`/api/flights/${flightId}/gap-notes`, { kind, note });

const voidNote = (id: string, reason = 'It was not so') =>
  office.administrator.post<Note>(`/api/gap-notes/${id}/void`, { reason });

const rowsOf = async ({ airframe }: Gapped, query = '') =>
  done(
    await office.administrator.get<{ readonly rows: readonly Row[]; readonly next: string | null }>(
      `/api/airframes/${airframe.id}/flights${query}`,
    ),
  );

const gapsHeld = async ({ packageId }: Gapped) =>
  done(await certifier.get<Check>(`/api/packages/${packageId}/release-check`)).objections.flatMap(
    ({ code, severity }) => (code.startsWith('LOG_GAP') ? [[code, severity]] : []),
  );

const release = async ({ packageId }: Gapped) => {
  const path = `/api/packages/${packageId}/release`;
  const { digest } = done(await certifier.get<Check>(`${path}-check`));
  return certifier.post(path, { password: office.founded.password, digest }, { ifMatch: '"v1"' });
};

const BLOCKED = ['LOG_GAP', 'blocking'];
const EXPLAINED = ['LOG_GAP_EXPLAINED', 'advisory'];

describe('a gap in the flight log', () => {
  it('blocks the release until notes explain it, and its notes are told with the release', async () => {
    const fleet = await withGap({ positions: 2 });
    expect(await gapsHeld(fleet)).toEqual([BLOCKED, BLOCKED]);
    expect(problemOf(await release(fleet))).toMatchObject({ code: 'RELEASE_BLOCKED' });

    done(await explain(fleet.after, 'pages', { by: certifier }));
    expect(await gapsHeld(fleet)).toEqual([BLOCKED, EXPLAINED]);
    done(await explain(fleet.after, 'stations', { note: 'Towed, after it was typed otherwise' }));
    expect(await gapsHeld(fleet)).toEqual([EXPLAINED, EXPLAINED]);

    const id = await releasePackage(certifier, fleet.packageId, office.founded.password);
    const { objections } = done(await certifier.get<Check>(`/api/releases/${id}`));
    expect(objections.map(({ reason }) => reason)).toEqual([
      'It left from KRN, but the flight before arrived at VDL. Noted: “Towed, after it was typed otherwise”',
      'It follows page P1001. Noted: “Page P1002 is spoilt”',
    ]);
    expect(objections[0]?.subject).toMatchObject({ kind: 'flight', id: fleet.after });
  });

  it('is closed by the missing flight', async () => {
    const fleet = await withGap({ positions: 2 });
    done(await logFlights(office.administrator, fleet.airframe.id, daily(1, { from: 2 })));

    expect(await gapsHeld(fleet)).toEqual([]);
    expect((await rowsOf(fleet)).rows.flatMap(({ gaps }) => gaps)).toEqual([]);
    expect((await release(fleet)).status).toBe(201);
  });

  it('blocks again when its note is voided, and when the flight before it is another', async () => {
    const fleet = await withGap();
    const note = done(await explain(fleet.after, 'pages'));
    done(await explain(fleet.after, 'stations', { note: 'Typed otherwise' }));
    expect(await gapsHeld(fleet)).toEqual([EXPLAINED, EXPLAINED]);

    expect(done(await voidNote(note.id))).toMatchObject({ voided: true, voidReason: 'It was not so' });
    expect(await gapsHeld(fleet)).toEqual([BLOCKED, EXPLAINED]);
    expect(problemOf(await voidNote(note.id))).toMatchObject({ code: 'ALREADY_VOIDED' });
    done(await explain(fleet.after, 'pages', { note: 'Page P1002 was torn out blank' }));
    expect(await gapsHeld(fleet)).toEqual([EXPLAINED, EXPLAINED]);

    const before = (await rowsOf(fleet)).rows.find(({ logPage }) => logPage === 'P1001');
    done(await office.administrator.post(`/api/flights/${before?.id}/void`, { reason: 'Twice' }));
    expect(await gapsHeld(fleet)).toEqual([BLOCKED]);
    expect(problemOf(await explain(fleet.after, 'pages'))).toMatchObject({
      code: 'ALREADY_EXISTS',
      fields: [{ field: 'kind', reason: expect.stringMatching(/another gap there \(P1001 to P1003/) }],
    });
  });
});

describe('the list of flights', () => {
  it('tells the gaps before each flight and every note on them, also over the edge of a page', async () => {
    const fleet = await withGap();
    const wrong = done(await explain(fleet.after, 'pages', { note: 'Lost' }));
    done(await voidNote(wrong.id));
    const note = done(await explain(fleet.after, 'pages'));

    const {
      rows: [row],
      next,
    } = await rowsOf(fleet, '?limit=1');

    expect(row?.gaps).toEqual([
      { kind: 'stations', before: 'VDL', after: 'KRN', noteId: null },
      { kind: 'pages', before: 'P1001', after: 'P1003', noteId: note.id },
    ]);
    expect(row?.gapNotes.map(({ note: text, voided }) => [text, voided])).toEqual([
      ['Page P1002 is spoilt', false],
      ['Lost', true],
    ]);
    const older = (await rowsOf(fleet, `?after=${next}`)).rows;
    expect(older.map(({ logPage, gaps }) => [logPage, gaps])).toEqual([
      ['P1001', []],
      ['P1000', []],
    ]);
  });

  it('has no gap at a voided flight, nor lets it close one', async () => {
    const fleet = await withGap();
    const missing = done(await logFlights(office.administrator, fleet.airframe.id, daily(1, { from: 2 })));
    done(
      await office.administrator.post(`/api/flights/${missing.flights[0]?.id}/void`, { reason: 'Not flown' }),
    );
    const { rows } = await rowsOf(fleet, '?voided=true');
    expect(rows.map(({ logPage, gaps }) => [logPage, gaps.length])).toEqual([
      ['P1003', 2],
      ['P1002', 0],
      ['P1001', 0],
      ['P1000', 0],
    ]);
  });
});

describe('a note on a gap', () => {
  it('is refused where that flight has no such gap, naming the field and what to choose', async () => {
    const fleet = await withGap();
    const [first] = (await rowsOf(fleet)).rows.slice(-1);
    expect(problemOf(await explain(first?.id ?? '', 'pages'))).toMatchObject({
      ...{ status: 422, code: 'REFUSED_BY_FACTS' },
      fields: [{ field: 'kind', reason: expect.stringContaining('P1000'), fix: expect.any(String) }],
    });
    const next = { page: 'P1004', from: 'KRN', takeOff: 5 * DAY, landing: 5 * DAY + 60 };
    const { flights } = done(await logFlights(office.administrator, fleet.airframe.id, [next]));
    expect(problemOf(await explain(flights[0]?.id ?? '', 'pages')).fields).toEqual([
      expect.objectContaining({ field: 'kind', fix: 'Choose "stations": there the log has a gap.' }),
    ]);
  });

  it('is refused twice, on a voided flight, without words, and to a technician', async () => {
    const fleet = await withGap();
    done(await explain(fleet.after, 'pages'));
    expect(problemOf(await explain(fleet.after, 'pages'))).toMatchObject({
      ...{ status: 409, code: 'ALREADY_EXISTS' },
      fields: [{ field: 'kind', reason: expect.stringContaining('Page P1002 is spoilt') }],
    });
    expect(problemOf(await explain(fleet.after, 'stations', { note: '  ' })).fields?.[0]?.field).toBe('note');
    const technician = await employ(office, {
      ...{ signInName: 'tech', fullName: 'Tia Nician', roles: ['technician'] },
    });
    expect((await explain(fleet.after, 'stations', { by: technician })).status).toBe(403);
    done(await office.administrator.post(`/api/flights/${fleet.after}/void`, { reason: 'Twice' }));
    expect(problemOf(await explain(fleet.after, 'stations'))).toMatchObject({ code: 'ALREADY_VOIDED' });
  });

  it('does not go over to the flight that is entered in place of its own', async () => {
    const fleet = await withGap();
    done(await explain(fleet.after, 'pages'));
    done(await explain(fleet.after, 'stations'));
    const [flight] = daily(1, { from: 3 });
    if (flight === undefined) throw new Error('no flight');
    done(
      await office.administrator.post<LoggedFlights>(`/api/flights/${fleet.after}/correct`, {
        ...{ reason: 'Read wrongly', flight: onTheWire({ ...flight, landing: flight.landing + 5 }) },
      }),
    );
    expect(await gapsHeld(fleet)).toEqual([BLOCKED, BLOCKED]);
  });

  it('stands in the journal about the flight and the airframe, as does its voiding', async () => {
    const fleet = await withGap();
    const { id } = done(await explain(fleet.after, 'pages'));
    done(await voidNote(id));
    for (const subject of [fleet.after, fleet.airframe.id]) {
      const kinds = await withClient(office.database.adminUrl, async (client) =>
        (
          await client.query<{ kind: string }>(
            `SELECT e.kind FROM about a JOIN journal_entry e ON e.operator_id = a.operator_id AND e.number = a.number
              WHERE a.subject = $1 AND e.kind LIKE 'gap-note%' ORDER BY e.number`,
            [subject],
          )
        ).rows.map(({ kind }) => kind),
      );
      expect(kinds).toEqual(['gap-note-recorded', 'gap-note-voided']);
    }
  });
});
