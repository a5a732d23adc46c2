import { Injectable } from '@nestjs/common';
import type {
  BuildStandard,
  BuiltComponent,
  BuiltCounters,
  BuiltLife,
  BuiltRequirement,
  BuiltSlot,
} from '@strutbook/domain/shop/build-standard.js';
import type { Tx } from '../../platform/database/database.js';
import { toCounters } from '../../platform/http/counters.dto.js';
import { toWire } from '../../platform/http/instants.js';
import { type RatingCodes, whyNoNumber } from '../lives/life-words.js';
import { Lives, type PartInLife } from '../lives/lives.js';
import { ratingsAt } from '../lives/ratings.js';
import type { RequirementStatus } from '../requirements/requirement-status.js';
import { Requirements } from '../requirements/requirements.js';
import { Structure } from '../stays/structure.js';
import type { FilledSlot } from '../stays/structure.sql.js';
import { type ComponentCounters, Counters } from '../usage/counters.js';

interface Named {
  readonly id: string;
  readonly kind: string;
  readonly partNumber: string;
  readonly serialNumber: string;
  readonly description: string;
  readonly lifeLimited: boolean;
}

interface Found {
  readonly slots: readonly FilledSlot[];
  readonly named: ReadonlyMap<string, Named>;
  readonly counters: ReadonlyMap<string, ComponentCounters>;
  readonly lives: ReadonlyMap<string, PartInLife>;
  readonly ratings: RatingCodes;
}

/** Build standards: what is in a component, with lives, counters and requirements, as they are kept with a shop visit. */
@Injectable()
export class BuildStandards {
  constructor(
    private readonly structure: Structure,
    private readonly counters: Counters,
    private readonly lives: Lives,
    private readonly requirements: Requirements,
  ) {}

  /** The build standard of a component at an instant, in a constant number of statements. */
  async of(tx: Tx, operatorId: number, componentId: string, at: Date): Promise<BuildStandard> {
    const slots = await this.structure.beneath(tx, operatorId, [componentId], at);
    const ids = [componentId, ...slots.flatMap((slot) => slot.componentId ?? [])];
    const rows = await tx.component.findMany({ where: { operatorId, id: { in: ids } } });
    const ratings = await tx.rating.findMany({ where: { operatorId }, select: { id: true, code: true } });
    const found: Found = {
      slots,
      named: new Map(rows.map((row) => [row.id, row])),
      counters: await this.counters.of(tx, operatorId, ids, at),
      lives: await this.lives.of(tx, operatorId, ids, at),
      ratings: new Map(ratings.map(({ id, code }) => [id, code])),
    };
    const ratingId = (await ratingsAt(tx, operatorId, [componentId], at)).get(componentId);
    const known = found.counters.get(componentId);
    const statuses = await this.requirements.statusesOn(tx, operatorId, { componentId }, at, {
      componentIds: ids,
    });
    return {
      at: toWire(at),
      ratingCode: ratingId === undefined ? null : (found.ratings.get(ratingId) ?? null),
      sinceNew: built(known?.sinceNew) ?? { minutes: null, cycles: null },
      sinceOverhaul: built(known?.sinceOverhaul),
      sinceShopVisit: built(known?.sinceShopVisit),
      sinceRepair: built(known?.sinceRepair),
      life: builtLife(found.lives.get(componentId), found.ratings),
      slots: builtSlots(found, componentId),
      requirements: statuses.map(builtRequirement),
    };
  }
}

function built(counters: ComponentCounters['sinceOverhaul'] | undefined): BuiltCounters | null {
  return counters == null ? null : toCounters(counters);
}

function builtSlots({ slots, ...found }: Found, componentId: string): BuiltSlot[] {
  const depths = new Map([[componentId, 0]]);
  return slots.map(({ slotId, name, parentId, componentId: filledBy }) => {
    const depth = (depths.get(parentId) ?? 0) + 1;
    if (filledBy !== null) depths.set(filledBy, depth);
    return {
      ...{ slotId, name, parentId, depth },
      parentSerial: found.named.get(parentId)?.serialNumber ?? '',
      component: filledBy === null ? null : builtComponent(filledBy, found),
    };
  });
}

function builtComponent(
  id: string,
  { named, counters, lives, ratings }: Omit<Found, 'slots'>,
): BuiltComponent | null {
  const row = named.get(id);
  if (row === undefined) return null;
  const { kind, partNumber, serialNumber, description, lifeLimited } = row;
  return {
    ...{ componentId: id, kind, partNumber, serialNumber, description, lifeLimited },
    sinceNew: built(counters.get(id)?.sinceNew) ?? { minutes: null, cycles: null },
    life: builtLife(lives.get(id), ratings),
  };
}

function builtLife(part: PartInLife | undefined, ratings: RatingCodes): BuiltLife | null {
  if (part === undefined) return null;
  const { life } = part;
  const limited = life.kind === 'limited';
  return {
    kind: life.kind,
    remainingCycles: limited ? life.remaining : null,
    remainingMinutes: limited ? life.remainingMinutes : null,
    remainingDays: limited ? life.remainingDays : null,
    reason: whyNoNumber(life, ratings),
  };
}

function builtRequirement(row: RequirementStatus): BuiltRequirement {
  const governing = row.dues.find(({ dimension }) => dimension === row.governing);
  return {
    requirementId: row.requirementId,
    code: row.code,
    title: row.title,
    kind: row.kind,
    revision: row.revision,
    componentId: row.componentId,
    subject: row.subject,
    status: row.status,
    remaining: governing?.remaining ?? null,
    governing: row.governing,
    lastDoneOn: row.lastDone?.on ?? null,
  };
}
