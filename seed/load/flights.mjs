// Flights: those typed by hand, with what became of them, and the files of each airframe.
import { filesIn, json, text } from './files.mjs';

const POLL_MS = 150;
const LONGEST_WAIT_MS = 120_000;

/** Flights the file form can't tell (a position that did not run), one typed wrong and corrected, one typed twice and voided. */
export async function byHand(client, { airframes }) {
  const entries = json('happened/flights-by-hand.json');
  for (const { registration, flight, correct, void: voided } of entries) {
    const {
      flights: [logged],
    } = await client.post(`/api/airframes/${airframes[registration]}/flights`, { flights: [flight] });
    if (correct !== undefined) await client.post(`/api/flights/${logged.id}/correct`, correct);
    if (voided !== undefined) await client.post(`/api/flights/${logged.id}/void`, voided);
  }
  return `${entries.length} flights by hand`;
}

/** One file as a user would bring it: a dry run, a look at it, and then the import itself. */
export async function importFile(client, fileName) {
  const { id } = await client.post('/api/imports', {
    kind: 'flights',
    fileName,
    content: text(`flights/${fileName}`),
  });
  const checked = await settled(client, id);
  if (checked.state === 'applied') return `${fileName}: imported before`;
  if (checked.failed > 0)
    throw new Error(`${fileName} has ${checked.failed} bad rows:\n${wrongRows(checked)}`);
  const { tag } = await client.getTagged(`/api/imports/${id}`);
  await client.post(`/api/imports/${id}/apply`, {}, { ifMatch: tag });
  const applied = await settled(client, id);
  if (applied.state !== 'applied')
    throw new Error(`${fileName} ended as ${applied.state}:\n${wrongRows(applied)}`);
  return `${fileName}: ${checked.rows} rows, ${checked.ready} new`;
}

export function flightFiles() {
  return filesIn('flights');
}

/** The file once no work on it is under way. */
async function settled(client, id) {
  const until = Date.now() + LONGEST_WAIT_MS;
  for (;;) {
    const state = await client.get(`/api/imports/${id}`);
    if (state.state !== 'checking' && state.state !== 'applying') return state;
    if (Date.now() > until) throw new Error(`the import is still ${state.state} after two minutes`);
    await new Promise((resolve) => setTimeout(resolve, POLL_MS));
  }
}

function wrongRows({ errors = [], job }) {
  if (job?.failure) return `  ${job.failure}`;
  return errors
    .slice(0, 10)
    .map(
      ({ line, column, value, reason, fix }) =>
        `  line ${line}, ${column} '${value}': ${reason} ${fix ?? ''}`,
    )
    .join('\n');
}
