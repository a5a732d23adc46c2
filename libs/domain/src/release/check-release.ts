import { dateOf } from '../units/calendar.js';
import { logGaps } from './log-gaps.js';
import type { Objection, ObjectionCode } from './objection.js';
import { objectionsToComponent, objectionsToPosition, objectionToUnfit } from './objections-to-engine.js';
import { objectionsToPlannedFlying } from './objections-to-planned-flying.js';
import { objectionsToReleaser, objectionsToRequirements } from './objections-to-standing.js';
import { ruleSetOn } from './rule-sets.js';
import type { ReleaseSnapshot } from './snapshot.js';
import { objectionsToWork } from './work/objections-to-work.js';

export type {
  EngineSnapshot,
  LimitedPartSlot,
  LoggedLeg,
  PositionSnapshot,
  ReleaseSnapshot,
} from './snapshot.js';

/** The order in which objections are told, the worst first; blocking ones before advisory ones. */
const WORST_FIRST = [
  'ENGINE_MISSING',
  'ORDER_DIFFERS',
  'ORDER_NOT_MADE',
  'OVER_LIMIT',
  'AT_LIMIT',
  'NOT_AUTHORISED',
  'ENGINE_NOT_AUTHORISED',
  'LIMITED_PART_MISSING',
  'LIMITED_PART_UNTRACED',
  'NO_LIMIT_RECORDED',
  'REQUIREMENT_OVER',
  'REQUIREMENT_NOT_VERIFIED',
  'REQUIREMENT_IN_TOLERANCE',
  'COUNTERS_UNKNOWN',
  'LOG_GAP',
  'RATING_UNKNOWN',
  'PART_UNSERVICEABLE',
  'PAPERS_REJECTED',
  'TORQUE_OUT_OF_RANGE',
  'TOOL_NOT_USABLE',
  'LEAK_FOUND',
  'LEAK_CHECK_INCOMPLETE',
  'ENTRY_REJECTED',
  'ITEM_OPEN',
  'COUNTS_DIFFER',
  'STEP_UNSIGNED',
  'CAPTURE_MISSING',
  'INSPECTION_MISSING',
  'INSPECTION_BY_SAME_PERSON',
  'SIGNER_NOT_AUTHORISED',
  'RELEASER_NOT_AUTHORISED',
  'RELEASER_WITHOUT_LICENCE',
  'SHORT_OF_PLANNED_STAY',
  'MIXED_MODELS',
  'WORST_CASE_ACCEPTED',
  'ONE_PERSON_REINSPECTION',
  'DUE_WITHIN_PLANNED_FLYING',
  'LOG_GAP_EXPLAINED',
  'PART_SERVICEABILITY_UNKNOWN',
  'SHOP_PAPERS_MISSING',
  'DISPOSITION_MISSING',
  'PRESERVATION_OVER',
] as const satisfies readonly ObjectionCode[];

/**
 * What is held against releasing, worst first; nothing that blocks, and it may be signed.
 *
 * A pure function of one snapshot. What is not known is an objection, never silently fine. Total.
 */
export function checkRelease(snapshot: ReleaseSnapshot): readonly Objection[] {
  const { component, plannedStayCycles, package: work } = snapshot;
  const onePersonReinspection = ruleSetOn(work.ruleSet, dateOf(snapshot.at))?.onePersonReinspection ?? false;
  const objections = [
    ...snapshot.positions.flatMap((position) => objectionsToPosition(position, plannedStayCycles)),
    ...(component === null ? [] : objectionsToComponent(component, plannedStayCycles)),
    ...(snapshot.unfit ?? []).map((part) => objectionToUnfit(part, null)),
    ...mixedModels(snapshot),
    ...objectionsToWork(snapshot.work, { packageId: work.id, onePersonReinspection }),
    ...objectionsToRequirements(snapshot.requirements),
    ...objectionsToPlannedFlying(snapshot),
    ...objectionsToReleaser(snapshot.releaser),
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

function mixedModels({ positions, package: work }: ReleaseSnapshot): readonly Objection[] {
  const models = [...new Set(positions.flatMap((position) => position.engine?.modelName ?? []))];
  if (models.length < 2 || work.airframeId === null) return [];
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
