import { Injectable } from '@nestjs/common';
import type { Actor } from '../../platform/access/actor.js';
import { Database, type Tx } from '../../platform/database/database.js';
import { newId } from '../../platform/database/uuid.js';
import type { ActRequest } from '../../platform/http/act-key.js';
import { Acts } from '../../platform/http/acts.js';
import { toInstant, toWire } from '../../platform/http/instants.js';
import { orNotFound, refuse } from '../../platform/problems/refusal.error.js';
import { Clock } from '../../platform/time/clock.js';
import { type Before, Consequences } from '../../records/consequences/consequences.js';
import { DuePoints } from '../../records/due-points/due-points.js';
import { Journal } from '../../records/journal/journal.js';
import { refuseFutureBoundary } from '../../records/stays/future-boundary.js';
import { resolveMoment } from '../../records/stays/told-moment.js';
import { openingsToWire } from './facts.mapper.js';
import type { NewOpeningDto, OpeningDto, RecordedOpeningDto } from './opening.dto.js';
import { lockSubject, openingRatings, refuseOpening, type Subject } from './opening-rules.js';
import { toldBoundary, toldColumns } from './told-boundary.js';

/** Balances brought in from older records. */
@Injectable()
export class OpeningsService {
  constructor(
    private readonly database: Database,
    private readonly acts: Acts,
    private readonly journal: Journal,
    private readonly duePoints: DuePoints,
    private readonly consequences: Consequences,
    private readonly clock: Clock,
  ) {}

  /** The opening balances of an airframe, voided ones marked. Refuses: NOT_FOUND. */
  ofAirframe(actor: Actor, airframeId: string): Promise<OpeningDto[]> {
    const { operatorId } = actor;
    return this.database.inOperator(actor, async (tx) => {
      const where = { operatorId_id: { operatorId, id: airframeId } };
      orNotFound(await tx.airframe.findUnique({ where, select: { id: true } }), 'airframe');
      return readOpenings(tx, operatorId, { airframeId });
    });
  }

  /**
   * Records an opening balance, one row a rating, as one act; what falls due is computed again.
   * Refuses: INVALID_FIELDS, NOT_FOUND, IN_THE_FUTURE, BEFORE_MANUFACTURE, ALREADY_EXISTS (this basis has one: void it
   * first), REFUSED_BY_FACTS (a stay or flight before it would be counted twice, or more since overhaul than since new).
   */
  add(actor: Actor, act: ActRequest, asked: NewOpeningDto): Promise<RecordedOpeningDto> {
    const { operatorId } = actor;
    const subject = subjectOf(asked);
    const boundary = toldBoundary({
      ...{ at: asked.at, boundary: asked.boundary },
      ...{ field: 'at', boundaryField: 'boundary' },
    });
    const trace = traceOf(asked);
    return this.acts.perform(actor, act, async (tx) => {
      await lockSubject(tx, operatorId, subject);
      const now = this.clock.now();
      const whose = asked.boundary?.airframeId ?? subject.airframeId;
      const moment = await resolveMoment(
        tx,
        operatorId,
        boundary,
        { componentId: subject.componentId, airframeId: whose, now },
        'boundary',
      );
      const { at } = moment;
      refuseFutureBoundary(boundary, toInstant(at), now, 'at');
      const before = await this.before(tx, operatorId, subject);
      await refuseOpening(tx, operatorId, { subject, at, asked });
      const ratings = await openingRatings(tx, operatorId, { subject, asked });
      const number = await this.journal.number(tx);
      const rows = asked.rows.map((row, index) => ({
        id: newId(),
        ratingId: ratings[index] ?? null,
        minutes: row.minutes ?? null,
        cycles: row.cycles ?? null,
        cycleDenominator: row.cycleDenominator ?? 1,
      }));
      const { basis, source } = asked;
      await tx.opening.createMany({
        data: rows.map((row) => ({
          ...{ operatorId, ...subject, ...toldColumns(moment), basis, source, ...trace },
          ...{ recordedSeq: number, ...row },
        })),
      });
      await this.dueAgain(tx, operatorId, subject);
      const body = {
        ...subject,
        at: toWire(at),
        ...(moment.kind === 'instant' ? {} : { atTold: { kind: moment.kind, text: moment.text } }),
        ...{ basis, source, ...trace },
        rows: rows.map((row, index) => ({ ...row, ratingCode: asked.rows[index]?.ratingCode ?? null })),
      };
      await this.journal.append(tx, actor, {
        number,
        stream: idOf(subject),
        kind: 'opening-recorded',
        body,
        about: [idOf(subject)],
        key: act.key,
      });
      const written = (await readOpenings(tx, operatorId, subject)).find((opening) =>
        opening.rows.some((row) => row.id === rows[0]?.id),
      );
      return {
        status: 201,
        body: {
          ...orNotFound(written, 'opening balance'),
          consequences: await this.consequences.since(tx, operatorId, before),
        },
        number,
        resource: `/api/openings/${written?.id ?? ''}`,
      };
    });
  }

