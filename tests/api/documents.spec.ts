import { createHash } from 'node:crypto';
import { setTimeout as sleep } from 'node:timers/promises';
import { afterAll, beforeAll, describe, expect, it } from '@jest/globals';
import { readPdf } from '../support/pdf-text.js';
import { logFlights } from '../support/scenario/acts.js';
import { daily, type InService, putInService } from '../support/scenario/in-service.js';
import { employ, foundAnother, type Office, openOffice, signedIn } from '../support/scenario/office.js';
import { done, problemOf } from '../support/scenario/problem.js';

interface Line {
  readonly at: string;
  readonly placed: string | null;
  readonly title: string;
  readonly detail: string;
  readonly struck: { readonly recordedAt: string; readonly by: string; readonly reason: string } | null;
  readonly adds: {
    readonly minutes: number | null;
    readonly cycles: { readonly units: number; readonly denominator: number } | null;
  } | null;
  readonly totals: { readonly minutes: number | null; readonly cycles: number | null };
  readonly entry: {
    readonly number: number | null;
    readonly recordedAt: string;
    readonly by: string;
    readonly hash: string | null;
  };
}

interface History {
  readonly subject: {
    readonly label: string;
    readonly identity: readonly { readonly name: string; readonly value: string }[];
  };
  readonly lines: readonly Line[];
  readonly totals: {
    readonly lines: number;
    readonly minutes: number | null;
    readonly cycles: number | null;
  };
}

interface JobAnswer {
  readonly state: string;
  readonly done: number;
  readonly total: number | null;
  readonly result: { readonly documentId: string } | null;
  readonly failure: string | null;
}

let office: Office;
let fleet: InService;
let engineId: string;

const LONG_REASON = `Entered for the wrong airframe. ${'The page was read again and again by two people. '.repeat(3)}Ω Łódź — end of the reason`;

beforeAll(async () => {
  office = await openOffice();
  fleet = await putInService(office.administrator, { days: 40 });
  engineId = fleet.engines[0]?.id ?? '';
  const wrong = done(await logFlights(office.administrator, fleet.airframe.id, daily(1, { from: 40 })));
  done(await office.administrator.post(`/api/flights/${wrong.flights[0]?.id}/void`, { reason: LONG_REASON }));
}, 120_000);

afterAll(() => office?.close(), 30_000);

/** Begins a document and waits for its job to end. */
async function prepared(
  subjectKind: string,
  subjectId: string,
  client = office.administrator,
): Promise<JobAnswer> {
  const begun = await client.post<{ jobId: string }>('/api/documents', {
    kind: 'history',
    subjectKind,
    subjectId,
  });
  expect(begun.status).toBe(202);
  for (const deadline = Date.now() + 30_000; Date.now() < deadline; await sleep(100)) {
    const job = done(await client.get<JobAnswer>(`/api/jobs/${begun.body.jobId}`));
    if (job.state !== 'queued' && job.state !== 'running') return job;
  }
  throw new Error('the document was not prepared within 30 s');
}

const instant = (at: string): string => at.replace('T', ' ');
const hours = (minutes: number): string =>
  `${Math.floor(minutes / 60)}:${String(minutes % 60).padStart(2, '0')} h`;

/** A line's members in words, in their order: what has to stand in the document, and nothing else. */
function inWords({ at, placed, title, detail, struck, adds, totals, entry }: Line): string {
  return [
    instant(at),
    ...(placed === null ? [] : [placed]),
    title,
    detail,
    ...(struck === null ? [] : [`Struck ${instant(struck.recordedAt)} by ${struck.by}: ${struck.reason}`]),
    ...(adds === null
      ? []
      : [
          adds.minutes === null ? 'hours not known' : `+${hours(adds.minutes)}`,
          adds.cycles === null
            ? 'cycles not known'
            : `+${adds.cycles.units}${adds.cycles.denominator === 1 ? '' : `/${adds.cycles.denominator}`} cyc`,
        ]),
    totals.minutes === null ? 'hours not known' : hours(totals.minutes),
    totals.cycles === null ? 'cycles not known' : `${totals.cycles} cyc`,
    entry.number === null ? 'No entry' : `No. ${entry.number}`,
    instant(entry.recordedAt),
    entry.by,
    ...(entry.hash === null ? [] : [entry.hash]),
  ].join(' ');
}

/** Texts compared without white space: a wrapped word is the same word. */
const squeezed = (text: string): string => text.normalize('NFC').replace(/\s+/g, '');

