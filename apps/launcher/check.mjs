// npm run check: types, lint and format, who imports whom, layout, contract.
import { build } from './building/build.mjs';
import { ensureInstalled } from './building/install.mjs';
import { reporting, StepFailed } from './building/run.mjs';
import { runChecks } from './checks/run-checks.mjs';

await reporting(async () => {
  ensureInstalled();
  await build('api');
  await build('client');
  const { failed } = await runChecks();
  if (failed > 0) throw new StepFailed(`${failed} checks failed`);
});
