import fs from 'node:fs';
import { fingerprint, isBuilt, rememberBuilt } from './fingerprint.mjs';
import { inRoot } from './paths.mjs';
import { inTurn } from './turn.mjs';

/** What each part stands on: building one builds these first. */
const needs = {
  libs: ['libs'],
  api: ['libs', 'api'],
  client: ['client'],
  web: ['libs', 'client', 'web'],
  all: ['libs', 'api', 'client', 'web'],
};

async function perform(step) {
  if (!step.ready()) {
    console.log(`build: ${step.name} left out, no source yet`);
    return;
  }
  const print = fingerprint(step.inputs);
  if (isBuilt(step.name, print) && fs.existsSync(inRoot(step.output))) return;
  const began = Date.now();
  rememberBuilt(step.name, null);
  await step.work();
  // The inputs as they were before the work: a file saved meanwhile makes the next build do it again.
  rememberBuilt(step.name, print);
  console.log(`build: ${step.name} ${((Date.now() - began) / 1000).toFixed(1)} s`);
}

/**
 * Builds a part (libs, api, client, web, or all) with what it stands on, leaving out steps whose inputs did not change.
 * Errors: StepFailed with the compiler's words.
 */
export async function build(part = 'all') {
  if (!needs[part]) throw new Error(`no such part: ${part}; there are ${Object.keys(needs).join(', ')}`);
  // Read late: these need the packages, which the launcher may just have installed.
  const { buildSteps } = await import('./build-steps.mjs');
  await inTurn('build', async () => {
    for (const step of buildSteps) if (needs[part].includes(step.part)) await perform(step);
  });
}
