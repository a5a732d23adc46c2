import { OPEN_PACKAGE } from './package-data.js';
import { BLOCKED_CHECK, CLEAR_CHECK, RELEASED_PACKAGE, STEPS_CHECK } from './release-data.js';
import { FAILED, type ScreenState, type StateAnswer } from './screen-state.js';

const ok = (body: unknown): StateAnswer => ({ body });
const ONE = 'GET /api/packages/k-231';
const CHECK = 'GET /api/packages/k-231/release-check';
const CHECKED = '/packages/k-231/release-check';
const open = { [ONE]: ok(OPEN_PACKAGE) };

const PROBLEM = { type: 'about:blank', requestId: '01J9-8A11-08' } as const;

/** Somebody else was faster. */
const CHANGED: StateAnswer = {
  status: 409,
  body: {
    ...PROBLEM,
    title: 'The records changed',
    status: 409,
    code: 'CHECK_CHANGED',
    detail: 'Step 12 was undone after this check.',
    fields: [],
  },
};

/** The release check in its states. */
export const RELEASE_STATES: readonly ScreenState[] = [
  {
    name: 'check-blocked',
    title: 'Release check, four points open',
    path: CHECKED,
    answers: { ...open, [CHECK]: ok(BLOCKED_CHECK) },
  },
  {
    name: 'check-steps',
    title: 'Release check, steps, tool, requirement and person',
    path: CHECKED,
    answers: { ...open, [CHECK]: ok(STEPS_CHECK) },
  },
  {
    name: 'check-clear',
    title: 'Release check, nothing blocks',
    path: CHECKED,
    answers: { ...open, [CHECK]: ok(CLEAR_CHECK) },
  },
  {
    name: 'check-changed',
    title: 'Release check, the records overtook it',
    path: CHECKED,
    answers: {
      ...open,
      [CHECK]: ok(CLEAR_CHECK),
      'POST /api/packages/k-231/release': CHANGED,
    },
  },
  {
    name: 'check-denied',
    title: 'Release check, may not sign',
    path: CHECKED,
    roles: ['technician'],
    answers: { ...open, [CHECK]: ok(CLEAR_CHECK) },
  },
  {
    name: 'check-offline',
    title: 'Release check, no connection',
    path: CHECKED,
    offline: true,
    answers: { ...open, [CHECK]: ok(CLEAR_CHECK) },
  },
  {
    name: 'check-released',
    title: 'Release check of a released package',
    path: CHECKED,
    answers: { [ONE]: ok(RELEASED_PACKAGE), [CHECK]: ok({ ...CLEAR_CHECK, released: true }) },
  },
  {
    name: 'check-loading',
    title: 'Release check, under way',
    path: CHECKED,
    answers: { ...open, [CHECK]: 'never' },
  },
  {
    name: 'check-failed',
    title: 'Release check, failed',
    path: CHECKED,
    answers: { ...open, [CHECK]: FAILED },
  },
];
