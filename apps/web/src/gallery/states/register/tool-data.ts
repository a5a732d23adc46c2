import type { components } from '@strutbook/api-client/schema.gen.js';

type Shapes = components['schemas'];
type Tool = Shapes['ToolDto'];

const wrench = (serialNumber: string, more: Partial<Tool> = {}): Tool => ({
  id: `w-${serialNumber}`,
  serialNumber,
  description: 'Torque wrench, 1/2 inch drive',
  kind: 'torque-wrench',
  unit: 'N·m',
  rangeLow: '20',
  rangeHigh: '200',
  deviation: '4',
  status: 'in-date',
  calibratedOn: '2026-06-28',
  dueOn: '2027-06-27',
  certificate: 'CAL-26-0702',
  version: 3,
  ...more,
});

const NEVER = { calibratedOn: null, dueOn: null, certificate: null, status: 'never' } as const;

/** Tools in every standing, with a long name and without a range. */
export const TOOLS: readonly Tool[] = [
  wrench('TW-014'),
  wrench('TW-021', {
    description: 'Torque wrench with a long extension, 3/8 inch drive, for the aft mount alone',
    unit: 'lbf·in',
    rangeLow: '40',
    rangeHigh: '400',
    status: 'soon',
    dueOn: '2026-12-09',
  }),
  wrench('TW-033', { rangeLow: '140', rangeHigh: '760', status: 'out-of-date', dueOn: '2026-09-30' }),
  wrench('TW-040', { rangeLow: null, rangeHigh: null, deviation: null, ...NEVER }),
  wrench('BX-007', {
    description: 'Borescope',
    kind: 'other',
    unit: null,
    rangeLow: null,
    rangeHigh: null,
    deviation: null,
  }),
];

const use = (entryId: string, more: Partial<Shapes['ToolUseDto']> = {}): Shapes['ToolUseDto'] => ({
  entryId,
  packageId: 'k-231',
  packageNumber: 'EC-0231',
  packageTitle: 'Engine change, position 3',
  stepNumber: 27,
  stepTitle: 'Torque the forward mount bolts, in order.',
  label: 'Forward mount bolt',
  point: '1',
  typed: '110.2 N·m',
  verdict: 'accepted',
  voided: false,
  personName: 'Tove Braskel',
  enteredAt: '2026-11-20T09:41Z',
  ...more,
});

/** A wrench whose newest calibration was another's, with readings of each kind. */
export const TOOL: Shapes['ToolViewDto'] = {
  ...wrench('TW-033', { rangeLow: '140', rangeHigh: '760', status: 'out-of-date', dueOn: '2026-09-30' }),
  calibrations: [
    {
      id: 'cal-2',
      calibratedOn: '2026-10-01',
      dueOn: '2027-09-30',
      certificate: 'CAL-26-9999',
      governs: false,
      voided: true,
      voidReason: 'The certificate belongs to another wrench',
    },
    {
      id: 'cal-1',
      calibratedOn: '2025-10-01',
      dueOn: '2026-09-30',
      certificate: 'CAL-25-1001',
      governs: true,
      voided: false,
      voidReason: null,
    },
  ],
  uses: [
    use('u-1'),
    use('u-2', { point: '3', typed: '118.4 N·m', verdict: 'rejected' }),
    use('u-3', { point: '3', typed: '181.4 N·m', verdict: 'rejected', voided: true }),
    use('u-4', { point: '3', enteredAt: '2026-11-20T09:44Z' }),
  ],
  usesInAll: 412,
};

const authorisation = (
  id: string,
  personName: string,
  more: Partial<Shapes['AuthorisationDto']>,
): Shapes['AuthorisationDto'] => ({
  id,
  personId: 'p-1',
  personName,
  scope: 'work',
  airframeTypeId: null,
  airframeType: null,
  fromOn: '2026-01-01',
  toOn: null,
  reference: 'Authorisation list 7',
  standing: 'in-force',
  voided: false,
  voidReason: null,
  ...more,
});

/** Authorisations in every standing. */
export const AUTHORISATIONS = [
  authorisation('au-1', 'Tove Braskel', { toOn: '2027-06-30' }),
  authorisation('au-2', 'Cora Lindqvane', {
    scope: 'release',
    airframeTypeId: 't-1',
    airframeType: 'Velmarrow Aircraft V-840',
    toOn: '2026-12-10',
    standing: 'ends-soon',
  }),
  authorisation('au-3', 'Cora Lindqvane', {
    scope: 'inspection',
    fromOn: '2026-12-15',
    toOn: '2028-12-14',
    standing: 'to-come',
  }),
  authorisation('au-4', 'Tove Braskel', { scope: 'inspection', toOn: '2025-12-31', standing: 'ended' }),
  authorisation('au-5', 'Tove Braskel', {
    scope: 'inspection',
    standing: 'voided',
    voided: true,
    voidReason: 'Granted to the wrong person',
  }),
] as const;
