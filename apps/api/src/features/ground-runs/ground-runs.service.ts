import { Injectable } from '@nestjs/common';
import { type GroundRun, groundRunCounts, planGroundRun } from '@strutbook/domain/runs/ground-run.js';
import type { Actor } from '../../platform/access/actor.js';
import { Database, type Tx } from '../../platform/database/database.js';
import { newId } from '../../platform/database/uuid.js';
import type { ActRequest } from '../../platform/http/act-key.js';
import { Acts } from '../../platform/http/acts.js';
import { momentOf, toInstant, toWire } from '../../platform/http/instants.js';
import { orNotFound, orRefuse, refuse } from '../../platform/problems/refusal.error.js';
import { Clock } from '../../platform/time/clock.js';
import { refuseFuture } from '../../platform/time/refuse-future.js';
import { type Before, Consequences } from '../../records/consequences/consequences.js';
import { componentsSeenBy, isBeforeMarks, postRun } from '../../records/counting/post-run.js';
import { DuePoints } from '../../records/due-points/due-points.js';
import { Journal } from '../../records/journal/journal.js';
import { lockRunning } from '../../records/usage/lock-running.js';
import type {
  GroundRunAnswerDto,
  GroundRunsPageDto,
  GroundRunsQueryDto,
  NewCellRunDto,
  NewGroundRunDto,
} from './ground-run.dto.js';
import { pageOfRuns, runsToWire } from './runs-of-carrier.js';

/** Where a run goes: the clock of a position or of a test cell. */
interface RunPlace {
  readonly carrierId: string;
  readonly airframeId: string | null;
}

/** Engines that ran on the ground or in a test cell. */
@Injectable()
export class GroundRunsService {
  constructor(
    private readonly database: Database,
    private readonly acts: Acts,
    private readonly journal: Journal,
    private readonly duePoints: DuePoints,
    private readonly consequences: Consequences,
    private readonly clock: Clock,
  ) {}

  /** Runs of an airframe's engines on the ground. Refuses: NOT_FOUND, INVALID_FIELDS. */
  ofAirframe(actor: Actor, airframeId: string, query: GroundRunsQueryDto): Promise<GroundRunsPageDto> {
    const { operatorId } = actor;
    return this.database.inOperator(actor, async (tx) => {
      const where = { operatorId_id: { operatorId, id: airframeId } };
      orNotFound(await tx.airframe.findUnique({ where, select: { id: true } }), 'airframe');
      return pageOfRuns(tx, operatorId, { airframeId }, query);
    });
  }

  /** Runs in a test cell. Refuses: NOT_FOUND, INVALID_FIELDS. */
  inCell(actor: Actor, cellId: string, query: GroundRunsQueryDto): Promise<GroundRunsPageDto> {
    const { operatorId } = actor;
    return this.database.inOperator(actor, async (tx) => {
      await requireCell(tx, operatorId, cellId);
      return pageOfRuns(tx, operatorId, { carrierId: cellId }, query);
    });
  }

  /**
   * Records a run at a position. Refuses: NOT_FOUND, IN_THE_FUTURE, as planGroundRun does, and REFUSED_BY_FACTS when
   * no engine was there for all of it, the airframe flew, or another run was under way there.
   */
  atPosition(
    actor: Actor,
    act: ActRequest,
    airframeId: string,
    { positionNumber, ...asked }: NewGroundRunDto,
  ): Promise<GroundRunAnswerDto> {
    const { operatorId } = actor;
    return this.record(actor, act, asked, async (tx) => {
      const where = { operatorId_id: { operatorId, id: airframeId } };
      orNotFound(await tx.airframe.findUnique({ where, select: { id: true } }), 'airframe');
      const position = await tx.position.findFirst({
        where: { operatorId, airframeId, number: positionNumber, kind: 'engine' },
        select: { id: true },
      });
      const found = orNotFound(position, 'engine position on this airframe', 'positionNumber');
      return { carrierId: found.id, airframeId };
    });
  }

  /** Records a run in a test cell. Refuses as `atPosition` does. */
  ofCell(actor: Actor, act: ActRequest, cellId: string, asked: NewCellRunDto): Promise<GroundRunAnswerDto> {
    return this.record(actor, act, asked, async (tx) => {
      await requireCell(tx, actor.operatorId, cellId);
      return { carrierId: cellId, airframeId: null };
    });
  }

