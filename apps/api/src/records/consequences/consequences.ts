import { Injectable } from '@nestjs/common';
import type { Tx } from '../../platform/database/database.js';
import {
  describeReached,
  newlyReached,
  type PassedPoint,
  reachedLimits,
} from '../due-points/reached-limits.js';
import { keyOfOverrun, Overruns } from '../overruns/overruns.js';
import type { PastOverrun } from '../overruns/past-overrun.js';
import { airframesEverHungOn } from '../requirements/requirement-scope.js';
import type { Scope } from '../requirements/subjects.js';
import { everOnAirframes, withAllBeneath } from '../usage/kinship.js';
import type { ConsequencesDto } from './consequences.dto.js';
import { describeOverruns } from './overrun.mapper.js';
import { describeUnknown, newlyUnknown, type UnknownPoint, unknownPoints } from './unknown-points.js';

/** What was limited how before an act; made under the act's locks. */
export interface Before {
  readonly scope: Scope;
  readonly reached: readonly PassedPoint[];
  readonly unknown: readonly UnknownPoint[];
  /** Null where the act lies after all that is recorded: then the past is as it was. */
  readonly overruns: readonly PastOverrun[] | null;
}

/** What an act newly breaks: the present by due points, the past by the facts. */
@Injectable()
export class Consequences {
  constructor(private readonly overruns: Overruns) {}

  /** The state before an act on flights of an airframe. `isLate`: whether it may change what is recorded of the past. */
  async beforeOnAirframes(
    tx: Tx,
    operatorId: number,
    airframeIds: readonly string[],
    isLate: boolean,
  ): Promise<Before> {
    const componentIds = await everOnAirframes(tx, operatorId, airframeIds);
    return this.before(tx, operatorId, { componentIds, airframeIds }, isLate);
  }

  /**
   * The state before an act on places, balances or ratings of components: they, all that ever hung beneath them, and the
   * airframes they hung on; `airframeIds` are those they come to. `from` is the earliest instant the act changes: where
   * nothing flew after it, the past stays as it was.
   */
  async beforeOfComponents(
    tx: Tx,
    operatorId: number,
    ids: readonly string[],
    { airframeIds = [], from }: { readonly airframeIds?: readonly string[]; readonly from: Date | null },
  ): Promise<Before> {
    const componentIds = await withAllBeneath(tx, operatorId, ids);
    const hungOn = await airframesEverHungOn(tx, operatorId, componentIds);
    const scope = { componentIds, airframeIds: [...new Set([...hungOn, ...airframeIds])] };
    return this.before(tx, operatorId, scope, await hasFlownSince(tx, operatorId, scope, from));
  }

  /** What is newly reached, passed, not known or flown over since, once the act's projections are written. */
  async since(tx: Tx, operatorId: number, before: Before): Promise<ConsequencesDto> {
    const { scope } = before;
    const reached = newlyReached(before.reached, await reachedLimits(tx, operatorId, scope));
    const unknown = newlyUnknown(before.unknown, await unknownPoints(tx, operatorId, scope));
    const known = before.overruns === null ? null : new Set(before.overruns.map(keyOfOverrun));
    const overruns =
      known === null
        ? []
        : (await this.overruns.of(tx, operatorId, scope)).filter((each) => !known.has(keyOfOverrun(each)));
    return {
      newlyOver: await describeReached(tx, operatorId, reached),
      newlyUnknown: await describeUnknown(tx, operatorId, unknown),
      overruns: await describeOverruns(tx, operatorId, overruns),
    };
  }

  private async before(tx: Tx, operatorId: number, scope: Scope, isLate: boolean): Promise<Before> {
    return {
      scope,
      reached: await reachedLimits(tx, operatorId, scope),
      unknown: await unknownPoints(tx, operatorId, scope),
      overruns: isLate ? await this.overruns.of(tx, operatorId, scope) : null,
    };
  }
}

/** Whether an airframe of the scope, or one that carried a component of it, landed after an instant (null: ever). */
async function hasFlownSince(
  tx: Tx,
  operatorId: number,
  { componentIds, airframeIds }: Scope,
  from: Date | null,
): Promise<boolean> {
  const [row] = await tx.$queryRaw<{ flown: boolean }[]>`
    SELECT EXISTS (
      SELECT FROM carrier a
       WHERE a.operator_id = ${operatorId}::int AND a.last_landing_at > coalesce(${from}::timestamptz, '-infinity')
         AND (a.id = ANY (${[...airframeIds]}::uuid[]) OR a.id IN (
           SELECT c.airframe_id FROM exposure e
             JOIN carrier c ON c.operator_id = e.operator_id AND c.id = e.carrier_id
            WHERE e.operator_id = ${operatorId}::int AND e.component_id = ANY (${[...componentIds]}::uuid[])))) AS flown`;
  return row?.flown === true;
}
