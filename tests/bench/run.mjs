// npm run bench: the product's hot paths against hand-written twins in one run, and what grows with what. Prints a table;
// `-- --json FILE` writes it, `-- --quick` takes the small scale alone. Ends with 1 when a twin's answer differs.
import fs from 'node:fs';
import { parseArgs } from 'node:util';
import { build } from '../../apps/launcher/building/build.mjs';
import { ensureInstalled } from '../../apps/launcher/building/install.mjs';
import { databases } from './databases.mjs';
import { SCALES } from './fleet/scales.mjs';
import { gates } from './gates.mjs';
import { measure } from './measure.mjs';
import { asJson, table } from './table.mjs';

const { values } = parseArgs({
  options: { json: { type: 'string' }, quick: { type: 'boolean', default: false } },
});
const begun = Date.now();
const told = (text) => console.log(`${((Date.now() - begun) / 1000).toFixed(0).padStart(5)} s  ${text}`);

ensureInstalled();
await build('api');
const { make, close } = await databases();
const results = [];
try {
  results.push(...(await measure(await make('s'), SCALES.S, { quick: values.quick, told })));
  if (values.quick)
    told('quick: scale L is left out, and there are fewer rounds and smaller sizes for the gates');
  else results.push(...(await measure(await make('l'), SCALES.L, { quick: false, told })));
  results.push(...(await gates(make, { quick: values.quick, told })));
} finally {
  await close();
}
console.log(`\n${table(results).join('\n')}`);
if (values.json !== undefined) fs.writeFileSync(values.json, `${JSON.stringify(asJson(results), null, 2)}\n`);
told('done');
process.exit(0);
