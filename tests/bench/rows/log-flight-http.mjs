import { airframe } from '../ids.mjs';
import { assertSameRow, insertBare, nextFlights } from './log-flight.mjs';

// Of the ten airframes the eighth: the route takes no id that is not a UUID, and most of the filling's are hashes alone.

/** The same over HTTP, by a person who is signed in, against the bare insert over the database's own connection. */
export async function flightHttpWays(client, http, number) {
  const airframeId = airframe(number);
  const [own, bare] = [nextFlights(), nextFlights()];
  const at = (minutes) => new Date(minutes * 60_000).toISOString().replace(':00.000Z', 'Z');
  const post = async () => {
    const { id, logPage, fromStation, toStation, takeOffAt, landingAt } = own();
    const flight = {
      logPage,
      fromStation,
      toStation,
      takeOffAt: at(takeOffAt),
      landingAt: at(landingAt),
      touchAndGoes: 0,
    };
    const { status, text } = await http(
      'POST',
      `/api/airframes/${airframeId}/flights`,
      JSON.stringify({ flights: [flight] }),
      id,
    );
    if (status !== 201) throw new Error(`the flight was not logged: ${status} ${text}`);
    return JSON.parse(text).flights[0].id;
  };
  const first = bare();
  const id = await post();
  await insertBare(client, first, airframeId);
  await assertSameRow(client, id, first.id);
  return { product: post, twin: () => insertBare(client, bare(), airframeId) };
}
