import { parentPort, workerData } from 'node:worker_threads';
import { type LifeStatusPrint, printLifeStatus } from './life-status-pdf.js';

const port = parentPort;
if (port !== null)
  void printLifeStatus(workerData as LifeStatusPrint).then(({ bytes, pages }) => {
    port.postMessage({ bytes, pages }, [bytes.buffer as ArrayBuffer]);
    port.close();
  });
