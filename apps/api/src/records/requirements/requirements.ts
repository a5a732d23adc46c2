import { Injectable } from '@nestjs/common';
import type { Tx } from '../../platform/database/database.js';
import { newId } from '../../platform/database/uuid.js';
import { dayFromWire } from '../../platform/http/instants.js';
import { orNotFound, refuse } from '../../platform/problems/refusal.error.js';
import { DuePoints } from '../due-points/due-points.js';
import { dayIn } from '../stays/day-zone.js';
import { Structure } from '../stays/structure.js';
import { packageRequirements } from './package-requirements.js';
import { scopeOfCodes } from './requirement-scope.js';
import type { PackageRequirementRow, RequirementStatus, RequirementSubject } from './requirement-status.js';
import { Standings } from './standings.js';
import { byUrgency, statusOfStanding } from './status-of.js';
import type { Scope } from './subjects.js';

/** A requirement named for a package: exactly one of the subjects is given. */
export interface NamedRequirement {
  readonly requirementId: string;
  readonly airframeId?: string | null;
  readonly positionId?: string | null;
  readonly componentId?: string | null;
}

interface WorkPackage {
  readonly id: string;
  readonly airframeId: string | null;
  readonly componentId: string | null;
}

/** What is told of requirements on a holder. */
export interface StatusesAsk {
  /** The components of the holder, where the caller has read them. */
  readonly componentIds?: readonly string[] | null;
  /** With those that do not apply: of another type, model or part number, or outside their serial numbers. */
  readonly withAll?: boolean;
}

/** What requirements are asked of: an airframe with all that hangs on it, or a component with all beneath it. */
export type Holder = { readonly airframeId: string } | { readonly componentId: string };

/** Requirements: what is due, what a package is to meet, and that it was met. */
@Injectable()
export class Requirements {
  constructor(
    private readonly standings: Standings,
    private readonly structure: Structure,
    private readonly duePoints: DuePoints,
  ) {}

  /**
   * All requirements of an airframe (itself, its positions and all that hangs on it) or of a component (itself and all
   * beneath it), at an instant or now, the most pressing first. A constant number of statements.
   */
  async statusesOn(
    tx: Tx,
    operatorId: number,
    of: Holder,
    at: Date | null,
    { componentIds = null, withAll = false }: StatusesAsk = {},
  ): Promise<RequirementStatus[]> {
    const scope =
      componentIds === null
        ? await this.scopeOf(tx, operatorId, of, at)
        : { airframeIds: 'airframeId' in of ? [of.airframeId] : [], componentIds: [...componentIds] };
    const standings = await this.standings.of(tx, operatorId, scope, { at, withAll });
    return standings.map(statusOfStanding).sort(byUrgency);
  }

  /** The requirement in force of one code, held against everything it is for (or, with all, that it may be thought to be for). */
  async statusesOfCode(
    tx: Tx,
    operatorId: number,
    code: string,
    withAll = false,
  ): Promise<RequirementStatus[]> {
    const scope = await scopeOfCodes(tx, operatorId, [code]);
    const standings = await this.standings.of(tx, operatorId, scope, { codes: [code], withAll });
    return standings.map(statusOfStanding).sort(byUrgency);
  }

  /**
   * Names requirements for an open package, whose row the caller holds. Refuses: NOT_FOUND, INVALID_FIELDS,
   * REFUSED_BY_FACTS (each with its field 'requirements[n]…').
   */
  async name(
    tx: Tx,
    operatorId: number,
    packageId: string,
    requirements: readonly NamedRequirement[],
    number: bigint,
  ): Promise<void> {
    if (requirements.length === 0) return;
    const workPackage = orNotFound(
      await tx.workPackage.findUnique({
        where: { operatorId_id: { operatorId, id: packageId } },
        select: { id: true, airframeId: true, componentId: true },
      }),
      'package',
    );
    const { airframeId } = workPackage;
    const asked = requirements.flatMap((named) => named.componentId ?? []);
    const worked = asked.length === 0 ? [] : await this.workedOn(tx, operatorId, workPackage);
    const found = await this.standings.of(tx, operatorId, {
      airframeIds: airframeId === null ? [] : [airframeId],
      componentIds: asked.filter((id) => worked.includes(id)),
    });
    const rows = requirements.map((named, index) => {
      const subject = subjectOf(named, `requirements[${index}]`);
      const isFor = found.some(
        (standing) =>
          standing.requirement.id === named.requirementId &&
          standing.isForSubject &&
          standing.subject.airframeId === subject.airframeId &&
          standing.subject.positionId === subject.positionId &&
          standing.subject.componentId === subject.componentId,
      );
      if (!isFor)
        refuse({
          code: 'REFUSED_BY_FACTS',
          field: `requirements[${index}].requirementId`,
          reason: 'No requirement in force with this id is for what the package works on.',
          fix: 'Choose one that the airframe or the component lists under Requirements.',
        });
      return {
        operatorId,
        id: newId(),
        packageId,
        requirementId: named.requirementId,
        ...subject,
        recordedSeq: number,
      };
    });
    await tx.packageRequirement.createMany({ data: rows });
  }

