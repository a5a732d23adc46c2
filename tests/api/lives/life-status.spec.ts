import { setTimeout as sleep } from 'node:timers/promises';
import { afterAll, beforeAll, describe, expect, it } from '@jest/globals';
import { dayFromNow, type ToldLife } from '../../support/limits.js';
import { readPdf } from '../../support/pdf-text.js';
import { logFlights } from '../../support/scenario/acts.js';
import { daily, type InService, putInService } from '../../support/scenario/in-service.js';
import { instantAt } from '../../support/scenario/instants.js';
import { type Office, openOffice } from '../../support/scenario/office.js';
import { done, problemOf } from '../../support/scenario/problem.js';

interface Sheet {
  readonly title: string;
  readonly at: string;
  readonly ruleSet: string | null;
  readonly subject: { readonly serialNumber: string; readonly sinceNew: object };
  readonly parts: readonly {
    readonly module: string;
    readonly place: string;
    readonly serialNumber: string;
    readonly limits: readonly object[];
    readonly usedAt: readonly object[];
    readonly life: ToldLife | null;
    readonly trace: string;
    readonly flags: readonly string[];
  }[];
  readonly limiterByCycles: string | null;
  readonly cautions: readonly string[];
  readonly toSign: readonly string[];
}

let office: Office;
let fleet: InService;
let engineId: string;

beforeAll(async () => {
  office = await openOffice();
  fleet = await putInService(office.administrator, { days: 40 });
  engineId = fleet.engines[0]?.id ?? '';
  const { modelId, register } = fleet;
  done(
    await office.administrator.post('/api/life-limits', {
      ...{ partNumber: 'K-DISK', engineModelId: modelId, authorisation: 'limited', cycles: 1050 },
      ...{ document: '=ZZ-AD 7', revision: '1', effectiveOn: '2024-01-01', basis: 'directive' },
    }),
  );
  const [hub] = fleet.engines[0]?.partIds ?? [];
  const gap = await register.post<{ id: string }>('/api/trace-gaps', {
    ...{ componentId: hub, from: instantAt(-5000), to: instantAt(-4000), note: 'On loan without a log' },
  });
  await register.post('/api/gap-acceptances', {
    ...{ componentId: hub, traceGapId: gap.id, acceptedBy: 'A. Keeper', reference: 'Letter 12', cycles: 300 },
  });
}, 120_000);

afterAll(() => office?.close(), 30_000);

const sheetOf = async (id: string, at?: string): Promise<Sheet> =>
  done(
    await office.administrator.get<Sheet>(
      `/api/components/${id}/life-status${at === undefined ? '' : `?at=${at}`}`,
    ),
  );

async function pdfOf(id: string, at: string): Promise<string> {
  const begun = done(
    await office.administrator.post<{ jobId: string }>('/api/documents', {
      ...{ kind: 'life-status', subjectKind: 'component', subjectId: id, at },
    }),
  );
  for (const deadline = Date.now() + 30_000; Date.now() < deadline; await sleep(100)) {
    const job = done(
      await office.administrator.get<{ state: string; result: { documentId: string } | null }>(
        `/api/jobs/${begun.jobId}`,
      ),
    );
    if (job.state !== 'done') continue;
    const file = await office.administrator.get(`/api/documents/${job.result?.documentId}`);
    const pdf = await readPdf(file.bytes);
    expect(pdf).toMatchObject({ tagged: true, language: 'en-GB' });
    return pdf.pages.map((page) => page.text).join(' ');
  }
  throw new Error('the sheet was not printed within 30 s');
}

const squeezed = (text: string): string => text.normalize('NFC').replace(/\s+/g, '');

/** The cells of comma-separated text. */
function cellsOf(text: string): string[][] {
  const rows: string[][] = [[]];
  let [cell, quoted] = ['', false];
  for (const char of text.replace(/^\uFEFF/, '')) {
    if (char === '"') quoted = !quoted;
    else if (!quoted && (char === ',' || char === '\n')) {
      rows.at(-1)?.push(cell);
      cell = '';
      if (char === '\n') rows.push([]);
    } else if (quoted || char !== '\r') cell += char;
  }
  return rows;
}

