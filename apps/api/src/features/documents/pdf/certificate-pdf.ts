import type { ReleaseCertificate } from '../../../records/releases/frozen-release.js';
import { FlowingText } from './flowing-text.js';
import type { PrintedDocument } from './history-pdf.js';
import { Sheets } from './sheet.js';

/** What a printed certificate says beside the release itself. */
export interface CertificatePrint {
  readonly certificate: ReleaseCertificate;
  readonly preparedBy: string;
}

/**
 * The certificate of a release on paper: what is released, the work, counters, each thing the signer states, what stays
 * open, who signed and the hashes. Its date is that of the signature, so that one release always makes the same bytes.
 */
export async function printCertificate({
  certificate,
  preparedBy,
}: CertificatePrint): Promise<PrintedDocument> {
  const { number, operatorName, subject, words, statement, contentHash, snapshotHash, signedAt } =
    certificate;
  const sheets = new Sheets({
    documentTitle: `${words.title} ${number}, ${subject}`,
    title: `${words.title}, ${operatorName}`,
    subject: `${number}, ${subject}`,
    foot: `Release ${number}. Content ${contentHash.slice(0, 16)}.`,
    preparedAt: new Date(signedAt),
    author: preparedBy,
  });
  sheets.begin();
  const text = new FlowingText(sheets);
  const heading = (title: string) => {
    text.space(7);
    text.makeRoom(44);
    text.paragraph(title, { weight: 'bold', size: 11, type: 'H2' });
  };
  text.space(12);
  text.paragraph(`${words.title} ${number}`, { weight: 'bold', size: 16, type: 'H1' });
  text.space(2);
  for (const { name, value } of words.facts) text.fact(name, value);
  heading('Counters at release');
  for (const { name, value } of words.counters) text.fact(name, value);
  heading('Statement');
  for (const [index, element] of words.elements.entries())
    text.paragraph(`(${String.fromCharCode(97 + index)}) ${element}`, {
      weight: 'regular',
      size: 9,
      indent: 12,
    });
  text.paragraph(`After ${words.source}.`, { weight: 'regular', size: 8.5 });
  heading('Limitations and open points');
  for (const point of words.open.length === 0 ? ['None.'] : words.open)
    text.paragraph(point, { weight: 'regular', size: 9, indent: 12 });
  heading('Signature');
  for (const { name, value } of words.signer) text.fact(name, value);
  text.paragraph(`As signed: ${statement}`, { weight: 'regular', size: 8.5 });
  text.fact('Content signed', `SHA-256 ${contentHash}`);
  text.fact('Records looked at', `SHA-256 ${snapshotHash}`);
  sheets.end();
  return { bytes: await sheets.finish(), pages: sheets.pages };
}
