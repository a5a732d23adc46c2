import crypto from 'node:crypto';
import fs from 'node:fs';
import path from 'node:path';
import { inRoot, memoryFolder } from './paths.mjs';

const builtFile = path.join(memoryFolder, 'built.json');
const notSource = new Set(['node_modules', 'dist', 'generated']);

/** Every file below `start` (or `start` itself, if it is one), sorted; build output and packages left out. */
export function filesBelow(start) {
  const stat = fs.statSync(start, { throwIfNoEntry: false });
  if (!stat) return [];
  if (stat.isFile()) return [start];
  return fs
    .readdirSync(start, { withFileTypes: true })
    .filter((entry) => !(entry.isDirectory() && notSource.has(entry.name)))
    .flatMap((entry) => {
      const full = path.join(start, entry.name);
      return entry.isDirectory() ? filesBelow(full) : entry.isFile() ? [full] : [];
    })
    .sort();
}

/** SHA-256 over the names and contents of the inputs (files or folders from the root). */
export function fingerprint(inputs) {
  const hash = crypto.createHash('sha256');
  for (const input of inputs) {
    for (const file of filesBelow(inRoot(input))) {
      if (/\.spec\.tsx?$/.test(file)) continue;
      hash.update(path.relative(inRoot(), file)).update('\0').update(fs.readFileSync(file)).update('\0');
    }
  }
  return hash.digest('hex');
}

function built() {
  try {
    return JSON.parse(fs.readFileSync(builtFile, 'utf8'));
  } catch {
    return {};
  }
}

/** Whether the step was last finished from inputs with this fingerprint. */
export const isBuilt = (step, print) => built()[step] === print;

/** Remembers that the step was finished from inputs with this fingerprint; null forgets it. */
export function rememberBuilt(step, print) {
  fs.mkdirSync(memoryFolder, { recursive: true });
  fs.writeFileSync(`${builtFile}.new`, JSON.stringify({ ...built(), [step]: print }, null, 2));
  fs.renameSync(`${builtFile}.new`, builtFile);
}
