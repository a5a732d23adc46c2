import { setTimeout as sleep } from 'node:timers/promises';
import type { HttpClient } from '../http-client.js';
import { atMinute, logFlights, recordChange } from '../scenario/acts.js';
import { type Fleet, makeFleet } from '../scenario/fleet.js';
import { instantAt } from '../scenario/instants.js';
import { employ, type Office } from '../scenario/office.js';
import { done } from '../scenario/problem.js';
import { Register } from '../scenario/register.js';
import { release } from '../signing/release-desk.js';
import { counted } from './counting.js';
import { openWork } from './open-work.js';
import { plannedFlying } from './planning.js';
import { metRequirement, returned } from './requirements.js';
import { inShop } from './shop.js';

/** One operator's records with something of every kind in them, and the ids of it all. */
export interface FullRegister {
  readonly fleet: Fleet;
  readonly ids: {
    readonly person: string;
    readonly authorisation: string;
    readonly tool: string;
    readonly calibration: string;
    readonly airframe: string;
    readonly airframeType: string;
    readonly engineModel: string;
    readonly lifeLimit: string;
    readonly requirement: string;
    readonly accomplishment: string;
    readonly plannedRate: string;
    readonly plannedFlight: string;
    readonly assessment: string;
    readonly variation: string;
    readonly occurrence: string;
    readonly position: string;
    readonly component: string;
    readonly positionSlot: string;
    readonly partSlot: string;
    readonly flight: string;
    readonly gapNote: string;
    readonly stay: string;
    readonly opening: string;
    readonly traceGap: string;
    readonly gapAcceptance: string;
    readonly reset: string;
    readonly ratingChange: string;
    readonly shopVisit: string;
    readonly tag: string;
    readonly preservation: string;
    readonly package: string;
    readonly release: string;
    readonly procedure: string;
    readonly openPackage: string;
    readonly step: string;
    readonly entry: string;
    readonly photo: string;
    readonly signature: string;
    readonly import: string;
    readonly job: string;
    readonly document: string;
    readonly unit: string;
    readonly reading: string;
    readonly groundRun: string;
    readonly testCell: string;
    readonly cycleRule: string;
  };
}

type WithId = { readonly id: string };

/** Fills an operator's records over HTTP, by its administrator and its certifying staff. */
export async function fillRegister(
  office: Pick<Office, 'api' | 'administrator' | 'founded'>,
  mark: string,
): Promise<FullRegister> {
  const { administrator } = office;
  const fleet = await makeFleet(new Register(administrator), { mark, airframes: 1, engines: 3 });
  const [airframe] = fleet.airframes;
  const [first, second, spare] = fleet.engines;
  if (airframe === undefined || first === undefined || second === undefined || spare === undefined)
    throw new Error('the fleet is too small');
  await install(administrator, {
    airframeId: airframe.id,
    positionNumber: 1,
    serial: first.serialNumber,
    minute: 100,
  });
  const next = { airframeId: airframe.id, positionNumber: 2, serial: second.serialNumber, minute: 200 };
  const packageId = await install(administrator, next);
  const { flights } = done(
    await logFlights(administrator, airframe.id, [{ page: '1', takeOff: 300, landing: 400 }]),
  );
  const pod = airframe.positions[0]?.slots.find(({ kind }) => kind === 'pod');
  const ids = {
    ...{
      airframe: airframe.id,
      airframeType: fleet.typeId,
      engineModel: fleet.modelId,
      lifeLimit: fleet.limitIds[0] ?? '',
    },
    ...{
      component: first.id,
      partSlot: spare.slotIds.hub,
      position: airframe.positions[0]?.id ?? '',
      positionSlot: pod?.id ?? '',
      flight: flights[0]?.id ?? '',
    },
    ...{ package: packageId, release: await certified(office, mark, packageId) },
    ...(await openWork(office, mark, airframe.id)),
    gapNote: await explainedGap(administrator, airframe.id),
    ...(await recordFacts(fleet.register, spare.id)),
    stay: await lastOf(administrator, `/api/components/${first.id}/places`),
    opening: await lastOf(administrator, `/api/airframes/${airframe.id}/openings`),
    person: await lastOf(administrator, '/api/people'),
    authorisation: await lastOf(administrator, '/api/authorisations'),
    ...(await calibratedTool(administrator, mark)),
    ...(await metRequirement(administrator, mark, first.id)),
    ...(await counted(administrator, mark, { airframe: airframe.id, engineModel: fleet.modelId })),
    ...(await plannedFlying(administrator, airframe.id)),
    occurrence: await returned(administrator, airframe.id),
    ...(await inShop(administrator, fleet.pods[0]?.id ?? '')),
    import: await importFlights(administrator, airframe.registration),
    ...(await printHistory(administrator, first.id)),
  };
  return { fleet, ids };
}

