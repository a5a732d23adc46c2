import { createHash } from 'node:crypto';
import type { Counters } from '@strutbook/domain/usage/since.js';
import { canonical } from '@strutbook/journal/canonical.js';
import type { Actor } from '../../platform/access/actor.js';
import { instantToWire } from '../../platform/http/instants.js';
import { certificateWords } from './certificate.js';
import { checkToWire } from './check.mapper.js';
import { plainContent } from './check-digest.js';
import type { MadeCheck } from './release-check.js';
import { printed, workSummary } from './work.js';

/** A release to be signed: the words, the frozen content and its hash. */
export interface SealedRelease {
  readonly number: string;
  readonly signedAt: string;
  readonly statement: string;
  /** Everything the check looked at and found, as canonical text. */
  readonly content: string;
  readonly contentDigest: Buffer;
}

/** Who seals, and what stands beside the check. */
export interface Sealing {
  readonly actor: Actor;
  readonly licence: string;
  readonly number: string;
  /** The airframe's counters now; null for a component on none. */
  readonly airframe: Counters | null;
  readonly operatorName: string;
}

/** Seals a check as a release: the server composes the words, so that no client can sign others. */
export function sealRelease(
  made: MadeCheck,
  { actor, licence, number, airframe, operatorName }: Sealing,
): SealedRelease {
  const { work, snapshot, ruleSet } = made;
  const signedAt = instantToWire(snapshot.at);
  const statement =
    `${ruleSet.releaseStatement} ${workSummary(work)} ` +
    `Release ${number}, signed by ${actor.fullName}, certificate ${licence}, ${printed(signedAt)}.`;
  const check = { ...checkToWire(made), released: true, version: work.version + 1 };
  const content = canonical(
    plainContent({
      frozen: {
        check,
        statement,
        ruleSet: check.ruleSet,
        airframe: work.airframe?.registration ?? null,
        subject: work.subject,
        certificate: certificateWords(made, airframe, {
          name: actor.fullName,
          licence,
          authorisation: made.authorisation,
          operatorName,
          number,
          signedAt,
        }),
      },
      looked: snapshot,
      work,
    }),
  );
  const contentDigest = createHash('sha256').update(content).digest();
  return { number, signedAt, statement, content, contentDigest };
}