  /** Voids an opening balance, all its rows, with the reason. Refuses: NOT_FOUND, ALREADY_VOIDED. */
  void(
    actor: Actor,
    act: ActRequest,
    { id, reason }: { readonly id: string; readonly reason: string },
  ): Promise<RecordedOpeningDto> {
    const { operatorId } = actor;
    return this.acts.perform(actor, act, async (tx) => {
      const found = orNotFound(
        await tx.opening.findUnique({ where: { operatorId_id: { operatorId, id } } }),
        'opening balance',
      );
      const { componentId, airframeId, basis, recordedSeq } = found;
      const subject: Subject = { componentId, airframeId };
      await lockSubject(tx, operatorId, subject);
      const before = await this.before(tx, operatorId, subject);
      const number = await this.journal.number(tx);
      const { count } = await tx.opening.updateMany({
        where: { operatorId, ...subject, basis, recordedSeq, voidedSeq: null },
        data: { voidedSeq: number, voidReason: reason },
      });
      if (count === 0) refuse({ code: 'ALREADY_VOIDED', what: 'the opening balance' });
      await this.dueAgain(tx, operatorId, subject);
      const stream = idOf(subject);
      await this.journal.append(tx, actor, {
        number,
        stream,
        kind: 'opening-voided',
        body: { id, basis, reason },
        about: [stream],
        key: act.key,
      });
      const voided = (await readOpenings(tx, operatorId, subject)).find((opening) =>
        opening.rows.some((row) => row.id === id),
      );
      return {
        status: 200,
        body: {
          ...orNotFound(voided, 'opening balance'),
          consequences: await this.consequences.since(tx, operatorId, before),
        },
        number,
        resource: `/api/openings/${id}`,
      };
    });
  }

  private before(tx: Tx, operatorId: number, { componentId, airframeId }: Subject): Promise<Before> {
    return componentId === null
      ? this.consequences.beforeOnAirframes(tx, operatorId, airframeId === null ? [] : [airframeId], true)
      : this.consequences.beforeOfComponents(tx, operatorId, [componentId], { from: null });
  }

  private async dueAgain(tx: Tx, operatorId: number, { componentId, airframeId }: Subject): Promise<void> {
    await this.duePoints.rebuild(
      tx,
      operatorId,
      componentId === null ? [] : [componentId],
      airframeId === null ? [] : [airframeId],
    );
  }
}

/** The opening balances of a component or an airframe, the latest first. */
export async function readOpenings(
  tx: Tx,
  operatorId: number,
  subject: Partial<Subject>,
): Promise<OpeningDto[]> {
  const rows = await tx.opening.findMany({
    where: { operatorId, ...subject },
    include: { rating: { select: { code: true } } },
    orderBy: [{ recordedSeq: 'desc' }, { rating: { code: 'asc' } }],
  });
  return openingsToWire(rows);
}

function subjectOf({ componentId, airframeId, basis, rows }: NewOpeningDto): Subject {
  const fields = [
    ...((componentId === undefined) === (airframeId === undefined)
      ? [
          {
            field: 'componentId',
            reason: 'An opening balance is of one component or of one airframe.',
            fix: 'Name one of the two.',
          },
        ]
      : []),
    ...(airframeId !== undefined && basis !== 'new'
      ? [{ field: 'basis', reason: 'An airframe counts since new.', fix: "Choose 'new'." }]
      : []),
    ...(airframeId !== undefined &&
    (rows.length > 1 || rows.some((row) => row.ratingCode != null || (row.cycleDenominator ?? 1) !== 1))
      ? [
          {
            field: 'rows',
            reason: 'An airframe has no ratings, and counts whole flights.',
            fix: 'Send one row, without a rating.',
          },
        ]
      : []),
    ...rows.flatMap(({ ratingCode }, index) =>
      rows.findIndex((row) => (row.ratingCode ?? null) === (ratingCode ?? null)) === index
        ? []
        : [
            {
              field: `rows[${index}].ratingCode`,
              reason: 'This rating has a row already.',
              fix: 'Put what was used at one rating into one row.',
            },
          ],
    ),
  ];
  if (fields.length > 0) refuse({ code: 'INVALID_FIELDS', fields });
  return { componentId: componentId ?? null, airframeId: airframeId ?? null };
}

/** How well it is shown. Refuses: INVALID_FIELDS (nothing says who states it, or what is missing). */
function traceOf({ trace = 'shown', traceNote = null }: NewOpeningDto) {
  if (trace !== 'shown' && traceNote === null)
    refuse({
      code: 'INVALID_FIELDS',
      fields: [
        trace === 'stated'
          ? { field: 'traceNote', reason: 'Who states it is not told.', fix: 'Name the statement.' }
          : { field: 'traceNote', reason: 'What is missing is not told.', fix: 'Tell what is missing.' },
      ],
    });
  return { trace, traceNote: trace === 'shown' ? null : traceNote };
}

function idOf({ componentId, airframeId }: Subject): string {
  return componentId ?? airframeId ?? '';
}