async function install(
  client: HttpClient,
  {
    airframeId,
    positionNumber,
    serial,
    minute,
  }: {
    readonly airframeId: string;
    readonly positionNumber: number;
    readonly serial: string;
    readonly minute: number;
  },
): Promise<string> {
  const change = {
    airframeId,
    positionNumber,
    slot: 'engine',
    outgoingSerial: null,
    incomingSerial: serial,
  } as const;
  return done(await recordChange(client, { ...change, boundary: atMinute(minute) })).id;
}

/** A flight that leaves a page out, and why. */
async function explainedGap(client: HttpClient, airframeId: string): Promise<string> {
  const { flights } = done(await logFlights(client, airframeId, [{ page: '3', takeOff: 500, landing: 560 }]));
  const note = { kind: 'pages', note: 'Page 2 is spoilt' };
  return done(await client.post<WithId>(`/api/flights/${flights[0]?.id}/gap-notes`, note)).id;
}

async function recordFacts(register: Register, componentId: string) {
  const idOf = async (path: string, body: object) =>
    (await register.post<WithId>(path, { componentId, ...body })).id;
  const traceGap = await idOf('/api/trace-gaps', { from: instantAt(10), to: instantAt(20), note: 'On loan' });
  const acceptance = {
    traceGapId: traceGap,
    acceptedBy: 'The authority',
    reference: 'Letter 1',
    cycles: 1,
    minutes: 1,
  };
  return {
    traceGap,
    gapAcceptance: await idOf('/api/gap-acceptances', acceptance),
    reset: await idOf('/api/resets', { kind: 'shop-visit', at: instantAt(30), evidence: 'Shop report' }),
    ratingChange: await idOf('/api/rating-changes', { at: instantAt(40), ratingCode: 'B', source: 'Plate' }),
  };
}

async function certified(
  office: Pick<Office, 'api' | 'administrator' | 'founded'>,
  mark: string,
  packageId: string,
): Promise<string> {
  const person = {
    signInName: `cert.${mark.toLowerCase()}`,
    fullName: 'Cora Tifier',
    roles: ['certifying-staff'],
    licence: `${mark}-66`,
  };
  return releasePackage(await employ(office, person), packageId, office.founded.password);
}

async function calibratedTool(client: HttpClient, mark: string) {
  const wrench = {
    serialNumber: `${mark}-TW1`,
    description: 'Torque wrench',
    kind: 'torque-wrench',
    unit: 'N·m',
  };
  const { id: tool } = done(await client.post<WithId>('/api/tools', wrench));
  const { calibrations } = done(
    await client.post<{ readonly calibrations: readonly WithId[] }>(`/api/tools/${tool}/calibrations`, {
      ...{ calibratedOn: '2025-01-01', dueOn: '2026-01-01', certificate: `${mark}-C1` },
    }),
  );
  return { tool, calibration: calibrations[0]?.id ?? '' };
}

/** The id of the last row of a list. */
async function lastOf(client: HttpClient, path: string): Promise<string> {
  const list = done(await client.get<readonly WithId[] | { readonly rows: readonly WithId[] }>(path));
  return ('rows' in list ? list.rows : list).at(-1)?.id ?? '';
}

/** Signs the release of a package, as its check stands. Answers the release's id. */
export async function releasePackage(
  certifier: HttpClient,
  packageId: string,
  password: string,
): Promise<string> {
  return done(await release(certifier, packageId, password)).id;
}

/** Waits until an answer is as wanted. Throws after twenty seconds. */
export async function eventually<T>(ask: () => Promise<T>, isDone: (answer: T) => boolean): Promise<T> {
  for (const deadline = Date.now() + 20_000; ; await sleep(50)) {
    const answer = await ask();
    if (isDone(answer)) return answer;
    if (Date.now() > deadline) throw new Error(`still not: ${JSON.stringify(answer)}`);
  }
}

async function importFlights(client: HttpClient, registration: string): Promise<string> {
  const content = [
    'registration,log_page,from,to,take_off_utc,landing_utc,touch_and_goes,starts,aborted_take_offs',
    `${registration},2,VDL,KRN,2025-02-01 10:00,2025-02-01 11:00,0,1,0`,
  ].join('\n');
  const { id } = done(
    await client.post<WithId>('/api/imports', { kind: 'flights', fileName: 'flights.csv', content }),
  );
  await eventually(
    async () => done(await client.get<{ readonly state: string }>(`/api/imports/${id}`)),
    ({ state }) => state !== 'checking',
  );
  return id;
}

async function printHistory(
  client: HttpClient,
  componentId: string,
): Promise<{ readonly job: string; readonly document: string }> {
  const { jobId } = done(
    await client.post<{ readonly jobId: string }>('/api/documents', {
      kind: 'history',
      subjectKind: 'component',
      subjectId: componentId,
    }),
  );
  const ended = await eventually(
    async () =>
      done(
        await client.get<{ readonly state: string; readonly result: { readonly documentId: string } | null }>(
          `/api/jobs/${jobId}`,
        ),
      ),
    ({ state }) => state !== 'queued' && state !== 'running',
  );
  if (ended.result === null) throw new Error(`the document was not made: ${JSON.stringify(ended)}`);
  return { job: jobId, document: ended.result.documentId };
}
