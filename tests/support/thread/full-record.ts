import type { HttpClient } from '../http-client.js';
import { atMinute, logFlights, type RecordedChange, recordChange } from '../scenario/acts.js';
import { DAY, daily, type InService, putInService } from '../scenario/in-service.js';
import { dateAt, instantAt } from '../scenario/instants.js';
import { done } from '../scenario/problem.js';
import { accomplish, recordRequirement } from '../scenario/requirements.js';
import { recordProcedure, registerWrench } from '../work/work-desk.js';

/** The operator in service with something of every kind on its record. */
export interface FullRecord extends InService {
  readonly engineId: string;
  /** Not released; nothing is held against it but advice. */
  readonly openPackage: RecordedChange;
  readonly releasedPackage: RecordedChange;
  /** Not released; an untraced part blocks it. */
  readonly blockedPackage: RecordedChange;
  readonly importWithErrors: string;
  readonly toolId: string;
  /** A requirement of the airframes, far from due, met once on the first. */
  readonly requirementId: string;
  readonly procedureId: string;
}

const LONG_REASON = `Entered for the wrong airframe. ${'The page was read again by two people. '.repeat(4)}Ω Łódź — end of the reason`;
const BAD_FILE = [
  'registration,log_page,from,to,take_off_utc,landing_utc,touch_and_goes,starts,aborted_take_offs',
  'ZZ-101,T0001,VDL,KRN,2025-06-01 12:00,2025-06-01 11:00,0,1,0',
  'ZZ-999,T0002,VDL,KRN,2025-06-02 10:00,2025-06-02 11:00,x,1,0',
].join('\n');

async function flyOtherwise(client: HttpClient, airframeId: string, days: number): Promise<void> {
  const [flight] = daily(1, { from: days });
  if (flight === undefined) throw new Error('no flight');
  const shutDown = { positionNumber: 2, kind: 'shut-down', minutes: 41 } as const;
  done(
    await logFlights(client, airframeId, [
      { ...flight, touchAndGoes: 3, abortedTakeOffs: 1, starts: 2, exceptions: [shutDown] },
    ]),
  );
  const wrong = done(await logFlights(client, airframeId, daily(2, { from: days + 1 })));
  done(await client.post(`/api/flights/${wrong.flights[1]?.id}/void`, { reason: LONG_REASON }));
  done(
    await client.post(`/api/flights/${wrong.flights[0]?.id}/correct`, {
      reason: 'The landing was misread',
      flight: {
        logPage: `P${1000 + days + 1}`,
        fromStation: 'KRN',
        toStation: 'VDL',
        takeOffAt: instantAt((days + 1) * DAY + 600),
        landingAt: instantAt((days + 1) * DAY + 733),
        touchAndGoes: 0,
        starts: 1,
        abortedTakeOffs: 0,
      },
    }),
  );
}

async function changeLater(client: HttpClient, fleet: InService, days: number): Promise<RecordedChange> {
  const at = { airframeId: fleet.airframe.id, positionNumber: 1 } as const;
  const pod = fleet.pods[0]?.serialNumber ?? '';
  done(
    await recordChange(client, {
      ...at,
      slot: 'pod',
      outgoingSerial: null,
      incomingSerial: pod,
      boundary: { kind: 'after-last', on: dateAt(days + 3) },
    }),
  );
  return done(
    await recordChange(client, {
      ...at,
      slot: 'engine',
      outgoingSerial: 'ZZ-E1',
      incomingSerial: 'ZZ-E3',
      boundary: { kind: 'after-page', page: `P${1000 + days + 1}` },
      ratingCode: 'B',
    }),
  );
}

/** Puts two engines on the second airframe and flies them, the first of them with an untraced part. */
async function fillSecond(client: HttpClient, fleet: InService): Promise<RecordedChange> {
  const airframeId = fleet.airframes[1]?.id ?? '';
  let last: RecordedChange | undefined;
  for (const positionNumber of [1, 2])
    last = done(
      await recordChange(client, {
        airframeId,
        positionNumber,
        slot: 'engine',
        outgoingSerial: null,
        incomingSerial: `ZZ-E${positionNumber + 3}`,
        boundary: atMinute(60),
      }),
    );
  done(await logFlights(client, airframeId, daily(2)));
  const gap = {
    from: instantAt(-90_000),
    to: instantAt(-80_000),
    note: 'No records from the earlier operator',
  };
  done(await client.post('/api/trace-gaps', { componentId: fleet.engines[3]?.partIds[0], ...gap }));
  if (last === undefined) throw new Error('no change');
  return last;
}

async function release(certifier: HttpClient, id: string, password: string): Promise<void> {
  const { digest } = done(await certifier.get<{ digest: string }>(`/api/packages/${id}/release-check`));
  done(await certifier.post(`/api/packages/${id}/release`, { password, digest }, { ifMatch: '"v1"' }));
}

/** Makes the record by HTTP: `days` days of flights, and after them all that can happen otherwise. */
export async function makeFullRecord(
  client: HttpClient,
  certifier: HttpClient,
  { days, password }: { readonly days: number; readonly password: string },
): Promise<FullRecord> {
  const fleet = await putInService(client, { days });
  const engineId = fleet.engines[0]?.id ?? '';
  const releasedPackage = fleet.packages[0];
  if (releasedPackage === undefined) throw new Error('no package');
  await release(certifier, releasedPackage.id, password);
  const overhaul = {
    componentId: engineId,
    kind: 'shop-visit',
    at: instantAt(30),
    evidence: 'Shop report 12',
  };
  done(await client.post('/api/resets', overhaul));
  await flyOtherwise(client, fleet.airframe.id, days);
  const openPackage = await changeLater(client, fleet, days);
  const blockedPackage = await fillSecond(client, fleet);
  const begun = done(
    await client.post<{ id: string }>('/api/imports', {
      kind: 'flights',
      fileName: 'june.csv',
      content: BAD_FILE,
    }),
  );
  return {
    ...{ ...fleet, engineId, openPackage, releasedPackage, blockedPackage, importWithErrors: begun.id },
    toolId: await registerWrench(client),
    requirementId: await metOnce(client, fleet.airframe.id),
    procedureId: await recordProcedure(client),
  };
}

async function metOnce(client: HttpClient, airframeId: string): Promise<string> {
  const { id } = done(
    await recordRequirement(client, '05-20-12C', { anchor: 'airframe', repeat: { cycles: 90_000 } }),
  );
  done(await accomplish(client, { requirementId: id, airframeId, on: dateAt(1) }));
  return id;
}
