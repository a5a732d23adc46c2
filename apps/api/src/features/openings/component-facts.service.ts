import { Injectable } from '@nestjs/common';
import type { Json } from '@strutbook/journal/canonical.js';
import type { Actor } from '../../platform/access/actor.js';
import { Database, type Tx } from '../../platform/database/database.js';
import { newId } from '../../platform/database/uuid.js';
import type { ActRequest } from '../../platform/http/act-key.js';
import { Acts } from '../../platform/http/acts.js';
import { momentOf } from '../../platform/http/instants.js';
import { orNotFound, refuse } from '../../platform/problems/refusal.error.js';
import { Clock } from '../../platform/time/clock.js';
import { refuseFuture } from '../../platform/time/refuse-future.js';
import { Projections } from '../../records/due-points/projections.js';
import { Journal } from '../../records/journal/journal.js';
import type {
  ComponentFactsDto,
  GapAcceptanceDto,
  NewGapAcceptanceDto,
  NewRatingChangeDto,
  NewResetDto,
  NewTraceGapDto,
  RatingChangeDto,
  ResetDto,
  TraceGapDto,
} from './component-facts.dto.js';
import { gapAcceptanceToWire, ratingChangeToWire, resetToWire, traceGapToWire } from './facts.mapper.js';
import { type LockedComponent, lockComponent, refuseMoment } from './moment.js';
import { readOpenings } from './openings.service.js';

interface NewFact<T> {
  readonly componentId: string;
  readonly kind: string;
  readonly at: Date;
  readonly body: Readonly<Record<string, Json>>;
  /** Checks and writes the fact under the act's number. */
  readonly write: (tx: Tx, component: LockedComponent, number: bigint) => Promise<T>;
}

/** What happened to a component beside its places: gaps in its records, their acceptance, resets, ratings. */
@Injectable()
export class ComponentFactsService {
  constructor(
    private readonly database: Database,
    private readonly acts: Acts,
    private readonly journal: Journal,
    private readonly projections: Projections,
    private readonly clock: Clock,
  ) {}

  /** All such facts of a component, the latest first, voided ones marked. Refuses: NOT_FOUND. */
  of(actor: Actor, componentId: string): Promise<ComponentFactsDto> {
    const { operatorId } = actor;
    return this.database.inOperator(actor, async (tx) => {
      orNotFound(
        await tx.component.findUnique({
          where: { operatorId_id: { operatorId, id: componentId } },
          select: { id: true },
        }),
        'component',
      );
      const newestFirst = { where: { operatorId, componentId }, orderBy: { recordedSeq: 'desc' } } as const;
      return {
        openings: await readOpenings(tx, operatorId, { componentId }),
        traceGaps: (await tx.traceGap.findMany(newestFirst)).map(traceGapToWire),
        gapAcceptances: (await tx.gapAcceptance.findMany(newestFirst)).map(gapAcceptanceToWire),
        resets: (await tx.reset.findMany(newestFirst)).map(resetToWire),
        ratingChanges: (await tx.ratingChange.findMany({ ...newestFirst, include: { rating: true } })).map(
          ratingChangeToWire,
        ),
      };
    });
  }

  /** Records a gap: the component's life is no longer substantiated. Refuses: NOT_FOUND, INVALID_FIELDS, IN_THE_FUTURE. */
  addGap(
    actor: Actor,
    act: ActRequest,
    { componentId, from, to, note }: NewTraceGapDto,
  ): Promise<TraceGapDto> {
    const { operatorId } = actor;
    const [fromAt, toAt] = [momentOf(from), momentOf(to)];
    refuseFuture(toAt, 'to', this.clock.now());
    if (toAt <= fromAt)
      refuse({
        code: 'INVALID_FIELDS',
        fields: [
          { field: 'to', reason: 'The gap ends before it begins.', fix: 'Enter an end after its beginning.' },
        ],
      });
    return this.record(actor, act, {
      ...{ componentId, kind: 'trace-gap-recorded', at: toAt, body: { from, to, note } },
      write: async (tx, _, recordedSeq) =>
        traceGapToWire(
          await tx.traceGap.create({
            data: { operatorId, id: newId(), componentId, fromAt, toAt, note, recordedSeq },
          }),
        ),
    });
  }