  /** The requirements a package is to meet. */
  ofPackage(tx: Tx, operatorId: number, packageId: string): Promise<PackageRequirementRow[]> {
    return packageRequirements(tx, operatorId, packageId);
  }

  /**
   * Records that what a package was to meet was met, at the instant of its release, and computes what is due anew. What
   * counters it was met at the records say. Call it with the package's airframe and components locked.
   */
  async accomplish(
    tx: Tx,
    operatorId: number,
    done: {
      readonly packageId: string;
      readonly at: Date;
      readonly number: bigint;
      readonly evidence: string;
    },
  ): Promise<void> {
    const { packageId, number, evidence } = done;
    const named = await tx.packageRequirement.findMany({ where: { operatorId, packageId, voidedSeq: null } });
    if (named.length === 0) return;
    const workPackage = await tx.workPackage.findUnique({
      where: { operatorId_id: { operatorId, id: packageId } },
      select: { airframeId: true, airframe: { select: { dayZone: true } } },
    });
    const at = new Date(Math.floor(done.at.getTime() / 60_000) * 60_000);
    const doneOn = dayFromWire(dayIn(workPackage?.airframe?.dayZone ?? 'UTC', at)) ?? at;
    await tx.accomplishment.createMany({
      data: named.map(({ requirementId, airframeId, positionId, componentId }) => ({
        operatorId,
        id: newId(),
        requirementId,
        airframeId,
        positionId,
        componentId,
        at,
        doneOn,
        evidence,
        packageId,
        recordedSeq: number,
      })),
    });
    const onAirframe = named.some((row) => row.componentId === null);
    await this.duePoints.rebuild(
      tx,
      operatorId,
      named.flatMap((row) => row.componentId ?? []),
      onAirframe && workPackage?.airframeId != null ? [workPackage.airframeId] : [],
    );
  }

  /** The components a package works on: what hangs on its airframe or beneath its component, and what its order moves. */
  private async workedOn(
    tx: Tx,
    operatorId: number,
    { id: packageId, airframeId, componentId }: WorkPackage,
  ): Promise<string[]> {
    const of = airframeId !== null ? { airframeId } : componentId !== null ? { componentId } : null;
    const own = of === null ? [] : (await this.scopeOf(tx, operatorId, of, null)).componentIds;
    const orders = await tx.orderedChange.findMany({
      where: { operatorId, packageId, voidedSeq: null },
      select: { outgoingId: true, incomingId: true },
    });
    const moved = orders
      .flatMap(({ outgoingId, incomingId }) => [outgoingId, incomingId])
      .filter((id) => id !== null);
    const within = moved.length === 0 ? [] : await this.structure.beneath(tx, operatorId, moved, null);
    return [...own, ...moved, ...within.flatMap((slot) => slot.componentId ?? [])];
  }

  private async scopeOf(tx: Tx, operatorId: number, of: Holder, at: Date | null): Promise<Scope> {
    const airframeIds = 'airframeId' in of ? [of.airframeId] : [];
    const tops =
      'componentId' in of
        ? [of.componentId]
        : (await this.structure.onAirframes(tx, operatorId, airframeIds, at)).flatMap(
            (slot) => slot.componentId ?? [],
          );
    const beneath = tops.length === 0 ? [] : await this.structure.beneath(tx, operatorId, tops, at);
    return { airframeIds, componentIds: [...tops, ...beneath.flatMap((slot) => slot.componentId ?? [])] };
  }
}

/** The one subject that is given. Refuses: INVALID_FIELDS. */
export function subjectOf(
  { airframeId = null, positionId = null, componentId = null }: Omit<NamedRequirement, 'requirementId'>,
  field: string,
): RequirementSubject {
  const given = [airframeId, positionId, componentId].filter((id) => id !== null);
  if (given.length !== 1)
    refuse({
      code: 'INVALID_FIELDS',
      fields: [
        {
          field: field === '' ? 'componentId' : `${field}.componentId`,
          reason: 'A requirement is met on one airframe, position or component.',
          fix: 'Give exactly one of airframeId, positionId and componentId.',
        },
      ],
    });
  return { airframeId, positionId, componentId };
}
