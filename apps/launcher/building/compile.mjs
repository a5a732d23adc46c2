import fs from 'node:fs';
import path from 'node:path';
import ts from 'typescript';
import { root } from './paths.mjs';
import { StepFailed } from './run.mjs';

const host = {
  getCanonicalFileName: (name) => name,
  getCurrentDirectory: () => root,
  getNewLine: () => '\n',
};

/** Reads a tsconfig.json. Errors: StepFailed with the compiler's own words. */
export function readProject(file) {
  const parsed = ts.getParsedCommandLineOfConfigFile(
    file,
    {},
    {
      ...ts.sys,
      onUnRecoverableConfigFileDiagnostic: (found) => {
        throw new StepFailed(ts.formatDiagnostic(found, host));
      },
    },
  );
  const faults = parsed.errors.filter((fault) => fault.code !== 18003); // 18003: no input files yet
  if (faults.length > 0) throw new StepFailed(ts.formatDiagnostics(faults, host));
  return parsed;
}

/** Deletes what an earlier build left in `folder` and this one did not write. */
function prune(folder, written) {
  for (const entry of fs.readdirSync(folder, { withFileTypes: true })) {
    const full = path.join(folder, entry.name);
    if (entry.isDirectory()) {
      prune(full, written);
      if (fs.readdirSync(full).length === 0) fs.rmdirSync(full);
    } else if (!written.has(full)) fs.rmSync(full);
  }
}

/** Hand-written and generated declarations: the compiler reads them and does not copy them. */
function copyDeclarations(program, { rootDir, outDir }, written) {
  for (const { fileName } of program.getSourceFiles()) {
    if (!fileName.endsWith('.d.ts') || !fileName.startsWith(`${rootDir}/`)) continue;
    const target = path.join(outDir, path.relative(rootDir, fileName));
    fs.mkdirSync(path.dirname(target), { recursive: true });
    fs.copyFileSync(fileName, target);
    written.add(path.normalize(target));
  }
}

/**
 * Compiles one project (the folder of a tsconfig.json) into its outDir and removes what no source stands behind.
 * Errors: StepFailed with every diagnostic; what could be written is written all the same.
 */
export function compile(folder, transformers = () => ({})) {
  const { fileNames, options } = readProject(path.join(folder, 'tsconfig.json'));
  const program = ts.createProgram({ rootNames: fileNames, options });
  const written = new Set();
  const write = (name, text, ...rest) => {
    written.add(path.normalize(name));
    ts.sys.writeFile(name, text, ...rest);
  };
  const found = ts.getPreEmitDiagnostics(program);
  const emitted = program.emit(undefined, write, undefined, false, transformers(program));
  copyDeclarations(program, options, written);
  if (fs.existsSync(options.outDir)) prune(path.normalize(options.outDir), written);
  const all = ts.sortAndDeduplicateDiagnostics([...found, ...emitted.diagnostics]);
  if (all.length > 0) throw new StepFailed(ts.formatDiagnosticsWithColorAndContext(all, host));
}
