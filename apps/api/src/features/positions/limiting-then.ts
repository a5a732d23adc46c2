import type { EngineSnapshot } from '@strutbook/domain/release/snapshot.js';
import type { Limiting } from './tightest.js';

/** What limited these engines at an instant, from their snapshots then; `ruleOf` tells by which rule an engine's cycles count. Total. */
export function limitingThen(
  snapshots: readonly EngineSnapshot[],
  descriptions: ReadonlyMap<string, string>,
  ruleOf: (engineId: string) => string | null,
): Limiting[] {
  return snapshots.flatMap((engine) =>
    engine.limitedParts.flatMap((slot) =>
      limitingSlot(engine, slot, { descriptions, ruleId: ruleOf(engine.componentId) }),
    ),
  );
}

function limitingSlot(
  { componentId: engineId }: EngineSnapshot,
  { slotName, part }: EngineSnapshot['limitedParts'][number],
  {
    descriptions,
    ruleId,
  }: { readonly descriptions: ReadonlyMap<string, string>; readonly ruleId: string | null },
): Limiting[] {
  const unverified = {
    ...{ engineId, verdict: 'not-verified', dimension: 'none', remaining: null },
    ...{ flagged: false, ruleId: null, dueOn: null },
  };
  if (part === null)
    return [
      {
        ...unverified,
        componentId: engineId,
        description: slotName,
        serialNumber: '',
        reason: 'LIMITED_PART_MISSING',
      },
    ];
  const { life } = part;
  const base = {
    ...unverified,
    componentId: part.componentId,
    description: descriptions.get(part.componentId) ?? slotName,
    serialNumber: part.serial,
  };
  switch (life.kind) {
    case 'not-limited':
      return [];
    case 'not-authorised':
      return [{ ...base, verdict: 'not-authorised', reason: 'NOT_AUTHORISED' }];
    case 'unsubstantiated':
      return [{ ...base, reason: life.reasons.map((reason) => reason.code).join(' ') }];
    case 'limited': {
      const limited = { ...base, verdict: 'limited', flagged: life.flagged, reason: null };
      return [
        ...(life.remaining === null
          ? []
          : [{ ...limited, dimension: 'cycles', remaining: life.remaining, ruleId }]),
        ...(life.remainingMinutes === null
          ? []
          : [{ ...limited, dimension: 'minutes', remaining: life.remainingMinutes }]),
        ...(life.goodThrough === null
          ? []
          : [{ ...limited, dimension: 'days', remaining: life.remainingDays, dueOn: life.goodThrough }]),
      ];
    }
  }
}