  /** Voids a run: what it counted goes from every counter, its row stays. Refuses: NOT_FOUND, ALREADY_VOIDED. */
  void(actor: Actor, act: ActRequest, id: string, reason: string): Promise<GroundRunAnswerDto> {
    const { operatorId } = actor;
    return this.acts.perform(actor, act, async (tx) => {
      const where = { operatorId_id: { operatorId, id } };
      const place = orNotFound(
        await tx.groundRun.findUnique({ where, select: { carrierId: true, airframeId: true } }),
        'run',
      );
      await lockRunning(tx, operatorId, [], [place.airframeId ?? place.carrierId]);
      // Read again: whoever held the lock may have voided it.
      const row = await tx.groundRun.findUniqueOrThrow({ where });
      if (row.voidedSeq !== null) refuse({ code: 'ALREADY_VOIDED', what: 'the run' });
      const before = await this.before(tx, operatorId, { ...place, endedAt: row.endedAt });
      const number = await this.journal.number(tx);
      await tx.groundRun.updateMany({
        where: { operatorId, id, voidedSeq: null },
        data: { voidedSeq: number, voidReason: reason },
      });
      await postRun(tx, operatorId, {
        ...place,
        endedAt: row.endedAt,
        counts: groundRunCounts(row),
        sign: -1,
      });
      const body = await this.answer(tx, operatorId, { id, place, endedAt: row.endedAt, before });
      await this.journal.append(tx, actor, {
        number,
        stream: place.airframeId ?? place.carrierId,
        kind: 'ground-run-voided',
        body: { runId: id, startedAt: toWire(row.startedAt), endedAt: toWire(row.endedAt), reason },
        about: [place.carrierId, id],
        key: act.key,
      });
      return { status: 200, body, number, resource: `/api/ground-runs/${id}` };
    });
  }

  private record(
    actor: Actor,
    act: ActRequest,
    asked: NewCellRunDto,
    find: (tx: Tx) => Promise<RunPlace>,
  ): Promise<GroundRunAnswerDto> {
    const { operatorId } = actor;
    const [startedAt, endedAt] = [momentOf(asked.startedAt), momentOf(asked.endedAt)];
    const run = orRefuse(planGroundRun(runOf(asked, startedAt, endedAt)));
    refuseFuture(endedAt, 'endedAt', this.clock.now());
    return this.acts.perform(actor, act, async (tx) => {
      const place = await find(tx);
      await lockRunning(tx, operatorId, [], [place.airframeId ?? place.carrierId]);
      const before = await this.before(tx, operatorId, { ...place, endedAt });
      const number = await this.journal.number(tx);
      const id = newId();
      const { purpose, source } = asked;
      const { runMinutes, countedMinutes, starts, abortedTakeOffs } = run;
      const told = { runMinutes, countedMinutes, starts, abortedTakeOffs, purpose, source };
      await tx.groundRun.create({
        data: { operatorId, id, ...place, startedAt, endedAt, ...told, recordedSeq: number },
      });
      await postRun(tx, operatorId, { ...place, endedAt, counts: groundRunCounts(run), sign: 1 });
      const body = await this.answer(tx, operatorId, { id, place, endedAt, before });
      await this.journal.append(tx, actor, {
        number,
        stream: place.airframeId ?? place.carrierId,
        kind: 'ground-run-recorded',
        body: {
          ...{ runId: id, carrierId: place.carrierId },
          startedAt: toWire(startedAt),
          endedAt: toWire(endedAt),
          ...told,
        },
        about: [place.carrierId, id],
        key: act.key,
      });
      return { status: 201, body, number, resource: `/api/ground-runs/${id}` };
    });
  }

  /** What a run did: due points lie in the clock, so only what saw the past differently is computed again. */
  private async answer(
    tx: Tx,
    operatorId: number,
    {
      id,
      place,
      endedAt,
      before,
    }: {
      readonly id: string;
      readonly place: RunPlace;
      readonly endedAt: Date;
      readonly before: Before;
    },
  ): Promise<GroundRunAnswerDto> {
    const { carrierId, airframeId } = place;
    const late = await isBeforeMarks(tx, operatorId, place, endedAt);
    const seenBy = await componentsSeenBy(tx, operatorId, carrierId);
    // The head of a test cell does not keep when a duty was met there; few ran in one.
    if (late || airframeId === null)
      await this.duePoints.rebuild(tx, operatorId, seenBy, airframeId === null ? [] : [airframeId]);
    const row = await tx.groundRun.findUniqueOrThrow({ where: { operatorId_id: { operatorId, id } } });
    const [run] = await runsToWire(tx, operatorId, [row]);
    if (run === undefined) throw new Error('a run that was just written is gone');
    return { run, late, consequences: await this.consequences.since(tx, operatorId, before) };
  }

  private async before(
    tx: Tx,
    operatorId: number,
    { carrierId, airframeId, endedAt }: RunPlace & { readonly endedAt: Date },
  ): Promise<Before> {
    if (airframeId === null) {
      const seenBy = await componentsSeenBy(tx, operatorId, carrierId);
      return this.consequences.beforeOfComponents(tx, operatorId, seenBy, { from: endedAt });
    }
    const late = await isBeforeMarks(tx, operatorId, { carrierId, airframeId }, endedAt);
    return this.consequences.beforeOnAirframes(tx, operatorId, [airframeId], late);
  }
}

function runOf(asked: NewCellRunDto, startedAt: Date, endedAt: Date): GroundRun {
  const [from, to] = [toInstant(startedAt), toInstant(endedAt)];
  return {
    startedAt: from,
    endedAt: to,
    runMinutes: asked.runMinutes ?? Math.max(to - from, 0),
    countedMinutes: asked.countedMinutes ?? 0,
    starts: asked.starts,
    abortedTakeOffs: asked.abortedTakeOffs ?? 0,
  };
}

async function requireCell(tx: Tx, operatorId: number, id: string): Promise<void> {
  const where = { operatorId_id: { operatorId, id } };
  orNotFound(await tx.testCell.findUnique({ where, select: { id: true } }), 'test cell');
}
