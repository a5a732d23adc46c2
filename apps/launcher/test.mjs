// npm test                     checks, then every test; the last line counts them
// npm test -- api -t "sign"    only the projects named first; the rest goes to Jest
// Projects: check unit published model api browser. TEST_DATABASE_URL: a server to use instead of an embedded one.
import { build } from './building/build.mjs';
import { filesBelow } from './building/fingerprint.mjs';
import { ensureInstalled } from './building/install.mjs';
import { inRoot } from './building/paths.mjs';
import { StepFailed } from './building/run.mjs';
import { findChromium, howToInstallChromium } from './testing/find-chromium.mjs';
import { Tally } from './testing/tally.mjs';

const known = ['check', 'unit', 'published', 'model', 'api', 'browser'];
const given = process.argv.slice(2);
const firstOther = given.findIndex((word) => !known.includes(word));
const named = firstOther < 0 ? given : given.slice(0, firstOther);
const args = firstOther < 0 ? [] : given.slice(firstOther);
// What is passed on to Jest is a choice of tests: checks and second runs would only delay it.
const chosen = named.length > 0 ? named : known.filter((project) => args.length === 0 || project !== 'check');
const wants = (project) => chosen.includes(project);

const tally = new Tally();

async function runPure(runJest, env) {
  const projects = ['unit', 'published', 'model'].filter(wants);
  if (projects.length > 0)
    tally.add(
      await runJest({ title: projects.join(', '), projects, args, env: { ...env, TZ: 'UTC' }, seconds: 120 }),
    );
  if (wants('unit') && args.length === 0) {
    const zone = 'Pacific/Auckland';
    tally.add(await runJest({ title: `unit under TZ=${zone}`, projects: ['unit'], env: { TZ: zone } }));
  }
}

async function runBrowser(runJest, env) {
  const chromium = findChromium();
  const title = 'browser';
  if (chromium)
    return tally.add(
      await runJest({
        title,
        projects: ['browser'],
        args,
        env: { ...env, CHROMIUM_PATH: chromium },
        seconds: 120,
        workers: 1,
      }),
    );
  const files = filesBelow(inRoot('tests/browser')).filter((file) => file.endsWith('.spec.ts')).length;
  console.log(
    `\n— ${title}: skipped, no Chromium here. To run them: ${howToInstallChromium()}  (or set CHROMIUM_PATH)`,
  );
  tally.add(process.env.CI ? { failed: Math.max(files, 1) } : { skipped: files });
}

/** Only what the chosen tests run: a half-written screen does not keep a rule from being tested. */
const partToBuild =
  wants('check') || wants('browser') ? 'all' : wants('api') || wants('model') ? 'api' : 'libs';

/** Reports what kept a stage from running as one failure; the stages after it still run. */
async function stage(work) {
  try {
    await work();
    return true;
  } catch (error) {
    console.error(error instanceof StepFailed ? error.message : error);
    tally.add({ failed: 1 });
    return false;
  }
}

async function testAll() {
  ensureInstalled();
  const built = await stage(() => build(partToBuild));
  if (built && wants('check')) {
    const { runChecks } = await import('./checks/run-checks.mjs');
    await stage(async () => tally.add(await runChecks()));
  }
  const { runJest } = await import('./testing/run-jest.mjs');
  const { testServer } = await import('./testing/template.mjs');
  if (!built) return runPure(runJest, {});
  const needsServer = ['model', 'api', 'browser'].some(wants);
  const address = process.env.TEST_DATABASE_URL ?? process.env.DATABASE_URL;
  const server = needsServer ? await testServer(address) : null;
  try {
    const env = server?.env ?? {};
    await runPure(runJest, env);
    if (wants('api'))
      tally.add(await runJest({ title: 'api', projects: ['api'], args, env, seconds: 60, workers: 2 }));
    if (wants('browser')) await runBrowser(runJest, env);
  } finally {
    await server?.stop();
  }
}

await stage(testAll);
console.log(`\n${tally.line()}`);
process.exit(tally.failed > 0 ? 1 : 0);
