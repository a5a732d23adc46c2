// npm run contract: writes the API's contract and the client's types from the API as built.
// npm run contract:check: fails when the committed ones differ from that.
import fs from 'node:fs';
import path from 'node:path';
import { build } from './building/build.mjs';
import { ensureInstalled } from './building/install.mjs';
import { inRoot } from './building/paths.mjs';
import { reporting, runNode, StepFailed } from './building/run.mjs';

const contract = inRoot('libs/api-client/openapi.json');
const types = inRoot('libs/api-client/src/schema.gen.d.ts');
const read = (file) => (fs.existsSync(file) ? fs.readFileSync(file, 'utf8') : null);

async function write() {
  await build('api');
  runNode([inRoot('apps/api/dist/write-openapi.js')]);
  const { writeClientTypes } = await import('./building/client-types.mjs');
  await writeClientTypes();
  await build('client');
}

/** Restores what was there, so that a check changes nothing. */
async function check() {
  const before = [contract, types].map((file) => [file, read(file)]);
  await write();
  const drifted = before.filter(([file, text]) => read(file) !== text);
  for (const [file, text] of drifted) text === null ? fs.rmSync(file) : fs.writeFileSync(file, text);
  if (drifted.length === 0) return;
  const names = drifted.map(([file]) => path.relative(inRoot(), file)).join(', ');
  throw new StepFailed(
    `The contract has drifted from the API: ${names}. Run "npm run contract" and commit what it writes.`,
  );
}

await reporting(async () => {
  ensureInstalled();
  await (process.argv[2] === 'check' ? check() : write());
});
