// The register as tables: components, openings, placements, gaps.
import { builds } from './builds.mjs';
import { airframes, OWNER, spareApu, sparePods } from './fleet.mjs';
import { RECORD_BEGINS, wire } from './instants.mjs';
import { apuModel, models, partNumberOf, podMaker } from './models.mjs';
import { randomOf, seedOf } from './random.mjs';
import { acceptedGap, lostLog } from './story.mjs';
import { firstStoreOf, hangingOf } from './timeline.mjs';
import { flownBy } from './usage.mjs';

const BEGINS = wire(RECORD_BEGINS);

/** What an airframe had flown when the record begins. */
export function openingOfAirframe({ registration, start, now }) {
  if (start !== undefined) return start;
  const flown = flownBy(registration);
  return { minutes: now.minutes - flown.minutes, flights: now.flights - flown.flights };
}

const modelOfType = Object.fromEntries(
  Object.entries(models).map(([model, { airframeType }]) => [airframeType, model]),
);

/** Pods with what they had run when the record begins. */
export const podOpenings = [
  ...airframes.flatMap(({ type, positions }) =>
    Object.values(positions).map(([, pod]) => ({ serial: pod, model: modelOfType[type] })),
  ),
  ...sparePods.map(([serial, model]) => ({ serial, model })),
].map(({ serial, model }) => {
  const random = randomOf(seedOf(serial));
  const cycles = random.whole(2400, 7200);
  return {
    serial,
    model,
    cycles,
    minutes: cycles * { K84: 131, R63: 163, D45: 77 }[model] + random.whole(0, 700),
  };
});

const apus = [...airframes.map(({ apu }) => apu), spareApu].map((serial) => {
  const random = randomOf(seedOf(serial));
  return { serial, minutes: random.whole(300000, 900000), cycles: random.whole(5000, 15000) };
});

const component = (row) => ({
  kind: '',
  maker: '',
  part_number: '',
  serial_number: '',
  description: '',
  engine_model: '',
  life_limited: 'no',
  pod_clock: '',
  owner: OWNER,
  lessor: '',
  manufactured_on: '',
  ...row,
});

export function components() {
  const rows = builds.flatMap(({ serial, model, made, lessor, modules }) => {
    const { maker } = models[model];
    const common = { maker, engine_model: model, lessor: lessor ?? '' };
    return [
      component({
        ...common,
        kind: 'engine',
        part_number: partNumberOf(model, '0001'),
        serial_number: serial,
        description: `${model} engine`,
        manufactured_on: made,
      }),
      ...modules.flatMap((module) => [
        component({
          ...common,
          kind: 'module',
          part_number: module.partNumber,
          serial_number: module.serial,
          description: module.name,
          manufactured_on: made,
        }),
        ...module.parts.map((part) =>
          component({
            ...common,
            kind: 'part',
            part_number: part.partNumber,
            serial_number: part.serial,
            description: part.name,
            life_limited: 'yes',
            manufactured_on: part.origin === 'engine' ? made : '',
          }),
        ),
      ]),
    ];
  });
  const pods = podOpenings.map(({ serial, model }) =>
    component({
      kind: 'pod',
      maker: podMaker,
      part_number: `TN-POD-${model}`,
      serial_number: serial,
      description: `Pod for the ${model}`,
      pod_clock: 'position',
    }),
  );
  const auxiliaries = apus.map(({ serial }) =>
    component({
      kind: 'apu',
      maker: apuModel.maker,
      part_number: 'P20-0001',
      serial_number: serial,
      description: 'Auxiliary power unit',
      engine_model: apuModel.designation,
    }),
  );
  return [...rows, ...pods, ...auxiliaries];
}

const opening = (subject, basis, row, source) => ({
  subject,
  at: BEGINS,
  basis,
  rating: '',
  minutes: '',
  cycle_units: '',
  cycle_denominator: 1,
  ...row,
  source,
});

