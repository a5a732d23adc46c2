import { Worker } from 'node:worker_threads';
import type { CertificatePrint } from './certificate-pdf.js';
import type { PrintedDocument } from './history-pdf.js';

const OLD_SPACE_MB = 128;

/** Prints a certificate in a thread of its own, so that requests do not wait for it. */
export function certificateInThread(print: CertificatePrint): Promise<PrintedDocument> {
  return new Promise((resolve, reject) => {
    const worker = new Worker(new URL('./certificate-pdf.worker.js', import.meta.url), {
      workerData: print,
      resourceLimits: { maxOldGenerationSizeMb: OLD_SPACE_MB },
    });
    worker.once('message', resolve);
    worker.once('error', reject);
    worker.once('exit', (code) =>
      reject(new Error(`the thread that writes certificates ended with ${code}`)),
    );
  });
}
