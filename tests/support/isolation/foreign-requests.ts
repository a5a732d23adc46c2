import { atMinute, onTheWire } from '../scenario/acts.js';
import { instantAt } from '../scenario/instants.js';
import { aboutCounting } from './counting.js';
import type { FullRegister } from './full-register.js';
import { get, type NamingRequest, post } from './naming-request.js';
import { workRequests } from './open-work.js';
import { peopleAndTools } from './people-and-tools.js';
import { aboutPlanning } from './planning.js';
import { aboutRequirements } from './requirements.js';
import { aboutShops } from './shop.js';

type Ids = FullRegister['ids'];

const digest = '0'.repeat(64);
const reason = { reason: 'Test' };
const flight = onTheWire({ page: '99', takeOff: 900, landing: 960 });

/**
 * Every request that names a record by its id, in address or body: `theirs` are the ids named, `own` fill in what
 * else a request needs, so that nothing but the id named can be wrong with it.
 */
export function namingRequests({ ids: theirs }: FullRegister, own: FullRegister): readonly NamingRequest[] {
  return [
    ...readings(theirs),
    ...actsOn(theirs),
    ...additions(theirs, own.ids),
    ...facts(theirs, own.ids),
    ...moves(theirs, own),
    ...peopleAndTools(theirs, own.ids),
    ...aboutRequirements(theirs, own.ids),
    ...aboutCounting(theirs, own.ids),
    ...aboutPlanning(theirs),
    ...aboutShops(theirs),
    ...workRequests(theirs, own.ids),
  ];
}

function readings({
  airframe,
  component,
  document,
  import: file,
  job,
  package: pack,
  release,
}: Ids): NamingRequest[] {
  const ofAirframe = ['', '/counters', '/flights', '/history', '/openings', '/overruns', '/positions'];
  const ofComponent = [
    ...['', '/counters', '/facts', '/history', '/life-status', '/life-status.csv', '/overruns', '/places'],
  ];
  return [
    ...ofAirframe.map((view) => get(`/api/airframes/{id}${view}`, airframe)),
    ...ofComponent.map((view) => get(`/api/components/{id}${view}`, component)),
    get('/api/trial-balance/airframes/{id}', airframe),
    {
      route: 'GET /api/counter-flights',
      path: `/api/counter-flights?carrierId=${airframe}&from=2025-01-01T00:00Z`,
    },
    get('/api/documents/{id}', document),
    get('/api/imports/{id}', file),
    get('/api/imports/{id}/errors.csv', file),
    get('/api/jobs/{id}', job),
    get('/api/packages/{id}', pack),
    get('/api/packages/{id}/release-check', pack),
    get('/api/releases/{id}', release),
  ];
}

function actsOn(theirs: Ids): NamingRequest[] {
  return [
    post('/api/airframes/{id}/flights', { flights: [flight] }, theirs.airframe),
    post('/api/flights/{id}/void', reason, theirs.flight),
    post('/api/flights/{id}/correct', { ...reason, flight }, theirs.flight),
    post('/api/flights/{id}/gap-notes', { kind: 'pages', note: 'N' }, theirs.flight),
    post('/api/gap-notes/{id}/void', reason, theirs.gapNote),
    post('/api/imports/{id}/apply', {}, theirs.import),
    post('/api/imports/{id}/cancel', {}, theirs.import),
    post('/api/jobs/{id}/cancel', {}, theirs.job),
    post('/api/people/{id}/disable', {}, theirs.person),
    post('/api/packages/{id}/release', { password: 'a long enough password 1', digest }, theirs.package),
    post('/api/placements/{stayId}/void', reason, theirs.stay),
    post('/api/openings/{id}/void', reason, theirs.opening),
    post('/api/trace-gaps/{id}/void', reason, theirs.traceGap),
    post('/api/gap-acceptances/{id}/void', reason, theirs.gapAcceptance),
    post('/api/resets/{id}/void', reason, theirs.reset),
    post('/api/rating-changes/{id}/void', reason, theirs.ratingChange),
    post('/api/life-limits/{id}/void', reason, theirs.lifeLimit),
  ];
}

const NEW_AIRFRAME = { registration: 'XX-999', serialNumber: '999', ruleSet: 'eu-145', owner: 'O' };
const NEW_COMPONENT = { maker: 'M', partNumber: 'P', serialNumber: 'S', description: 'D', owner: 'O' };
const NEW_LIMIT = { partNumber: 'P', ratingCode: null, authorisation: 'limited', cycles: 1 };
const NEW_MODEL = {
  kind: 'engine',
  maker: 'M',
  designation: 'X',
  lifeMethod: 'pro-rata',
  lifeSource: 'S',
  ratings: [],
};
const NEW_RULE = {
  perFlight: 1,
  perLanding: 0,
  perTouchAndGo: 0,
  perStart: 0,
  perAbortedTakeOff: 0,
  denominator: 1,
};
const SOURCE = { source: 'S', revision: '1' };
const REVISION = { document: 'D', revision: '1', effectiveOn: '2020-01-01' };
const LIMITS = { ...REVISION, basis: 'manual' };
const OPENING = { at: instantAt(0), basis: 'overhaul', source: 'S' };
const ROW = { ratingCode: null, minutes: 1, cycles: 1 };

