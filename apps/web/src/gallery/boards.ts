import type { CardPosition } from '../ui/aircraft/position-card.js';

const base = { kind: 'engine', href: '/positions', openFindings: 0 } as const;

const one: CardPosition = {
  ...base,
  number: 1,
  mount: 'left-wing',
  label: 'Position 1',
  serial: 'KT-442',
  status: 'in-limits',
  minutes: 1_092_246,
  cycles: 7981,
  tightest: { amount: '2,019 cycles left', part: 'turbine disk 1' },
};

const two: CardPosition = {
  ...base,
  number: 2,
  mount: 'left-wing',
  label: 'Position 2',
  serial: 'KT-518',
  status: 'soon',
  minutes: 1_019_424,
  cycles: 8771,
  tightest: { amount: '229 cycles left', part: 'fan shaft' },
  openFindings: 1,
};

const three: CardPosition = {
  ...base,
  number: 3,
  mount: 'right-wing',
  label: 'Position 3',
  serial: 'KT-377',
  status: 'over-limit',
  minutes: 1_206_774,
  cycles: 9004,
  tightest: { amount: '4 cycles past', part: 'turbine disk 3' },
  openFindings: 2,
};

const four: CardPosition = {
  ...base,
  number: 4,
  mount: 'right-wing',
  label: 'Position 4',
  serial: 'KT-601',
  status: 'not-verified',
  minutes: null,
  cycles: null,
  note: 'Last record 3 Oct 2026, gap of 38 days',
};

const apu: CardPosition = {
  ...base,
  kind: 'apu',
  number: 5,
  mount: 'tail',
  label: 'APU',
  serial: 'AX-0093',
  status: 'in-limits',
  minutes: 401_220,
  cycles: 11_240,
  tightest: { amount: '1,260 cycles left', part: 'turbine wheel' },
};

/** Boards of two, three and four engines, with all statuses, empty positions and long serials. */
export const BOARDS: readonly {
  readonly registration: string;
  readonly what: string;
  readonly positions: readonly CardPosition[];
}[] = [
  { registration: 'ZZ-417', what: 'four engines', positions: [one, two, three, four, apu] },
  {
    registration: 'ZZ-203',
    what: 'two engines, one position empty',
    positions: [
      { ...one, status: 'plan', tightest: { amount: '861 cycles left', part: 'fan disk' } },
      {
        ...base,
        number: 2,
        mount: 'right-wing',
        label: 'Position 2',
        serial: null,
        status: 'not-applicable',
        emptySince: '3 Nov 2026',
      },
      { ...apu, number: 3, serial: null, status: 'not-applicable', emptySince: '12 Aug 2026' },
    ],
  },
  {
    registration: 'ZZ-330',
    what: 'three engines, the second in the tail',
    positions: [
      {
        ...one,
        serial: 'MRK0000-8BIl1O0-7719',
        status: 'in-tolerance',
        tightest: { amount: '31:20 h past', part: 'low-pressure turbine rear shaft, stage 4 spacer' },
      },
      { ...two, mount: 'tail', status: 'soon' },
      { ...three, status: 'blocked', note: 'Open change EC-0231', tightest: null },
      { ...apu, number: 4 },
    ],
  },
  {
    registration: 'ZZ-092',
    what: 'two engines on the rear fuselage',
    positions: [
      { ...one, mount: 'tail' },
      { ...two, mount: 'tail' },
    ],
  },
];
