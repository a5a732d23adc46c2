import { logGaps } from './log-gaps.js';
import type { Objection, ObjectionCode } from './objection.js';
import { objectionsToLife } from './objections-to-life.js';
import type { EngineSnapshot, LimitedPartSlot, PositionSnapshot, ReleaseSnapshot } from './snapshot.js';

export type {
  EngineSnapshot,
  LimitedPartSlot,
  LoggedLeg,
  PositionSnapshot,
  ReleaseSnapshot,
  StepSnapshot,
} from './snapshot.js';

/** The order in which objections are told, the worst first; blocking ones before advisory ones. */
const WORST_FIRST = [
  'ENGINE_MISSING',
  'OVER_LIMIT',
  'AT_LIMIT',
  'NOT_AUTHORISED',
  'ENGINE_NOT_AUTHORISED',
  'LIMITED_PART_MISSING',
  'LIMITED_PART_UNTRACED',
  'NO_LIMIT_RECORDED',
  'COUNTERS_UNKNOWN',
  'RATING_UNKNOWN',
  'PART_UNSERVICEABLE',
  'STEP_UNSIGNED',
  'SHORT_OF_PLANNED_STAY',
  'MIXED_MODELS',
  'WORST_CASE_ACCEPTED',
  'LOG_GAP',
  'PART_SERVICEABILITY_UNKNOWN',
] as const satisfies readonly ObjectionCode[];

/**
 * What is held against releasing, worst first; nothing that blocks, and it may be signed.
 *
 * A pure function of one snapshot. What is not known is an objection, never silently fine. Total.
 */
export function checkRelease(snapshot: ReleaseSnapshot): readonly Objection[] {
  const objections = [
    ...snapshot.positions.flatMap((position) => objectionsToPosition(position, snapshot.plannedStayCycles)),
    ...mixedModels(snapshot),
    ...snapshot.steps
      .filter((step) => !step.signed)
      .map(
        ({ stepId, number, title }): Objection => ({
          code: 'STEP_UNSIGNED',
          severity: 'blocking',
          positionNumber: null,
          record: { kind: 'step', id: stepId },
          detail: { number, title },
        }),
      ),
    ...logGaps(snapshot.flights),
  ];
  return objections.sort((a, b) => rank(a) - rank(b) || (a.positionNumber ?? 0) - (b.positionNumber ?? 0));
}

/** Whether nothing among the objections forbids the release. Total. */
export function mayBeReleased(objections: readonly Objection[]): boolean {
  return objections.every((objection) => objection.severity !== 'blocking');
}

function rank({ code, severity }: Objection): number {
  return WORST_FIRST.indexOf(code) + (severity === 'blocking' ? 0 : WORST_FIRST.length);
}

function objectionsToPosition(
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
  ];
}

function objectionsToEngine(engine: EngineSnapshot, number: number): readonly Objection[] {
  const held = (
    code: ObjectionCode,
    severity: Objection['severity'],
    detail: Objection['detail'] = {},
  ): Objection => ({
    code,
    severity,
    positionNumber: number,
    record: { kind: 'component', id: engine.componentId },
    detail: { serial: engine.serial, model: engine.modelName, position: number, ...detail },
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

function missingCounters(minutes: number | null, cycles: number | null): string {
  return [...(minutes === null ? ['hours'] : []), ...(cycles === null ? ['cycles'] : [])].join(' and ');
}

function serviceability(
  serviceable: boolean | null,
  held: (code: ObjectionCode, severity: Objection['severity']) => Objection,
): readonly Objection[] {
  if (serviceable === false) return [held('PART_UNSERVICEABLE', 'blocking')];
  return serviceable === null ? [held('PART_SERVICEABILITY_UNKNOWN', 'advisory')] : [];
}

interface InEngine {
  readonly number: number;
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
  const held = (
    code: ObjectionCode,
    severity: Objection['severity'],
    detail: Objection['detail'] = {},
  ): Objection => ({
    code,
    severity,
    positionNumber: number,
    record: { kind: 'component', id: part.componentId },
    detail: {
      serial: part.serial,
      partNumber: part.partNumber,
      slot: slotName,
      engine: engine.serial,
      model: engine.modelName,
      position: number,
      ...detail,
    },
  });
  return [...objectionsToLife(part.life, held, plannedStayCycles), ...serviceability(part.serviceable, held)];
}

function mixedModels({ positions, package: work }: ReleaseSnapshot): readonly Objection[] {
  const models = [...new Set(positions.flatMap((position) => position.engine?.modelName ?? []))];
  if (models.length < 2) return [];
  return [
    {
      code: 'MIXED_MODELS',
      severity: 'advisory',
      positionNumber: null,
      record: { kind: 'airframe', id: work.airframeId },
      detail: { registration: work.registration, models: models.join(', ') },
    },
  ];
}
