// What the airframes are planned to fly: a rate each, and for one the flights of the next days, in which something falls due.

const SOURCE = 'Winter plan, invented for the demonstration';
const WEEKS = [
  { minutes: 3360, flights: 24 },
  { minutes: 2730, flights: 21 },
  { minutes: 3990, flights: 14 },
];
const STATIONS = ['DRV', 'KHN'];
const HOUR_MS = 3_600_000;
const MOST_LEFT = 40;

const minute = (ms) => `${new Date(ms).toISOString().slice(0, 16)}Z`;

/** Flights of an hour and a half, four a day, from tomorrow morning on. */
function flightsToCome(count) {
  const tomorrow = Math.floor(Date.now() / 86_400_000 + 1) * 86_400_000;
  return Array.from({ length: count }, (_, index) => {
    const takeOff = tomorrow + Math.floor(index / 4) * 86_400_000 + (6 + (index % 4) * 3) * HOUR_MS;
    return {
      flightNumber: `DV ${201 + index}`,
      fromStation: STATIONS[index % 2],
      toStation: STATIONS[(index + 1) % 2],
      takeOffAt: minute(takeOff),
      landingAt: minute(takeOff + 1.5 * HOUR_MS),
    };
  });
}

/** The airframe without anything over on which the fewest cycles are left to something, and how many. */
async function nearest(client, airframes) {
  const found = [];
  for (const [registration, id] of Object.entries(airframes)) {
    const { scope } = await client.get(`/api/due-points/totals?airframeId=${id}`);
    const query = `airframeId=${id}&withinCycles=${MOST_LEFT}&status=soon,planned&limit=200`;
    const { rows } = await client.get(`/api/due-points?${query}`);
    const left = rows
      .filter(({ dimension, remainingCycles }) => dimension === 'cycles' && remainingCycles > 0)
      .map(({ remainingCycles }) => remainingCycles);
    if (left.length > 0)
      found.push({ registration, id, troubled: scope.over + scope.notVerified, left: Math.min(...left) });
  }
  found.sort((a, b) => a.troubled - b.troubled || a.left - b.left);
  return found[0];
}

export async function plannedFlying(client, airframes) {
  for (const [index, id] of Object.values(airframes).entries())
    await client.post(`/api/airframes/${id}/planned-rates`, {
      ...{ fromOn: '2026-10-25', days: 7, source: SOURCE },
      ...WEEKS[index % WEEKS.length],
    });
  const rates = `${Object.keys(airframes).length} planned rates`;
  const near = await nearest(client, airframes);
  if (near === undefined) return rates;
  const flights = flightsToCome(near.left + 5);
  await client.post(`/api/airframes/${near.id}/planned-flights`, { flights, replace: true });
  return `${rates}, ${flights.length} flights planned for ${near.registration}`;
}
