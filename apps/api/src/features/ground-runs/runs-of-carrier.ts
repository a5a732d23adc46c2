import type { Tx } from '../../platform/database/database.js';
import type { Prisma, GroundRun as Row } from '../../platform/database/generated/client.js';
import { toWire } from '../../platform/http/instants.js';
import { refuse } from '../../platform/problems/refusal.error.js';
import type { GroundRunDto, GroundRunsPageDto, GroundRunsQueryDto } from './ground-run.dto.js';

const PAGE = 50;

/** A page of runs, the newest first. Refuses: INVALID_FIELDS. */
export async function pageOfRuns(
  tx: Tx,
  operatorId: number,
  where: Prisma.GroundRunWhereInput,
  { after, limit = PAGE, voided }: GroundRunsQueryDto,
): Promise<GroundRunsPageDto> {
  const cursor = after === undefined ? null : readCursor(after);
  const rows = await tx.groundRun.findMany({
    where: {
      ...where,
      operatorId,
      ...(voided === 'true' ? {} : { voidedSeq: null }),
      ...(cursor === null
        ? {}
        : {
            OR: [{ endedAt: { lt: cursor.endedAt } }, { endedAt: cursor.endedAt, id: { lt: cursor.id } }],
          }),
    },
    orderBy: [{ endedAt: 'desc' }, { id: 'desc' }],
    take: limit + 1,
  });
  const page = rows.slice(0, limit);
  const last = page.at(-1);
  return {
    rows: await runsToWire(tx, operatorId, page),
    next:
      rows.length > limit && last !== undefined
        ? Buffer.from(`${last.endedAt.toISOString()} ${last.id}`).toString('base64url')
        : null,
  };
}

/** Recorded runs as the wire has them, with the engines that were there. */
export async function runsToWire(tx: Tx, operatorId: number, rows: readonly Row[]): Promise<GroundRunDto[]> {
  const engines = await tx.$queryRaw<{ runId: string; id: string; serialNumber: string }[]>`
    SELECT r.id AS "runId", c.id, c.serial_number AS "serialNumber" FROM ground_run r
      JOIN slot s ON s.operator_id = r.operator_id AND s.kind = 'engine' AND r.carrier_id IN (s.position_id, s.test_cell_id)
      JOIN stay st ON st.operator_id = s.operator_id AND st.slot_id = s.id AND st.voided_seq IS NULL
       AND st.from_at <= r.started_at AND (st.to_at IS NULL OR st.to_at >= r.ended_at)
      JOIN component c ON c.operator_id = st.operator_id AND c.id = st.component_id
     WHERE r.operator_id = ${operatorId}::int AND r.id = ANY (${rows.map((row) => row.id)}::uuid[])`;
  const positions = await tx.position.findMany({
    where: { operatorId, id: { in: rows.map((row) => row.carrierId) } },
    select: { id: true, number: true },
  });
  return rows.map((row) => {
    const { id, airframeId, carrierId, runMinutes, countedMinutes, starts, abortedTakeOffs } = row;
    const engine = engines.find((each) => each.runId === id);
    return {
      ...{ id, airframeId, runMinutes, countedMinutes, starts, abortedTakeOffs },
      positionNumber: positions.find((position) => position.id === carrierId)?.number ?? null,
      testCellId: airframeId === null ? carrierId : null,
      engine: engine === undefined ? null : { id: engine.id, serialNumber: engine.serialNumber },
      startedAt: toWire(row.startedAt),
      endedAt: toWire(row.endedAt),
      purpose: row.purpose,
      source: row.source,
      voided: row.voidedSeq !== null,
      voidReason: row.voidReason,
    };
  });
}

function readCursor(text: string): { readonly endedAt: Date; readonly id: string } {
  const [moment = '', id = ''] = Buffer.from(text, 'base64url').toString().split(' ');
  const endedAt = new Date(moment);
  if (Number.isNaN(endedAt.getTime()) || !/^[0-9a-f]{8}(-[0-9a-f]{4}){3}-[0-9a-f]{12}$/i.test(id))
    refuse({
      code: 'INVALID_FIELDS',
      fields: [
        {
          field: 'after',
          reason: 'This is no place in the list.',
          fix: 'Send what the page before gave as `next`.',
        },
      ],
    });
  return { endedAt, id };
}
