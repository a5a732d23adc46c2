// Compiles everything that no build step compiles, tests included, and writes nothing.
import ts from 'typescript';
import { readProject } from '../building/compile.mjs';
import { inRoot, root } from '../building/paths.mjs';
import { reporting, StepFailed } from '../building/run.mjs';

const projects = ['apps/web', '.'];
const host = {
  getCanonicalFileName: (name) => name,
  getCurrentDirectory: () => root,
  getNewLine: () => '\n',
};

await reporting(async () => {
  const found = projects.flatMap((folder) => {
    const { fileNames, options } = readProject(inRoot(folder, 'tsconfig.json'));
    return ts.getPreEmitDiagnostics(
      ts.createProgram({ rootNames: fileNames, options: { ...options, noEmit: true } }),
    );
  });
  if (found.length > 0)
    throw new StepFailed(ts.formatDiagnostics(ts.sortAndDeduplicateDiagnostics(found), host));
});
