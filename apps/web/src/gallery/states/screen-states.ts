import { DISK, ENGINE, STAYS } from './component-data.js';
import { AIRFRAMES, BOARD, FOUR_ENGINES, FOUR_ENGINES_THEN, TWO_ENGINES } from './fleet-data.js';
import { RECORD_STATES } from './record-states.js';
import { FAILED, MISSING, type ScreenState } from './screen-state.js';
import {
  BLOCKED_CHECK,
  CLEAR_CHECK,
  DUE_ROWS,
  NOTE,
  OPEN_PACKAGE,
  PACKAGES,
  RELEASED_PACKAGE,
} from './work-data.js';

const ok = (body: unknown) => ({ body });
const page = (rows: readonly unknown[], next: string | null = null) => ok({ rows, next });
const airframes = { 'GET /api/airframes': ok(AIRFRAMES) };
const open = { 'GET /api/packages/k-231': ok(OPEN_PACKAGE) };
const CHECK = 'GET /api/packages/k-231/release-check';

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
    answers: { 'GET /api/airframes/a-417/positions': ok(FOUR_ENGINES) },
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
    answers: { 'GET /api/airframes/a-203/positions': ok(TWO_ENGINES) },
  },
  {
    name: 'airframe-reader',
    title: 'Airframe, read only',
    path: '/positions/a-203',
    roles: ['auditor'],
    answers: { 'GET /api/airframes/a-203/positions': ok(TWO_ENGINES) },
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
    answers: { 'GET /api/components/c-KT-442': ok(ENGINE) },
  },
  {
    name: 'component-parts',
    title: 'Engine, parts',
    path: '/components/c-KT-442?tab=parts',
    answers: { 'GET /api/components/c-KT-442': ok(ENGINE) },
  },
  {
    name: 'component-places',
    title: 'Engine, places',
    path: '/components/c-KT-442?tab=places',
    answers: { 'GET /api/components/c-KT-442': ok(ENGINE), 'GET /api/components/c-KT-442/places': ok(STAYS) },
  },
  {
    name: 'component-part',
    title: 'Part past its limit, never moved',
    path: '/components/c-D80114',
    roles: ['auditor'],
    answers: { 'GET /api/components/c-D80114': ok(DISK), 'GET /api/components/c-D80114/places': ok([]) },
  },
  {
    name: 'component-failed',
    title: 'Component, failed',
    path: '/components/c-KT-442',
    answers: { 'GET /api/components/c-KT-442': FAILED },
  },
  {
    name: 'changes',
    title: 'Changes',
    path: '/changes',
    answers: { ...airframes, 'GET /api/packages': page(PACKAGES, 'k-001') },
  },
  {
    name: 'changes-empty',
    title: 'Changes, none',
    path: '/changes',
    answers: { 'GET /api/airframes': ok([]), 'GET /api/packages': page([]) },
  },
  {
    name: 'changes-planner',
    title: 'Changes, may not log',
    path: '/changes',
    roles: ['planner'],
    answers: { ...airframes, 'GET /api/packages': page(PACKAGES) },
  },
  {
    name: 'change-new',
    title: 'Log a change',
    path: '/changes/new?airframe=a-417&position=3',
    answers: {
      ...airframes,
      'GET /api/airframes/a-417/positions': ok(FOUR_ENGINES),
      'GET /api/locations': ok([]),
      'GET /api/engine-models': ok([]),
      'GET /api/components': page([]),
    },
  },
  {
    name: 'change-new-empty',
    title: 'Log a change, nothing in the register',
    path: '/changes/new',
    answers: { 'GET /api/airframes': ok([]) },
  },
  {
    name: 'change-new-denied',
    title: 'Log a change, may not',
    path: '/changes/new',
    roles: ['planner'],
    answers: airframes,
  },
  { name: 'package', title: 'Package, not released', path: '/changes/k-231', answers: open },
  {
    name: 'package-released',
    title: 'Package, released',
    path: '/changes/k-231',
    answers: { 'GET /api/packages/k-231': ok(RELEASED_PACKAGE), 'GET /api/releases/r-232': ok(NOTE) },
  },
  {
    name: 'check-blocked',
    title: 'Release check, three points open',
    path: '/changes/k-231/release-check',
    answers: { ...open, [CHECK]: ok(BLOCKED_CHECK) },
  },
  {
    name: 'check-clear',
    title: 'Release check, nothing blocks',
    path: '/changes/k-231/release-check',
    answers: { ...open, [CHECK]: ok(CLEAR_CHECK) },
  },
  {
    name: 'check-denied',
    title: 'Release check, may not sign',
    path: '/changes/k-231/release-check',
    roles: ['technician'],
    answers: { ...open, [CHECK]: ok(CLEAR_CHECK) },
  },
  {
    name: 'check-failed',
    title: 'Release check, failed',
    path: '/changes/k-231/release-check',
    answers: { ...open, [CHECK]: FAILED },
  },
  {
    name: 'due',
    title: 'Due, every status',
    path: '/due',
    answers: { ...airframes, 'GET /api/due-points': page(DUE_ROWS, 'more') },
  },
  {
    name: 'due-one',
    title: 'Due, one airframe',
    path: '/due?airframe=a-417',
    answers: { ...airframes, 'GET /api/due-points': page(DUE_ROWS) },
  },
  {
    name: 'due-empty',
    title: 'Due, nothing limited',
    path: '/due',
    answers: { 'GET /api/airframes': ok([]), 'GET /api/due-points': page([]) },
  },
  {
    name: 'due-failed',
    title: 'Due, failed',
    path: '/due',
    answers: { ...airframes, 'GET /api/due-points': FAILED },
  },
  ...RECORD_STATES,
];