  /** Records that somebody accepted the worst case. Refuses: NOT_FOUND, ALREADY_EXISTS (the gap has one). */
  acceptGap(actor: Actor, act: ActRequest, asked: NewGapAcceptanceDto): Promise<GapAcceptanceDto> {
    const { operatorId } = actor;
    const { componentId, acceptedBy, reference } = asked;
    const accepted = {
      traceGapId: asked.traceGapId ?? null,
      acceptedBy,
      reference,
      cycles: asked.cycles ?? null,
      minutes: asked.minutes ?? null,
    };
    return this.record(actor, act, {
      ...{ componentId, kind: 'gap-accepted', at: this.clock.now(), body: accepted },
      write: async (tx, _, recordedSeq) => {
        const { traceGapId } = accepted;
        if (traceGapId !== null) {
          const gap = await tx.traceGap.findFirst({
            where: { operatorId, id: traceGapId, componentId, voidedSeq: null },
            select: { id: true },
          });
          orNotFound(gap, 'gap of this component', 'traceGapId');
        }
        const same = await tx.gapAcceptance.findFirst({
          where: { operatorId, componentId, traceGapId, voidedSeq: null },
        });
        if (same !== null)
          refuse({
            code: 'ALREADY_EXISTS',
            what: `an acceptance for it by ${same.acceptedBy} (${same.reference}); it must be voided first`,
            field: 'traceGapId',
          });
        return gapAcceptanceToWire(
          await tx.gapAcceptance.create({
            data: { operatorId, id: newId(), componentId, ...accepted, recordedSeq },
          }),
        );
      },
    });
  }

  /** Records an overhaul or shop visit. Refuses: NOT_FOUND, IN_THE_FUTURE, BEFORE_OPENING, INSIDE_A_FLIGHT, ALREADY_EXISTS. */
  addReset(
    actor: Actor,
    act: ActRequest,
    { componentId, kind, at: text, evidence }: NewResetDto,
  ): Promise<ResetDto> {
    const { operatorId } = actor;
    const at = momentOf(text);
    refuseFuture(at, 'at', this.clock.now());
    return this.record(actor, act, {
      ...{ componentId, kind: `${kind}-recorded`, at, body: { at: text, evidence } },
      write: async (tx, component, recordedSeq) => {
        await refuseMoment(tx, operatorId, component, at);
        const same = await tx.reset.findFirst({
          where: { operatorId, componentId, kind, at, voidedSeq: null },
          select: { id: true },
        });
        if (same !== null)
          refuse({ code: 'ALREADY_EXISTS', what: `a record of this ${kind} at`, field: 'at', value: text });
        return resetToWire(
          await tx.reset.create({
            data: { operatorId, id: newId(), componentId, kind, at, evidence, recordedSeq },
          }),
        );
      },
    });
  }

  /** Records from when an engine runs at a rating. Refuses as addReset does, and REFUSED_BY_FACTS for what is no engine. */
  changeRating(
    actor: Actor,
    act: ActRequest,
    { componentId, at: text, ratingCode, source }: NewRatingChangeDto,
  ): Promise<RatingChangeDto> {
    const { operatorId } = actor;
    const at = momentOf(text);
    refuseFuture(at, 'at', this.clock.now());
    return this.record(actor, act, {
      ...{ componentId, kind: 'rating-changed', at, body: { at: text, ratingCode, source } },
      write: async (tx, component, recordedSeq) => {
        const { kind, engineModelId } = component;
        if (kind !== 'engine' || engineModelId === null)
          refuse({
            code: 'REFUSED_BY_FACTS',
            field: 'componentId',
            reason: 'Only an engine runs at a rating.',
            fix: 'Choose the engine.',
          });
        await refuseMoment(tx, operatorId, component, at);
        const rating = orNotFound(
          await tx.rating.findFirst({ where: { operatorId, engineModelId, code: ratingCode } }),
          'rating of this model',
          'ratingCode',
        );
        const same = await tx.ratingChange.findFirst({
          where: { operatorId, componentId, at, voidedSeq: null },
          select: { id: true },
        });
        if (same !== null)
          refuse({ code: 'ALREADY_EXISTS', what: 'a change of its rating at', field: 'at', value: text });
        const row = await tx.ratingChange.create({
          data: { operatorId, id: newId(), componentId, ratingId: rating.id, at, source, recordedSeq },
        });
        return ratingChangeToWire({ ...row, rating });
      },
    });
  }

  private record<T extends { readonly id: string }>(
    actor: Actor,
    act: ActRequest,
    { componentId, kind, at, body, write }: NewFact<T>,
  ): Promise<T> {
    const { operatorId } = actor;
    return this.acts.perform(actor, act, async (tx) => {
      const component = await lockComponent(tx, operatorId, componentId, at);
      const number = await this.journal.number(tx);
      const fact = await write(tx, component, number);
      await this.projections.ofComponents(tx, operatorId, [componentId]);
      await this.journal.append(tx, actor, {
        number,
        stream: componentId,
        kind,
        body: { id: fact.id, ...body },
        about: [componentId],
        key: act.key,
      });
      return { status: 201, body: fact, number, resource: `/api/components/${componentId}/facts` };
    });
  }
}
