import { Injectable } from '@nestjs/common';
import { checkRelease } from '@strutbook/domain/release/check-release.js';
import type { Objection } from '@strutbook/domain/release/objection.js';
import { type RuleSet, ruleSetOn } from '@strutbook/domain/release/rule-sets.js';
import type {
  ComponentSnapshot,
  EngineSnapshot,
  PositionSnapshot,
  ReleaseSnapshot,
  UnfitPart,
} from '@strutbook/domain/release/snapshot.js';
import { dateOf } from '@strutbook/domain/units/calendar.js';
import type { Actor } from '../../platform/access/actor.js';
import type { Tx } from '../../platform/database/database.js';
import { toInstant } from '../../platform/http/instants.js';
import { orNotFound } from '../../platform/problems/refusal.error.js';
import { Clock } from '../../platform/time/clock.js';
import { EngineSnapshots } from '../../records/lives/engine-snapshots.js';
import { type HangingAsk, type HangingFacts, loadHangingFacts } from '../../records/lives/hanging-facts.js';
import { unfitWithin } from '../../records/lives/unfit-within.js';
import { PlannedFlying } from '../../records/planning/planned-flying.js';
import { Requirements } from '../../records/requirements/requirements.js';
import { digestOf } from './check-digest.js';
import { loadReleaseFacts, type ReleaseFacts } from './release-facts.js';
import { requirementSnapshots } from './requirements-of-check.js';
import { type WorkToRelease, workOf } from './work.js';
import { holding, releaserSnapshot, workSnapshot } from './work-of-facts.js';

/** A check as it was made: what it looked at, what it found, and the digest of the first. */
export interface MadeCheck {
  readonly work: WorkToRelease;
  readonly snapshot: ReleaseSnapshot;
  readonly ruleSet: RuleSet;
  readonly objections: readonly Objection[];
  readonly digest: string;
  /** The reference of the asking person's authorisation to release this today; null when none is in force. */
  readonly authorisation: string | null;
}

/** Reads what a release is judged on and judges it: the same for advice and, under its locks, for the signature. */
@Injectable()
export class ReleaseCheck {
  constructor(
    private readonly engines: EngineSnapshots,
    private readonly requirements: Requirements,
    private readonly planned: PlannedFlying,
    private readonly clock: Clock,
  ) {}

  /** The check on the records as this transaction sees them, for the person who asks. Refuses: NOT_FOUND. */
  async make(tx: Tx, actor: Actor, packageId: string): Promise<MadeCheck> {
    const { operatorId, personId } = actor;
    const facts = await loadReleaseFacts(tx, operatorId, { packageId, personId });
    const worked = workSnapshot(facts);
    const work = workOf(facts, worked.steps);
    const at = toInstant(this.clock.now());
    const code = work.airframe?.ruleSet ?? facts.ruleSet ?? '';
    const ruleSet = orNotFound(ruleSetOn(code, dateOf(at)), `rule set ${code}`);
    const hanging = await loadHangingFacts(tx, operatorId, { of: holderOf(facts), at: null });
    const held = hanging.positions.filter(({ slotKind }) => slotKind === 'engine');
    const tops = work.airframe === null ? hanging.tops : held.flatMap(({ componentId }) => componentId ?? []);
    const engines = await this.engines.ofHanging(tx, operatorId, tops, hanging);
    const positions = held.map(({ positionId, number, componentId }) => ({
      ...{ positionId, number },
      engine: componentId === null ? null : (engines.get(componentId) ?? null),
    }));
    const snapshot: ReleaseSnapshot = {
      package: {
        id: work.id,
        kind: work.kind,
        airframeId: work.airframe?.id ?? null,
        registration: work.airframe?.registration ?? null,
        ruleSet: ruleSet.code,
      },
      at,
      positions,
      component: componentAlone(facts, engines),
      unfit: unfitOutside(hanging, tops),
      flights: facts.flights,
      work: worked,
      requirements: await this.requirementsOf(tx, operatorId, facts, { hanging, positions }),
      planned:
        work.airframe === null
          ? []
          : await this.planned.reached(tx, operatorId, { airframeId: work.airframe.id, packageId }),
      releaser: releaserSnapshot(actor, facts, at),
      plannedStayCycles: null,
    };
    return {
      work,
      snapshot,
      ruleSet,
      objections: checkRelease(snapshot),
      digest: digestOf(snapshot, work, ruleSet),
      authorisation: holding(facts, { personId, scope: 'release', on: dateOf(at) })?.reference ?? null,
    };
  }

  private async requirementsOf(
    tx: Tx,
    operatorId: number,
    { id, airframe, component }: ReleaseFacts,
    {
      hanging,
      positions,
    }: { readonly hanging: HangingFacts; readonly positions: readonly PositionSnapshot[] },
  ): Promise<ReleaseSnapshot['requirements']> {
    const of =
      airframe !== null
        ? { airframeId: airframe.id }
        : component === null
          ? null
          : { componentId: component.id };
    if (of === null) return [];
    const held = [...hanging.tops, ...hanging.slots.flatMap((slot) => slot.componentId ?? [])];
    const statuses = await this.requirements.statusesOn(tx, operatorId, of, null, { componentIds: held });
    if (statuses.length === 0) return [];
    const named = await this.requirements.ofPackage(tx, operatorId, id);
    return requirementSnapshots(statuses, { named, positions });
  }
}

/** What is released: all that hangs on the airframe, or the component of a package on none. */
function holderOf({ airframe, component }: ReleaseFacts): HangingAsk['of'] {
  if (airframe !== null) return { airframeId: airframe.id };
  return { componentIds: component === null ? [] : [component.id] };
}

/** The component of a package on no airframe: it is released by itself. */
function componentAlone(
  { airframe, component }: ReleaseFacts,
  snapshots: ReadonlyMap<string, EngineSnapshot>,
): ComponentSnapshot | null {
  if (airframe !== null || component === null) return null;
  const as = orNotFound(snapshots.get(component.id), 'component');
  return { kind: component.kind as ComponentSnapshot['kind'], as };
}

/** What is not fit among what hangs there outside the engines: pods and the auxiliary power unit, with all in them. */
function unfitOutside(hanging: HangingFacts, engineIds: readonly string[]): readonly UnfitPart[] {
  const others = hanging.tops.filter((id) => !engineIds.includes(id));
  return [...unfitWithin(hanging, others).values()].flat();
}
