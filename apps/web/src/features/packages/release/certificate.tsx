interface CertificateProps {
  readonly releaseId: string;
  readonly number: string;
}

/** The certificate as the server made it. */
export function Certificate({ releaseId, number }: CertificateProps) {
  return (
    <p className="no-print">
      {/* The server's own file, not a page. */}
      <a href={`/api/releases/${releaseId}/certificate`} download={`${number}.pdf`}>
        Certificate {number} (PDF)
      </a>
    </p>
  );
}
