import { Injectable } from '@nestjs/common';
import type { Actor } from '../../platform/access/actor.js';
import type { Tx } from '../../platform/database/database.js';
import { newId } from '../../platform/database/uuid.js';
import type { ActRequest } from '../../platform/http/act-key.js';
import { Acts } from '../../platform/http/acts.js';
import { Clock } from '../../platform/time/clock.js';
import { Journal } from '../../records/journal/journal.js';
import { plainJson } from '../../records/journal/plain-json.js';
import { type NamedRequirement, Requirements } from '../../records/requirements/requirements.js';
import { createSteps } from '../../records/work/create-steps.js';
import { recordOrder } from '../../records/work/orders.js';
import type { PackageKind } from '../../records/work/package-head.js';
import { refuseUnsoundSteps } from '../../records/work/sound-content.js';
import type { NewPackageDto, NewPackageRequirementDto } from './new-package.dto.js';
import type { PackageDto } from './packages.dto.js';
import { PackagesService } from './packages.service.js';
import { type PlannedPackage, planPackage } from './plan-package.js';

/** What a package's number begins with. */
const PREFIX: Readonly<Record<PackageKind, string>> = {
  'engine-change': 'EC',
  'pod-swap': 'PS',
  'component-change': 'CC',
  inspection: 'IN',
  directive: 'AD',
};

/** Opens packages that are worked by steps. */
@Injectable()
export class OpenPackageService {
  constructor(
    private readonly acts: Acts,
    private readonly journal: Journal,
    private readonly clock: Clock,
    private readonly requirements: Requirements,
    private readonly packages: PackagesService,
  ) {}

  /**
   * Opens a package with its steps, its order and the requirements it is to meet, as one act.
   * Refuses: INVALID_FIELDS, NOT_FOUND, REFUSED_BY_FACTS, and as resolveOrder does.
   */
  open(actor: Actor, act: ActRequest, asked: NewPackageDto): Promise<PackageDto> {
    refuseUnsoundSteps(asked.steps ?? []);
    const { operatorId } = actor;
    return this.acts.perform(actor, act, async (tx) => {
      const now = this.clock.now();
      const planned = await planPackage(tx, operatorId, asked, now);
      const number = await this.journal.number(tx);
      const id = newId();
      const packageNumber = `${PREFIX[asked.kind]}-${String(number).padStart(4, '0')}`;
      await this.write(tx, operatorId, { id, packageNumber, asked, planned, now, number });
      const body = await this.packages.read(tx, operatorId, id);
      await this.journal.append(tx, actor, {
        number,
        stream: id,
        kind: 'package-opened',
        body: plainJson({ packageId: id, packageNumber, ...asked, ruleSet: body.ruleSet, order: body.order }),
        about: aboutOf(id, asked, planned),
        key: act.key,
      });
      return { status: 201, body, version: body.version, resource: `/api/packages/${id}`, number };
    });
  }

  private async write(tx: Tx, operatorId: number, opening: Opening): Promise<void> {
    const { id, packageNumber, asked, planned, now, number } = opening;
    await tx.workPackage.create({
      data: {
        operatorId,
        id,
        number: packageNumber,
        kind: asked.kind,
        title: asked.title,
        airframeId: planned.airframeId,
        componentId: planned.componentId,
        openedAt: now,
        procedureId: asked.procedureId ?? null,
        reference: asked.reference ?? null,
        ruleSet: planned.ruleSet,
        recordedSeq: number,
      },
    });
    await createSteps(tx, operatorId, { packageId: id, number, definitions: planned.definitions });
    if (planned.order !== null)
      await recordOrder(tx, operatorId, { packageId: id, order: planned.order, number });
    const named = (asked.requirements ?? []).map((each) => withSubject(each, planned));
    if (named.length > 0) await this.requirements.name(tx, operatorId, id, named, number);
  }
}

interface Opening {
  readonly id: string;
  readonly packageNumber: string;
  readonly asked: NewPackageDto;
  readonly planned: PlannedPackage;
  readonly now: Date;
  readonly number: bigint;
}

/** A requirement that names nothing it is held against is held against what the package is on. */
function withSubject(
  { requirementId, airframeId, positionId, componentId }: NewPackageRequirementDto,
  planned: PlannedPackage,
): NamedRequirement {
  const named = {
    airframeId: airframeId ?? null,
    positionId: positionId ?? null,
    componentId: componentId ?? null,
  };
  const isNamed = Object.values(named).some((each) => each !== null);
  const own = { airframeId: planned.airframeId, positionId: null, componentId: planned.componentId };
  return { requirementId, ...(isNamed ? named : own) };
}

/** Everything a package's opening concerns. */
function aboutOf(
  id: string,
  { requirements = [] }: NewPackageDto,
  { airframeId, componentId, order }: PlannedPackage,
): string[] {
  const about = [
    id,
    airframeId,
    componentId,
    order?.positionId,
    order?.outgoing?.id,
    order?.incoming?.id,
    ...requirements.map(({ requirementId }) => requirementId),
  ];
  return [...new Set(about.filter((each) => each != null))];
}
