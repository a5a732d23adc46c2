import { TWO_ENGINES } from './fleet-data.js';
import { FLIGHTS, GAPS } from './flights/flight-data.js';
import { AIRFRAME, DOCUMENTS, FILE_ROWS, FILES, HISTORY, PEOPLE, REACHED } from './record-data.js';
import { LIFE_SHEET } from './register/life-sheet-data.js';
import { AUTHORISATIONS } from './register/tool-data.js';
import { COMPONENT, COMPONENT_ROWS, FACTS, LIMITS, LOCATIONS, MODELS, TYPES } from './register-data.js';
import { FAILED, type ScreenState, type StateAnswer } from './screen-state.js';

type Answers = ScreenState['answers'];

const ok = (body: unknown): StateAnswer => ({ body });
const page = (rows: readonly unknown[]): StateAnswer => ok({ rows, next: null });

/** The records before anything is entered. */
const NOTHING: Answers = {
  'GET /api/airframes': ok([]),
  'GET /api/airframe-types': ok([]),
  'GET /api/engine-models': ok([]),
  'GET /api/life-limits': ok([]),
  'GET /api/locations': ok([]),
  'GET /api/rule-sets': ok([]),
  'GET /api/components': page([]),
  'GET /api/imports': page([]),
  'GET /api/people': page([]),
  'GET /api/authorisations': ok([]),
};

const FILLED: Answers = {
  'GET /api/airframes': ok([AIRFRAME]),
  'GET /api/airframes/a-417': ok(AIRFRAME),
  'GET /api/airframes/a-417/positions': ok(TWO_ENGINES),
  'GET /api/airframes/a-417/flights': page(FLIGHTS),
  'GET /api/airframes/a-417/openings': ok(FACTS.openings),
  'POST /api/airframes/a-417/flights': { status: 201, body: REACHED },
  'GET /api/airframe-types': ok(TYPES),
  'GET /api/engine-models': ok(MODELS),
  'GET /api/life-limits': ok(LIMITS),
  'GET /api/locations': ok(LOCATIONS),
  'GET /api/rule-sets': ok([]),
  'GET /api/components': page(COMPONENT_ROWS),
  'GET /api/components/c-KT-442': ok(COMPONENT),
  'GET /api/components/c-KT-442/facts': ok(FACTS),
  'GET /api/components/c-KT-442/life-status': ok(LIFE_SHEET),
  'GET /api/components/c-KT-442/history': ok(HISTORY),
  'GET /api/documents': ok(DOCUMENTS),
  'GET /api/imports': page(FILE_ROWS),
  'GET /api/people': page(PEOPLE),
  'GET /api/authorisations': ok(AUTHORISATIONS),
};

const SCREENS = [
  { name: 'flights', title: 'Flights', path: '/flights' },
  { name: 'flights-enter', title: 'Entering flights', path: '/flights/enter' },
  { name: 'imports', title: 'Imports', path: '/imports' },
  { name: 'history', title: 'Whose history', path: '/history' },
  { name: 'history-engine', title: 'History of an engine', path: '/history/components/c-KT-442' },
  { name: 'register', title: 'Register', path: '/register' },
  { name: 'register-types', title: 'Airframe types', path: '/register/airframe-types' },
  { name: 'register-airframes', title: 'Airframes', path: '/register/airframes' },
  { name: 'register-airframe', title: 'An airframe in the register', path: '/register/airframes/a-417' },
  { name: 'register-models', title: 'Engine models', path: '/register/engine-models' },
  { name: 'register-limits', title: 'Life limits', path: '/register/life-limits' },
  { name: 'register-limit-revision', title: 'A revision of limits', path: '/register/life-limits/revision' },
  { name: 'life-status-KT-442', title: 'Status of limited parts', path: '/components/c-KT-442/life-status' },
  { name: 'register-locations', title: 'Locations', path: '/register/locations' },
  { name: 'register-components', title: 'Components', path: '/register/components' },
  { name: 'register-engine', title: 'Building an engine', path: '/register/components/c-KT-442' },
  { name: 'people', title: 'People', path: '/people' },
] as const;

const each = (answers: Answers, answer: StateAnswer): Answers =>
  Object.fromEntries(Object.keys(answers).map((route) => [route, answer]));

/** Pages of one record are never empty. */
const isList = (path: string): boolean => !path.includes('-417') && !path.includes('KT-442');

const FILE_TITLES: Readonly<Record<string, string>> = {
  ready: 'An import, ready to apply',
  checking: 'An import being checked',
  errors: 'An import with errors',
  applied: 'An import, applied',
  again: 'An import that was applied before',
  failed: 'An import that failed',
};

/** The screens of flights, imports, histories, the register and people in their states. */
export const RECORD_STATES: readonly ScreenState[] = [
  ...SCREENS.flatMap(({ name, title, path }): ScreenState[] => [
    { name, title, path, answers: FILLED },
    { name: `${name}-reader`, title: `${title}, read only`, path, roles: ['auditor'], answers: FILLED },
    { name: `${name}-loading`, title: `${title}, on their way`, path, answers: each(FILLED, 'never') },
    { name: `${name}-failed`, title: `${title}, failed`, path, answers: each(FILLED, FAILED) },
    { name: `${name}-offline`, title: `${title}, no connection`, path, offline: true, answers: FILLED },
    ...(isList(path)
      ? [{ name: `${name}-empty`, title: `${title}, nothing recorded`, path, answers: NOTHING }]
      : []),
  ]),
  ...['records', 'certifying-staff', 'auditor'].map(
    (role): ScreenState => ({
      name: `flights-gaps-${role}`,
      title: `Flights after gaps, seen as ${role}`,
      path: '/flights?airframe=a-417&flight=f-0419',
      roles: [role],
      answers: { ...FILLED, 'GET /api/airframes/a-417/flights': page(GAPS) },
    }),
  ),
  ...Object.entries(FILES).map(
    ([name, file]): ScreenState => ({
      name: `import-${name}`,
      title: FILE_TITLES[name] ?? name,
      path: '/imports/i-1',
      answers: { ...FILLED, 'GET /api/imports/i-1': ok(file) },
    }),
  ),
];
