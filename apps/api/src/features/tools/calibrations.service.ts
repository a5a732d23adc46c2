import { Injectable } from '@nestjs/common';
import type { Actor } from '../../platform/access/actor.js';
import type { Tx } from '../../platform/database/database.js';
import { newId } from '../../platform/database/uuid.js';
import type { ActRequest } from '../../platform/http/act-key.js';
import { Acts, type Done } from '../../platform/http/acts.js';
import { dayOf, dayToWire } from '../../platform/http/instants.js';
import { orNotFound, refuse } from '../../platform/problems/refusal.error.js';
import { Clock } from '../../platform/time/clock.js';
import { Journal } from '../../records/journal/journal.js';
import { readTool } from './read-tool.js';
import type { NewCalibrationDto, ToolViewDto } from './tool.dto.js';
import { refuseUnlikeCalibration } from './tool-rules.js';

/** Calibrations of tools. */
@Injectable()
export class CalibrationsService {
  constructor(
    private readonly acts: Acts,
    private readonly journal: Journal,
    private readonly clock: Clock,
  ) {}

  /** Records a calibration. Refuses: NOT_FOUND, INVALID_FIELDS, ALREADY_EXISTS. */
  add(actor: Actor, act: ActRequest, toolId: string, asked: NewCalibrationDto): Promise<ToolViewDto> {
    const { operatorId } = actor;
    const { calibratedOn, dueOn, certificate } = asked;
    refuseUnlikeCalibration(asked, this.today());
    return this.acts.perform(actor, act, async (tx) => {
      const serialNumber = await lockTool(tx, operatorId, toolId);
      await refuseSame(tx, operatorId, toolId, asked);
      const number = await this.journal.number(tx);
      const id = newId();
      const days = { calibratedOn: dayOf(calibratedOn), dueOn: dayOf(dueOn) };
      await tx.toolCalibration.create({
        data: { operatorId, id, toolId, ...days, certificate, recordedSeq: number },
      });
      await this.journal.append(tx, actor, {
        number,
        stream: toolId,
        kind: 'calibration-recorded',
        body: { id, serialNumber, calibratedOn, dueOn, certificate },
        about: [toolId],
        key: act.key,
      });
      return this.answer(tx, operatorId, { toolId, number, status: 201 });
    });
  }

  /** Voids a calibration. Refuses: NOT_FOUND, ALREADY_VOIDED. */
  void(
    actor: Actor,
    act: ActRequest,
    { id, reason }: { readonly id: string; readonly reason: string },
  ): Promise<ToolViewDto> {
    const { operatorId } = actor;
    return this.acts.perform(actor, act, async (tx) => {
      const where = { operatorId_id: { operatorId, id } };
      const { toolId, certificate } = orNotFound(
        await tx.toolCalibration.findUnique({ where }),
        'calibration',
      );
      const serialNumber = await lockTool(tx, operatorId, toolId);
      const number = await this.journal.number(tx);
      const { count } = await tx.toolCalibration.updateMany({
        where: { operatorId, id, voidedSeq: null },
        data: { voidedSeq: number, voidReason: reason },
      });
      if (count === 0) refuse({ code: 'ALREADY_VOIDED', what: 'the calibration' });
      await this.journal.append(tx, actor, {
        number,
        stream: toolId,
        kind: 'calibration-voided',
        body: { id, serialNumber, certificate, reason },
        about: [toolId],
        key: act.key,
      });
      return this.answer(tx, operatorId, { toolId, number, status: 200 });
    });
  }

  private async answer(
    tx: Tx,
    operatorId: number,
    { toolId, number, status }: { readonly toolId: string; readonly number: bigint; readonly status: number },
  ): Promise<Done<ToolViewDto>> {
    await tx.tool.update({
      where: { operatorId_id: { operatorId, id: toolId } },
      data: { version: { increment: 1 } },
      select: { id: true },
    });
    const body = await readTool(tx, operatorId, { id: toolId, on: this.today() });
    return { status, body, number, version: body.version, resource: `/api/tools/${toolId}` };
  }

  private today(): string {
    return dayToWire(this.clock.now());
  }
}

async function lockTool(tx: Tx, operatorId: number, id: string): Promise<string> {
  const [row] = await tx.$queryRaw<
    { serialNumber: string }[]
  >`SELECT serial_number AS "serialNumber" FROM tool
    WHERE operator_id = ${operatorId}::int AND id = ${id}::uuid FOR NO KEY UPDATE`;
  return orNotFound(row, 'tool').serialNumber;
}

async function refuseSame(
  tx: Tx,
  operatorId: number,
  toolId: string,
  { certificate, calibratedOn }: NewCalibrationDto,
): Promise<void> {
  const same = await tx.toolCalibration.findFirst({
    where: { operatorId, toolId, certificate, calibratedOn: dayOf(calibratedOn), voidedSeq: null },
    select: { id: true },
  });
  if (same !== null)
    refuse({
      code: 'ALREADY_EXISTS',
      what: `a calibration of this tool on ${calibratedOn} with the certificate`,
      field: 'certificate',
      value: certificate,
    });
}