function additions(
  { airframe, airframeType: airframeTypeId, component, engineModel: engineModelId }: Ids,
  own: Ids,
): NamingRequest[] {
  return [
    post('/api/airframes', { ...NEW_AIRFRAME, airframeTypeId }),
    post('/api/engine-models', { ...NEW_MODEL, cycleRules: [{ ...NEW_RULE, ...SOURCE, airframeTypeId }] }),
    post('/api/life-limits', { ...NEW_LIMIT, ...REVISION, engineModelId }),
    post('/api/life-limits/preview', { ...LIMITS, rows: [{ ...NEW_LIMIT, engineModelId }] }),
    post('/api/life-limits/accept', { ...LIMITS, rows: [{ ...NEW_LIMIT, engineModelId }], digest }),
    post('/api/components', { ...NEW_COMPONENT, kind: 'engine', engineModelId }),
    post('/api/openings', { ...OPENING, rows: [ROW], componentId: component }),
    post('/api/openings', { ...OPENING, rows: [ROW], basis: 'new', airframeId: airframe }),
    post('/api/openings', {
      ...OPENING,
      rows: [{ ...ROW, ratingCode: 'A' }],
      componentId: own.component,
      engineModelId,
    }),
  ];
}

function facts({ component: componentId, traceGap: traceGapId }: Ids, own: Ids): NamingRequest[] {
  const acceptance = { acceptedBy: 'A', reference: 'R', cycles: 1, minutes: 1 };
  return [
    post('/api/trace-gaps', { componentId, from: instantAt(50), to: instantAt(60), note: 'N' }),
    post('/api/gap-acceptances', { ...acceptance, componentId }),
    post('/api/gap-acceptances', { ...acceptance, componentId: own.component, traceGapId }),
    post('/api/resets', { componentId, kind: 'overhaul', at: instantAt(70), evidence: 'E' }),
    post('/api/rating-changes', { componentId, at: instantAt(80), ratingCode: 'A', source: 'S' }),
    post('/api/documents', { kind: 'history', subjectKind: 'component', subjectId: componentId }),
  ];
}

function moves(
  { airframe: airframeId, component, positionSlot }: Ids,
  { ids: own, fleet }: FullRegister,
): NamingRequest[] {
  const boundary = atMinute(800);
  const [there, , spare] = fleet.engines.map(({ serialNumber }) => serialNumber);
  const serials = { outgoingSerial: there, incomingSerial: spare, removedToLocation: 'Store' };
  const change = { airframeId, positionNumber: 1, slot: 'engine', ...serials, boundary, ...reason };
  return [
    post('/api/placements', { componentId: component, locationName: 'Store', boundary }),
    post('/api/placements', { componentId: own.component, slotId: positionSlot, boundary }),
    post('/api/placements', {
      componentId: own.component,
      slotId: own.partSlot,
      boundary: { kind: 'after-page', page: '1', airframeId },
    }),
    post('/api/changes/preview', change),
    post('/api/changes', { ...change, confirmDigest: digest }),
    post('/api/documents', { kind: 'history', subjectKind: 'airframe', subjectId: airframeId }),
  ];
}

const WHOLE_LISTS = [
  'test-cells',
  'authorisations',
  'my-work',
  'procedures',
  'tools',
  'requirements',
  'shop-visits',
  'spares',
  ...[
    'airframe-types',
    'airframes',
    'board',
    'components',
    'due-points',
    'due-points/totals',
    'due-points.csv',
    'due-points.ndjson',
    'engine-models',
    'imports',
    'life-limits',
  ],
  ...['locations', 'packages', 'people', 'rule-sets', 'session', 'trial-balance'],
];

/** Lists, asked whole and asked for one thing of theirs. */
export function lists({ ids: theirs }: FullRegister): readonly NamingRequest[] {
  const list = (route: string, query = ''): NamingRequest => ({
    route: `GET ${route}`,
    path: `${route}${query}`,
  });
  return [
    ...WHOLE_LISTS.map((name) => list(`/api/${name}`)),
    list('/api/journal', `?subject=${theirs.component}`),
    list('/api/documents', `?subjectId=${theirs.component}`),
    ...['', '/totals', '.csv', '.ndjson'].flatMap((view) => [
      list(`/api/due-points${view}`, `?airframeId=${theirs.airframe}`),
      list(`/api/due-points${view}`, `?positionId=${theirs.position}`),
      list(`/api/due-points${view}`, `?componentId=${theirs.component}`),
    ]),
    list('/api/due-points', `?airframeId=${theirs.airframe}`),
    list('/api/shop-visits', `?componentId=${theirs.component}`),
    list('/api/packages', `?airframeId=${theirs.airframe}`),
    list('/api/life-limits', `?engineModelId=${theirs.engineModel}`),
    list('/api/components', `?search=${theirs.component.slice(0, 8)}`),
  ];
}
