// Compares packages worked by steps, and what is due of requirements, with what they must be.
import { each } from '../load/files.mjs';

/** Packages by their reference: status, how many steps stand how, what is open, what was counted. */
export async function checkPackages(client, expected, same) {
  const { rows } = await client.get('/api/packages?limit=200');
  for (const one of expected) {
    const name = one.reference;
    const row = rows.find(({ reference }) => reference === name);
    same(`${name} status`, row?.status, one.status);
    if (row === undefined) continue;
    same(`${name} kind`, row.kind, one.kind);
    same(`${name} airframe`, row.airframe?.registration, one.registration);
    same(`${name} steps`, row.steps, { signed: one.standings.signed ?? 0, total: one.total });
    const work = await client.get(`/api/packages/${row.id}/steps`);
    const standings = {};
    for (const { standing } of work.steps) standings[standing] = (standings[standing] ?? 0) + 1;
    same(`${name} standings`, sorted(standings), sorted(one.standings));
    same(`${name} open items`, work.openItems.length, one.openItems);
    same(`${name} counts`, work.counts, one.counts);
  }
}

/** What moved with the signature of a step: where, when, and at which counters. */
export async function checkMoves(client, expected, same) {
  const { rows } = await client.get('/api/packages?limit=200');
  const worked = rows.filter(({ steps }) => steps.total > 0);
  const packages = await Promise.all(worked.map(({ id }) => client.get(`/api/packages/${id}`)));
  for (const { registration, position, direction, serialNumber, at, minutes, cycles } of expected) {
    const name = `${direction} of ${serialNumber}`;
    const side = direction === 'removal' ? 'outgoing' : 'incoming';
    const changes = packages
      .filter(({ airframe }) => airframe?.registration === registration)
      .flatMap((one) => one.changes);
    const found = changes.find((change) => change[side]?.serialNumber === serialNumber);
    same(`${name} at`, found?.at, at);
    same(`${name} position`, found?.position?.number, position);
    const sinceNew = found?.[side].sinceNew;
    same(`${name} minutes`, sinceNew?.minutes, minutes);
    if (cycles === undefined) continue;
    const units = sinceNew && (sinceNew.cycles.units * cycles.denominator) / sinceNew.cycles.denominator;
    same(`${name} cycles`, units, cycles.units);
  }
}

const sorted = (counts) => Object.entries(counts).sort(([a], [b]) => a.localeCompare(b));

/** What is due of each requirement: counters, days, and when it was last done. */
export async function checkRequirements(client, expected, same) {
  const airframes = await client.get('/api/airframes');
  const lists = new Map();
  await each([...new Set(expected.map(holderOf))], 4, async (holder) => {
    lists.set(holder, await client.get(await pathOf(client, holder, airframes)));
  });
  for (const one of expected) {
    const { code, serialNumber, registration, positionNumber, dueAtMinutes, dueAtCycles, dueOn, doneOn } =
      one;
    const subject =
      serialNumber ?? [registration, ...(positionNumber ? [`position ${positionNumber}`] : [])].join(' ');
    const name = `${code} on ${subject}`;
    const found = rowsOf(lists.get(holderOf(one))).find(
      (row) =>
        row.code === code &&
        (serialNumber === undefined ? row.subject === subject : row.subject.endsWith(` ${subject}`)),
    );
    const due = (dimension) => found?.dues.find((each) => each.dimension === dimension);
    if (dueAtMinutes !== undefined) same(`${name} minutes`, due('minutes')?.dueAt, dueAtMinutes);
    if (dueAtCycles !== undefined) same(`${name} cycles`, due('cycles')?.dueAt, dueAtCycles);
    if (dueOn !== undefined) same(`${name} day`, due('months')?.dueOn, dueOn);
    if (doneOn !== undefined) same(`${name} done`, found?.lastDone?.on, doneOn);
  }
}

const holderOf = ({ serialNumber, registration }) => serialNumber ?? registration;

async function pathOf(client, holder, airframes) {
  const airframe = airframes.find(({ registration }) => registration === holder);
  if (airframe !== undefined) return `/api/airframes/${airframe.id}/requirements`;
  const { rows } = await client.get('/api/components?kind=engine&limit=200');
  return `/api/components/${rows.find(({ serialNumber }) => serialNumber === holder).id}/requirements`;
}

const rowsOf = (answer) => (Array.isArray(answer) ? answer : answer.rows);
