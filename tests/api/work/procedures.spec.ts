import { afterAll, beforeAll, describe, expect, it } from '@jest/globals';
import type { HttpClient } from '../../support/http-client.js';
import { employ, type Office, openOffice } from '../../support/scenario/office.js';
import { done, problemOf } from '../../support/scenario/problem.js';
import { smallProcedure } from '../../support/work/small-procedure.js';
import { recordProcedure } from '../../support/work/work-desk.js';

let office: Office;
let planner: HttpClient;
let technician: HttpClient;

beforeAll(async () => {
  office = await openOffice();
  planner = await employ(office, { signInName: 'plan', fullName: 'Pia Planner', roles: ['planner'] });
  technician = await employ(office, {
    signInName: 'tech',
    fullName: 'Tom Technician',
    roles: ['technician'],
  });
}, 120_000);

afterAll(() => office?.close(), 30_000);

interface Row {
  readonly id: string;
  readonly code: string;
  readonly revision: string;
  readonly steps: number;
  readonly latest: boolean;
}

const words = {
  code: 'K1-71-EC',
  title: 'Engine change',
  kind: 'engine-change',
  document: 'K1 maintenance manual',
  documentRevision: '7',
};
const record = (revision: string, content: object, client = planner) =>
  client.post('/api/procedures', { ...words, revision, content });

describe('procedures', () => {
  it('keep every revision as it was recorded', async () => {
    const id = await recordProcedure(planner, { revision: '1' });
    const changed = smallProcedure();
    await recordProcedure(planner, { revision: '2', content: { ...changed, steps: changed.steps.slice(0) } });
    const rows = done(await technician.get<Row[]>('/api/procedures?kind=engine-change'));
    expect(rows.map(({ code, revision, steps, latest }) => [code, revision, steps, latest])).toEqual([
      ['K1-71-EC', '2', 8, true],
      ['K1-71-EC', '1', 8, false],
    ]);
    const one = done(await technician.get<{ content: object }>(`/api/procedures/${id}`));
    expect(one.content).toEqual(smallProcedure());
  });

  it('refuse the same code and revision again', async () => {
    const answer = await record('1', smallProcedure());
    expect(problemOf(answer)).toMatchObject({ status: 409, fields: [{ field: 'revision' }] });
  });

  it('refuse a content that cannot be worked by, naming the step', async () => {
    const content = smallProcedure();
    const bent = {
      ...content,
      steps: content.steps.map((step) =>
        step.key === 'make-safe'
          ? { ...step, waitsFor: ['close-cowl'] }
          : step.key === 'close-cowl'
            ? { ...step, closes: [] }
            : step,
      ),
    };
    const problem = problemOf(await record('3', bent));
    expect(problem.status).toBe(400);
    expect(problem.fields?.map(({ field }) => field)).toEqual([
      'content.steps[0].waitsFor',
      'content.items[0]',
    ]);
  });

  it('refuse a capture of an unknown kind or with a field that is not its own', async () => {
    const content = smallProcedure();
    const with_ = (captures: readonly object[]) => ({
      ...content,
      steps: content.steps.map((step, index) => (index === 0 ? { ...step, captures } : step)),
    });
    const unknown = problemOf(await record('3', with_([{ kind: 'weight', key: 'w', label: 'Weight' }])));
    expect(unknown.fields?.map(({ field }) => field)).toEqual(['content.steps[0].captures[0].kind']);
    const mixed = problemOf(
      await record('3', with_([{ kind: 'check', key: 'seen', label: 'Seen', points: ['1'] }])),
    );
    expect(mixed.fields?.map(({ field }) => field)).toEqual(['content.steps[0].captures[0].points']);
  });

  it('are for one type of airframe or one model of engine, by its designation', async () => {
    const words = {
      ...{ code: 'K1-FOR', revision: '1', title: 'For', kind: 'engine-change', content: smallProcedure() },
      ...{ document: 'Manual', documentRevision: '1' },
    };
    const send = (madeFor: object) =>
      planner.post<{ id: string }>('/api/procedures', { ...words, ...madeFor });
    expect(problemOf(await send({ airframeType: 'No such type' })).fields?.[0]?.field).toBe('airframeType');
    expect(problemOf(await send({ engineModel: 'No such model' })).fields?.[0]?.field).toBe('engineModel');
    const both = problemOf(await send({ airframeType: 'A', engineModel: 'B' }));
    expect([both.status, both.fields?.[0]?.field]).toEqual([400, 'engineModel']);
  });

  it('refuse more than can be worked', async () => {
    const content = smallProcedure();
    const [first] = content.steps;
    const steps = Array.from({ length: 201 }, (_, index) => ({
      ...first,
      key: `s${index}`,
      number: index + 1,
    }));
    expect(problemOf(await record('3', { ...content, steps })).fields?.[0]?.field).toBe('content.steps');
    const long = { ...content, steps: [{ ...first, text: 'x'.repeat(2001) }] };
    expect(problemOf(await record('3', long)).fields?.map(({ field }) => field)).toContain(
      'content.steps[0].text',
    );
  });

  it('are recorded by planners, records and administrators only', async () => {
    expect(problemOf(await record('9', smallProcedure(), technician)).status).toBe(403);
  });
});
