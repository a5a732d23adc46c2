import { Injectable } from '@nestjs/common';
import type { GapKind, LogGap } from '@strutbook/domain/release/log-gaps.js';
import type { Actor } from '../../platform/access/actor.js';
import type { Tx } from '../../platform/database/database.js';
import { newId } from '../../platform/database/uuid.js';
import type { ActRequest } from '../../platform/http/act-key.js';
import { Acts } from '../../platform/http/acts.js';
import { orNotFound, refuse } from '../../platform/problems/refusal.error.js';
import { Journal } from '../../records/journal/journal.js';
import { lockForStays } from '../../records/stays/stay-facts.js';
import { gapNoteToWire, gapsBefore, type LegRow } from './flight-gaps.js';
import type { GapNoteDto, NewGapNoteDto } from './gap-note.dto.js';

/** Why gaps in the log hide no flight, each as one act. Until then, or until the flight is entered, they block releases. */
@Injectable()
export class GapNotesService {
  constructor(
    private readonly acts: Acts,
    private readonly journal: Journal,
  ) {}

  /**
   * Explains a gap before a flight, as it stands under the lock of the airframe's head.
   * Refuses: NOT_FOUND, ALREADY_VOIDED (the flight), REFUSED_BY_FACTS (no such gap), ALREADY_EXISTS.
   */
  add(actor: Actor, act: ActRequest, flightId: string, { kind, note }: NewGapNoteDto): Promise<GapNoteDto> {
    const { operatorId } = actor;
    return this.acts.perform(actor, act, async (tx) => {
      const flight = await lockFlight(tx, operatorId, flightId);
      if (flight.voidedSeq !== null)
        refuse({ code: 'ALREADY_VOIDED', what: `the flight of log page ${flight.logPage}` });
      const gap = gapOf(flight, kind, await gapsBefore(tx, operatorId, [flight]));
      await refuseSecond(tx, operatorId, gap);
      const { before, after } = gap;
      const number = await this.journal.number(tx);
      const row = await tx.gapNote.create({
        data: { operatorId, id: newId(), flightId, kind, before, after, note, recordedSeq: number },
      });
      const body = { id: row.id, flightId, logPage: flight.logPage, gap: kind, before, after, note };
      await this.journal.append(tx, actor, {
        ...{ number, stream: flight.airframeId, kind: 'gap-note-recorded', body },
        ...{ about: [flight.airframeId, flightId], key: act.key },
      });
      return { status: 201, body: gapNoteToWire(row), number, resource: `/api/gap-notes/${row.id}` };
    });
  }

  /** Voids a note with its reason; the gap blocks again. Refuses: NOT_FOUND, ALREADY_VOIDED. */
  void(
    actor: Actor,
    act: ActRequest,
    { id, reason }: { readonly id: string; readonly reason: string },
  ): Promise<GapNoteDto> {
    const { operatorId } = actor;
    return this.acts.perform(actor, act, async (tx) => {
      const where = { operatorId_id: { operatorId, id } };
      const { flightId } = orNotFound(await tx.gapNote.findUnique({ where }), 'note');
      const { airframeId, logPage } = await lockFlight(tx, operatorId, flightId);
      const number = await this.journal.number(tx);
      const { count } = await tx.gapNote.updateMany({
        where: { operatorId, id, voidedSeq: null },
        data: { voidedSeq: number, voidReason: reason },
      });
      if (count === 0) refuse({ code: 'ALREADY_VOIDED', what: `the note at log page ${logPage}` });
      await this.journal.append(tx, actor, {
        ...{ number, stream: airframeId, kind: 'gap-note-voided', body: { id, flightId, logPage, reason } },
        ...{ about: [airframeId, flightId], key: act.key },
      });
      const row = await tx.gapNote.findUniqueOrThrow({ where });
      return { status: 200, body: gapNoteToWire(row), number, resource: `/api/gap-notes/${id}` };
    });
  }
}

/** The flight under the lock of its airframe's head, under which no other comes or goes. Refuses: NOT_FOUND. */
async function lockFlight(tx: Tx, operatorId: number, id: string): Promise<LegRow> {
  const where = { operatorId_id: { operatorId, id } };
  const { airframeId } = orNotFound(
    await tx.flight.findUnique({ where, select: { airframeId: true } }),
    'flight',
  );
  await lockForStays(tx, operatorId, { airframeIds: [airframeId], componentIds: [] });
  return tx.flight.findUniqueOrThrow({ where });
}

function gapOf({ logPage }: LegRow, kind: GapKind, gaps: readonly LogGap[]): LogGap {
  const gap = gaps.find((one) => one.kind === kind);
  if (gap !== undefined) return gap;
  const [follows, other] =
    kind === 'pages'
      ? ['its page follows the page of the flight before', 'stations']
      : ['it left from where the flight before arrived', 'pages'];
  return refuse({
    code: 'REFUSED_BY_FACTS',
    field: 'kind',
    reason: `There is no gap in the ${kind} before log page ${logPage}: ${follows}, or nothing tells otherwise.`,
    fix: gaps.some((one) => one.kind === other)
      ? `Choose "${other}": there the log has a gap.`
      : 'Nothing needs explaining here; choose the flight after the gap.',
  });
}

async function refuseSecond(tx: Tx, operatorId: number, gap: LogGap): Promise<void> {
  const { flightId, kind, before, after } = gap;
  const there = await tx.gapNote.findFirst({ where: { operatorId, flightId, kind, voidedSeq: null } });
  if (there === null) return;
  const isSame = there.before === before && there.after === after;
  refuse({
    code: 'ALREADY_EXISTS',
    field: 'kind',
    what: isSame
      ? `a note that explains this gap ("${there.note}"); to word it otherwise, void it first`
      : `a note on another gap there (${there.before} to ${there.after}: "${there.note}"); void it first`,
  });
}
