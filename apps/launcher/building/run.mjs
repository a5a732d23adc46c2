import { spawnSync } from 'node:child_process';
import { root } from './paths.mjs';

/** A step that ended badly; its message is all the reader needs, no stack. */
export class StepFailed extends Error {}

/**
 * Runs a program to its end with this process's own output.
 * Errors: StepFailed, with the command line, when it can't be started or ends with another code than 0.
 */
export function run(command, args, { env = {}, cwd = root, quiet = false } = {}) {
  const result = spawnSync(command, args, {
    cwd,
    env: { ...process.env, ...env },
    stdio: quiet ? ['ignore', 'pipe', 'pipe'] : 'inherit',
    encoding: 'utf8',
  });
  if (result.status === 0) return;
  const said = quiet ? `\n${result.stdout ?? ''}${result.stderr ?? ''}` : '';
  throw new StepFailed(
    `failed: ${[command, ...args].join(' ')}${said}${result.error ? `\n${result.error.message}` : ''}`,
  );
}

/** Runs a Node script to its end. Errors: as `run`. */
export const runNode = (args, options) => run(process.execPath, args, options);

/** Runs `main`, and ends the process with 1 and the reason when it fails. */
export async function reporting(main) {
  try {
    await main();
  } catch (error) {
    console.error(error instanceof StepFailed ? error.message : error);
    process.exitCode = 1;
  }
}
