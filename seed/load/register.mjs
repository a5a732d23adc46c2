// The register: people, types, airframes, models, limits, components, what they had used, and where they are.
import { firstReadings } from './counting.mjs';
import { each, json, table } from './files.mjs';

const AT_ONCE = 6;

/** People, but for those who are there already: the administrator signed in is one. */
export async function people(client) {
  const there = new Set((await client.get('/api/people').then(rowsOf)).map((person) => person.signInName));
  const missing = json('people.json').filter((person) => !there.has(person.signInName));
  for (const { licence, pin, ...person } of missing) {
    const asked = { ...person, ...(licence === null ? {} : { licence }), mustChangePassword: false };
    await client.post('/api/people', asked);
  }
  return `${missing.length} people, ${there.size} were there`;
}

/** Types, airframes, models, limits and locations. Answers what later steps need to name them. */
export async function fleet(client) {
  const types = {};
  for (const type of json('register/airframe-types.json'))
    types[type.designation] = (await client.post('/api/airframe-types', type)).id;
  const airframes = {};
  for (const { airframeType, ...airframe } of json('register/airframes.json')) {
    airframes[airframe.registration] = (
      await client.post('/api/airframes', { ...airframe, airframeTypeId: types[airframeType] })
    ).id;
  }
  const models = {};
  for (const { cycleRules, ...model } of json('register/engine-models.json')) {
    const rules = cycleRules.map(({ airframeType, ...rule }) =>
      airframeType === undefined ? rule : { ...rule, airframeTypeId: types[airframeType] },
    );
    models[model.designation] = (await client.post('/api/engine-models', { ...model, cycleRules: rules })).id;
  }
  for (const location of json('register/locations.json')) await client.post('/api/locations', location);
  return { types, airframes, models };
}

export async function lifeLimits(client, { models }) {
  const rows = table('register/life-limits.csv');
  await each(rows, AT_ONCE, (row) =>
    client.post('/api/life-limits', {
      partNumber: row.part_number,
      engineModelId: models[row.engine_model],
      ratingCode: row.rating,
      authorisation: row.authorisation,
      ...numbers({ cycles: row.cycles, minutes: row.minutes }),
      ...(row.months_from_new === ''
        ? {}
        : { calendarSpan: Number(row.months_from_new), calendarUnit: 'months', calendarFrom: 'new' }),
      document: row.document,
      revision: row.revision,
      effectiveOn: row.effective_on,
    }),
  );
  return `${rows.length} life limits`;
}

/** Components with their slots. Answers by serial number {id, kind, slots by name}. */
export async function components(client, { models }) {
  const builds = json('register/engine-builds.json');
  const found = {};
  await each(table('register/components.csv'), AT_ONCE, async (row) => {
    const answer = await client.post('/api/components', {
      kind: row.kind,
      maker: row.maker,
      partNumber: row.part_number,
      serialNumber: row.serial_number,
      description: row.description,
      owner: row.owner,
      lifeLimited: row.life_limited === 'yes',
      ...(row.engine_model === '' ? {} : { engineModelId: models[row.engine_model] }),
      ...filled({ podClock: row.pod_clock, lessor: row.lessor, manufacturedOn: row.manufactured_on }),
      slots: slotsOf(row, builds[row.engine_model]),
    });
    found[row.serial_number] = {
      id: answer.id,
      kind: row.kind,
      slots: Object.fromEntries(answer.slots.map(({ name, id }) => [name, id])),
    };
  });
  return found;
}

function slotsOf({ kind, description }, build) {
  if (kind === 'engine')
    return Object.keys(build).map((name) => ({ kind: 'module', name, lifeLimited: false }));
  if (kind === 'module') return build[description].map((name) => ({ kind: 'part', name, lifeLimited: true }));
  return [];
}

