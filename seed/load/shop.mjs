// Tools, who may sign what, procedures, requirements and what was done about them before.
import { each, json } from './files.mjs';

const AT_ONCE = 4;

/** Tools with their calibrations. Answers {found: ids by serial number, line}. */
export async function tools(client) {
  const found = {};
  for (const { calibrations, ...tool } of json('register/tools.json')) {
    const { id } = await client.post('/api/tools', tool);
    for (const calibration of calibrations) await client.post(`/api/tools/${id}/calibrations`, calibration);
    found[tool.serialNumber] = id;
  }
  return { found, line: `${Object.keys(found).length} tools` };
}

export async function authorisations(client, { types }) {
  const rows = json('register/authorisations.json');
  const { rows: people } = await client.get('/api/people');
  const ids = Object.fromEntries(people.map(({ signInName, id }) => [signInName, id]));
  for (const { signInName, airframeType, ...row } of rows) {
    await client.post('/api/authorisations', {
      personId: ids[signInName],
      airframeTypeId: airframeType === null ? null : types[airframeType],
      ...row,
    });
  }
  return `${rows.length} authorisations`;
}

/** Procedures. Answers {found: ids by code, line}. */
export async function procedures(client) {
  const found = {};
  for (const procedure of json('register/procedures.json'))
    found[procedure.code] = (await client.post('/api/procedures', procedure)).id;
  return { found, line: `${Object.keys(found).length} procedures` };
}

/** Requirements, then their accomplishments. Answers {found: ids by code, line}. */
export async function requirements(client, about) {
  const found = {};
  for (const requirement of json('register/requirements.json'))
    found[requirement.code] = (await client.post('/api/requirements', asked(requirement, about))).id;
  const done = json('register/accomplishments.json');
  await each(done, AT_ONCE, ({ code, at, evidence, minutes, cycles, ...subject }) =>
    client.post('/api/accomplishments', {
      requirementId: found[code],
      ...subjectOf(subject, about),
      at,
      evidence,
      ...(minutes === undefined ? {} : { minutes, cycles, cycleDenominator: 1 }),
    }),
  );
  return { found, line: `${Object.keys(found).length} requirements, met ${done.length} times before` };
}

/** A requirement as the API takes it. */
export function asked({ airframeType, engineModel, threshold, repeat, ...rest }, { types, models }) {
  return {
    ...rest,
    ...(airframeType === undefined ? {} : { airframeTypeId: types[airframeType] }),
    ...(engineModel === undefined ? {} : { engineModelId: models[engineModel] }),
    ...(threshold == null ? {} : { threshold }),
    ...(repeat == null ? {} : { repeat }),
  };
}

/** What a requirement is held against, by its id: a component, a position or an airframe. */
export function subjectOf({ serialNumber, registration, positionNumber }, { found, airframes, positions }) {
  if (serialNumber !== undefined) return { componentId: found[serialNumber].id };
  if (positionNumber !== undefined) return { positionId: positions[`${registration} ${positionNumber}`] };
  return { airframeId: airframes[registration] };
}

/** The ids of positions by 'registration number'. */
export async function positionIds(client, airframes) {
  const ids = {};
  for (const [registration, id] of Object.entries(airframes)) {
    for (const position of (await client.get(`/api/airframes/${id}`)).positions)
      ids[`${registration} ${position.number}`] = position.id;
  }
  return ids;
}
