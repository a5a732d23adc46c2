// Types, models, parts and limits. Makers, names and figures are invented.

export const airframeTypes = [
  {
    maker: 'Velmarrow Aircraft',
    designation: 'V-840',
    positions: [
      { number: 0, kind: 'apu', mount: 'tail', label: 'APU' },
      { number: 1, kind: 'engine', mount: 'left-wing', label: '1' },
      { number: 2, kind: 'engine', mount: 'left-wing', label: '2' },
      { number: 3, kind: 'engine', mount: 'right-wing', label: '3' },
      { number: 4, kind: 'engine', mount: 'right-wing', label: '4' },
    ],
  },
  {
    maker: 'Ostrindel Aeroplanes',
    designation: 'O-630',
    positions: [
      { number: 0, kind: 'apu', mount: 'tail', label: 'APU' },
      { number: 1, kind: 'engine', mount: 'left-wing', label: '1' },
      { number: 2, kind: 'engine', mount: 'tail', label: '2' },
      { number: 3, kind: 'engine', mount: 'right-wing', label: '3' },
    ],
  },
  {
    maker: 'Velmarrow Aircraft',
    designation: 'V-420',
    positions: [
      { number: 0, kind: 'apu', mount: 'tail', label: 'APU' },
      { number: 1, kind: 'engine', mount: 'left-wing', label: '1' },
      { number: 2, kind: 'engine', mount: 'right-wing', label: '2' },
    ],
  },
];

/** Parts of a build: [slot name, code in part numbers, cycles at the lower rating, cycles at the higher rating]. */
export const models = {
  K84: {
    maker: 'Karneth Turbines',
    airframeType: 'V-840',
    ratings: ['84A', '84B'],
    lifeMethod: 'pro-rata',
    manual: 'K84 engine manual, chapter 05-11',
    rule: {
      perFlight: 2,
      perLanding: 0,
      perTouchAndGo: 1,
      perStart: 0,
      perAbortedTakeOff: 0,
      denominator: 2,
    },
    ruleWords: 'one cycle a flight, half a cycle a touch-and-go',
    modules: {
      'Fan module': [
        ['Fan hub', '1101', 20000, 18000],
        ['Fan shaft', '1104', 9000, 8200],
        ['Booster spool', '1210', 20000, 18000],
      ],
      'High-pressure compressor': [
        ['HPC front spool', '2101', 15000, 13500],
        ['HPC rear spool', '2102', 12000, 10800],
        ['Compressor discharge seal', '2140', 12000, 10500],
      ],
      'High-pressure turbine': [
        ['HPT shaft', '3101', 12000, 11000],
        ['HPT disk 1', '3111', 10000, 8800],
        ['HPT disk 2', '3112', 10000, 8800],
      ],
      'Low-pressure turbine': [
        ['LPT disk 1', '4111', 15000, 14000],
        ['LPT disk 2', '4112', 15000, 14000],
        ['LPT disk 3', '4113', 9000, 8400],
        ['LPT disk 4', '4114', 15000, 14000],
        ['LPT shaft', '4101', null, null],
      ],
    },
  },
  R63: {
    maker: 'Ruvane Propulsion',
    airframeType: 'O-630',
    ratings: ['63-1', '63-2'],
    lifeMethod: 'lowest-limit',
    manual: 'R63 engine manual, chapter 05-10',
    rule: {
      perFlight: 1,
      perLanding: 0,
      perTouchAndGo: 0,
      perStart: 1,
      perAbortedTakeOff: 0,
      denominator: 2,
    },
    ruleWords: 'half a cycle a flight and half a cycle a start',
    modules: {
      'Fan module': [
        ['Fan hub', '1101', 22000, 20000],
        ['Fan shaft', '1103', 20000, 18000],
      ],
      'High-pressure compressor': [
        ['HPC spool', '2101', 18000, 16000],
        ['HPC rear shaft', '2105', 18000, 16000],
      ],
      'High-pressure turbine': [
        ['HPT shaft', '3107', 20000, 'not-authorised'],
        ['HPT disk 1', '3111', 15000, 13000],
        ['HPT disk 2', '3112', 15000, 13000],
      ],
      'Low-pressure turbine': [
        ['LPT disk 1', '4111', 20000, 18000],
        ['LPT disk 2', '4112', 20000, 18000],
        ['LPT disk 3', '4113', 20000, 18000],
        ['LPT shaft', '4101', 25000, 25000],
      ],
    },
  },
  D45: {
    maker: 'Dorsmeer Motor Works',
    airframeType: 'V-420',
    ratings: ['45L', '45H'],
    lifeMethod: 'pro-rata',
    manual: 'D45 airworthiness limitations, section 2',
    rule: {
      perFlight: 1,
      perLanding: 0,
      perTouchAndGo: 0,
      perStart: 0,
      perAbortedTakeOff: 0,
      denominator: 1,
    },
    ruleWords: 'one cycle a flight',
    modules: {
      'Fan and booster': [
        ['Fan hub', '1101', 30000, 27000],
        ['Fan shaft', '1102', 30000, 27000],
      ],
      Core: [
        ['HPC spool', '2101', 20000, 18000],
        ['Compressor discharge seal', '2130', 20000, 18000, 1800000],
        ['HPT disk 1', '3111', 20000, 17500],
        ['HPT disk 2', '3112', 20000, 17500],
      ],
      'Low-pressure turbine': [
        ['LPT disk 1', '4111', 25000, 23000],
        ['LPT disk 2', '4112', 25000, 23000],
        ['LPT disk 3', '4113', 25000, 23000],
        ['LPT shaft', '4101', 30000, 28000],
      ],
    },
  },
};

