import type { Objection } from './objection.js';
import { type HoldAgainst, objectionsToLife } from './objections-to-life.js';
import type {
  ComponentSnapshot,
  EngineSnapshot,
  LimitedPartSlot,
  PositionSnapshot,
  UnfitPart,
} from './snapshot.js';

/** What is held against a position: no engine, or something about the engine or a limited part in it. Total. */
export function objectionsToPosition(
  position: PositionSnapshot,
  plannedStayCycles: number | null,
): readonly Objection[] {
  const { engine, number, positionId } = position;
  if (engine === null)
    return [
      {
        code: 'ENGINE_MISSING',
        severity: 'blocking',
        positionNumber: number,
        record: { kind: 'position', id: positionId },
        detail: { position: number },
      },
    ];
  return [
    ...objectionsToEngine(engine, number),
    ...engine.limitedParts.flatMap((slot) => objectionsToSlot(slot, { number, engine, plannedStayCycles })),
    ...(engine.unfit ?? []).map((part) => objectionToUnfit(part, number)),
  ];
}

/** What is held against a component that is released by itself, and against the limited parts in it. Total. */
export function objectionsToComponent(
  { kind, as }: ComponentSnapshot,
  plannedStayCycles: number | null,
): readonly Objection[] {
  return [
    ...(kind === 'engine' ? objectionsToEngine(as, null) : []),
    ...as.limitedParts.flatMap((slot) =>
      objectionsToSlot(slot, { number: null, engine: as, plannedStayCycles }),
    ),
    ...(as.unfit ?? []).map((part) => objectionToUnfit(part, null)),
  ];
}

function objectionsToEngine(engine: EngineSnapshot, number: number | null): readonly Objection[] {
  const held = holdAgainst(engine.componentId, number, {
    serial: engine.serial,
    model: engine.modelName,
    position: number,
  });
  const { minutes, cycles } = engine.totals;
  const objections: Objection[] = [];
  if (engine.authorised === false) objections.push(held('ENGINE_NOT_AUTHORISED', 'blocking'));
  if (engine.ratingId === null) objections.push(held('RATING_UNKNOWN', 'blocking'));
  if (minutes === null || cycles === null)
    objections.push(held('COUNTERS_UNKNOWN', 'blocking', { missing: missingCounters(minutes, cycles) }));
  objections.push(...serviceability(engine.serviceable, held));
  return objections;
}

/** What is held against a component that is fitted though its tag, or a shop it was not returned from, forbids it. Total. */
export function objectionToUnfit(
  { componentId, serial, partNumber, why, reference }: UnfitPart,
  number: number | null,
): Objection {
  return holdAgainst(componentId, number, { serial, partNumber, position: number })(
    'PART_UNSERVICEABLE',
    'blocking',
    { why, reference },
  );
}

function missingCounters(minutes: number | null, cycles: number | null): string {
  return [...(minutes === null ? ['hours'] : []), ...(cycles === null ? ['cycles'] : [])].join(' and ');
}

function serviceability(serviceable: boolean | null, held: HoldAgainst): readonly Objection[] {
  if (serviceable === false) return [held('PART_UNSERVICEABLE', 'blocking')];
  return serviceable === null ? [held('PART_SERVICEABILITY_UNKNOWN', 'advisory')] : [];
}

interface InEngine {
  readonly number: number | null;
  readonly engine: EngineSnapshot;
  readonly plannedStayCycles: number | null;
}

function objectionsToSlot(
  slot: LimitedPartSlot,
  { number, engine, plannedStayCycles }: InEngine,
): readonly Objection[] {
  const { part, slotId, slotName } = slot;
  if (part === null)
    return [
      {
        code: 'LIMITED_PART_MISSING',
        severity: 'blocking',
        positionNumber: number,
        record: { kind: 'slot', id: slotId },
        detail: { slot: slotName, engine: engine.serial, position: number },
      },
    ];
  const held = holdAgainst(part.componentId, number, {
    serial: part.serial,
    partNumber: part.partNumber,
    slot: slotName,
    engine: engine.serial,
    model: engine.modelName,
    position: number,
  });
  return [...objectionsToLife(part.life, held, plannedStayCycles), ...serviceability(part.serviceable, held)];
}

/** Holds something against a component at a position, or at none, whose names are told with it. */
function holdAgainst(id: string, positionNumber: number | null, names: Objection['detail']): HoldAgainst {
  return (code, severity, detail = {}) => ({
    code,
    severity,
    positionNumber,
    record: { kind: 'component', id },
    detail: { ...names, ...detail },
  });
}
