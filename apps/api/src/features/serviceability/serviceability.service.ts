import { Injectable } from '@nestjs/common';
import type { Json } from '@strutbook/journal/canonical.js';
import type { Actor } from '../../platform/access/actor.js';
import { Database, type Tx } from '../../platform/database/database.js';
import { newId } from '../../platform/database/uuid.js';
import type { ActRequest } from '../../platform/http/act-key.js';
import { Acts } from '../../platform/http/acts.js';
import { dayOf, dayToWire, momentOf, toWire } from '../../platform/http/instants.js';
import { orNotFound, refuse } from '../../platform/problems/refusal.error.js';
import { Clock } from '../../platform/time/clock.js';
import { refuseFuture } from '../../platform/time/refuse-future.js';
import { Journal } from '../../records/journal/journal.js';
import type {
  NewPreservationDto,
  NewTagDto,
  OpenVisitDto,
  PreservationDto,
  ServiceabilityDto,
  TagDto,
} from './serviceability.dto.js';
import { preservationToWire, tagToWire, unfitReasons } from './serviceability.mapper.js';

/** Tags and preservations of components, and what they say of fitting them. */
@Injectable()
export class ServiceabilityService {
  constructor(
    private readonly database: Database,
    private readonly acts: Acts,
    private readonly journal: Journal,
    private readonly clock: Clock,
  ) {}

  /** What tags, shop and place say of a component, with all tags and preservations, the newest first. Refuses: NOT_FOUND. */
  of(actor: Actor, componentId: string): Promise<ServiceabilityDto> {
    const { operatorId } = actor;
    return this.database.inOperator(actor, async (tx) => {
      const where = { operatorId_id: { operatorId, id: componentId } };
      orNotFound(await tx.component.findUnique({ where, select: { id: true } }), 'component');
      const { tags, preservations } = await this.kept(tx, operatorId, componentId);
      const openVisit = await openVisitOf(tx, operatorId, componentId);
      const stay = await tx.stay.findFirst({
        where: { operatorId, componentId, voidedSeq: null, toAt: null },
        select: { location: { select: { kind: true, name: true } } },
      });
      const quarantine = stay?.location?.kind === 'quarantine' ? stay.location.name : null;
      const reasons = unfitReasons(
        tags.find((tag) => tag.counts),
        openVisit,
        quarantine,
      );
      return { fit: reasons.length === 0, reasons, openVisit, tags, preservations };
    });
  }

  /** Records a tag. Refuses: NOT_FOUND, IN_THE_FUTURE, ALREADY_EXISTS (one with this number), INVALID_FIELDS (no certificate). */
  tag(actor: Actor, act: ActRequest, asked: NewTagDto): Promise<TagDto> {
    const { operatorId } = actor;
    const { componentId, status, tagNumber, reason } = asked;
    const at = momentOf(asked.at);
    refuseFuture(at, 'at', this.clock.now());
    const certificate = asked.certificate ?? null;
    if (status === 'serviceable' && certificate === null)
      refuse({
        code: 'INVALID_FIELDS',
        fields: [
          {
            field: 'certificate',
            reason: 'A component is serviceable by a release certificate.',
            fix: 'Enter the number of its certificate.',
          },
        ],
      });
    return this.record(actor, act, {
      ...{ componentId, kind: `tagged-${status}`, asked },
      write: async (tx, recordedSeq) => {
        const same = await tx.serviceabilityTag.findFirst({
          where: { operatorId, componentId, tagNumber, status, voidedSeq: null },
          select: { id: true },
        });
        if (same !== null)
          refuse({
            code: 'ALREADY_EXISTS',
            what: 'a tag of it with this number',
            field: 'tagNumber',
            value: tagNumber,
          });
        const issuedBy = asked.issuedBy ?? actor.fullName;
        const data = { componentId, status, tagNumber, reason, certificate, issuedBy, at, recordedSeq };
        const row = await tx.serviceabilityTag.create({ data: { operatorId, id: newId(), ...data } });
        return tagToWire(row, await this.isNewest(tx, operatorId, row));
      },
    });
  }

  /** Records a preservation. Refuses: NOT_FOUND, IN_THE_FUTURE, INVALID_FIELDS (over before it begins). */
  preserve(actor: Actor, act: ActRequest, asked: NewPreservationDto): Promise<PreservationDto> {
    const { operatorId } = actor;
    const { componentId, method, document } = asked;
    const [at, goodUntil] = [momentOf(asked.at), dayOf(asked.goodUntil)];
    refuseFuture(at, 'at', this.clock.now());
    if (dayToWire(goodUntil) < dayToWire(at))
      refuse({
        code: 'INVALID_FIELDS',
        fields: [
          {
            field: 'goodUntil',
            reason: 'It would have run out before it was done.',
            fix: 'Enter the last day it holds, from its document.',
          },
        ],
      });
    return this.record(actor, act, {
      ...{ componentId, kind: 'preserved', asked },
      write: async (tx, recordedSeq) => {
        const data = { componentId, at, method, goodUntil, document, recordedSeq };
        const row = await tx.preservation.create({ data: { operatorId, id: newId(), ...data } });
        const [newest] = await tx.preservation.findMany({ ...newestOf(operatorId, componentId), take: 1 });
        return preservationToWire(row, newest?.id === row.id, dayToWire(this.clock.now()));
      },
    });
  }

