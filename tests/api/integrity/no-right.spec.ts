import { afterAll, beforeAll, describe, expect, it } from '@jest/globals';
import { asRequest, atMinute, logFlights, onTheWire, recordChange } from '../../support/scenario/acts.js';
import { type Fleet, makeFleet } from '../../support/scenario/fleet.js';
import { instantAt } from '../../support/scenario/instants.js';
import { employ, type Office, openOffice } from '../../support/scenario/office.js';
import { done, problemOf } from '../../support/scenario/problem.js';
import { Register } from '../../support/scenario/register.js';
import { storedRows } from '../../support/scenario/stored-rows.js';

let office: Office;
let fleet: Fleet;
let airframeId: string;
let flightId: string;
let packageId: string;

const change = () =>
  ({ airframeId, positionNumber: 1, slot: 'engine', outgoingSerial: null, incomingSerial: 'ZZ-E1' }) as const;

beforeAll(async () => {
  office = await openOffice();
  fleet = await makeFleet(new Register(office.administrator), { engines: 2 });
  airframeId = fleet.airframes[0]!.id;
  packageId = done(await recordChange(office.administrator, { ...change(), boundary: atMinute(1000) })).id;
  const { flights } = done(
    await logFlights(office.administrator, airframeId, [{ page: '1', takeOff: 2000, landing: 2100 }]),
  );
  flightId = flights[0]!.id;
}, 60_000);

afterAll(() => office?.close(), 30_000);

/** What each act is, complete: nothing but the right is missing. */
const acts = (): Readonly<Record<string, readonly [path: string, body: object]>> => ({
  flights: [
    `/api/airframes/${airframeId}/flights`,
    { flights: [onTheWire({ page: '2', takeOff: 3000, landing: 3100 })] },
  ],
  change: [
    '/api/changes',
    { ...asRequest({ ...change(), boundary: atMinute(9000) }), confirmDigest: '0'.repeat(64) },
  ],
  void: [`/api/flights/${flightId}/void`, { reason: 'Test' }],
  placement: [
    '/api/placements',
    { componentId: fleet.engines[1]!.partIds[0], locationName: 'Store', boundary: atMinute(9000) },
  ],
  opening: [
    '/api/openings',
    {
      componentId: fleet.engines[1]!.id,
      at: instantAt(0),
      basis: 'overhaul',
      rows: [{ minutes: 1, cycles: 1 }],
      source: 'S',
    },
  ],
  release: [
    `/api/packages/${packageId}/release`,
    { password: office.founded.password, digest: '0'.repeat(64) },
  ],
  person: [
    '/api/people',
    { signInName: 'new', fullName: 'New', roles: ['auditor'], password: 'a long enough password 1' },
  ],
  location: ['/api/locations', { name: 'New', kind: 'store' }],
});

const KEEPING = ['flights', 'change', 'void', 'placement', 'opening', 'location'];
const MAY_DO: Readonly<Record<string, readonly string[]>> = {
  technician: ['change'],
  inspector: [],
  'certifying-staff': ['release'],
  planner: [],
  records: KEEPING,
  auditor: [],
  administrator: [...KEEPING, 'person'],
};

describe('someone without the right', () => {
  it.each(Object.entries(MAY_DO))('as %s is told who has it, and changes nothing', async (role, allowed) => {
    const person = await employ(office, {
      signInName: `only-${role}`,
      fullName: `Only ${role}`,
      roles: [role],
    });
    const before = await storedRows(office.database.adminUrl);
    for (const [name, [path, body]] of Object.entries(acts())) {
      if (allowed.includes(name)) continue;
      const answer = await person.post(path, body, { ifMatch: '"v1"' });
      const { code, detail, holders = [] } = problemOf(answer);
      expect([name, answer.status, code, holders.length > 0]).toEqual([name, 403, 'NOT_ALLOWED', true]);
      expect([name, detail]).toEqual([
        name,
        expect.stringMatching(/^This needs the role .+, which you do not hold\. Ask someone who does\./),
      ]);
    }
    expect(await storedRows(office.database.adminUrl)).toEqual(before);
  });
});

describe('a release of what was seen', () => {
  it.each([
    ['without its version', {}, 428, 'MISSING_IF_MATCH'],
    ['with a version that is no longer', { ifMatch: '"v99"' }, 412, 'STALE'],
    ['with what is no version', { ifMatch: 'latest' }, 400, 'IF_MATCH_MALFORMED'],
  ])('%s is refused and changes nothing', async (what, headers, status, code) => {
    const signInName = `signs-${status}`;
    const certifier = await employ(office, {
      signInName,
      fullName: `Signs ${what}`,
      roles: ['certifying-staff'],
      licence: 'L',
    });
    const before = await storedRows(office.database.adminUrl);
    const [path, body] = acts()['release']!;
    const answer = await certifier.post(path, body, headers);

    expect([answer.status, problemOf(answer).code]).toEqual([status, code]);
    expect(await storedRows(office.database.adminUrl)).toEqual(before);
  });
});
