import { NOTE, RELEASED_PACKAGE } from '../release-data.js';
import { FAILED, type ScreenState, type StateAnswer } from '../screen-state.js';
import { FROZEN, HALF, PLAIN, READY, REJECTED, SHELL, STATEMENT, TOOLS } from './works.js';

const ok = (body: unknown): StateAnswer => ({ body });

const problem = (status: number, code: string, title: string, detail: string, more = {}): StateAnswer => ({
  status,
  body: { type: 'about:blank', title, status, detail, code, fields: [], requestId: '01J9-8A11-09', ...more },
});

const PATH = '/packages/k-300';
const STEPS = 'GET /api/packages/k-300/steps';
const SIGN = 'POST /api/steps/torque-forward/signatures';

const answers = (steps: StateAnswer, more: Readonly<Record<string, StateAnswer>> = {}) => ({
  'GET /api/packages/k-300': ok(SHELL),
  'GET /api/tools': ok(TOOLS),
  'GET /api/components': ok({ rows: [], next: null }),
  'GET /api/steps/torque-forward/statement': ok(STATEMENT),
  'GET /api/steps/part-fuel/statement': ok(STATEMENT),
  'POST /api/steps/torque-forward/entries': ok(REJECTED.steps.find(({ id }) => id === 'torque-forward')),
  [STEPS]: steps,
  ...more,
});

const TECHNICIAN = ['technician', 'certifying-staff'];

const WORKS: readonly (Partial<ScreenState> & Pick<ScreenState, 'name' | 'title'>)[] = [
  { name: 'steps', title: 'Engine change by steps, half way' },
  { name: 'steps-torque', title: 'A torque step, half done', path: `${PATH}?step=torque-forward` },
  {
    name: 'steps-rejected',
    title: 'A torque out of range, kept as rejected',
    path: `${PATH}?step=torque-forward`,
    answers: answers(ok(REJECTED)),
  },
  {
    name: 'steps-ready',
    title: 'A torque step to sign',
    path: `${PATH}?step=torque-forward`,
    answers: answers(ok(READY), { [SIGN]: ok({}) }),
  },
  {
    name: 'steps-signed-first',
    title: 'A step that somebody else signs first',
    path: `${PATH}?step=torque-forward`,
    answers: answers(ok(READY), {
      [SIGN]: problem(409, 'ALREADY_SIGNED', 'Already signed', 'Step 10 is signed already.', {
        by: 'Ada Lindqvarn',
        at: '2026-11-25T02:11Z',
      }),
    }),
  },
  {
    name: 'steps-changed-meanwhile',
    title: 'A step that changes before it is signed',
    path: `${PATH}?step=torque-forward`,
    answers: answers(ok(READY), {
      [SIGN]: problem(409, 'CHECK_CHANGED', 'The step changed', 'An entry was added after you read it.'),
    }),
  },
  {
    name: 'steps-not-authorised',
    title: 'A signer without authority today',
    path: `${PATH}?step=torque-forward`,
    answers: answers(ok(READY), {
      [SIGN]: problem(
        403,
        'NOT_AUTHORISED_TODAY',
        'Not authorised today',
        'Wen Tolvarsen holds no authorisation in force today for: work on this type of airframe.',
      ),
    }),
  },
  { name: 'steps-blocked', title: 'A blocked step', path: `${PATH}?step=lift` },
  { name: 'steps-to-inspect', title: 'A step to inspect, by who did it', path: `${PATH}?step=part-fuel` },
  { name: 'steps-changed', title: 'A step changed since it was signed', path: `${PATH}?step=note-standard` },
  { name: 'steps-signed', title: 'A signed step', path: `${PATH}?step=pull-breakers` },
  { name: 'steps-cautions', title: 'A signed step with cautions', path: `${PATH}?step=open-cowls` },
  { name: 'steps-papers', title: 'Papers and a picture', path: `${PATH}?step=compare-papers` },
  {
    name: 'steps-component',
    title: 'The engine that comes off',
    path: `${PATH}?step=release-mounts`,
    answers: answers(ok(REJECTED)),
  },
  { name: 'steps-run', title: 'A leak check and readings', path: `${PATH}?step=run` },
  { name: 'steps-fuel', title: 'A count and one nut', path: `${PATH}?step=rejoin-fuel` },
  {
    name: 'steps-reader',
    title: 'Steps, read only',
    path: `${PATH}?step=torque-forward`,
    roles: ['auditor'],
  },
  {
    name: 'steps-planner',
    title: 'Steps, may not sign',
    path: `${PATH}?step=torque-forward`,
    roles: ['planner'],
  },
  {
    name: 'steps-offline',
    title: 'Steps, no connection',
    path: `${PATH}?step=torque-forward`,
    lostAfter: STEPS,
  },
  { name: 'steps-loading', title: 'Steps on their way', answers: answers('never') },
  { name: 'steps-failed', title: 'Steps, failed', answers: answers(FAILED) },
  {
    name: 'steps-none',
    title: 'A package whose steps are gone',
    answers: answers(ok({ ...PLAIN, steps: [] })),
  },
  {
    name: 'steps-released',
    title: 'Steps of a released package',
    path: `${PATH}?step=pull-breakers`,
    answers: answers(ok(FROZEN), {
      'GET /api/releases/r-232': ok(NOTE),
      'GET /api/packages/k-300': ok({ ...SHELL, status: 'released', release: RELEASED_PACKAGE.release }),
    }),
  },
  { name: 'steps-plain', title: 'Steps without lanes', answers: answers(ok(PLAIN)) },
];

/** A package worked by steps, in its states. */
export const STEP_STATES: readonly ScreenState[] = WORKS.map((state) => ({
  path: PATH,
  roles: TECHNICIAN,
  answers: answers(ok(HALF)),
  ...state,
}));
