import { Worker } from 'node:worker_threads';
import type { ToldLine, ToldTotals } from '../../../records/history/told-line.js';
import type { HistoryPrint, PrintedDocument } from './history-pdf.js';
import type { FromWorker, ToWorker } from './history-pdf.worker.js';

const OLD_SPACE_MB = 256;

/** A document being written in a thread of its own, so that requests do not wait for it. */
export class PdfThread {
  private readonly worker: Worker;
  private waiting: { resolve: (message: FromWorker) => void; reject: (error: Error) => void } | null = null;
  private failure: Error | null = null;

  constructor(print: HistoryPrint) {
    this.worker = new Worker(new URL('./history-pdf.worker.js', import.meta.url), {
      workerData: print,
      resourceLimits: { maxOldGenerationSizeMb: OLD_SPACE_MB },
    });
    this.worker.on('message', (message: FromWorker) => this.settle((waiting) => waiting.resolve(message)));
    this.worker.on('error', (error) => this.fail(error));
    this.worker.on('exit', (code) => {
      if (code !== 0) this.fail(new Error(`the thread that writes documents ended with ${code}`));
    });
  }

  /** Hands over lines and waits until they are written, so that they never pile up. */
  async write(lines: readonly ToldLine[]): Promise<void> {
    await this.ask({ kind: 'lines', lines });
  }

  /** Ends the document. */
  async finish(totals: ToldTotals): Promise<PrintedDocument> {
    const answer = await this.ask({ kind: 'end', totals });
    if (answer.kind !== 'document') throw new Error('the thread that writes documents gave none');
    return { bytes: answer.bytes, pages: answer.pages };
  }

  /** Ends the thread, whether the document was finished or not. */
  async stop(): Promise<void> {
    this.failure ??= new Error('the document was stopped');
    await this.worker.terminate();
  }

  private ask(message: ToWorker): Promise<FromWorker> {
    if (this.failure !== null) return Promise.reject(this.failure);
    return new Promise((resolve, reject) => {
      this.waiting = { resolve, reject };
      this.worker.postMessage(message);
    });
  }

  private fail(error: Error): void {
    this.failure ??= error;
    this.settle((waiting) => waiting.reject(error));
  }

  private settle(how: (waiting: NonNullable<typeof this.waiting>) => void): void {
    const { waiting } = this;
    this.waiting = null;
    if (waiting !== null) how(waiting);
  }
}
