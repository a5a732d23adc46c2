import { spawn } from 'node:child_process';
import { inRoot } from '../building/paths.mjs';
import { StepFailed } from '../building/run.mjs';

/**
 * Runs a Node script of the checkout beside this process, and answers the lines of its output; `onLine` gets each
 * as it comes. Errors: StepFailed with its error output, when it ends with another code than 0.
 */
export function runChild(script, { env, onLine = () => {}, signal }) {
  return new Promise((resolve, reject) => {
    const child = spawn(process.execPath, [inRoot(script)], {
      cwd: inRoot(),
      env: { ...process.env, ...env },
      stdio: ['ignore', 'pipe', 'pipe'],
      signal,
    });
    let output = '';
    let errors = '';
    child.stdout.setEncoding('utf8').on('data', (text) => {
      output += text;
      for (const line of text.split('\n')) if (line && !line.startsWith('{')) onLine(line);
    });
    child.stderr.setEncoding('utf8').on('data', (text) => {
      errors += text;
    });
    child.once('error', reject);
    child.once('close', (code) => {
      if (code === 0) resolve(output.split('\n').filter(Boolean));
      else reject(new StepFailed(`${script} ended with ${code}.\n${errors || output}`));
    });
  });
}
