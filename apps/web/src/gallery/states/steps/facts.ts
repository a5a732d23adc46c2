import type { Judgement, Typed } from '@strutbook/domain/work/entry.js';
import type { Entry, Signature, Step, Work } from '../../../features/workspace/work/work-shapes.js';
import { DEFINITIONS, GROUPS, ITEMS } from './procedure.js';

const ACCEPTED: Judgement = { verdict: 'accepted', reasons: [], computed: {} };

/** Wen is who looks; Ada and Per work beside her. */
export const ADA = { personId: 'p-2', personName: 'Ada Lindqvarn' } as const;
const PER = { personId: 'p-3', personName: 'Per Oskandel' } as const;
export const WEN = { personId: 'p-1', personName: 'Wen Tolvarsen' } as const;

export const entry = (id: string, capture: string, typed: Typed, more: Partial<Entry> = {}): Entry => ({
  id,
  capture,
  point: null,
  kind: typed.kind,
  typed,
  judgement: ACCEPTED,
  tool: null,
  ...ADA,
  enteredAt: '2026-11-24T09:12:00.000Z',
  photoId: null,
  voided: false,
  voidReason: null,
  ...more,
});

export const torqueEntry = (
  id: string,
  point: string,
  indication: string,
  more: Partial<Entry> = {},
): Entry =>
  entry(
    id,
    'forward-bolts',
    {
      kind: 'torque',
      point,
      indication,
      unit: 'N·m',
      method: 'set-value',
      runOn: '3.5',
      extension: null,
    },
    {
      point,
      tool: 'TW-014',
      judgement: {
        verdict: 'accepted',
        reasons: [],
        computed: {
          atFastener: `${indication} N·m`,
          required: '108.5 to 118.5 N·m',
          window: null,
          setting: null,
        },
      },
      ...more,
    },
  );

/** A bolt pulled too far, as the core says it. */
export const TOO_FAR: Judgement = {
  verdict: 'rejected',
  reasons: [
    {
      code: 'ABOVE_RANGE',
      detail: { what: 'The torque at the fastener', value: '121.9 N·m', high: '118.5 N·m' },
    },
  ],
  computed: { atFastener: '121.9 N·m', required: '108.5 to 118.5 N·m', window: null, setting: null },
};

export const signature = (
  id: string,
  meaning: Signature['meaning'],
  more: Partial<Signature> = {},
): Signature => ({
  id,
  meaning,
  ...(meaning === 'done' ? ADA : PER),
  licence: meaning === 'done' ? null : 'ZQ.66.0042',
  performedAt: '2026-11-24T09:10Z',
  signedAt: '2026-11-24T09:14Z',
  undone: false,
  undoneReason: null,
  reinspectionReason: null,
  counts: true,
  ...more,
});

/** A step of the procedure as it stands; open with nothing in it unless told. */
export function step(key: string, more: Partial<Step> = {}): Step {
  const definition = DEFINITIONS.find((each) => each.key === key);
  if (definition === undefined) throw new Error(`no step ${key}`);
  const captures = definition.captures.filter((each) => !('required' in each) || each.required);
  return {
    id: key,
    version: 1,
    contentHash: '21e3039850a4218a',
    standing: 'open',
    blockers: [],
    missing: captures.map((each) => ({
      code: 'CAPTURE_MISSING',
      capture: each.key,
      point: each.kind === 'torque' ? (each.points[0] ?? null) : null,
      label: each.label,
      reasons: [],
    })),
    definition,
    entries: [],
    signatures: [],
    ...more,
  };
}

export const signedStep = (key: string, more: Partial<Step> = {}): Step => {
  const made = step(key);
  const inspected = made.definition.inspection === 'independent';
  return {
    ...made,
    standing: 'signed',
    missing: [],
    signatures: [
      signature(`${key}-done`, 'done'),
      ...(inspected ? [signature(`${key}-inspected`, 'inspection')] : []),
    ],
    ...more,
  };
};

export const waiting = (
  key: string,
  on: string,
  code: 'STEP_UNSIGNED' | 'INSPECTION_MISSING' = 'STEP_UNSIGNED',
) => {
  const first = DEFINITIONS.find((each) => each.key === on);
  return step(key, {
    standing: 'blocked',
    blockers: [{ code, stepId: on, number: first?.number ?? 0, title: first?.title ?? '' }],
  });
};

const component = (serialNumber: string) => ({
  id: `c-${serialNumber}`,
  serialNumber,
  partNumber: 'K84-0001',
});

export const HEAD: Work['package'] = {
  id: 'k-300',
  number: 'EC-0300',
  kind: 'engine-change',
  title: 'Engine change, position 3',
  status: 'open',
  ruleSet: 'eu-145',
  airframe: { id: 'a-417', registration: 'ZZ-417' },
  component: null,
};

export const work = (steps: readonly Step[], more: Partial<Work> = {}): Work => ({
  package: HEAD,
  order: {
    positionNumber: 3,
    slot: 'engine',
    outgoing: component('KT-377'),
    incoming: component('KT-655'),
    ratingCode: '84A',
    removedToLocation: 'Engine shop, bay 2',
    reason: 'LPT disk 3 past its limit, which a newer revision lowered.',
    confirmedBy: null,
  },
  groups: GROUPS,
  items: ITEMS,
  counts: [
    { what: 'tags', out: 6, in: null },
    { what: 'blanks', out: 2, in: null },
    { what: 'tools', out: null, in: null },
  ],
  openItems: ITEMS.map((item) => ({
    item,
    openedBy:
      item.key === 'breakers'
        ? { stepId: 'pull-breakers', number: 2, title: '' }
        : { stepId: 'open-cowls', number: 4, title: '' },
  })),
  steps,
  ...more,
});
