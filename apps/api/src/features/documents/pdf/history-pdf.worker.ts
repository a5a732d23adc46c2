import { parentPort, workerData } from 'node:worker_threads';
import type { ToldLine, ToldTotals } from '../../../records/history/told-line.js';
import { HistoryPdf, type HistoryPrint } from './history-pdf.js';

/** What the thread is told: some lines, or that there are no more. */
export type ToWorker =
  | { readonly kind: 'lines'; readonly lines: readonly ToldLine[] }
  | { readonly kind: 'end'; readonly totals: ToldTotals };

/** What it answers: that the lines are written, or the document. */
export type FromWorker =
  | { readonly kind: 'written' }
  | { readonly kind: 'document'; readonly bytes: Uint8Array; readonly pages: number };

const port = parentPort;
if (port !== null) {
  const pdf = new HistoryPdf(workerData as HistoryPrint);
  port.on('message', (message: ToWorker) => {
    if (message.kind === 'lines') {
      for (const line of message.lines) pdf.line(line);
      port.postMessage({ kind: 'written' } satisfies FromWorker);
      return;
    }
    void pdf.finish(message.totals).then(({ bytes, pages }) => {
      port.postMessage({ kind: 'document', bytes, pages } satisfies FromWorker, [
        bytes.buffer as ArrayBuffer,
      ]);
      port.close();
    });
  });
}
