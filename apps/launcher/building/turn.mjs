import fs from 'node:fs';
import path from 'node:path';
import { setTimeout as sleep } from 'node:timers/promises';
import { memoryFolder } from './paths.mjs';

/** Whether a process with this id lives. */
export function isAlive(pid) {
  try {
    process.kill(pid, 0);
    return true;
  } catch (error) {
    return error.code === 'EPERM';
  }
}

function take(file) {
  try {
    fs.writeFileSync(file, String(process.pid), { flag: 'wx' });
    return true;
  } catch (error) {
    if (error.code !== 'EEXIST') throw error;
    return false;
  }
}

function isLeftOver(file) {
  try {
    const holder = Number(fs.readFileSync(file, 'utf8'));
    const fresh = Date.now() - fs.statSync(file).mtimeMs < 2000;
    return holder > 0 ? !isAlive(holder) : !fresh;
  } catch {
    return false;
  }
}

/** Runs `work` while no other process of this checkout runs work of that name: two builds at once would mix their output. */
export async function inTurn(name, work) {
  fs.mkdirSync(memoryFolder, { recursive: true });
  const file = path.join(memoryFolder, `${name}.lock`);
  while (!take(file)) {
    if (isLeftOver(file)) fs.rmSync(file, { force: true });
    else await sleep(100);
  }
  try {
    return await work();
  } finally {
    fs.rmSync(file, { force: true });
  }
}
