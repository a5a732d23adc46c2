import type { Tx } from '../../platform/database/database.js';
import { orNotFound } from '../../platform/problems/refusal.error.js';
import { idsInForce, requirementToWire, WITH_SCOPE } from './requirement.mapper.js';
import type { RequirementDto } from './requirement-view.dto.js';

/** One requirement as it stands at an instant. Refuses: NOT_FOUND. */
export async function one(tx: Tx, operatorId: number, id: string, now: Date): Promise<RequirementDto> {
  const found = await tx.requirement.findUnique({
    where: { operatorId_id: { operatorId, id } },
    select: { code: true },
  });
  const { code } = orNotFound(found, 'requirement');
  const rows = await read(tx, operatorId, { code }, now);
  return orNotFound(
    rows.find((row) => row.id === id),
    'requirement',
  );
}

/** All requirements, or those of one code, by code and the newest first, as they stand at an instant. */
export async function read(
  tx: Tx,
  operatorId: number,
  where: { readonly code?: string },
  now: Date,
): Promise<RequirementDto[]> {
  const rows = await tx.requirement.findMany({
    where: { operatorId, ...where },
    include: WITH_SCOPE,
    orderBy: [{ code: 'asc' }, { effectiveOn: 'desc' }, { recordedSeq: 'desc' }],
  });
  const inForce = idsInForce(rows, now);
  const open = await tx.$queryRaw<{ id: string; open: number }[]>`
    SELECT requirement_id AS id, count(DISTINCT coalesce(component_id, position_id, airframe_id))::int AS open
      FROM due_point WHERE operator_id = ${operatorId}::int AND requirement_id = ANY (${rows.map((row) => row.id)}::uuid[])
     GROUP BY requirement_id`;
  const openOf = new Map(open.map((row) => [row.id, row.open]));
  const superseding = await supersedingIn(tx, operatorId, now);
  return rows.map((row) =>
    requirementToWire(row, {
      inForce: inForce.has(row.id),
      open: openOf.get(row.id) ?? 0,
      supersededBy: superseding.get(row.code) ?? null,
    }),
  );
}

/** The requirements in force that take the place of others, by the codes of those. */
async function supersedingIn(tx: Tx, operatorId: number, now: Date) {
  const codes = await tx.requirement.findMany({
    where: { operatorId, supersedesId: { not: null }, voidedSeq: null },
    select: { code: true },
  });
  if (codes.length === 0) return new Map<string, { id: string; code: string }>();
  const rows = await tx.requirement.findMany({
    where: { operatorId, code: { in: codes.map(({ code }) => code) } },
    include: { supersedes: { select: { code: true } } },
  });
  const inForce = idsInForce(rows, now);
  return new Map(
    rows.flatMap(({ id, code, supersedes }) =>
      supersedes !== null && inForce.has(id) ? [[supersedes.code, { id, code }] as const] : [],
    ),
  );
}

/** The codes whose dues a change of the requirements of one code moves: its own, and those its revisions close. */
export async function codesTouchedBy(tx: Tx, operatorId: number, code: string): Promise<string[]> {
  const rows = await tx.requirement.findMany({
    where: { operatorId, code },
    select: { supersedes: { select: { code: true } }, terminates: { select: { code: true } } },
  });
  const linked = rows.flatMap(({ supersedes, terminates }) => [supersedes?.code, terminates?.code]);
  return [...new Set([code, ...linked.filter((each) => each !== undefined)])];
}
