// What the linter doesn't see: length of files, files in a folder, names that say nothing, paths of one machine.
import { execFileSync } from 'node:child_process';
import fs from 'node:fs';
import path from 'node:path';
import { inRoot, root } from '../building/paths.mjs';
import { reporting, StepFailed } from '../building/run.mjs';

const longest = 300;
const mostInFolder = 15;
const source = /\.(ts|tsx|mjs|css)$/;
const generated = /\.gen\.d\.ts$|\/generated\//;
const idleNames = new Set([
  'utils',
  'util',
  'helpers',
  'helper',
  'common',
  'shared',
  'misc',
  'types',
  'manager',
  'managers',
]);
const machinePath = /(?<![\w.])\/(?:home|Users|root|mnt)\/[\w.-]+|[A-Z]:\\Users\\/;
// This checkout's own path, unless it is as short as a route of the client could be.
const ownPath = root.replace(/\/$/, '').split('/').length > 2 ? root.replace(/\/$/, '') : null;
const text =
  /\.(ts|tsx|mjs|js|json|css|html|md|sql|prisma|yml|yaml|sh|csv|svg)$|(^|\/)(Dockerfile|run|\.\w+rc)$/;

/** Every file that git tracks or would track. */
function projectFiles() {
  const listed = execFileSync('git', ['ls-files', '--cached', '--others', '--exclude-standard', '-z'], {
    cwd: root,
    encoding: 'utf8',
  });
  return [...new Set(listed.split('\0'))].filter((file) => file && fs.existsSync(inRoot(file)));
}

function tooLong(files) {
  return files
    .filter((file) => source.test(file) && !generated.test(file))
    .map((file) => ({ file, lines: fs.readFileSync(inRoot(file), 'utf8').split('\n').length - 1 }))
    .filter(({ lines }) => lines > longest)
    .map(({ file, lines }) => `${file}: ${lines} lines, at most ${longest}`);
}

function tooMany(files) {
  const counts = new Map();
  for (const file of files) {
    if (!source.test(file) || generated.test(file) || /\.spec\.tsx?$/.test(file)) continue;
    const folder = path.dirname(file);
    counts.set(folder, (counts.get(folder) ?? 0) + 1);
  }
  return [...counts]
    .filter(([folder, count]) => count > mostInFolder && folder !== '.')
    .map(([folder, count]) => `${folder}: ${count} source files, at most ${mostInFolder}`);
}

function idlyNamed(files) {
  return files
    .filter((file) =>
      file.split('/').some((part) => idleNames.has(part.replace(/(\.d)?\.\w+$/, '').toLowerCase())),
    )
    .map((file) => `${file}: name what is inside, or put it where it is used`);
}

function pathIn(line) {
  if (ownPath !== null && line.includes(ownPath)) return ownPath;
  return machinePath.exec(line)?.[0];
}

function ofOneMachine(files) {
  const readable = files.filter((file) => text.test(file) && file !== 'package-lock.json');
  return readable.flatMap((file) =>
    fs
      .readFileSync(inRoot(file), 'utf8')
      .split('\n')
      .map((line, index) => ({ found: pathIn(line), at: `${file}:${index + 1}` }))
      .filter(({ found }) => found !== undefined)
      .map(({ found, at }) => `${at}: a path of one machine: ${found}`),
  );
}

await reporting(async () => {
  const files = projectFiles();
  const found = [tooLong, tooMany, idlyNamed, ofOneMachine].flatMap((check) => check(files));
  if (found.length > 0) throw new StepFailed(found.join('\n'));
});
