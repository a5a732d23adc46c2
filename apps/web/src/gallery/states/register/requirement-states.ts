import { AIRFRAME } from '../record-data.js';
import { MODELS, TYPES } from '../register-data.js';
import { FAILED, MISSING, type ScreenState, type StateAnswer } from '../screen-state.js';
import { REQUIREMENT_VIEW, REQUIREMENTS } from './requirement-data.js';

const ok = (body: unknown): StateAnswer => ({ body });

const LIST = {
  'GET /api/requirements': ok(REQUIREMENTS),
  'GET /api/airframe-types': ok(TYPES),
  'GET /api/engine-models': ok(MODELS),
  'GET /api/airframes': ok([AIRFRAME]),
} as const;
const ONE = { 'GET /api/requirements/rq-72-31-01': ok(REQUIREMENT_VIEW) } as const;
const [, , , , , voided] = REQUIREMENTS;

/** Requirements and one of them, in their states. */
export const REQUIREMENT_STATES: readonly ScreenState[] = [
  { name: 'requirements', title: 'Requirements', path: '/requirements', answers: LIST },
  {
    name: 'requirements-all',
    title: 'Requirements, earlier revisions and voided ones too',
    path: '/requirements?all=true',
    answers: LIST,
  },
  {
    name: 'requirements-reader',
    title: 'Requirements, read only',
    path: '/requirements',
    roles: ['auditor'],
    answers: LIST,
  },
  {
    name: 'requirements-empty',
    title: 'Requirements, nothing recorded',
    path: '/requirements',
    answers: { ...LIST, 'GET /api/requirements': ok([]) },
  },
  {
    name: 'requirements-loading',
    title: 'Requirements, on their way',
    path: '/requirements',
    answers: { ...LIST, 'GET /api/requirements': 'never' },
  },
  {
    name: 'requirements-failed',
    title: 'Requirements, failed',
    path: '/requirements',
    answers: { ...LIST, 'GET /api/requirements': FAILED },
  },
  {
    name: 'requirements-offline',
    title: 'Requirements, no connection',
    path: '/requirements',
    offline: true,
    answers: LIST,
  },
  { name: 'requirement', title: 'A requirement', path: '/requirements/rq-72-31-01', answers: ONE },
  {
    name: 'requirement-reader',
    title: 'A requirement, read only',
    path: '/requirements/rq-72-31-01',
    roles: ['technician'],
    answers: ONE,
  },
  {
    name: 'requirement-voided',
    title: 'A requirement, voided',
    path: '/requirements/rq-72-00-01',
    answers: {
      'GET /api/requirements/rq-72-00-01': ok({ requirement: voided, statuses: [], accomplishments: [] }),
    },
  },
  {
    name: 'requirement-missing',
    title: 'No such requirement',
    path: '/requirements/rq-0',
    answers: { 'GET /api/requirements/rq-0': MISSING },
  },
];
