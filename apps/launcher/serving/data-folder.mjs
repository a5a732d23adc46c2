import crypto from 'node:crypto';
import fs from 'node:fs';
import path from 'node:path';
import { inRoot, root } from '../building/paths.mjs';
import { canEnter, serverUser } from '../database/server-user.mjs';

/**
 * The folder that keeps everything between starts: DATA_DIR, or .data in the checkout. Where root started the
 * program from a folder that the database's user can't enter (a home of mode 0700), a folder below /var/lib.
 */
export function dataFolder() {
  const given = process.env.DATA_DIR;
  const folder = given ? path.resolve(given) : inRoot('.data');
  fs.mkdirSync(folder, { recursive: true });
  if (given || canEnter(folder, serverUser())) return folder;
  const id = crypto.createHash('sha256').update(root).digest('hex').slice(0, 8);
  const other = path.join('/var/lib', `strutbook-${id}`);
  fs.mkdirSync(other, { recursive: true });
  console.log(`data: ${other} (the database's user can't enter ${folder})`);
  return other;
}

/** A secret kept in the data folder, for this user alone; made the first time. */
export function keptSecret(folder, name) {
  const file = path.join(folder, name);
  try {
    fs.writeFileSync(file, `${crypto.randomBytes(18).toString('base64url')}\n`, { mode: 0o600, flag: 'wx' });
  } catch (error) {
    if (error.code !== 'EEXIST') throw error;
  }
  return fs.readFileSync(file, 'utf8').trim();
}

/** What an earlier start kept under the name, or null. */
export function keptRecord(folder, name) {
  try {
    return JSON.parse(fs.readFileSync(path.join(folder, name), 'utf8'));
  } catch (error) {
    if (error.code === 'ENOENT') return null;
    throw error;
  }
}

/** Keeps a record under the name, whole or not at all. */
export function keepRecord(folder, name, record) {
  const file = path.join(folder, name);
  fs.writeFileSync(`${file}.new`, JSON.stringify(record, null, 2), { mode: 0o600 });
  fs.renameSync(`${file}.new`, file);
}
