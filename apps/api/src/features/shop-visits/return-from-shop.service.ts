import { Injectable } from '@nestjs/common';
import { checkRelease } from '@strutbook/domain/release/check-release.js';
import type { Objection } from '@strutbook/domain/release/objection.js';
import {
  type ComponentSnapshot,
  type EngineSnapshot,
  NOTHING_ELSE,
} from '@strutbook/domain/release/snapshot.js';
import type { Actor } from '../../platform/access/actor.js';
import type { Tx } from '../../platform/database/database.js';
import { newId } from '../../platform/database/uuid.js';
import type { ActRequest } from '../../platform/http/act-key.js';
import { Acts } from '../../platform/http/acts.js';
import { momentOf, toInstant, toWire } from '../../platform/http/instants.js';
import { refuse } from '../../platform/problems/refusal.error.js';
import { Clock } from '../../platform/time/clock.js';
import { refuseFuture } from '../../platform/time/refuse-future.js';
import { BuildStandards } from '../../records/builds/build-standards.js';
import { Projections } from '../../records/due-points/projections.js';
import { Journal } from '../../records/journal/journal.js';
import { plainJson } from '../../records/journal/plain-json.js';
import { EngineSnapshots } from '../../records/lives/engine-snapshots.js';
import { lockForStays } from '../../records/stays/stay-facts.js';
import { Stays } from '../../records/stays/stays.js';
import { Structure } from '../../records/stays/structure.js';
import { withAllAbove } from '../../records/usage/kinship.js';
import { stayAt } from './locations-then.js';
import { type MadeShopChange, ShopChanges } from './shop-changes.js';
import { ShopFacts } from './shop-facts.js';
import type { NewShopReturnDto } from './shop-visit.dto.js';
import { ShopVisitReader } from './shop-visit-reader.js';
import type { ShopVisitDto } from './shop-visit-view.dto.js';
import { findVisit, locationNamed, type VisitRow } from './visit-rows.js';

/** Components returned from a shop, with everything that was done there, as one act. */
@Injectable()
export class ReturnFromShopService {
  constructor(
    private readonly acts: Acts,
    private readonly journal: Journal,
    private readonly changes: ShopChanges,
    private readonly facts: ShopFacts,
    private readonly stays: Stays,
    private readonly structure: Structure,
    private readonly projections: Projections,
    private readonly builds: BuildStandards,
    private readonly engines: EngineSnapshots,
    private readonly reader: ShopVisitReader,
    private readonly clock: Clock,
  ) {}

  /**
   * Records the return: parts off and on, counters that begin again, requirements met, rating, preservation, tag and
   * the move to a store; all of it or nothing. Refuses: NOT_FOUND, IN_THE_FUTURE, REFUSED_BY_FACTS (returned or voided
   * already, or before it was sent), INVALID_FIELDS, and as changes and placements do.
   */
  return(actor: Actor, act: ActRequest, visitId: string, asked: NewShopReturnDto): Promise<ShopVisitDto> {
    const { operatorId } = actor;
    const returnedAt = momentOf(asked.returnedAt);
    refuseFuture(returnedAt, 'returnedAt', this.clock.now());
    return this.acts.perform(actor, act, async (tx) => {
      await this.lock(tx, operatorId, visitId, asked);
      const visit = await findVisit(tx, operatorId, visitId);
      refuseState(visit, returnedAt);
      const store = await locationNamed(tx, operatorId, asked.locationName, {
        kinds: ['store', 'shop', 'quarantine'],
        field: 'locationName',
        fix: 'Choose the store or quarantine it came back to.',
      });
      const number = await this.journal.number(tx);
      const { componentId, sentAt } = visit;
      const made = await this.changes.make(tx, operatorId, {
        ...{ componentId, sentAt, returnedAt, number },
        changes: asked.changes ?? [],
      });
      const within = await this.withinOf(tx, operatorId, componentId, returnedAt);
      const issuedBy = actor.fullName;
      await this.facts.record(tx, operatorId, {
        ...{ visitId, componentId, within, at: returnedAt, number, asked, issuedBy },
      });
      await this.moveTo(tx, operatorId, { componentId, returnedAt, locationId: store.id, number, asked });
      const moved = made.flatMap(({ outgoingId, incomingId }) => [outgoingId, incomingId]);
      const touched = [...new Set([componentId, ...within, ...moved.filter((id) => id !== null)])];
      await this.projections.ofComponents(tx, operatorId, touched);
      const objections = await this.objectionsTo(tx, operatorId, { visit, returnedAt, made, asked });
      const build = await this.builds.of(tx, operatorId, componentId, returnedAt);
      const returnId = newId();
      await write(tx, operatorId, {
        ...{ returnId, visit, returnedAt, locationId: store.id, number, asked, made },
        ...{ build: plainJson(build), objections },
      });
      await this.journal.append(tx, actor, {
        number,
        stream: componentId,
        kind: 'returned-from-shop',
        body: plainJson({ ...asked, visitId, returnId, build, objections }),
        about: [visitId, returnId, ...touched],
        key: act.key,
      });
      const body = await this.reader.read(tx, operatorId, visitId);
      return { status: 201, body, number, resource: `/api/shop-visits/${visitId}` };
    });
  }

  /** Locks the component of the visit and all that moves with the return, with all these ever hung in or carry. */
  private async lock(
    tx: Tx,
    operatorId: number,
    id: string,
    { changes = [] }: NewShopReturnDto,
  ): Promise<void> {
    const { componentId } = await findVisit(tx, operatorId, id);
    const there = await tx.stay.findMany({
      where: { operatorId, slotId: { in: changes.map(({ slotId }) => slotId) }, voidedSeq: null, toAt: null },
      select: { componentId: true },
    });
    const moved = [
      ...there.map((stay) => stay.componentId),
      ...changes.flatMap(({ incomingId }) => incomingId ?? []),
    ];
    const componentIds = await withAllAbove(tx, operatorId, [componentId, ...moved]);
    await lockForStays(tx, operatorId, { airframeIds: [], componentIds });
  }

