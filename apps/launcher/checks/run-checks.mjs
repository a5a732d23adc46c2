import { spawn } from 'node:child_process';
import { inRoot } from '../building/paths.mjs';

const checks = [
  { name: 'types', args: ['apps/launcher/checks/type-check.mjs'] },
  {
    name: 'lint and format',
    args: ['node_modules/@biomejs/biome/bin/biome', 'ci', '--reporter=summary', '--colors=off', '.'],
  },
  {
    name: 'who imports whom',
    args: [
      'node_modules/dependency-cruiser/bin/dependency-cruise.mjs',
      '--config',
      '.dependency-cruiser.mjs',
      'apps',
      'libs',
      'seed',
      'tests',
    ],
  },
  { name: 'layout', args: ['apps/launcher/checks/layout.mjs'] },
];
// By itself: it writes the contract anew for a moment, which the others read.
const last = { name: 'contract', args: ['apps/launcher/contract.mjs', 'check'] };

function runCheck({ name, args }) {
  return new Promise((resolve) => {
    const child = spawn(process.execPath, args, { cwd: inRoot(), stdio: ['ignore', 'pipe', 'pipe'] });
    let said = '';
    for (const stream of [child.stdout, child.stderr])
      stream.setEncoding('utf8').on('data', (text) => (said += text));
    child.once('close', (code) => resolve({ name, passed: code === 0, said }));
  });
}

/** Runs every static check, prints what the failed ones say, and answers how many passed and failed. */
export async function runChecks() {
  const results = [...(await Promise.all(checks.map(runCheck))), await runCheck(last)];
  for (const { name, passed, said } of results) {
    console.log(`${passed ? 'ok    ' : 'FAILED'} ${name}`);
    if (!passed) console.log(said.trimEnd());
  }
  const passed = results.filter((result) => result.passed).length;
  return { passed, failed: results.length - passed };
}
