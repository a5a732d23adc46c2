import { fill } from './fleet/fill.mjs';
import { fillPackage } from './fleet/package.mjs';
import { fleetOf, histories, NOW } from './fleet/scales.mjs';
import { airframe, PERSON } from './ids.mjs';
import { ACTOR, openApp } from './open-app.mjs';
import { median, slope } from './ratio.mjs';
import { correctOldest } from './rows/correction.mjs';
import { logOne, nextFlights } from './rows/log-flight.mjs';
import { makeCheck } from './rows/release-check.mjs';

const TURNS = 9;

/** Counts what the database touched for one call: buffers, and rows given or written. Exact, where times are not. */
async function touched(admin, work) {
  const figures = [];
  // The first calls plan, and read the catalogue.
  for (let turn = 0; turn < 7; turn++) await work();
  for (let turn = 0; turn < TURNS; turn++) {
    await admin.query(
      'SELECT pg_stat_statements_reset(0, (SELECT oid FROM pg_database WHERE datname = current_database()))',
    );
    await work();
    const { rows } = await admin.query(
      `SELECT sum(shared_blks_hit + shared_blks_read)::int AS buffers, sum(rows)::int AS rows FROM pg_stat_statements
        WHERE dbid = (SELECT oid FROM pg_database WHERE datname = current_database()) AND userid <> (SELECT oid FROM pg_roles WHERE rolname = current_user)`,
    );
    figures.push(rows[0]);
  }
  return { buffers: median(figures.map((row) => row.buffers)), rows: median(figures.map((row) => row.rows)) };
}

/** A gate's two rows of the table: the slopes of buffers and of rows over the sizes. */
function gate({ operation, over, least, target, figures }) {
  return ['buffers', 'rows'].map((what) => ({
    operation: `${operation}, ${what}`,
    scale: `over ${over}`,
    ratio: slope(figures.map(([size, found]) => [size, found[what]])),
    least,
    target,
    slope: figures.map(([size, found]) => `${size}: ${found[what]}`).join(', '),
  }));
}

async function overHistory(make, least) {
  const { admin, client, appUrl } = await make('history');
  await admin.query('CREATE EXTENSION pg_stat_statements');
  await fill(admin, histories(least));
  const app = await openApp(appUrl);
  const sizes = [1, 10, 100].map((times, index) => [least * times, index + 1]);
  const [logged, corrected] = [[], []];
  for (const [size, number] of sizes) {
    const next = nextFlights();
    logged.push([size, await touched(admin, () => logOne(client, next(), airframe(number)))]);
    await client.query("SELECT set_config('app.operator_id', '1', false)");
    const correct = await correctOldest(client, app, number);
    corrected.push([size, await touched(admin, correct)]);
  }
  await app.close();
  return [
    ...gate({ operation: 'log one flight', over: 'history', least: -0.05, target: 0.05, figures: logged }),
    ...gate({
      operation: 'correction of the oldest flight',
      over: 'history',
      least: -0.1,
      target: 0.1,
      figures: corrected,
    }),
  ];
}

async function overFleet(make, least) {
  const [checked, listed] = [[], []];
  for (const airframes of [least, least * 10, least * 100]) {
    const { admin, appUrl } = await make(`fleet ${airframes}`);
    await admin.query('CREATE EXTENSION pg_stat_statements');
    await fill(admin, fleetOf(airframes));
    await fillPackage(admin);
    const app = await openApp(appUrl);
    checked.push([airframes, await touched(admin, await makeCheck(app))]);
    const list = await app.find('features/due-list/due-list.service.js', 'DueListService');
    (await app.find('platform/time/clock.js', 'Clock')).now = () => NOW;
    listed.push([
      airframes,
      await touched(admin, () => list.page({ ...ACTOR, personId: PERSON }, { limit: 50 })),
    ]);
    await app.close();
  }
  return [
    ...gate({ operation: 'release check', over: 'fleet', least: -0.05, target: 0.05, figures: checked }),
    ...gate({ operation: 'first page of what is due', over: 'airframes', target: 1.05, figures: listed }),
  ];
}

/**
 * What grows with what: the slopes, on logarithms, of buffers and rows touched over three sizes a factor of ten apart.
 * Answers null where the server doesn't count them for each statement (pg_stat_statements).
 */
export async function gates(make, { quick, told }) {
  const { admin } = await make('counts');
  try {
    await admin.query('CREATE EXTENSION pg_stat_statements; SELECT * FROM pg_stat_statements LIMIT 1');
  } catch {
    told('the gates are not measured: the server does not preload pg_stat_statements');
    return [];
  }
  return [...(await overHistory(make, quick ? 40 : 400)), ...(await overFleet(make, quick ? 3 : 10))];
}