  /** Voids a tag. Refuses: NOT_FOUND, ALREADY_VOIDED. */
  voidTag(actor: Actor, act: ActRequest, id: string, reason: string): Promise<TagDto> {
    const { operatorId } = actor;
    return this.acts.perform(actor, act, async (tx) => {
      const where = { operatorId_id: { operatorId, id } };
      const { componentId } = orNotFound(await tx.serviceabilityTag.findUnique({ where }), 'tag');
      const number = await this.journal.number(tx);
      const { count } = await tx.serviceabilityTag.updateMany({
        where: { operatorId, id, voidedSeq: null },
        data: { voidedSeq: number, voidReason: reason },
      });
      if (count === 0) refuse({ code: 'ALREADY_VOIDED', what: 'the tag' });
      await this.told(tx, actor, act, { number, componentId, kind: 'tag-voided', body: { id, reason } });
      const body = tagToWire(await tx.serviceabilityTag.findUniqueOrThrow({ where }), false);
      return { status: 200, body, number, resource: `/api/components/${componentId}/serviceability` };
    });
  }

  /** Voids a preservation. Refuses: NOT_FOUND, ALREADY_VOIDED. */
  voidPreservation(actor: Actor, act: ActRequest, id: string, reason: string): Promise<PreservationDto> {
    const { operatorId } = actor;
    return this.acts.perform(actor, act, async (tx) => {
      const where = { operatorId_id: { operatorId, id } };
      const { componentId } = orNotFound(await tx.preservation.findUnique({ where }), 'preservation');
      const number = await this.journal.number(tx);
      const { count } = await tx.preservation.updateMany({
        where: { operatorId, id, voidedSeq: null },
        data: { voidedSeq: number, voidReason: reason },
      });
      if (count === 0) refuse({ code: 'ALREADY_VOIDED', what: 'the preservation' });
      await this.told(tx, actor, act, {
        number,
        componentId,
        kind: 'preservation-voided',
        body: { id, reason },
      });
      const row = await tx.preservation.findUniqueOrThrow({ where });
      const body = preservationToWire(row, false, dayToWire(this.clock.now()));
      return { status: 200, body, number, resource: `/api/components/${componentId}/serviceability` };
    });
  }

  private record<T extends { readonly id: string }>(
    actor: Actor,
    act: ActRequest,
    fact: NewKeeping<T>,
  ): Promise<T> {
    const { componentId, kind, asked, write } = fact;
    return this.acts.perform(actor, act, async (tx) => {
      await mustExist(tx, actor.operatorId, componentId);
      const number = await this.journal.number(tx);
      const body = await write(tx, number);
      const told = { id: body.id, ...(JSON.parse(JSON.stringify(asked)) as Readonly<Record<string, Json>>) };
      await this.told(tx, actor, act, { number, componentId, kind, body: told });
      return { status: 201, body, number, resource: `/api/components/${componentId}/serviceability` };
    });
  }

  private told(
    tx: Tx,
    actor: Actor,
    { key }: ActRequest,
    { number, componentId, kind, body }: ToldKeeping,
  ): Promise<void> {
    return this.journal.append(tx, actor, {
      number,
      stream: componentId,
      kind,
      body,
      about: [componentId],
      key,
    });
  }

  private async isNewest(
    tx: Tx,
    operatorId: number,
    row: { id: string; componentId: string },
  ): Promise<boolean> {
    const newest = await tx.serviceabilityTag.findFirst(newestOf(operatorId, row.componentId));
    return newest?.id === row.id;
  }

  private async kept(tx: Tx, operatorId: number, componentId: string) {
    const newestFirst = {
      where: { operatorId, componentId },
      orderBy: [{ at: 'desc' as const }, { recordedSeq: 'desc' as const }],
    };
    const tags = await tx.serviceabilityTag.findMany(newestFirst);
    const preservations = await tx.preservation.findMany(newestFirst);
    const tagNow = tags.find((row) => row.voidedSeq === null)?.id;
    const preservedNow = preservations.find((row) => row.voidedSeq === null)?.id;
    const today = dayToWire(this.clock.now());
    return {
      tags: tags.map((row) => tagToWire(row, row.id === tagNow)),
      preservations: preservations.map((row) => preservationToWire(row, row.id === preservedNow, today)),
    };
  }
}

interface NewKeeping<T> {
  readonly componentId: string;
  readonly kind: string;
  readonly asked: object;
  readonly write: (tx: Tx, number: bigint) => Promise<T>;
}

interface ToldKeeping {
  readonly number: bigint;
  readonly componentId: string;
  readonly kind: string;
  readonly body: Readonly<Record<string, Json>>;
}

/** The newest that counts: by when it was, then by when it was recorded. */
function newestOf(operatorId: number, componentId: string) {
  return {
    where: { operatorId, componentId, voidedSeq: null },
    orderBy: [{ at: 'desc' as const }, { recordedSeq: 'desc' as const }],
  };
}

/** Holds the component, so that of two tags at once the second sees the first. Refuses: NOT_FOUND. */
async function mustExist(tx: Tx, operatorId: number, componentId: string): Promise<void> {
  const [row] = await tx.$queryRaw<{ id: string }[]>`
    SELECT id FROM component WHERE operator_id = ${operatorId}::int AND id = ${componentId}::uuid FOR NO KEY UPDATE`;
  orNotFound(row, 'component', 'componentId');
}

async function openVisitOf(tx: Tx, operatorId: number, componentId: string): Promise<OpenVisitDto | null> {
  const visit = await tx.shopVisit.findFirst({
    where: { operatorId, componentId, voidedSeq: null, shopReturnByVisit: { none: { voidedSeq: null } } },
    select: { id: true, orderReference: true, sentAt: true, location: { select: { name: true } } },
  });
  if (visit === null) return null;
  const { id, orderReference, sentAt, location } = visit;
  return { id, orderReference, shop: location.name, sentAt: toWire(sentAt) };
}
