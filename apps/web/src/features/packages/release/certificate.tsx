import { counted } from '../../../format/counts.js';
import type { ReleaseNote } from '../../../server/wire.js';

interface CertificateProps {
  readonly certificate: ReleaseNote['certificate'];
  readonly number: string;
}

/** The certificate as the server made it, with the hash that tells it from any other file. */
export function Certificate({ certificate, number }: CertificateProps) {
  return (
    <section className="stack" aria-labelledby="certificate">
      <h2 id="certificate" className="section-heading">
        Certificate
      </h2>
      {certificate === null ? (
        <p role="status">The certificate is being printed. It stands here in some seconds.</p>
      ) : (
        <>
          <div className="row no-print">
            {/* The server's own file, not a page. */}
            <a
              className="button button-primary"
              href={`/api/documents/${certificate.documentId}`}
              download={certificate.fileName}
            >
              Certificate of {number} (PDF, {counted(certificate.pages, 'page')})
            </a>
          </div>
          <dl className="hashes">
            <div>
              <dt>SHA-256 of the file</dt>
              <dd className="hash">{certificate.sha256}</dd>
            </div>
          </dl>
        </>
      )}
    </section>
  );
}
