import {
  ADA,
  entry,
  HEAD,
  signature,
  signedStep,
  step,
  TOO_FAR,
  torqueEntry,
  WEN,
  waiting,
  work,
} from './facts.js';

const seen = entry('e-1', 'right-airframe', { kind: 'check', seen: true });
const tags = entry('e-2', 'tags-out', { kind: 'count', number: '6' });
const blanks = [
  entry(
    'e-3',
    'fuel-blanks',
    { kind: 'count', number: '3' },
    { voided: true, voidReason: 'Counted one of the other line too.' },
  ),
  entry('e-4', 'fuel-blanks', { kind: 'count', number: '2' }),
];

const OUT_DONE = [
  signedStep('confirm-position', { entries: [seen] }),
  signedStep('pull-breakers', { entries: [tags] }),
  signedStep('cool-down'),
  signedStep('open-cowls'),
];

const partFuel = step('part-fuel', {
  standing: 'to-inspect',
  missing: [],
  entries: blanks,
  signatures: [signature('s-part', 'done', WEN)],
});

const REST = [
  step('compare-papers'),
  step('note-standard', {
    standing: 'changed',
    entries: [entry('e-9', 'differences', { kind: 'text', text: 'None. Bulletin 72-18 is in on both.' })],
    missing: [],
    signatures: [signature('s-note', 'done', { ...ADA, counts: false })],
  }),
  waiting('lift', 'release-mounts'),
  step('torque-forward', {
    missing: ['2', '4'].map((point) => ({
      code: 'CAPTURE_MISSING' as const,
      capture: 'forward-bolts',
      point,
      label: 'Forward mount bolts',
      reasons: [],
    })),
    entries: [torqueEntry('e-5', '1', '110.5'), torqueEntry('e-6', '3', '112,0')],
  }),
  step('rejoin-fuel'),
  step('run'),
  waiting('close-cowls', 'run'),
];

/** Half way: every standing, two lanes. */
export const HALF = work([
  ...OUT_DONE,
  partFuel,
  waiting('release-mounts', 'part-fuel', 'INSPECTION_MISSING'),
  ...REST,
]);

/** A bolt pulled too far, kept; another attempt of the same bolt struck out. */
export const REJECTED = work([
  ...OUT_DONE,
  partFuel,
  step('release-mounts'),
  ...REST.map((each) =>
    each.id === 'torque-forward'
      ? {
          ...each,
          standing: 'rejected' as const,
          missing: [
            {
              code: 'CAPTURE_REJECTED' as const,
              capture: 'forward-bolts',
              point: '3',
              label: 'Forward mount bolts',
              reasons: TOO_FAR.reasons,
            },
          ],
          entries: [
            torqueEntry('e-5', '1', '110.5'),
            torqueEntry('e-6', '3', '112,0', { voided: true, voidReason: 'Typed for the wrong bolt.' }),
            torqueEntry('e-7', '3', '121.9', { judgement: TOO_FAR }),
          ],
        }
      : each,
  ),
]);

/** All torqued: ready for the signature. */
export const READY = work(
  HALF.steps.map((each) =>
    each.id === 'torque-forward'
      ? {
          ...each,
          missing: [],
          entries: ['1', '3', '2', '4'].map((point) => torqueEntry(`e-${point}0`, point, '112.0')),
        }
      : each,
  ),
);

/** Released: frozen as it was. */
export const FROZEN = work(
  HALF.steps.map(({ definition }) =>
    signedStep(definition.key, definition.key === 'pull-breakers' ? { entries: [tags] } : {}),
  ),
  { package: { ...HEAD, status: 'released' }, openItems: [] },
);

const ownStep = (number: number, title: string) => {
  const made = step('cool-down');
  return {
    ...made,
    id: `own-${number}`,
    definition: { ...made.definition, key: `own-${number}`, number, title, group: 'steps', source: null },
  };
};

/** An inspection with steps of its own: one column, no lanes. */
export const PLAIN = work(
  [
    ownStep(1, 'Inspect the inlet for damage.'),
    ownStep(2, 'Take an oil sample and label it.'),
    ownStep(3, 'Look at the chip detectors.'),
  ],
  {
    package: { ...HEAD, id: 'k-301', number: 'IN-0301', kind: 'inspection', title: 'Inlet inspection' },
    order: null,
    groups: [{ key: 'steps', letter: 'A', title: 'Steps', lane: 'both', place: 'inlet' }],
    items: [],
    counts: [],
    openItems: [],
  },
);

/** What the package's own route answers beside its steps. */
export const SHELL = {
  ...HEAD,
  openedAt: '2026-11-24T07:30Z',
  version: 1,
  changes: [],
  release: null,
  withdrawal: null,
  steps: { signed: 4, total: 13 },
  procedure: {
    id: 'd-1',
    code: 'EC-V840',
    revision: '3',
    title: 'Engine change, V-840',
    document: 'V-840 maintenance manual, 71-00-02',
    documentRevision: '14',
  },
  reference: 'WO 4711',
  order: null,
  requirements: [],
};

export const TOOLS = [
  {
    id: 't-14',
    serialNumber: 'TW-014',
    description: 'torque wrench, 1/2 inch drive',
    kind: 'torque-wrench',
    unit: 'N·m',
    rangeLow: '40',
    rangeHigh: '200',
    deviation: '3',
    status: 'in-date',
    calibratedOn: '2026-03-03',
    dueOn: '2027-03-03',
    certificate: 'C-5531',
    version: 1,
  },
  {
    id: 't-15',
    serialNumber: 'TW-015',
    description: 'torque wrench, 3/4 inch drive',
    kind: 'torque-wrench',
    unit: 'lbf·ft',
    rangeLow: '50',
    rangeHigh: '250',
    deviation: '4',
    status: 'out-of-date',
    calibratedOn: '2025-11-03',
    dueOn: '2026-11-03',
    certificate: 'C-4410',
    version: 1,
  },
];

export const STATEMENT = {
  statement: [
    'I did this step as its data says, and what is entered is what I found.',
    'Package: Engine change, position 3 (WO 4711), airframe ZZ-417, position 3',
    'Step 10: Torque the forward mount bolts in order.',
    'Data: V-840 maintenance manual, 71-00-02, revision 14',
    'Forward mount bolts 1: 112.0 N·m set, run-on 3.5 N·m, 112.0 N·m at the fastener, tool TW-014; accepted',
    'Forward mount bolts 3: 112.0 N·m set, run-on 3.5 N·m, 112.0 N·m at the fastener, tool TW-014; accepted',
    'Forward mount bolts 2: 112.0 N·m set, run-on 3.5 N·m, 112.0 N·m at the fastener, tool TW-014; accepted',
    'Forward mount bolts 4: 112.0 N·m set, run-on 3.5 N·m, 112.0 N·m at the fastener, tool TW-014; accepted',
    'Performed 2026-11-25 02:10 UTC',
    'Signed by Wen Tolvarsen',
  ].join('\n'),
  digest: '21e3039850a4218a2525a9a8de01a9dee88e3738626c69715093908160f7d221',
  contentHash: '21e3039850a4218a2525a9a8de01a9dee88e3738626c69715093908160f7d221',
  missing: [],
  blockers: [],
};
