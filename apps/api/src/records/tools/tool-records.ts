import { Injectable } from '@nestjs/common';
import type { ToolFacts } from '@strutbook/domain/torque/judge-torque.js';
import type { Tx } from '../../platform/database/database.js';
import { dayToWire } from '../../platform/http/instants.js';
import { orNotFound } from '../../platform/problems/refusal.error.js';

/** Tools as the core reads them. */
@Injectable()
export class ToolRecords {
  /** The tool with its calibrations that are not voided, by day. Refuses: NOT_FOUND, about `toolId`. */
  async facts(tx: Tx, operatorId: number, toolId: string): Promise<ToolFacts> {
    const facts = await this.factsOf(tx, operatorId, [toolId]);
    return orNotFound(facts.get(toolId), 'tool', 'toolId');
  }

  /** The same for several at once, by id; what is not there is left out. */
  async factsOf(
    tx: Tx,
    operatorId: number,
    toolIds: readonly string[],
  ): Promise<ReadonlyMap<string, ToolFacts>> {
    const tools = await tx.tool.findMany({
      where: { operatorId, id: { in: [...new Set(toolIds)] } },
      include: {
        toolCalibrationByTool: {
          where: { voidedSeq: null },
          orderBy: [{ calibratedOn: 'asc' }, { recordedSeq: 'asc' }],
          select: { calibratedOn: true, dueOn: true },
        },
      },
    });
    return new Map(
      tools.map((tool) => [
        tool.id,
        {
          serial: tool.serialNumber,
          unit: tool.unit,
          low: tool.rangeLow,
          high: tool.rangeHigh,
          deviation: tool.deviation,
          calibrations: tool.toolCalibrationByTool.map(({ calibratedOn, dueOn }) => ({
            calibratedOn: dayToWire(calibratedOn),
            dueOn: dayToWire(dueOn),
          })),
        },
      ]),
    );
  }
}
