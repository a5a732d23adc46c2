import { Worker } from 'node:worker_threads';
import type { PrintedDocument } from '../pdf/history-pdf.js';
import type { LifeStatusPrint } from './life-status-pdf.js';

const OLD_SPACE_MB = 128;

/** Prints a status sheet in a thread of its own, so that requests do not wait for it. */
export function lifeStatusInThread(print: LifeStatusPrint): Promise<PrintedDocument> {
  return new Promise((resolve, reject) => {
    const worker = new Worker(new URL('./life-status-pdf.worker.js', import.meta.url), {
      workerData: print,
      resourceLimits: { maxOldGenerationSizeMb: OLD_SPACE_MB },
    });
    worker.once('message', resolve);
    worker.once('error', reject);
    worker.once('exit', (code) =>
      reject(new Error(`the thread that writes status sheets ended with ${code}`)),
    );
  });
}