export function openings() {
  const ofAirframes = airframes.map((airframe) => {
    const { minutes, flights } = openingOfAirframe(airframe);
    return opening(
      airframe.registration,
      'new',
      { minutes, cycle_units: flights },
      `Aircraft log book of ${airframe.registration}, carried forward`,
    );
  });
  const ofEngines = builds.flatMap(({ serial, model, rating, opening: start, visit, modules }) => {
    const { denominator } = models[model].rule;
    const rows = (subject, basis, byRating, source) =>
      Object.entries(byRating).map(([code, { minutes, units }]) =>
        opening(subject, basis, { rating: code, minutes, ...cyclesOf(units, denominator) }, source),
      );
    return [
      ...rows(serial, 'new', start, `Engine log card ${serial}, carried forward`),
      ...(visit === null
        ? []
        : rows(serial, 'shop-visit', { [rating]: visit }, `Shop visit report of ${serial}`)),
      ...modules.flatMap((module) => [
        ...rows(module.serial, 'new', start, `Module log card ${module.serial}`),
        ...module.parts.flatMap((part) =>
          part.opening === null
            ? [opening(part.serial, 'new', {}, 'No record of its use found when the engine came')]
            : rows(part.serial, 'new', part.opening, sourceOf(part.origin, serial)),
        ),
      ]),
    ];
  });
  const ofPods = podOpenings.map(({ serial, minutes, cycles }) =>
    opening(serial, 'new', { minutes, cycle_units: cycles }, `Pod card ${serial}`),
  );
  const ofApus = apus.map(({ serial, minutes, cycles }) =>
    opening(serial, 'new', { minutes, cycle_units: cycles }, `Counter of ${serial}, read at induction`),
  );
  return [...ofAirframes, ...ofEngines, ...ofPods, ...ofApus];
}

/** Whole cycles where they are whole. */
function cyclesOf(units, denominator) {
  return units % denominator === 0
    ? { cycle_units: units / denominator, cycle_denominator: 1 }
    : { cycle_units: units, cycle_denominator: denominator };
}

function sourceOf(origin, engine) {
  if (origin === 'engine') return `Life-limited part sheet of ${engine}: in it since new`;
  return origin === 'visit'
    ? `Life-limited part sheet of ${engine}: new at its last shop visit`
    : `Life-limited part sheet of ${engine}: on-log from another engine`;
}

/** From the parts up, so that an engine is complete when it is hung. */
export function placements() {
  const row = (serial, into, slot, location = '') => ({
    serial_number: serial,
    at: BEGINS,
    into,
    slot,
    location,
  });
  const rows = builds.flatMap(({ serial, modules }) => [
    ...modules.flatMap((module) => [
      ...module.parts.map((part) => row(part.serial, module.serial, part.name)),
      row(module.serial, serial, module.name),
    ]),
    hung(serial, 'engine', () => firstStoreOf(serial)),
  ]);
  const pods = podOpenings.map(({ serial }) => hung(serial, 'pod', () => 'Pod shop, QZJ'));
  const units = airframes.map(({ registration, apu }) => row(apu, registration, '0 apu'));
  return [...rows, ...pods, ...units, row(spareApu, '', '', 'Engine store, QXA')];

  function hung(serial, kind, storeOf) {
    const first = hangingOf(serial).find((span) => span.from === RECORD_BEGINS);
    return first === undefined
      ? row(serial, '', '', storeOf())
      : row(serial, first.registration, `${first.position} ${kind}`);
  }
}

/** The gaps: the lost log on the engine and all in it, and the accepted one. */
export function traceGaps() {
  const engine = builds.find(({ serial }) => serial === lostLog.engine);
  const { part: name, engine: other } = acceptedGap;
  const accepted = builds
    .find(({ serial }) => serial === other)
    .modules.flatMap(({ parts }) => parts)
    .find((part) => part.name === name);
  const serials = [
    engine.serial,
    ...engine.modules.flatMap(({ serial, parts }) => [serial, ...parts.map((part) => part.serial)]),
  ];
  const { from, to, note } = lostLog;
  return [
    ...serials.map((serial) => ({ serial_number: serial, from, to, note })),
    { serial_number: accepted.serial, from: acceptedGap.from, to: acceptedGap.to, note: acceptedGap.note },
  ];
}

export function gapAcceptances() {
  const { serial_number: serialNumber } = traceGaps().at(-1);
  const { cycles, minutes, acceptedBy, reference } = acceptedGap;
  return [{ serialNumber, acceptedBy, reference, cycles, minutes }];
}