/** Balances carried forward: one for each subject and basis, a row for each rating. */
export async function openings(client, { airframes }, found) {
  const groups =
    Object.groupBy === undefined ? groupsOf : (rows) => Object.values(Object.groupBy(rows, nameOf));
  const balances = groups(table('register/openings.csv'));
  await each(balances, AT_ONCE, (rows) => {
    const [{ subject, at, basis, source }] = rows;
    const about =
      airframes[subject] === undefined
        ? { componentId: found[subject].id }
        : { airframeId: airframes[subject] };
    return client.post('/api/openings', { ...about, at, basis, rows: rows.map(balanceOf), source });
  });
  return `${balances.length} opening balances`;
}

const nameOf = ({ subject, basis }) => `${subject} ${basis}`;

function groupsOf(rows) {
  const groups = new Map();
  for (const row of rows) groups.set(nameOf(row), [...(groups.get(nameOf(row)) ?? []), row]);
  return [...groups.values()];
}

/** An empty cell is an amount nobody knows. */
function balanceOf({ rating, minutes, cycle_units: cycles, cycle_denominator: denominator }) {
  return {
    ratingCode: rating === '' ? null : rating,
    minutes: minutes === '' ? null : Number(minutes),
    cycles: cycles === '' ? null : Number(cycles),
    cycleDenominator: Number(denominator),
  };
}

export async function ratings(client, found) {
  const rows = table('register/ratings.csv');
  await each(rows, AT_ONCE, ({ serial_number: serial, at, rating, source }) =>
    client.post('/api/rating-changes', { componentId: found[serial].id, at, ratingCode: rating, source }),
  );
  return `${rows.length} ratings`;
}

/** Everything to its place, from the parts up: an engine is complete when it is hung. */
export async function placements(client, { airframes }, found) {
  const rows = table('register/placements.csv');
  const slots = await positionSlots(client, airframes);
  const readings = firstReadings();
  for (const kinds of [['part'], ['module'], ['engine', 'pod', 'apu']]) {
    await each(
      rows.filter((row) => kinds.includes(found[row.serial_number].kind)),
      AT_ONCE,
      ({ serial_number: serial, at, into, slot, location }) => {
        const place =
          into === ''
            ? { locationName: location }
            : { slotId: found[into]?.slots[slot] ?? slots[`${into} ${slot}`] };
        return client.post('/api/placements', {
          componentId: found[serial].id,
          ...place,
          boundary: { kind: 'instant', at },
          reason: 'Where it was when the record began',
          ...(into !== '' && readings[serial] !== undefined ? { counterReading: readings[serial] } : {}),
        });
      },
    );
  }
  return `${rows.length} placements`;
}

/** The slots of positions by 'registration number kind'. */
async function positionSlots(client, airframes) {
  const slots = {};
  for (const [registration, id] of Object.entries(airframes)) {
    for (const position of (await client.get(`/api/airframes/${id}`)).positions) {
      for (const slot of position.slots) slots[`${registration} ${position.number} ${slot.kind}`] = slot.id;
    }
  }
  return slots;
}

export async function traceGaps(client, found) {
  const rows = table('register/trace-gaps.csv');
  const gaps = {};
  await each(rows, AT_ONCE, async ({ serial_number: serial, from, to, note }) => {
    gaps[serial] = await client.post('/api/trace-gaps', { componentId: found[serial].id, from, to, note });
  });
  const acceptances = json('register/gap-acceptances.json');
  for (const { serialNumber, ...acceptance } of acceptances) {
    await client.post('/api/gap-acceptances', {
      componentId: found[serialNumber].id,
      traceGapId: gaps[serialNumber].id,
      ...acceptance,
    });
  }
  return `${rows.length} gaps in the trace, ${acceptances.length} accepted`;
}

function rowsOf(answer) {
  return Array.isArray(answer) ? answer : answer.rows;
}

function filled(texts) {
  return Object.fromEntries(Object.entries(texts).filter(([, value]) => value !== ''));
}

function numbers(texts) {
  return Object.fromEntries(Object.entries(filled(texts)).map(([name, value]) => [name, Number(value)]));
}
