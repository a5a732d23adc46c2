import crypto from 'node:crypto';
import fs from 'node:fs';
import path from 'node:path';
import { inRoot, memoryFolder } from './paths.mjs';
import { run } from './run.mjs';

const stamp = path.join(memoryFolder, 'installed');
const npmsOwn = inRoot('node_modules/.package-lock.json');

function isInstalled(lock) {
  if (!fs.existsSync(npmsOwn)) return false;
  if (fs.existsSync(stamp) && fs.readFileSync(stamp, 'utf8') === lock) return true;
  // Somebody ran npm by hand: its own record is then the younger of the two.
  return fs.statSync(npmsOwn).mtimeMs >= fs.statSync(inRoot('package-lock.json')).mtimeMs;
}

/**
 * Installs the packages when the lock file is not the one they were installed from. No package's script is run.
 * Errors: StepFailed.
 */
export function ensureInstalled() {
  const lock = crypto
    .createHash('sha256')
    .update(fs.readFileSync(inRoot('package-lock.json')))
    .digest('hex');
  if (!isInstalled(lock)) {
    console.log('installing packages (npm ci) …');
    const args = ['ci', '--ignore-scripts', '--include=dev', '--no-audit', '--no-fund', '--loglevel=error'];
    const npm = process.env.npm_execpath;
    if (npm) run(process.execPath, [npm, ...args]);
    else run(process.platform === 'win32' ? 'npm.cmd' : 'npm', args);
  }
  fs.mkdirSync(memoryFolder, { recursive: true });
  fs.writeFileSync(stamp, lock);
}
