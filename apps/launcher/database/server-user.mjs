import { spawnSync } from 'node:child_process';

const idOf = (flag, user) => spawnSync('id', [flag, user], { encoding: 'utf8' }).stdout?.trim() ?? '';

/**
 * Who runs the database server: PostgreSQL refuses to run as root, so root hands it to `postgres` or `nobody`.
 * Anyone else runs it as themselves (an empty answer).
 */
export function serverUser() {
  if (process.getuid?.() !== 0) return {};
  const user = idOf('-u', 'postgres') ? 'postgres' : 'nobody';
  return { uid: Number(idOf('-u', user)), gid: Number(idOf('-g', user)) };
}

/** Whether that user can enter the folder: below a home of mode 0700 it can't. */
export function canEnter(folder, user) {
  if (user.uid === undefined) return true;
  return spawnSync('/bin/sh', ['-c', 'cd "$1"', 'sh', folder], { ...user, cwd: '/' }).status === 0;
}
