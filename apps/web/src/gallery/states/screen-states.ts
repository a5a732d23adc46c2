import { DISK, ENGINE, STAYS } from './component-data.js';
import { AIRFRAMES, BOARD, FOUR_ENGINES, FOUR_ENGINES_THEN, TWO_ENGINES } from './fleet-data.js';
import { PACKAGE_STATES } from './package-states.js';
import { RECORD_STATES } from './record-states.js';
import { KEEPING_STATES } from './register/keeping-states.js';
import { REQUIREMENT_STATUSES } from './register/requirement-data.js';
import { REQUIREMENT_STATES } from './register/requirement-states.js';
import { RELEASE_STATES } from './release-states.js';
import { FAILED, MISSING, type ScreenState } from './screen-state.js';
import { STEP_STATES } from './steps/step-states.js';
import { DUE_BASIS, DUE_ROWS, DUE_TOTALS, NO_TOTALS } from './work-data.js';

const ok = (body: unknown) => ({ body });
const page = (rows: readonly unknown[], next: string | null = null) => ok({ rows, next, basis: DUE_BASIS });
const dueTotals = ok(DUE_TOTALS);
const held = ok(REQUIREMENT_STATUSES);
const airframes = { 'GET /api/airframes': ok(AIRFRAMES) };

/** Every screen in its states. */
export const SCREEN_STATES: readonly ScreenState[] = [
  {
    name: 'positions',
    title: 'Positions, every status',
    path: '/positions',
    answers: { 'GET /api/board': ok(BOARD) },
  },
  {
    name: 'positions-empty',
    title: 'Positions, nothing recorded',
    path: '/positions',
    answers: { 'GET /api/board': ok([]) },
  },
  {
    name: 'positions-empty-reader',
    title: 'Positions, nothing recorded, read only',
    path: '/positions',
    roles: ['auditor'],
    answers: { 'GET /api/board': ok([]) },
  },
  {
    name: 'positions-loading',
    title: 'Positions, on their way',
    path: '/positions',
    answers: { 'GET /api/board': 'never' },
  },
  {
    name: 'positions-failed',
    title: 'Positions, failed',
    path: '/positions',
    answers: { 'GET /api/board': FAILED },
  },
  {
    name: 'positions-offline',
    title: 'Positions, no connection',
    path: '/positions',
    offline: true,
    answers: { 'GET /api/board': 'lost' },
  },
  {
    name: 'airframe',
    title: 'Airframe of four engines',
    path: '/positions/a-417',
    answers: {
      'GET /api/airframes/a-417/positions': ok(FOUR_ENGINES),
      'GET /api/airframes/a-417/requirements': held,
      'GET /api/due-points': page(DUE_ROWS.slice(0, 3), 'more'),
    },
  },
  {
    name: 'airframe-then',
    title: 'Airframe, as of an instant',
    path: '/positions/a-417?at=2025-01-15T12:00Z',
    answers: { 'GET /api/airframes/a-417/positions': ok(FOUR_ENGINES_THEN) },
  },
  {
    name: 'airframe-empty-position',
    title: 'Airframe, a position empty, hours not known',
    path: '/positions/a-203',
    answers: {
      'GET /api/airframes/a-203/positions': ok(TWO_ENGINES),
      'GET /api/airframes/a-203/requirements': ok([]),
      'GET /api/due-points': page(DUE_ROWS.slice(0, 3), 'more'),
    },
  },
  {
    name: 'airframe-reader',
    title: 'Airframe, read only',
    path: '/positions/a-203',
    roles: ['auditor'],
    answers: {
      'GET /api/airframes/a-203/positions': ok(TWO_ENGINES),
      'GET /api/airframes/a-203/requirements': ok([]),
      'GET /api/due-points': page(DUE_ROWS.slice(0, 3), 'more'),
    },
  },
  {
    name: 'airframe-missing',
    title: 'No such airframe',
    path: '/positions/a-000',
    answers: { 'GET /api/airframes/a-000/positions': MISSING },
  },
  {
    name: 'component-limits',
    title: 'Engine, limits',
    path: '/components/c-KT-442',
    answers: {
      'GET /api/components/c-KT-442': ok(ENGINE),
      'GET /api/components/c-KT-442/requirements': held,
      'GET /api/due-points': page(DUE_ROWS.slice(0, 3), 'more'),
    },
  },
  {
    name: 'component-parts',
    title: 'Engine, parts',
    path: '/components/c-KT-442?tab=parts',
    answers: {
      'GET /api/components/c-KT-442': ok(ENGINE),
      'GET /api/components/c-KT-442/requirements': held,
      'GET /api/due-points': page(DUE_ROWS.slice(0, 3), 'more'),
    },
  },
  {
    name: 'component-places',
    title: 'Engine, places',
    path: '/components/c-KT-442?tab=places',
    answers: {
      'GET /api/components/c-KT-442': ok(ENGINE),
      'GET /api/components/c-KT-442/requirements': held,
      'GET /api/due-points': page(DUE_ROWS.slice(0, 3), 'more'),
      'GET /api/components/c-KT-442/places': ok(STAYS),
    },
  },
  {
    name: 'component-part',
    title: 'Part past its limit, never moved',
    path: '/components/c-D80114',
    roles: ['auditor'],
    answers: {
      'GET /api/components/c-D80114': ok(DISK),
      'GET /api/components/c-D80114/requirements': ok([]),
      'GET /api/due-points': page(DUE_ROWS.slice(0, 3), 'more'),
      'GET /api/components/c-D80114/places': ok([]),
    },
  },
  {
    name: 'component-failed',
    title: 'Component, failed',
    path: '/components/c-KT-442',
    answers: { 'GET /api/components/c-KT-442': FAILED },
  },
  {
    name: 'due',
    title: 'Due, every status',
    path: '/due',
    answers: {
      ...airframes,
      'GET /api/due-points': page(DUE_ROWS, 'more'),
      'GET /api/due-points/totals': dueTotals,
    },
  },
  {
    name: 'due-one',
    title: 'Due, one airframe',
    path: '/due?airframe=a-417',
    answers: { ...airframes, 'GET /api/due-points': page(DUE_ROWS), 'GET /api/due-points/totals': dueTotals },
  },
  {
    name: 'due-empty',
    title: 'Due, nothing limited',
    path: '/due',
    answers: {
      'GET /api/airframes': ok([]),
      'GET /api/due-points': page([]),
      'GET /api/due-points/totals': ok(NO_TOTALS),
    },
  },
  {
    name: 'due-failed',
    title: 'Due, failed',
    path: '/due',
    answers: { ...airframes, 'GET /api/due-points': FAILED },
  },
  ...PACKAGE_STATES,
  ...RELEASE_STATES,
  ...STEP_STATES,
  ...RECORD_STATES,
  ...KEEPING_STATES,
  ...REQUIREMENT_STATES,
];
