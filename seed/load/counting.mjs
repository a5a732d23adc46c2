// What ran besides flights: counters of auxiliary power units, ground runs, runs in test cells.
import { json, table } from './files.mjs';

/** What the counter of a unit showed as the record began: its opening balance was read off it. */
export function firstReadings() {
  const rows = table('register/openings.csv').filter(({ source }) => source.startsWith('Counter of '));
  return Object.fromEntries(
    rows.map((row) => [row.subject, { minutes: Number(row.minutes), starts: Number(row.cycle_units) }]),
  );
}

/** Readings and replacements, ground runs, test cells with their rules and runs. Answers a line to be told. */
export async function counting(client, { airframes, models, found }) {
  const { counters, groundRuns, testCells } = json('happened/counting.json');
  for (const { unit, readings } of counters)
    for (const reading of readings)
      await client.post(
        `/api/components/${found[unit].id}/${reading.last === undefined ? 'counter-readings' : 'counter-replacements'}`,
        reading,
      );
  for (const { registration, ...run } of groundRuns)
    await client.post(`/api/airframes/${airframes[registration]}/ground-runs`, run);
  for (const cell of testCells) await runInCell(client, { models, found }, cell);
  return `${counters.length} counters read, ${groundRuns.length} ground runs, ${testCells.length} test cell`;
}

async function runInCell(client, { models, found }, { name, rule: { model, ...rule }, runs, ...stay }) {
  const cell = await client.post('/api/test-cells', { name });
  const weights = {
    perFlight: 2,
    perLanding: 0,
    perTouchAndGo: 1,
    perStart: 0,
    perAbortedTakeOff: 0,
    denominator: 2,
  };
  await client.post(`/api/engine-models/${models[model]}/cycle-rules`, { ...weights, ...rule });
  const componentId = found[stay.engine].id;
  const at = (instant) => ({ kind: 'instant', at: instant });
  await client.post('/api/placements', {
    ...{ componentId, slotId: cell.slotId, boundary: at(stay.from), reason: 'Acceptance run' },
  });
  for (const run of runs) await client.post(`/api/test-cells/${cell.id}/runs`, run);
  await client.post('/api/placements', {
    ...{ componentId, locationName: stay.then, boundary: at(stay.to), reason: 'Back to the shop' },
  });
}
