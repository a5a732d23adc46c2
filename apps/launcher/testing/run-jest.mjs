import { spawn } from 'node:child_process';
import fs from 'node:fs';
import path from 'node:path';
import { inRoot } from '../building/paths.mjs';

const outputFolder = inRoot('.test-output');

function counted(file) {
  const result = JSON.parse(fs.readFileSync(file, 'utf8'));
  return {
    passed: result.numPassedTests,
    // A file that could not even be loaded has no tests to count: it fails as one.
    failed: result.numFailedTests + result.numRuntimeErrorTestSuites,
    skipped: result.numPendingTests + result.numTodoTests,
  };
}

/** Runs one command to its end, or ends it when its time is over. */
function finish(args, { env, minutes }) {
  return new Promise((resolve) => {
    const child = spawn(process.execPath, args, {
      cwd: inRoot(),
      env: { ...process.env, ...env },
      stdio: 'inherit',
    });
    const clock = setTimeout(() => {
      console.error(`stopped: not done after ${minutes} minutes`);
      child.kill('SIGKILL');
    }, minutes * 60_000);
    child.once('close', (code) => {
      clearTimeout(clock);
      resolve(code);
    });
  });
}

/**
 * Runs Jest on the named projects and answers what passed, failed and was skipped. A run that ends without its
 * report, or badly with no failed test, counts as one failure.
 */
export async function runJest({ title, projects, args = [], env = {}, seconds = 5, workers, minutes = 20 }) {
  const report = path.join(outputFolder, `${title.replace(/\W+/g, '-')}.json`);
  fs.mkdirSync(outputFolder, { recursive: true });
  fs.rmSync(report, { force: true });
  console.log(`\n— ${title}`);
  const jest = [
    '--experimental-vm-modules',
    '--disable-warning=ExperimentalWarning',
    inRoot('node_modules/jest/bin/jest.js'),
  ];
  const options = [
    '--passWithNoTests',
    '--json',
    `--outputFile=${report}`,
    `--testTimeout=${seconds * 1000}`,
  ];
  if (workers) options.push(`--maxWorkers=${workers}`);
  const code = await finish([...jest, '--selectProjects', ...projects, ...options, ...args], {
    env,
    minutes,
  });
  if (!fs.existsSync(report)) return { failed: 1 };
  const counts = counted(report);
  return code !== 0 && counts.failed === 0 ? { ...counts, failed: 1 } : counts;
}
