import { createHash } from 'node:crypto';
import { signedStatement } from '@strutbook/domain/signing/statement.js';
import { canonical, type Json } from '@strutbook/journal/canonical.js';
import type { Actor } from '../../platform/access/actor.js';
import { instantToWire } from '../../platform/http/instants.js';
import { checkToWire } from './check.mapper.js';
import { type MadeCheck, plainContent } from './release-check.js';
import { printed, workSummary } from './work.js';

/** A release as it is signed: the words, the frozen content, and the hashes that bind them. */
export interface SealedRelease {
  readonly number: string;
  readonly signedAt: string;
  readonly statement: string;
  /** Everything the check looked at and found, as canonical text. */
  readonly content: string;
  readonly contentDigest: Buffer;
  /** What is signed: the statement, the signer, the moment and the digest of the content. */
  readonly signed: Json;
  readonly signatureDigest: Buffer;
}

/** Seals a check as a release: the server composes the words, so that no client can sign others. */
export function sealRelease(
  made: MadeCheck,
  { actor, licence, number }: { readonly actor: Actor; readonly licence: string; readonly number: string },
): SealedRelease {
  const { work, snapshot, ruleSet } = made;
  const signedAt = instantToWire(snapshot.at);
  const statement =
    `${ruleSet.releaseStatement} ${workSummary(work)} ` +
    `Release ${number}, signed by ${actor.fullName}, certificate ${licence}, ${printed(signedAt)}.`;
  const check = { ...checkToWire(made), released: true, version: work.version + 1 };
  const content = canonical(
    plainContent({
      frozen: { check, statement, ruleSet: check.ruleSet, airframe: work.airframe.registration },
      looked: snapshot,
      work: { id: work.id, number: work.number, kind: work.kind, changes: work.changes },
    }),
  );
  const contentDigest = sha256(content);
  const signed: Json = signedStatement({
    purpose: 'release',
    statement,
    signer: { personId: actor.personId, name: actor.fullName, certificate: licence },
    subject: { kind: 'work-package', id: work.id },
    contentHash: contentDigest.toString('hex'),
    ruleSet: ruleSet.code,
    at: snapshot.at,
  });
  return {
    number,
    signedAt,
    statement,
    content,
    contentDigest,
    signed,
    signatureDigest: sha256(canonical(signed)),
  };
}

function sha256(text: string): Buffer {
  return createHash('sha256').update(text).digest();
}
