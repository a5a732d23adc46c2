import type { Tx } from '../../platform/database/database.js';
import { toWirePrecise } from '../../platform/http/instants.js';
import { orNotFound } from '../../platform/problems/refusal.error.js';

/** The kind of the job, and of the document, that prints a release's certificate. */
export const RELEASE_CERTIFICATE = 'release-certificate';

/** One thing a certificate tells, in words. */
export interface CertificateFact {
  readonly name: string;
  readonly value: string;
}

/** What a certificate says, in words and in its order: frozen with the release, so that it is printed as it was signed. */
export interface CertificateWords {
  readonly title: string;
  /** What is released, the order, the work and the data. */
  readonly facts: readonly CertificateFact[];
  /** Counters at the release. */
  readonly counters: readonly CertificateFact[];
  /** What the signer states, one thing each. */
  readonly elements: readonly string[];
  /** Where the statement comes from. */
  readonly source: string;
  /** Limitations, and what was told and does not block. */
  readonly open: readonly string[];
  readonly signer: readonly CertificateFact[];
}

/** A release's certificate with the hashes that bind it. */
export interface ReleaseCertificate {
  readonly releaseId: string;
  readonly number: string;
  readonly operatorName: string;
  readonly subject: string;
  readonly words: CertificateWords;
  readonly statement: string;
  /** SHA-256 of what was signed, and of what the check looked at. */
  readonly contentHash: string;
  readonly snapshotHash: string;
  readonly signedAt: string;
}

/** The certificate of a release, from the release alone: nothing recorded later is in it. Refuses: NOT_FOUND. */
export async function loadCertificate(tx: Tx, operatorId: number, id: string): Promise<ReleaseCertificate> {
  const where = { operatorId_id: { operatorId, id } };
  const include = { signature: true, operator: { select: { name: true } } };
  const release = orNotFound(await tx.release.findUnique({ where, include }), 'release');
  const { frozen } = JSON.parse(release.snapshot) as {
    readonly frozen: {
      readonly airframe: string | null;
      readonly subject?: string;
      readonly certificate?: CertificateWords;
    };
  };
  return {
    releaseId: id,
    number: release.number,
    operatorName: release.operator.name,
    subject: frozen.subject ?? frozen.airframe ?? '',
    // Releases signed before certificates were frozen have none to print.
    words: orNotFound(frozen.certificate ?? null, 'certificate of that release'),
    statement: release.signature.statement,
    contentHash: Buffer.from(release.signature.contentHash).toString('hex'),
    snapshotHash: Buffer.from(release.snapshotHash).toString('hex'),
    signedAt: toWirePrecise(release.signature.signedAt),
  };
}