  private async withinOf(tx: Tx, operatorId: number, id: string, at: Date): Promise<ReadonlySet<string>> {
    const slots = await this.structure.beneath(tx, operatorId, [id], at);
    return new Set([id, ...slots.flatMap((slot) => slot.componentId ?? [])]);
  }

  private async moveTo(tx: Tx, operatorId: number, move: MoveBack): Promise<void> {
    const { componentId, returnedAt, locationId, number, asked } = move;
    const there = await stayAt(tx, operatorId, componentId, returnedAt);
    if (there?.locationId === locationId) return;
    await this.stays.place(
      tx,
      operatorId,
      {
        componentId,
        place: { kind: 'location', locationId },
        boundary: { kind: 'instant', at: toInstant(returnedAt) },
        ...{ until: null, airframeId: null, reason: `Returned from shop, ${asked.report}` },
      },
      number,
    );
  }

  /** What broke a rule: found by the changes, in the component as it came back, and in its papers. */
  private async objectionsTo(
    tx: Tx,
    operatorId: number,
    { visit: { component }, returnedAt, made, asked }: Judged,
  ): Promise<readonly Objection[]> {
    const { id, serialNumber, partNumber } = component;
    const as = (await this.engines.of(tx, operatorId, [id], returnedAt)).get(id);
    const kind = component.kind as ComponentSnapshot['kind'];
    const looked = { id: '', kind: 'shop-visit', airframeId: null, registration: null, ruleSet: '' };
    const found =
      as === undefined
        ? []
        : checkRelease({
            ...NOTHING_ELSE,
            package: looked,
            at: toInstant(returnedAt),
            positions: [],
            component: { kind, as },
          });
    const papers: Objection = {
      code: 'SHOP_PAPERS_MISSING',
      severity: 'advisory',
      positionNumber: null,
      record: { kind: 'component', id },
      detail: { serial: serialNumber, partNumber },
    };
    const all = [
      ...made.flatMap(({ objections }) => objections),
      // Its return is being recorded: that it is in the shop is no longer held against it.
      ...found
        .filter(({ code, record }) => code !== 'PART_UNSERVICEABLE' || record.id !== id)
        .filter(isTold(as)),
      ...(asked.certificate == null ? [papers] : []),
    ];
    const keys = all.map(({ code, record }) => `${code} ${record.id}`);
    return all.filter((_, index) => keys.indexOf(keys[index] ?? '') === index);
  }
}

interface MoveBack {
  readonly componentId: string;
  readonly returnedAt: Date;
  readonly locationId: string;
  readonly number: bigint;
  readonly asked: NewShopReturnDto;
}

interface Judged {
  readonly visit: VisitRow;
  readonly returnedAt: Date;
  readonly made: readonly MadeShopChange[];
  readonly asked: NewShopReturnDto;
}

interface ReturnToWrite extends Judged {
  readonly returnId: string;
  readonly locationId: string;
  readonly number: bigint;
  readonly build: ReturnType<typeof plainJson>;
  readonly objections: readonly Objection[];
}

function refuseState({ voidedSeq, shopReturnByVisit, sentAt, component }: VisitRow, returnedAt: Date): void {
  if (voidedSeq !== null) refuse({ code: 'ALREADY_VOIDED', what: 'the shop visit' });
  const [returned] = shopReturnByVisit;
  if (returned !== undefined)
    refuse({
      code: 'REFUSED_BY_FACTS',
      field: 'returnedAt',
      reason: `${component.serialNumber} was returned from this visit at ${toWire(returned.returnedAt)}, with ${returned.report}.`,
      fix: 'Void that return first if it is wrong.',
    });
  if (returnedAt <= sentAt)
    refuse({
      code: 'REFUSED_BY_FACTS',
      field: 'returnedAt',
      reason: `It was sent to the shop at ${toWire(sentAt)}.`,
      fix: 'Enter a moment after that.',
    });
}

async function write(tx: Tx, operatorId: number, toWrite: ReturnToWrite): Promise<void> {
  const { returnId, visit, returnedAt, locationId, number, asked, made, build, objections } = toWrite;
  await tx.shopReturn.create({
    data: {
      ...{
        operatorId,
        id: returnId,
        visitId: visit.id,
        componentId: visit.componentId,
        locationId,
        returnedAt,
      },
      ...{ report: asked.report, certificate: asked.certificate ?? null, workDone: asked.workDone },
      build,
      objections: JSON.parse(JSON.stringify(objections)),
      recordedSeq: number,
    },
  });
  await tx.shopChange.createMany({
    data: made.map(({ objections: _, ...change }) => ({
      operatorId,
      returnId,
      ...change,
      recordedSeq: number,
    })),
  });
}

/** Leaves out what only the rating of the engine it goes into can tell: a module by itself runs at none. */
function isTold(as: EngineSnapshot | undefined): (objection: Objection) => boolean {
  const open = (as?.limitedParts ?? []).flatMap(({ part }) =>
    as?.ratingId === null &&
    part?.life.kind === 'unsubstantiated' &&
    part.life.reasons.every(({ code }) => code === 'RATING_UNKNOWN')
      ? [part.componentId]
      : [],
  );
  return ({ code, record }) => code !== 'LIMITED_PART_UNTRACED' || !open.includes(record.id);
}
