import type { Instant } from '../units/minutes.js';

/** What a signature is given on: who, as what, which statement, on which exact content, when. */
export interface SignedContent {
  readonly purpose: 'step' | 'inspection' | 'release' | 'correction' | 'change' | 'acceptance';
  readonly statement: string;
  readonly signer: { readonly personId: string; readonly name: string; readonly certificate: string | null };
  readonly subject: { readonly kind: string; readonly id: string };
  /** Hash of the exact content signed, lower-case hexadecimal. */
  readonly contentHash: string;
  readonly ruleSet: string | null;
  readonly at: Instant;
}

/** A plain JSON value. */
export type Json = null | boolean | number | string | readonly Json[] | { readonly [key: string]: Json };

/**
 * The canonical statement that is signed, as plain JSON: hash its canonical form (RFC 8785).
 *
 * Every member is present, null where it does not apply: a member left out would sign less than is shown. Total.
 */
export function signedStatement(content: SignedContent): { readonly [key: string]: Json } {
  return {
    at: content.at,
    contentHash: content.contentHash,
    purpose: content.purpose,
    ruleSet: content.ruleSet,
    signer: {
      certificate: content.signer.certificate,
      name: content.signer.name,
      personId: content.signer.personId,
    },
    statement: content.statement,
    subject: { id: content.subject.id, kind: content.subject.kind },
    version: 1,
  };
}
