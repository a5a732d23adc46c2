import { spawnSync } from 'node:child_process';
import crypto from 'node:crypto';
import fs from 'node:fs';
import path from 'node:path';
import { StepFailed } from '../building/run.mjs';

/** Where the parts of an embedded server's folder are. */
export const clusterFiles = (folder) => ({
  data: path.join(folder, 'data'),
  password: path.join(folder, 'password'),
  log: path.join(folder, 'server.log'),
  pidFile: path.join(folder, 'data', 'postmaster.pid'),
});

const own = (file, user) => user.uid !== undefined && fs.chownSync(file, user.uid, user.gid);

/** Makes the server's folder, for that user alone. */
export function makeFolder(folder, user) {
  fs.mkdirSync(folder, { recursive: true, mode: 0o700 });
  own(folder, user);
}

/**
 * Makes the cluster's files when there are none. They are made in a side folder and renamed when whole:
 * a kill half way leaves nothing that looks like a cluster.
 * Errors: StepFailed with initdb's own words.
 */
export function ensureCluster({ folder, user, program }) {
  const { data, password } = clusterFiles(folder);
  if (fs.existsSync(path.join(data, 'PG_VERSION'))) return;
  fs.writeFileSync(password, `${crypto.randomBytes(24).toString('base64url')}\n`, { mode: 0o600 });
  own(password, user);
  const side = `${data}.new`;
  for (const left of [side, data]) fs.rmSync(left, { recursive: true, force: true });
  const locale = ['--encoding=UTF8', '--locale-provider=builtin', '--builtin-locale=C.UTF-8', '--locale=C'];
  const result = spawnSync(
    program('initdb'),
    ['-D', side, '-U', 'postgres', '--auth=scram-sha-256', '--pwfile', password, ...locale],
    { ...user, cwd: folder, encoding: 'utf8' },
  );
  if (result.status !== 0) throw new StepFailed(`initdb failed: ${result.error?.message ?? result.stderr}`);
  fs.renameSync(side, data);
}

/** Process id and port of the server that last ran on these files, or null. */
export function lastServer(folder) {
  try {
    const lines = fs.readFileSync(clusterFiles(folder).pidFile, 'utf8').split('\n');
    return { pid: Number(lines[0]), port: Number(lines[3]) };
  } catch {
    return null;
  }
}