export const apuModel = {
  maker: 'Pelvarn Auxiliary Power',
  designation: 'P20',
  ratings: ['STD'],
  manual: 'P20 manual, chapter 05-00',
};
export const podMaker = 'Tessom Nacelles';
/** The other part number of the R63 turbine shaft: the one that may run at the higher rating. */
export const STRONGER_SHAFT = 'R63-3107-1';

export function partNumberOf(model, code) {
  return `${model}-${code}`;
}

/** The parts of a model in order: {module, name, partNumber, cycles by rating, minutes}. */
export function partsOf(model) {
  const { modules, ratings } = models[model];
  return Object.entries(modules).flatMap(([module, parts]) =>
    parts.map(([name, code, lower, higher, minutes = null]) => ({
      module,
      name,
      partNumber: partNumberOf(model, code),
      limits: { [ratings[0]]: lower, [ratings[1]]: higher },
      minutes,
    })),
  );
}

/** A directive that lowers what a manual states: by rating, in cycles. */
export const loweringDirective = {
  document: 'ZZ-AD 2026-18, fan hub',
  revision: '1',
  effectiveOn: '2026-10-01',
  model: 'D45',
  partNumber: 'D45-1101',
  limits: { '45L': 21000, '45H': 19000 },
};

/** A calendar life beside the cycles: months from new. */
export const calendarLife = { partNumber: 'R63-4101', months: 216 };

/** What the limits in force today say of a part number: by rating {cycles, minutes}, or a word. */
export function limitOf(model, partNumber, rating) {
  const found =
    partNumber === STRONGER_SHAFT
      ? { limits: { '63-1': 20000, '63-2': 17000 }, minutes: null }
      : partsOf(model).find((part) => part.partNumber === partNumber);
  const cycles = found.limits[rating];
  if (cycles === null) return 'not-limited';
  if (cycles === 'not-authorised') return cycles;
  const lowered = partNumber === loweringDirective.partNumber ? loweringDirective.limits[rating] : cycles;
  return { cycles: Math.min(cycles, lowered), minutes: found.minutes };
}
