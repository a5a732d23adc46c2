import type { Procedure, ProcedureRow } from '../../../server/procedures.js';
import { TYPES } from '../register-data.js';
import { FAILED, MISSING, type ScreenState, type StateAnswer } from '../screen-state.js';
import { DEFINITIONS, GROUPS, ITEMS } from '../steps/procedure.js';
import { AUTHORISATIONS, TOOL, TOOLS } from './tool-data.js';

type Answers = ScreenState['answers'];

const ok = (body: unknown): StateAnswer => ({ body });

const head = {
  id: 'pr-4',
  code: 'V840-71-EC',
  revision: '4',
  title: 'Engine change, V-840, any position',
  kind: 'engine-change',
  document: 'V-840 maintenance manual, chapter 71',
  documentRevision: '14',
  airframeType: 'V-840',
  engineModel: null,
} as const;

const ROWS: readonly ProcedureRow[] = [
  { ...head, steps: DEFINITIONS.length, latest: true },
  { ...head, id: 'pr-3', revision: '3', documentRevision: '13', steps: 44, latest: false },
];

const PROCEDURE: Procedure = {
  ...head,
  content: { groups: GROUPS, items: ITEMS, steps: DEFINITIONS },
  contentHash: 'd40f59f628d5ac1b9dc794ddc0a46c82bc254bc1107b3ab31ffce1cc05e05fa7',
};

const REFUSED: StateAnswer = {
  status: 400,
  body: {
    type: 'about:blank',
    title: 'Some fields are not right',
    status: 400,
    detail: 'Two fields of the file are not right.',
    code: 'INVALID_FIELDS',
    requestId: '01J9-8A11-07',
    fields: [
      {
        field: 'content.steps[3].waitsFor[0]',
        reason: 'There is no step open-cowl.',
        fix: 'Name a step of this procedure.',
      },
      {
        field: 'content.steps[7].number',
        reason: 'It must be a whole number.',
        fix: 'Enter a whole number.',
      },
    ],
  },
};

const TAKEN: StateAnswer = {
  status: 409,
  body: {
    type: 'about:blank',
    title: 'Already recorded',
    status: 409,
    detail: 'There is already a tool with the serial number "TW-014".',
    code: 'ALREADY_EXISTS',
    requestId: '01J9-8A11-07',
    fields: [
      {
        field: 'serialNumber',
        reason: 'There is already a tool with the serial number "TW-014".',
        fix: 'Use the one that is there, or enter another.',
      },
    ],
  },
};

const FILLED: Answers = {
  'GET /api/tools': ok(TOOLS),
  'GET /api/tools/w-TW-033': ok(TOOL),
  'POST /api/tools': TAKEN,
  'GET /api/procedures': ok(ROWS),
  'GET /api/procedures/pr-4': ok(PROCEDURE),
  'GET /api/procedures/pr-3': ok({ ...PROCEDURE, id: 'pr-3', revision: '3' }),
  'POST /api/procedures': REFUSED,
  'GET /api/authorisations': ok(AUTHORISATIONS),
  'GET /api/airframe-types': ok(TYPES),
};

const NOTHING: Answers = {
  'GET /api/tools': ok([]),
  'GET /api/procedures': ok([]),
  'GET /api/authorisations': ok([]),
};

const SCREENS = [
  { name: 'tools', title: 'Tools', path: '/tools', list: true },
  { name: 'tool', title: 'A tool', path: '/tools/w-TW-033', list: false },
  { name: 'procedures', title: 'Procedures', path: '/procedures', list: true },
  { name: 'procedure', title: 'A procedure', path: '/procedures/pr-4', list: false },
  { name: 'my-authority', title: 'What I may sign', path: '/my-authority', list: true },
] as const;

const each = (answer: StateAnswer): Answers =>
  Object.fromEntries(Object.keys(FILLED).map((route) => [route, answer]));

/** Tools, procedures and what one may sign, in their states. */
export const KEEPING_STATES: readonly ScreenState[] = [
  ...SCREENS.flatMap(({ name, title, path, list }): ScreenState[] => [
    { name, title, path, answers: FILLED },
    { name: `${name}-reader`, title: `${title}, read only`, path, roles: ['auditor'], answers: FILLED },
    { name: `${name}-loading`, title: `${title}, on their way`, path, answers: each('never') },
    { name: `${name}-failed`, title: `${title}, failed`, path, answers: each(FAILED) },
    { name: `${name}-offline`, title: `${title}, no connection`, path, offline: true, answers: FILLED },
    list
      ? { name: `${name}-empty`, title: `${title}, nothing recorded`, path, answers: NOTHING }
      : { name: `${name}-missing`, title: `${title}, no such`, path, answers: each(MISSING) },
  ]),
  { name: 'procedure-replaced', title: 'A procedure, replaced', path: '/procedures/pr-3', answers: FILLED },
  { name: 'pin', title: 'Choosing a PIN', path: '/pin', answers: {} },
];
