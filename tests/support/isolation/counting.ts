import type { HttpClient } from '../http-client.js';
import { instantAt } from '../scenario/instants.js';
import { done } from '../scenario/problem.js';
import { Register } from '../scenario/register.js';
import type { FullRegister } from './full-register.js';
import { get, type NamingRequest, post } from './naming-request.js';

type Ids = FullRegister['ids'];
type WithId = { readonly id: string };

const reason = { reason: 'Test' };
const run = {
  startedAt: instantAt(410),
  endedAt: instantAt(430),
  starts: 1,
  purpose: 'Leak check',
  source: 'S',
};
const reading = { minutes: 60_000, starts: 900 };

/** A counter that was read, a run on the ground at position 1, a test cell, and the rule of a model. */
export async function counted(
  client: HttpClient,
  mark: string,
  { airframe, engineModel }: { readonly airframe: string; readonly engineModel: string },
) {
  const unit = await new Register(client).component({ kind: 'apu', serialNumber: `${mark}-A1` });
  const told = { ...reading, at: instantAt(10), source: 'Sheet 1' };
  const { readings } = done(
    await client.post<{ readonly readings: readonly WithId[] }>(
      `/api/components/${unit.id}/counter-readings`,
      told,
    ),
  );
  const ran = done(
    await client.post<{ readonly run: WithId }>(`/api/airframes/${airframe}/ground-runs`, {
      ...run,
      positionNumber: 1,
    }),
  );
  const cell = done(await client.post<WithId>('/api/test-cells', { name: `${mark} cell` }));
  const { rows } = done(
    await client.get<{ readonly rows: readonly WithId[] }>(`/api/engine-models/${engineModel}/cycle-rules`),
  );
  return {
    unit: unit.id,
    reading: readings[0]?.id ?? '',
    groundRun: ran.run.id,
    testCell: cell.id,
    cycleRule: rows[0]?.id ?? '',
  };
}

/** Requests that name what runs and what counts it. */
export function aboutCounting(theirs: Ids, own: Ids): NamingRequest[] {
  const rule = {
    ...{ perFlight: 1, perLanding: 0, perTouchAndGo: 0, perStart: 0, perAbortedTakeOff: 0, denominator: 1 },
    ...{ source: 'S', revision: '2', effectiveOn: '2025-01-01' },
  };
  return [
    get('/api/airframes/{id}/ground-runs', theirs.airframe),
    get('/api/test-cells/{id}/runs', theirs.testCell),
    get('/api/components/{id}/counter-readings', theirs.unit),
    get('/api/engine-models/{id}/cycle-rules', theirs.engineModel),
    post('/api/airframes/{id}/ground-runs', { ...run, positionNumber: 1 }, theirs.airframe),
    post('/api/test-cells/{id}/runs', run, theirs.testCell),
    post('/api/ground-runs/{id}/void', reason, theirs.groundRun),
    post(
      '/api/components/{id}/counter-readings',
      { ...reading, at: instantAt(20), source: 'S' },
      theirs.unit,
    ),
    post(
      '/api/components/{id}/counter-replacements',
      { at: instantAt(20), last: reading, first: { minutes: 0, starts: 0 }, source: 'S' },
      theirs.unit,
    ),
    post('/api/counter-readings/{id}/void', reason, theirs.reading),
    post('/api/counter-readings/{id}/correct', { ...reading, ...reason }, theirs.reading),
    post('/api/engine-models/{id}/cycle-rules', rule, theirs.engineModel),
    post(
      '/api/engine-models/{id}/cycle-rules',
      { ...rule, airframeTypeId: theirs.airframeType },
      own.engineModel,
    ),
    post('/api/cycle-rules/{id}/void', reason, theirs.cycleRule),
  ];
}
