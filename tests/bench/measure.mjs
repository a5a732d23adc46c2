import { startApiProcess } from '../../apps/launcher/serving/api-process.mjs';
import { fill } from './fleet/fill.mjs';
import { fillPackage } from './fleet/package.mjs';
import { assertProjections } from './fleet/verify.mjs';
import { openApp } from './open-app.mjs';
import { compare } from './ratio.mjs';
import { chainWays, makePlain } from './rows/chain.mjs';
import { correctionWays } from './rows/correction.mjs';
import { dueFullWays, duePageWays } from './rows/due-list.mjs';
import { historyWays } from './rows/history.mjs';
import { signedIn } from './rows/http.mjs';
import { flightWays, makeBareFlight } from './rows/log-flight.mjs';
import { flightHttpWays } from './rows/log-flight-http.mjs';
import { releaseCheckWays } from './rows/release-check.mjs';
import { routeWays } from './rows/route.mjs';

/** All operations at one scale, each beside its twin. Throws when the answers differ. */
export async function measure({ admin, client, appUrl }, scale, { quick, told }) {
  told(`filling scale ${scale.name}`);
  await fill(admin, scale, (text) => told(`  ${text}`));
  await fillPackage(admin);
  await makeBareFlight(admin);
  await makePlain(admin);
  const { rows } = await admin.query(
    `SELECT (SELECT count(*) FROM airframe) || ' airframes, ' || (SELECT count(*) FROM position) || ' engines, '
       || (SELECT count(*) FROM flight) || ' flights, ' || (SELECT count(*) FROM due_point) || ' limited parts, '
       || pg_size_pretty(pg_database_size(current_database())) AS made`,
  );
  told(`scale ${scale.name}: ${rows[0].made}`);
  const results = [];
  const row = async (operation, target, ways, { each = 1, rounds = quick ? 5 : 11 } = {}) => {
    const { close, ...both } = await ways;
    results.push(await compare({ operation, scale: scale.name, target, each, rounds, ...both }));
    await close?.();
    told(`  ${operation}: ${results.at(-1).ratio.toFixed(2)}`);
  };
  const app = await openApp(appUrl);
  await assertProjections(app, told);
  // Before flights are logged: pages of chance names would be gaps of the log.
  await row('release check', 2, releaseCheckWays(client, app), { each: 10 });
  await row('due list, first page', 2, duePageWays(client, app), { each: 10 });
  if (scale.name === 'S')
    await row('due list in full', 1.5, dueFullWays(client, app), { rounds: quick ? 3 : 11 });
  await row('history to JSON', 1.5, historyWays(client, app));
  await row('correction of the oldest flight', 0.05, correctionWays(client, admin, app, 3));
  await row('chained write', 1.2, chainWays(client), { each: 200, rounds: 11 });
  await row('log one flight', 1.5, flightWays(client, 1), { each: 200, rounds: 11 });
  await app.close();
  const api = await startApiProcess({ appUrl });
  const http = signedIn(api.baseUrl);
  await row('log one flight over HTTP', 2.5, flightHttpWays(client, http, 8), { each: 100, rounds: 11 });
  await row('a plain route', 1.5, routeWays(appUrl, http), { each: 200, rounds: 11 });
  await api.stop();
  return results;
}
