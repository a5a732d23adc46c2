import { Injectable } from '@nestjs/common';
import type { Actor } from '../../platform/access/actor.js';
import { Database, type Tx } from '../../platform/database/database.js';
import { newId } from '../../platform/database/uuid.js';
import type { ActRequest } from '../../platform/http/act-key.js';
import { toWire } from '../../platform/http/instants.js';
import { orNotFound, refuse } from '../../platform/problems/refusal.error.js';
import type { ToldMoment } from '../../records/stays/told-moment.js';
import type {
  ComponentFactsDto,
  NewGapAcceptanceDto,
  NewRatingChangeDto,
  NewResetDto,
  NewTraceGapDto,
  RecordedGapAcceptanceDto,
  RecordedRatingChangeDto,
  RecordedResetDto,
  RecordedTraceGapDto,
} from './component-facts.dto.js';
import { FactRecords, type MomentTold } from './fact-records.js';
import { gapAcceptanceToWire, ratingChangeToWire, resetToWire, traceGapToWire } from './facts.mapper.js';
import { refuseMoment } from './moment.js';
import { readOpenings } from './openings.service.js';
import { type AskedMoment, toldBoundary, toldColumns } from './told-boundary.js';

/** What happened to a component beside its places: gaps in its records, their acceptance, resets, ratings. */
@Injectable()
export class ComponentFactsService {
  constructor(
    private readonly database: Database,
    private readonly records: FactRecords,
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

  /** Records a gap: the component's life is no longer substantiated. Refuses: NOT_FOUND, INVALID_FIELDS, IN_THE_FUTURE, NO_SUCH_LOG_PAGE. */
  addGap(
    actor: Actor,
    act: ActRequest,
    { componentId, from, fromBoundary, to, toBoundary, note }: NewTraceGapDto,
  ): Promise<RecordedTraceGapDto> {
    const { operatorId } = actor;
    const begins = told({ at: from, boundary: fromBoundary, field: 'from', boundaryField: 'fromBoundary' });
    const ends = told({ at: to, boundary: toBoundary, field: 'to', boundaryField: 'toBoundary' });
    return this.records.record(actor, act, {
      ...{ componentId, kind: 'trace-gap-recorded', moments: [begins, ends], body: { note } },
      write: async (tx, _, { number, moments }) => {
        const [first, last] = [momentAt(moments, 0), momentAt(moments, 1)];
        if (last.at <= first.at)
          refuse({
            code: 'INVALID_FIELDS',
            fields: [
              {
                field: 'to',
                reason: 'The gap ends before it begins.',
                fix: 'Enter an end after its beginning.',
              },
            ],
          });
        return traceGapToWire(
          await tx.traceGap.create({
            data: {
              ...{ operatorId, id: newId(), componentId, note, recordedSeq: number },
              ...{ fromAt: first.at, fromKind: first.kind, fromText: first.text },
              ...{ toAt: last.at, toKind: last.kind, toText: last.text },
              airframeId: first.airframeId ?? last.airframeId,
            },
          }),
        );
      },
    });
  }

  /** Records that somebody accepted the worst case. Refuses: NOT_FOUND, INVALID_FIELDS, ALREADY_EXISTS (the gap has one). */
  acceptGap(actor: Actor, act: ActRequest, asked: NewGapAcceptanceDto): Promise<RecordedGapAcceptanceDto> {
    const { operatorId } = actor;
    const { componentId, acceptedBy, reference } = asked;
    const accepted = {
      traceGapId: asked.traceGapId ?? null,
      openingId: asked.openingId ?? null,
      acceptedBy,
      reference,
      cycles: asked.cycles ?? null,
      minutes: asked.minutes ?? null,
    };
    return this.records.record(actor, act, {
      ...{ componentId, kind: 'gap-accepted', moments: [], body: accepted },
      write: async (tx, _, { number }) => {
        await refuseAcceptance(tx, operatorId, { componentId, ...accepted });
        return gapAcceptanceToWire(
          await tx.gapAcceptance.create({
            data: { operatorId, id: newId(), componentId, ...accepted, recordedSeq: number },
          }),
        );
      },
    });
  }

  /** Records an overhaul, shop visit or repair. Refuses: NOT_FOUND, IN_THE_FUTURE, BEFORE_OPENING, INSIDE_A_FLIGHT, NO_SUCH_LOG_PAGE, ALREADY_EXISTS. */
  addReset(
    actor: Actor,
    act: ActRequest,
    { componentId, kind, at: text, boundary, evidence }: NewResetDto,
  ): Promise<RecordedResetDto> {
    const { operatorId } = actor;
    return this.records.record(actor, act, {
      ...{ componentId, kind: `${kind}-recorded`, body: { evidence } },
      moments: [told({ at: text, boundary, field: 'at', boundaryField: 'boundary' })],
      write: async (tx, component, { number, moments }) => {
        const moment = momentAt(moments, 0);
        const { at } = moment;
        await refuseMoment(tx, operatorId, component, at);
        const same = await tx.reset.findFirst({
          where: { operatorId, componentId, kind, at, voidedSeq: null },
          select: { id: true },
        });
        if (same !== null)
          refuse({
            ...{ code: 'ALREADY_EXISTS', what: `a record of this ${kind} at`, field: 'at' },
            value: toWire(at),
          });
        return resetToWire(
          await tx.reset.create({
            data: {
              ...{ operatorId, id: newId(), componentId, kind, evidence, recordedSeq: number },
              ...toldColumns(moment),
            },
          }),
        );
      },
    });
  }

  /** Records from when an engine runs at a rating. Refuses as addReset does, and REFUSED_BY_FACTS for what is no engine. */
  changeRating(
    actor: Actor,
    act: ActRequest,
    { componentId, at: text, boundary, ratingCode, source }: NewRatingChangeDto,
  ): Promise<RecordedRatingChangeDto> {
    const { operatorId } = actor;
    return this.records.record(actor, act, {
      ...{ componentId, kind: 'rating-changed', body: { ratingCode, source } },
      moments: [told({ at: text, boundary, field: 'at', boundaryField: 'boundary' })],
      write: async (tx, component, { number, moments }) => {
        const moment = momentAt(moments, 0);
        const { at } = moment;
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
          refuse({
            ...{ code: 'ALREADY_EXISTS', what: 'a change of its rating at', field: 'at' },
            value: toWire(at),
          });
        const row = await tx.ratingChange.create({
          data: {
            ...{ operatorId, id: newId(), componentId, ratingId: rating.id, source, recordedSeq: number },
            ...toldColumns(moment),
          },
        });
        return ratingChangeToWire({ ...row, rating });
      },
    });
  }
}

function told(asked: AskedMoment): MomentTold {
  const { boundary, field } = asked;
  return { boundary: toldBoundary(asked), airframeId: boundary?.airframeId ?? null, field };
}

function momentAt(moments: readonly ToldMoment[], index: number): ToldMoment {
  const moment = moments[index];
  if (moment === undefined) throw new Error('a fact without its moment');
  return moment;
}

/** Refuses an acceptance of what is no gap of the component, and a second one for the same. */
async function refuseAcceptance(
  tx: Tx,
  operatorId: number,
  {
    componentId,
    traceGapId,
    openingId,
  }: { componentId: string; traceGapId: string | null; openingId: string | null },
): Promise<void> {
  const own = { operatorId, componentId, voidedSeq: null };
  if (traceGapId !== null && openingId !== null)
    refuse({
      code: 'INVALID_FIELDS',
      fields: [
        {
          field: 'openingId',
          reason: 'An acceptance is for one gap or one opening balance.',
          fix: 'Name one of the two.',
        },
      ],
    });
  if (traceGapId !== null) {
    const gap = await tx.traceGap.findFirst({ where: { ...own, id: traceGapId }, select: { id: true } });
    orNotFound(gap, 'gap of this component', 'traceGapId');
  }
  if (openingId !== null) {
    const opening = await tx.opening.findFirst({
      where: { ...own, id: openingId, trace: 'not-shown' },
      select: { id: true },
    });
    orNotFound(opening, 'opening balance of this component whose trace is not shown', 'openingId');
  }
  const same = await tx.gapAcceptance.findFirst({ where: { ...own, traceGapId, openingId } });
  if (same !== null)
    refuse({
      code: 'ALREADY_EXISTS',
      what: `an acceptance for it by ${same.acceptedBy} (${same.reference}); it must be voided first`,
      field: openingId === null ? 'traceGapId' : 'openingId',
    });
}
