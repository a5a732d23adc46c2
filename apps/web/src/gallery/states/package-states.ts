import { ENGINE } from './component-data.js';
import { AIRFRAMES, FOUR_ENGINES } from './fleet-data.js';
import {
  DUTIES,
  MY_WORK,
  OPEN_PACKAGE,
  ORDERED_PACKAGE,
  PACKAGES,
  PROCEDURES,
  WITHDRAWN_PACKAGE,
} from './package-data.js';
import { COMPONENT_ROWS, LOCATIONS, MODELS, PLACE } from './register-data.js';
import { NOTE, RELEASED_PACKAGE } from './release-data.js';
import { FAILED, MISSING, type ScreenState, type StateAnswer } from './screen-state.js';

type Answers = ScreenState['answers'];

const ok = (body: unknown): StateAnswer => ({ body });
const page = (rows: readonly unknown[], next: string | null = null) => ok({ rows, next });
const airframes: Answers = { 'GET /api/airframes': ok(AIRFRAMES) };
const LIST = 'GET /api/packages';
const ONE = 'GET /api/packages/k-231';
const open: Answers = { [ONE]: ok(OPEN_PACKAGE) };

const work: Answers = {
  ...airframes,
  'GET /api/my-work': ok(MY_WORK),
  [LIST]: page(PACKAGES, 'k-001'),
};

/** A spare, and where it stands. */
const STORE = {
  ...PLACE,
  kind: 'location',
  label: 'Engine store, QXA',
  airframeId: null,
  positionNumber: null,
};

const SPARES = COMPONENT_ROWS.map((row) => ({
  ...row,
  id: 'c-KT-655',
  serialNumber: 'KT-655',
  place: STORE,
}));

const opening: Answers = {
  ...airframes,
  'GET /api/airframes/a-417/positions': ok(FOUR_ENGINES),
  'GET /api/airframes/a-417/requirements': ok(DUTIES),
  'GET /api/locations': ok(LOCATIONS),
  'GET /api/engine-models': ok(MODELS),
  'GET /api/components': page(SPARES),
  'GET /api/components/c-KT-655': ok({
    ...ENGINE,
    id: 'c-KT-655',
    serialNumber: 'KT-655',
    place: STORE,
  }),
  'GET /api/procedures': ok(PROCEDURES),
  'GET /api/rule-sets': ok([]),
};

const PROBLEM = { type: 'about:blank', requestId: '01J9-8A11-08' } as const;

const PLACED = '/packages/new?kind=engine-change&airframe=a-417&position=3';

/** Work, packages, their release, and changes logged afterwards, in their states. */
export const PACKAGE_STATES: readonly ScreenState[] = [
  { name: 'work', title: 'Work', path: '/work', answers: work },
  {
    name: 'work-filtered',
    title: 'Work, a choice that nothing matches',
    path: '/work?status=withdrawn&kind=pod-swap',
    answers: { ...work, [LIST]: page([]) },
  },
  {
    name: 'work-empty',
    title: 'Work, none',
    path: '/work',
    answers: { 'GET /api/airframes': ok([]), 'GET /api/my-work': ok({ packages: [] }), [LIST]: page([]) },
  },
  {
    name: 'work-technician',
    title: 'Work, may not open',
    path: '/work',
    roles: ['technician'],
    answers: work,
  },
  { name: 'work-reader', title: 'Work, read only', path: '/work', roles: ['auditor'], answers: work },
  {
    name: 'work-loading',
    title: 'Work, on its way',
    path: '/work',
    answers: { ...airframes, 'GET /api/my-work': 'never', [LIST]: 'never' },
  },
  {
    name: 'work-failed',
    title: 'Work, failed',
    path: '/work',
    answers: { ...airframes, 'GET /api/my-work': FAILED, [LIST]: FAILED },
  },
  {
    name: 'work-offline',
    title: 'Work, no connection',
    path: '/work',
    offline: true,
    answers: { ...airframes, 'GET /api/my-work': 'lost', [LIST]: 'lost' },
  },
  { name: 'package-new', title: 'Open a package', path: '/packages/new', answers: opening },
  { name: 'package-new-placed', title: 'Open an engine change', path: PLACED, answers: opening },
  {
    name: 'package-new-refused',
    title: 'Open an engine change, refused',
    path: PLACED,
    answers: {
      ...opening,
      'POST /api/packages': {
        status: 422,
        body: {
          ...PROBLEM,
          title: 'The order cannot be',
          status: 422,
          code: 'ORDER_REFUSED',
          detail: 'Another open package changes this position.',
          fields: [
            {
              field: 'order.positionNumber',
              reason: 'EC-0240 is open and changes this position.',
              fix: 'Withdraw it, or choose another position.',
            },
          ],
        },
      },
    },
  },
  {
    name: 'package-new-offline',
    title: 'Open a package, no connection',
    path: PLACED,
    offline: true,
    answers: opening,
  },
  {
    name: 'package-new-empty',
    title: 'Open a package, nothing in the register',
    path: '/packages/new',
    answers: { 'GET /api/airframes': ok([]) },
  },
  {
    name: 'package-new-denied',
    title: 'Open a package, may not',
    path: '/packages/new',
    roles: ['technician'],
    answers: opening,
  },
  {
    name: 'change-new',
    title: 'Log a past change',
    path: '/changes/new?airframe=a-417&position=3',
    answers: { ...opening, 'GET /api/locations': ok([]), 'GET /api/engine-models': ok([]) },
  },
  {
    name: 'change-new-empty',
    title: 'Log a past change, nothing in the register',
    path: '/changes/new',
    answers: { 'GET /api/airframes': ok([]) },
  },
  {
    name: 'change-new-denied',
    title: 'Log a past change, may not',
    path: '/changes/new',
    roles: ['planner'],
    answers: airframes,
  },
  { name: 'package', title: 'Package, not released', path: '/packages/k-231', answers: open },
  {
    name: 'package-ordered',
    title: 'Package, ordered',
    path: '/packages/k-231',
    roles: ['planner'],
    answers: { ...opening, [ONE]: ok(ORDERED_PACKAGE) },
  },
  {
    name: 'package-withdrawn',
    title: 'Package, withdrawn',
    path: '/packages/k-231',
    answers: { [ONE]: ok(WITHDRAWN_PACKAGE) },
  },
  {
    name: 'package-released',
    title: 'Package, released',
    path: '/packages/k-231',
    answers: { [ONE]: ok(RELEASED_PACKAGE), 'GET /api/releases/r-232': ok(NOTE) },
  },
  {
    name: 'package-printing',
    title: 'Package, released, its certificate not printed yet',
    path: '/packages/k-231',
    answers: {
      [ONE]: ok(RELEASED_PACKAGE),
      'GET /api/releases/r-232': ok({ ...NOTE, certificate: null }),
    },
  },
  { name: 'package-missing', title: 'No such package', path: '/packages/k-231', answers: { [ONE]: MISSING } },
  {
    name: 'package-loading',
    title: 'Package, on its way',
    path: '/packages/k-231',
    answers: { [ONE]: 'never' },
  },
  { name: 'package-failed', title: 'Package, failed', path: '/packages/k-231', answers: { [ONE]: FAILED } },
];
