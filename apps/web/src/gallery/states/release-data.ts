import type { ReleaseCheck, ReleaseNote } from '../../server/wire.js';
import type { WorkPackage } from '../../server/work.js';
import { OPEN_PACKAGE, ROW } from './package-data.js';
import { OBJECTIONS, objection } from './work-data.js';

const PASSED = [
  { label: 'Positions with an engine', count: 3, of: 4 },
  { label: 'Engines with known hours and cycles', count: 4, of: 4 },
  { label: 'Last flights logged without a gap, or with its note', count: 100, of: 100 },
];

const RULES = {
  code: 'eu-145',
  name: 'EU (Regulation (EU) 1321/2014, Part-145)',
  source: 'Regulation (EU) 1321/2014, 145.A.50',
};
const HASH = '21e3039850a4218a2525a9a8de01a9dee88e3738626c69715093908160f7d221';

const ADVISORY = OBJECTIONS.filter(({ severity }) => severity === 'advisory');

/** Four points stand against releasing, one is told beside them. */
export const BLOCKED_CHECK: ReleaseCheck = {
  asOf: '2026-11-25T01:20Z',
  packageNumber: ROW.number,
  summary: 'Engine at position 3: serial KT-377 removed, serial KT-655 installed.',
  ruleSet: RULES,
  statement:
    'The work specified, except as otherwise specified, was carried out in accordance with Part-145.',
  digest: HASH,
  objections: [...OBJECTIONS],
  passed: PASSED,
  released: false,
  version: 1,
};

export const CLEAR_CHECK: ReleaseCheck = {
  ...BLOCKED_CHECK,
  objections: ADVISORY,
};

export const NOTE: ReleaseNote = {
  id: 'r-232',
  number: 'RN-0232',
  packageId: ROW.id,
  packageNumber: ROW.number,
  summary: BLOCKED_CHECK.summary,
  airframe: 'ZZ-417',
  subject: 'ZZ-417',
  certificate: {
    documentId: 'd-9',
    fileName: 'RN-0232.pdf',
    pages: 2,
    sha256: '9f2b6f0f1c9d1f3b7a0b5f9f0a4f2f8d1e6c3b5a7d9e0f1a2b3c4d5e6f708192',
  },
  ruleSet: RULES,
  signedAt: '2026-11-21T02:10Z',
  person: 'Wen Tolvarsen',
  licence: 'ZQ.66.0001',
  statement: `${BLOCKED_CHECK.statement} Release RN-0232, signed by Wen Tolvarsen, certificate ZQ.66.0001, 2026-11-21 at 02:10 UTC.`,
  contentHash: HASH,
  snapshotHash: HASH,
  digest: HASH,
  objections: ADVISORY,
  passed: PASSED,
  version: 2,
};

export const RELEASED_PACKAGE: WorkPackage = {
  ...OPEN_PACKAGE,
  status: 'released',
  release: {
    id: NOTE.id,
    number: NOTE.number,
    signedAt: NOTE.signedAt,
    person: NOTE.person,
    licence: NOTE.licence,
  },
};

/** What the check of a package with steps holds against it. */
export const STEPS_CHECK: ReleaseCheck = {
  ...BLOCKED_CHECK,
  objections: [
    objection('TORQUE_OUT_OF_RANGE', 'blocking', [
      'step',
      'Step 27, Torque the forward mount bolts in order.',
      'The last torque at bolt 2 is 118.4 N·m, above 105.0 to 115.0 N·m.',
      'Torque it again within the range.',
    ]),
    objection('INSPECTION_MISSING', 'blocking', [
      'step',
      'Step 12, Cap the lines and count the blanks.',
      'It waits for an independent inspection.',
      'Another authorised person inspects it and signs.',
    ]),
    objection('TOOL_NOT_USABLE', 'blocking', [
      'tool',
      'Torque wrench TW-014',
      'Its calibration was due on 2026-11-20.',
      'Torque again with a tool in calibration.',
    ]),
    objection('REQUIREMENT_OVER', 'blocking', [
      'requirement',
      'Directive 2026-11-04 on ZZ-417',
      'It was due 12 days ago.',
      'Accomplish it, or record the permission with its limit.',
    ]),
    objection('RELEASER_NOT_AUTHORISED', 'blocking', [
      'person',
      'Wen Tolvarsen',
      'No release authorisation for this airframe type is in force today.',
      'An administrator records the authorisation.',
    ]),
    ...ADVISORY,
  ],
};
