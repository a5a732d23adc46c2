// What happened, in order: changes previewed, confirmed and released; moves; shop visits; rating changes.
import { json } from './files.mjs';
import { release } from './release.mjs';

/** Records the events that are typed before the flights, or after them. `tell` is called with a line for each. */
export async function record(client, { when, colleague, airframes, found, tell }) {
  for (const event of json('happened/events.json').filter(({ logged }) => logged === when)) {
    if (event.kind === 'change') {
      const { changed, line } = await change(client, airframes, event);
      const released =
        event.releasedBy === null ? ', left open' : await release(await colleague(event.releasedBy), changed);
      tell(line + released);
    } else tell(await other(client, found, event));
  }
}

async function change(
  client,
  airframes,
  {
    registration,
    positionNumber,
    slot,
    outgoingSerial,
    incomingSerial,
    boundary,
    reason,
    ratingCode,
    removedToLocation,
  },
) {
  const airframeId = airframes[registration];
  const line = `${registration} position ${positionNumber}: ${outgoingSerial} off, ${incomingSerial ?? 'nothing'} on`;
  const before = await packageOf(client, airframeId, reason);
  if (before !== null) return { changed: before, line };
  const request = {
    airframeId,
    positionNumber,
    slot,
    outgoingSerial,
    incomingSerial,
    boundary,
    reason,
    removedToLocation,
    ...(ratingCode === undefined ? {} : { ratingCode }),
  };
  const { digest } = await client.post('/api/changes/preview', request);
  return { changed: await client.post('/api/changes', { ...request, confirmDigest: digest }), line };
}

/** The package an earlier run recorded: a preview can't be given twice, for the change is in the record by then. */
async function packageOf(client, airframeId, reason) {
  for (let after = ''; after !== null; ) {
    const page = await client.get(
      `/api/packages?airframeId=${airframeId}${after === '' ? '' : `&after=${encodeURIComponent(after)}`}`,
    );
    for (const { id } of page.rows) {
      const found = await client.get(`/api/packages/${id}`);
      if (found.changes.some((one) => one.reason === reason)) return found;
    }
    after = page.next;
  }
  return null;
}

async function other(client, found, { kind, at, serialNumber, location, evidence, ratingCode, source }) {
  const componentId = found[serialNumber].id;
  if (kind === 'move') {
    await client.post('/api/placements', {
      componentId,
      locationName: location,
      boundary: { kind: 'instant', at },
    });
    return `${serialNumber} to ${location}`;
  }
  if (kind === 'shop-visit') {
    await client.post('/api/resets', { componentId, kind: 'shop-visit', at, evidence });
    return `${serialNumber}: shop visit`;
  }
  await client.post('/api/rating-changes', { componentId, at, ratingCode, source });
  return `${serialNumber} runs at ${ratingCode}`;
}
