import type {
  AirframePositions,
  BoardAirframe,
  Counters,
  InstalledEngine,
  PositionView,
} from '../../server/wire.js';

export const counters = (minutes: number | null, halves: number | null): Counters => ({
  minutes,
  cycles: halves === null ? null : { units: halves, denominator: 2 },
});

const engine = (serialNumber: string, more: Partial<InstalledEngine>): InstalledEngine => ({
  id: `c-${serialNumber}`,
  serialNumber,
  partNumber: 'K84-0001',
  model: 'Karneth Turbines K84',
  ratingCode: '84A',
  installedAt: '2025-03-02T09:40Z',
  precision: 'minute',
  sinceNew: counters(1_092_246, 15_963),
  sinceInstalled: counters(341_629, 1696),
  status: 'later',
  tightest: {
    componentId: 'c-D77120',
    description: 'HPT disk 1',
    serialNumber: 'D77120',
    remainingCycles: 2019,
    remainingMinutes: null,
    remainingDays: null,
    goodThrough: null,
    flagged: false,
    reason: null,
  },
  soonest: {
    componentId: 'c-D77120',
    description: 'HPT disk 1',
    serialNumber: 'D77120',
    remainingCycles: 2019,
    remainingMinutes: null,
    remainingDays: null,
    goodThrough: null,
    flagged: false,
    reason: null,
    projectedOn: '2028-01-19',
    basis: 'Average use of the last 90 days',
  },
  ...more,
});

type Mounted = Pick<PositionView, 'number' | 'mount'> & Partial<PositionView>;

const position = (mounted: Mounted): PositionView => ({
  positionId: `p-${mounted.number}`,
  kind: 'engine',
  label: String(mounted.number),
  engine: null,
  emptySince: null,
  pod: {
    id: `c-TN-310${mounted.number}`,
    serialNumber: `TN-310${mounted.number}`,
    installedAt: '2024-11-20T00:00Z',
  },
  ...mounted,
});

const tightest = (description: string, remainingCycles: number | null, reason: string | null = null) => ({
  componentId: 'c-F00981',
  description,
  serialNumber: 'F00981',
  remainingCycles,
  remainingMinutes: null,
  remainingDays: null,
  goodThrough: null,
  flagged: false,
  reason,
});

const FOUR: readonly PositionView[] = [
  position({ number: 1, mount: 'left-wing', engine: engine('KT-442', {}) }),
  position({
    number: 2,
    mount: 'left-wing',
    engine: engine('KT-518', { status: 'soon', precision: 'page', tightest: tightest('Fan shaft', 229) }),
  }),
  position({
    number: 3,
    mount: 'right-wing',
    engine: engine('KT-377', { status: 'over', precision: 'day', tightest: tightest('LPT disk 3', -4) }),
  }),
  position({
    number: 4,
    mount: 'right-wing',
    engine: engine('KT-601', {
      status: 'not-verified',
      ratingCode: null,
      sinceNew: counters(null, null),
      tightest: tightest('HPT disk 2', null, 'A gap in its trace'),
    }),
  }),
  position({
    number: 0,
    kind: 'apu',
    mount: 'tail',
    label: 'APU',
    pod: null,
    engine: engine('PV-071', { status: 'not-verified', ratingCode: null, tightest: null, model: null }),
  }),
];

const TWO: readonly PositionView[] = [
  position({
    number: 1,
    mount: 'left-wing',
    engine: engine('MRK0000-8BIl1O0-7719', {
      status: 'planned',
      tightest: tightest('Low-pressure turbine rear shaft, stage 4 spacer', 861),
    }),
  }),
  position({ number: 2, mount: 'right-wing', emptySince: '2026-11-03T10:20Z' }),
  position({ number: 0, kind: 'apu', mount: 'tail', label: 'APU', pod: null }),
];

/** Two airframes: every status, an empty position, a long serial, an unknown total. */
export const BOARD: readonly BoardAirframe[] = [
  {
    airframe: {
      id: 'a-417',
      registration: 'ZZ-417',
      type: 'Velmarrow Aircraft V-840',
      minutes: 1_288_836,
      flights: 9214,
      lastFlightAt: '2026-11-20T07:15Z',
    },
    positions: [...FOUR],
  },
  {
    airframe: {
      id: 'a-203',
      registration: 'ZZ-203',
      type: 'Velmarrow Aircraft V-420',
      minutes: null,
      flights: null,
      lastFlightAt: null,
    },
    positions: [...TWO],
  },
];

const shown = (index: number, positions: readonly PositionView[], at: string | null): AirframePositions => {
  const row = BOARD[index];
  if (row === undefined) throw new Error('The board has no such row');
  const { id, registration, type, minutes, flights, lastFlightAt } = row.airframe;
  return {
    airframe: {
      id,
      registration,
      serialNumber: '84017',
      type,
      ruleSet: 'eu-145',
      counters: counters(minutes, flights === null ? null : flights * 2),
      lastLandingAt: lastFlightAt,
      lastLogPage: lastFlightAt === null ? null : '21104',
    },
    at,
    positions: [...positions],
  };
};

export const FOUR_ENGINES = shown(0, FOUR, null);
export const FOUR_ENGINES_THEN = shown(0, FOUR.slice(0, 3), '2025-01-15T12:00Z');
export const TWO_ENGINES = shown(1, TWO, null);

/** The airframes as the register has them. */
export const AIRFRAMES = BOARD.map(({ airframe: { id, registration, type, minutes, flights } }) => ({
  id,
  registration,
  type,
  minutes,
  flights,
  serialNumber: '84017',
  airframeTypeId: 't-1',
  ruleSet: 'eu-145',
  dayZone: 'UTC',
  owner: 'Dravenholm Air',
  lessor: null,
  manufacturedOn: null,
  version: 1,
  lastLandingAt: null,
  positions: [],
}));
