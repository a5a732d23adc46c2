import type { Tx } from '../../platform/database/database.js';
import type { Prisma } from '../../platform/database/generated/client.js';
import { orNotFound } from '../../platform/problems/refusal.error.js';
import type { ToolViewDto } from './tool.dto.js';
import { calibrationsToWire, toolToWire, useToWire } from './tool.mapper.js';

const MOST_USES = 200;

export const WITH_CALIBRATIONS = {
  toolCalibrationByTool: { orderBy: [{ calibratedOn: 'asc' }, { recordedSeq: 'asc' }] },
} satisfies Prisma.ToolInclude;

/** A tool with its calibrations and its newest uses, as it stands on a day. Refuses: NOT_FOUND. */
export async function readTool(
  tx: Tx,
  operatorId: number,
  { id, on }: { readonly id: string; readonly on: string },
): Promise<ToolViewDto> {
  const where = { operatorId_id: { operatorId, id } };
  const row = orNotFound(await tx.tool.findUnique({ where, include: WITH_CALIBRATIONS }), 'tool');
  const uses = await tx.stepEntry.findMany({
    where: { operatorId, toolId: id },
    include: {
      step: {
        select: { number: true, definition: true, package: { select: { number: true, title: true } } },
      },
    },
    orderBy: [{ recordedSeq: 'desc' }, { id: 'desc' }],
    take: MOST_USES,
  });
  return {
    ...toolToWire(row, on),
    calibrations: calibrationsToWire(row.toolCalibrationByTool, on),
    uses: uses.map(useToWire),
    usesInAll:
      uses.length < MOST_USES ? uses.length : await tx.stepEntry.count({ where: { operatorId, toolId: id } }),
  };
}
