import { createHash } from 'node:crypto';
import { type SignedContent, signedStatement } from '@strutbook/domain/signing/statement.js';
import type { Instant } from '@strutbook/domain/units/minutes.js';
import { canonical, type Json } from '@strutbook/journal/canonical.js';
import type { Signer } from '../../platform/access/signers.js';
import type { Tx } from '../../platform/database/database.js';
import { newId } from '../../platform/database/uuid.js';
import { fromInstant } from '../../platform/http/instants.js';

/** What is signed, and by whom. */
export interface ToSeal {
  readonly purpose: SignedContent['purpose'];
  readonly signer: Signer;
  readonly statement: string;
  readonly subject: SignedContent['subject'];
  /** Hash of the content signed, lower-case hexadecimal. */
  readonly contentHash: string;
  readonly ruleSet: string;
  readonly at: Instant;
  readonly number: bigint;
}

/** A signature as it is kept. */
export interface SealedSignature {
  readonly id: string;
  readonly signed: { readonly [key: string]: Json };
  /** SHA-256 of what is signed, in hexadecimal. */
  readonly hash: string;
}

/** Keeps a signature: the words, the signer, the moment and the content, bound by one hash. */
export async function sealSignature(tx: Tx, toSeal: ToSeal): Promise<SealedSignature> {
  const { signer, statement, purpose, subject, contentHash, ruleSet, at, number } = toSeal;
  const signed = signedStatement({
    purpose,
    statement,
    signer: { personId: signer.personId, name: signer.fullName, certificate: signer.licence },
    subject,
    contentHash,
    ruleSet: ruleSet === '' ? null : ruleSet,
    at,
  });
  const digest = createHash('sha256').update(canonical(signed)).digest();
  const id = newId();
  await tx.signature.create({
    data: {
      operatorId: signer.operatorId,
      id,
      personId: signer.personId,
      personName: signer.fullName,
      licence: signer.licence,
      meaning: purpose,
      statement,
      contentHash: new Uint8Array(digest),
      method: signer.method,
      signedAt: fromInstant(at),
      recordedSeq: number,
    },
  });
  return { id, signed, hash: digest.toString('hex') };
}
