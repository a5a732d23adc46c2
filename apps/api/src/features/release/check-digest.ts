import { createHash } from 'node:crypto';
import type { Life } from '@strutbook/domain/life/life.js';
import type { RuleSet } from '@strutbook/domain/release/rule-sets.js';
import type { EngineSnapshot, ReleaseSnapshot } from '@strutbook/domain/release/snapshot.js';
import type { Fraction } from '@strutbook/domain/units/fraction.js';
import type { Json } from '@strutbook/journal/canonical.js';
import type { WorkToRelease } from './work.js';

/** What was looked at as plain JSON: exact fractions as text, all else as it is. Total. */
export function plainContent(value: unknown): Json {
  return JSON.parse(
    JSON.stringify(value, (_, member: unknown) => (typeof member === 'bigint' ? member.toString() : member)),
  ) as Json;
}

/**
 * SHA-256 of what the check looked at and what would be signed. The minute of looking is left out: the same records
 * looked at a minute later are the same; so is who looks, for it is the work that is seen, and its signer is signed.
 */
export function digestOf(snapshot: ReleaseSnapshot, work: WorkToRelease, ruleSet: RuleSet): string {
  const { at: _at, releaser: _releaser, positions, component, ...looked } = snapshot;
  const content = {
    looked,
    engines: [
      ...positions.map(({ positionId, number, engine }) => ({
        positionId,
        number,
        engine: engineDigest(engine),
      })),
      ...(component === null ? [] : [{ kind: component.kind, engine: engineDigest(component.as) }]),
    ],
    work: { number: work.number, version: work.version, changes: work.changes },
    statement: ruleSet.releaseStatement,
  };
  // Nobody but this server compares it: the order in which it makes the members needs no sorting.
  return createHash('sha256').update(JSON.stringify(content)).digest('hex');
}

/** An engine with a line for each limited part: hundreds of lives would take long as objects. */
function engineDigest(engine: EngineSnapshot | null): unknown {
  if (engine === null) return null;
  const { limitedParts, ...own } = engine;
  const lines = limitedParts.map(({ slotId, slotName, part }) =>
    part === null
      ? [slotId, slotName]
      : [
          slotId,
          slotName,
          part.componentId,
          part.partNumber,
          part.serial,
          part.serviceable,
          lifeDigest(part.life),
        ],
  );
  return { ...own, limitedParts: lines };
}

function lifeDigest(life: Life): readonly unknown[] {
  if (life.kind === 'unsubstantiated') return [life.kind, life.reasons];
  if (life.kind !== 'limited') return [life.kind];
  const exact = (value: Fraction | null) => (value === null ? null : `${value.num}/${value.den}`);
  return [
    life.kind,
    exact(life.used),
    exact(life.cyclesUsed),
    life.minutesUsed,
    life.limit,
    exact(life.remainingExact),
    life.minutesLimit,
    life.remainingMinutes,
    life.goodThrough,
    life.flagged,
  ];
}
