// A spare module that was in a shop, engines that are, and what is tagged or preserved in the stores.
import { json } from './files.mjs';

/** Builds the spare module up, unless it is on record. Answers the ids of it and of what it came with. */
async function spareModule(client, { models }, { module, disks }) {
  const engineModelId = models[module.engineModel];
  const { engineModel: _, at, location, minutes, cycles, ...described } = module;
  const made = await client.post('/api/components', {
    ...described,
    engineModelId,
    slots: disks
      .filter(({ slot }) => slot !== undefined)
      .map(({ slot }) => ({ kind: 'part', name: slot, lifeLimited: true })),
  });
  const ids = { [module.serialNumber]: made.id };
  const boundary = { kind: 'instant', at };
  await opening(client, made.id, { minutes, cycles }, at);
  for (const { slot, location: store, minutes: hours, cycles: used, ...disk } of disks) {
    const { id } = await client.post('/api/components', { ...disk, engineModelId });
    ids[disk.serialNumber] = id;
    await opening(client, id, { minutes: hours, cycles: used }, at);
    const place =
      slot === undefined
        ? { locationName: store }
        : { slotId: made.slots.find(({ name }) => name === slot).id };
    await client.post('/api/placements', { componentId: id, ...place, boundary });
  }
  await client.post('/api/placements', { componentId: made.id, locationName: location, boundary });
  return { ids, slots: made.slots };
}

const opening = (client, componentId, { minutes = 0, cycles = 0 }, at) =>
  client.post('/api/openings', {
    componentId,
    at,
    basis: 'new',
    rows: [{ ratingCode: '84A', minutes, cycles }],
    source: 'Records of the seller',
  });

/** Visits, tags and preservations. */
export async function shopVisits(client, { models, found }) {
  const { spare, visits, tags, preservations } = json('register/shop-visits.json');
  const built = await spareModule(client, { models }, spare);
  const idOf = (serial) => built.ids[serial] ?? found[serial].id;
  for (const { serialNumber, back, ...sent } of visits) {
    const visit = await client.post('/api/shop-visits', { componentId: idOf(serialNumber), ...sent });
    if (back === undefined) continue;
    const { changes = [], resets = [], ...rest } = back;
    await client.post(`/api/shop-visits/${visit.id}/return`, {
      ...rest,
      changes: changes.map(({ slot, incomingSerial, ...change }) => ({
        ...change,
        slotId: built.slots.find(({ name }) => name === slot).id,
        incomingId: idOf(incomingSerial),
      })),
      resets: resets.map(({ serialNumber: serial, kind }) => ({ componentId: idOf(serial), kind })),
    });
  }
  for (const { serialNumber, ...tag } of tags)
    await client.post('/api/serviceability-tags', { componentId: idOf(serialNumber), ...tag });
  for (const { serialNumber, ...preserved } of preservations)
    await client.post('/api/preservations', { componentId: idOf(serialNumber), ...preserved });
  return `${visits.length} shop visits, ${tags.length} tags, ${preservations.length} preservations`;
}