describe('the status sheet of limited parts', () => {
  it('tells limits by rating, use by rating, the used share, what is left, and from which document', async () => {
    const { parts, subject, ruleSet } = await sheetOf(engineId);
    expect(subject).toMatchObject({
      serialNumber: 'ZZ-E1',
      sinceNew: { minutes: 64_800, cycles: { units: 1040, denominator: 1 } },
    });
    expect(ruleSet).toContain('145');
    const disk = parts.find((part) => part.serialNumber === 'ZZ-E1-D');
    expect(disk).toMatchObject({
      place: 'Disk',
      module: 'Test engine ZZ-E1',
      limits: [
        { ratingCode: 'A', cycles: 1050 },
        { ratingCode: 'B', cycles: 1050 },
        { ratingCode: null, cycles: 1050 },
      ],
      usedAt: [{ ratingCode: 'A', cycles: { units: 1040 }, minutes: 64_800 }],
      life: { status: 'soon', remainingCycles: 10, used: { units: 104, denominator: 105 } },
      trace: 'verified',
      flags: ['Lowered by a directive'],
    });
  });

  it('flags a worst case with who accepted it', async () => {
    const { parts } = await sheetOf(engineId);
    const hub = parts.find((part) => part.serialNumber === 'ZZ-E1-H');
    expect(hub).toMatchObject({ trace: 'worst-case', life: { flagged: true, remainingCycles: 18_560 } });
    expect(hub?.flags[0]).toBe('Worst case accepted by A. Keeper, Letter 12');
  });

  it('gives no figure for what is not verified', async () => {
    const [second] = fleet.engines[1]?.partIds ?? [];
    done(
      await office.administrator.post('/api/trace-gaps', {
        ...{ componentId: second, from: instantAt(-5000), to: instantAt(-4000), note: 'No log' },
      }),
    );
    const { parts } = await sheetOf(fleet.engines[1]?.id ?? '');
    const hub = parts.find((part) => part.serialNumber === 'ZZ-E2-H');
    expect(hub).toMatchObject({
      trace: 'not-verified',
      life: {
        status: 'not-verified',
        used: null,
        remainingCycles: null,
        remainingMinutes: null,
        projectedOn: null,
      },
    });
  });

  it('is told as at an earlier instant', async () => {
    const at = instantAt(20 * 1440);
    const { parts, at: told } = await sheetOf(engineId, at);
    expect(told).toBe(at);
    expect(parts.find((part) => part.serialNumber === 'ZZ-E1-D')?.life).toMatchObject({
      remainingCycles: 30,
    });
  });

  it('names a place where a limited part is missing', async () => {
    const { slotIds, partIds, id } = fleet.engines[3] ?? { slotIds: { disk: '' }, partIds: [], id: '' };
    expect(slotIds.disk).not.toBe('');
    done(
      await office.administrator.post('/api/placements', {
        ...{ componentId: partIds[1], locationName: 'Store' },
        boundary: { kind: 'instant', at: `${dayFromNow(-1)}T08:00Z` },
      }),
    );
    const { parts } = await sheetOf(id);
    expect(parts.find((part) => part.place === 'Disk')).toMatchObject({ life: null, trace: 'not-verified' });
  });

  it('says the same as data, as text and on paper', async () => {
    done(await logFlights(office.administrator, fleet.airframe.id, daily(11, { from: 40 })));
    const at = `${dayFromNow(0)}T00:00Z`;
    const sheet = await sheetOf(engineId, at);
    const answer = await office.administrator.get<string>(
      `/api/components/${engineId}/life-status.csv?at=${at}`,
    );
    const rows = cellsOf(new TextDecoder('utf-8', { ignoreBOM: true }).decode(answer.bytes));
    const paper = squeezed(await pdfOf(engineId, at));

    const head = rows.findIndex((row) => row[0] === 'Module');
    const table = rows.slice(head + 1, head + 1 + sheet.parts.length);
    expect(table).toHaveLength(sheet.parts.length);
    for (const row of rows.filter((_, index) => index !== head))
      for (const cell of row) expect(paper).toContain(squeezed(cell.replace(/^'/, '')));
    const wire = sheet.parts.map((part) => [
      ...[part.module, part.place, part.serialNumber, ...part.flags],
      ...[part.life?.remainingCycles, part.life?.projectedOn, part.life?.basis, part.life?.document],
    ]);
    for (const [index, values] of wire.entries())
      for (const value of values)
        expect(squeezed((table[index] ?? []).join(' '))).toContain(squeezed(String(value ?? '')));
    // A document's name that a spreadsheet would run is text; an overrun is too.
    const diskRow = table.find((row) => row.includes('ZZ-E1-D')) ?? [];
    expect(diskRow.join()).toContain('=ZZ-AD 7');
    // A negative figure is a figure, not a formula.
    expect(diskRow.some((cell) => /^[=+@-]/.test(cell) && !/^-\d+(:\d\d)?$/.test(cell))).toBe(false);
    expect(diskRow).toContain('-1');
    for (const caution of [...sheet.cautions, ...sheet.toSign]) expect(paper).toContain(squeezed(caution));
  });

  it('refuses what it is not made of', async () => {
    const airframe = await office.administrator.post('/api/documents', {
      ...{ kind: 'life-status', subjectKind: 'airframe', subjectId: fleet.airframe.id },
    });
    expect(problemOf(airframe)).toMatchObject({ status: 422, fields: [{ field: 'subjectKind' }] });
    const history = await office.administrator.post('/api/documents', {
      ...{ kind: 'history', subjectKind: 'component', subjectId: engineId, at: instantAt(0) },
    });
    expect(problemOf(history).fields?.[0]).toMatchObject({ field: 'at' });
    const bad = await office.administrator.get(`/api/components/${engineId}/life-status?at=yesterday`);
    expect(problemOf(bad).fields?.[0]).toMatchObject({ field: 'at' });
  });
});
