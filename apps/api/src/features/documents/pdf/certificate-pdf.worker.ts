import { parentPort, workerData } from 'node:worker_threads';
import { type CertificatePrint, printCertificate } from './certificate-pdf.js';

const port = parentPort;
if (port !== null)
  void printCertificate(workerData as CertificatePrint).then(({ bytes, pages }) => {
    port.postMessage({ bytes, pages }, [bytes.buffer as ArrayBuffer]);
    port.close();
  });
