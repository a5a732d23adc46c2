// Packages worked by steps: opened by a planner, captured and signed by who did the work, inspected by another person.
import { each, json } from './files.mjs';
import { release } from './release.mjs';
import { subjectOf } from './shop.mjs';

/** Loads the packages, each in its own order. `about`: ids by name; `colleague`: who acts, by sign-in name. */
export async function work(about) {
  await each(json('happened/work.json'), 1, async (one) => about.tell(await worked(about, one)));
}

async function worked(about, { reference, procedure, openedBy, open, acts }) {
  const { registration, requirements, ...asked } = open;
  const planner = await about.colleague(openedBy);
  const opened = await planner.client.post('/api/packages', {
    ...asked,
    reference,
    airframeId: about.airframes[registration],
    procedureId: about.procedures[procedure],
    requirements: requirements.map(({ code, ...subject }) => ({
      requirementId: about.requirements[code],
      ...subjectOf(subject, about),
    })),
  });
  const { status } = await planner.client.get(`/api/packages/${opened.id}`);
  const line = `${reference}, ${opened.number}, ${registration}: ${asked.title}`;
  if (status !== 'open') return `${line}, ${status} before`;
  const desk = { ...about, opened, steps: await stepsOf(planner.client, opened.id) };
  for (const act of acts) {
    const stopped = await perform(desk, act);
    if (stopped !== null) return `${line}, ${stopped}`;
  }
  return `${line}, ${acts.length} acts`;
}

/** Performs one act, unless an earlier run did. Answers why the work stops here, or null. */
async function perform(desk, act) {
  const { client, ...person } = await desk.colleague(act.at ?? act.by);
  switch (act.act) {
    case 'add':
      if ([...desk.steps.values()].some((step) => step.definition.title === act.step.title)) return null;
      keep(desk, await client.post(`/api/packages/${desk.opened.id}/steps`, act.step));
      return null;
    case 'capture':
      await capture(desk, client, act);
      return null;
    case 'void':
      await strike(desk, client, act);
      return null;
    case 'sign':
      return sign(desk, client, act);
    default:
      return release({ client, ...person }, desk.opened, { by: 'pin', orLeave: true }).then((line) =>
        line.replace(/^, /, ''),
      );
  }
}

async function capture(desk, client, { step, capture: key, typed, tool }) {
  const { id, entries } = desk.steps.get(step);
  if (entries.some((entry) => entry.capture === key && isSame(entry, typed, tool))) return;
  const asked = { capture: key, typed, ...(tool === undefined ? {} : { toolId: desk.tools[tool] }) };
  keep(desk, await client.post(`/api/steps/${id}/entries`, asked));
}

async function strike(desk, client, { step, capture: key, typed, reason }) {
  const found = desk.steps
    .get(step)
    .entries.find((entry) => entry.capture === key && isSame(entry, typed) && !entry.voided);
  if (found !== undefined) keep(desk, await client.post(`/api/step-entries/${found.id}/void`, { reason }));
}

/** Signs at the tablet of `at`, which may be another person's, with the signer's own PIN. */
async function sign(desk, client, { step, meaning, by, at = by, performedAt }) {
  const { id, signatures, definition, missing } = desk.steps.get(step);
  if (signatures.some((one) => one.meaning === meaning && one.counts)) return null;
  // A tool that went out of date since: the work stands where it does.
  if (missing.length > 0) return `stands at step ${definition.number}: ${missing[0].label} is not accepted`;
  const who = by === at ? {} : { signInName: by };
  const query = new URLSearchParams({ meaning, performedAt, ...who });
  const { digest } = await client.get(`/api/steps/${id}/statement?${query}`);
  const { pin } = await desk.colleague(by);
  await client.post(`/api/steps/${id}/signatures`, {
    meaning,
    performedAt,
    digest,
    method: 'pin',
    secret: pin,
    ...who,
  });
  return null;
}

const isSame = (entry, typed, tool) =>
  (tool === undefined || entry.tool === tool) &&
  Object.entries(typed).every(([name, value]) => JSON.stringify(entry.typed[name]) === JSON.stringify(value));

/** The steps of a package by their keys, as they stand when the loading comes to it. */
async function stepsOf(client, packageId) {
  const { steps } = await client.get(`/api/packages/${packageId}/steps`);
  return new Map(steps.map((step) => [step.definition.key, step]));
}

function keep({ steps }, step) {
  steps.set(step.definition.key, step);
}