describe('the printed history', () => {
  it('shows every member of every line of the data, in order, and nothing between them', async () => {
    const job = await prepared('component', engineId);
    expect(job).toMatchObject({ state: 'done', failure: null });
    const file = await office.administrator.get(`/api/documents/${job.result?.documentId}`);
    const history = done(await office.administrator.get<History>(`/api/components/${engineId}/history`));

    const pdf = await readPdf(file.bytes);
    const heads = 'When (UTC)WhatAddsTotalRecorded'.replace(/\s/g, '');
    const body = pdf.pages
      .map((page) => squeezed(page.text))
      .map((text) => text.slice(text.indexOf(heads) + heads.length))
      .join('');
    const expected = history.lines.map((line) => squeezed(inWords(line))).join('');

    expect(body.startsWith(expected)).toBe(true);
    expect(body.slice(expected.length)).toBe(
      squeezed(
        `At the end: ${hours(history.totals.minutes ?? 0)}, ${history.totals.cycles} cyc. ${history.totals.lines} lines. End of the history.`,
      ),
    );
    expect(job.done).toBe(history.lines.length);
  });

  it('names its subject and its page on every sheet, and says what it is', async () => {
    const job = await prepared('airframe', fleet.airframe.id);
    const pdf = await readPdf(
      (await office.administrator.get(`/api/documents/${job.result?.documentId}`)).bytes,
    );

    expect(pdf.pages.length).toBeGreaterThan(1);
    pdf.pages.forEach(({ text }, index) => {
      expect(text).toContain('Airframe ZZ-101');
      expect(text).toContain(`Page ${index + 1} of ${pdf.pages.length}`);
      expect(text).toMatch(/Prepared by Ada Minister, \d{4}-\d\d-\d\d \d\d:\d\dZ/);
    });
    expect(pdf.pages[0]?.text).toContain(
      'This print is an aid. Approved data and the records required by the rules govern.',
    );
    expect(pdf.pages[0]?.text).toContain('Registration ZZ-101');
  });

  it('is tagged: a title, a language, a heading, and a table with its heads on every sheet', async () => {
    const job = await prepared('component', engineId);
    const pdf = await readPdf(
      (await office.administrator.get(`/api/documents/${job.result?.documentId}`)).bytes,
    );

    expect(pdf).toMatchObject({ tagged: true, title: 'History of Engine ZZ-E1', language: 'en-GB' });
    expect(pdf.pages[0]?.roles).toContain('H1');
    for (const { roles } of pdf.pages) {
      expect(roles.filter((role) => role === 'TH')).toHaveLength(5);
      expect(roles.filter((role) => role === 'TD').length).toBe(
        (roles.filter((role) => role === 'TR').length - 1) * 5,
      );
    }
  });

  it('is kept with its hash and pages, and is sent as a file with a plain name', async () => {
    const job = await prepared('component', engineId);
    const id = job.result?.documentId ?? '';
    const file = await office.administrator.get(`/api/documents/${id}`);
    const listed = done(
      await office.administrator.get<
        { id: string; sha256: string; pages: number; fileName: string; by: string }[]
      >(`/api/documents?subjectId=${engineId}`),
    );

    expect(file.headers.get('content-type')).toBe('application/pdf');
    expect(file.headers.get('content-disposition')).toMatch(
      /^attachment; filename="history-Engine-ZZ-E1-\d{4}-\d\d-\d\d\.pdf"$/,
    );
    const found = listed.find((document) => document.id === id);
    expect(found).toMatchObject({
      sha256: createHash('sha256').update(file.bytes).digest('hex'),
      by: 'Ada Minister',
    });
    expect(found?.pages).toBe((await readPdf(file.bytes)).pages.length);
  });

  it('may be prepared by an auditor, and is nothing to another operator', async () => {
    const auditor = await employ(office, { signInName: 'audra', fullName: 'Audra Tor', roles: ['auditor'] });
    const job = await prepared('component', engineId, auditor);
    const stranger = await signedIn(office.api, await foundAnother(office, 'OTHER'));

    const file = await stranger.get(`/api/documents/${job.result?.documentId}`);
    const begun = await stranger.post('/api/documents', {
      kind: 'history',
      subjectKind: 'component',
      subjectId: engineId,
    });

    expect([file.status, problemOf(file).code]).toEqual([404, 'NOT_FOUND']);
    expect([begun.status, problemOf(begun).code]).toEqual([404, 'NOT_FOUND']);
    expect((await stranger.get<unknown[]>(`/api/documents?subjectId=${engineId}`)).body).toEqual([]);
  });
});
