import type { Tx } from '../../platform/database/database.js';
import type { Prisma } from '../../platform/database/generated/client.js';
import type { Scope } from './subjects.js';

const REQUIREMENTS = 1;

/**
 * Taken by everyone who writes due points, together, after the heads and components they are of: a requirement recorded
 * while a component is being entered, or the other way round, would else miss it.
 */
export async function shareRequirements(tx: Tx, operatorId: number): Promise<void> {
  await tx.$executeRaw`SELECT pg_advisory_xact_lock_shared(${REQUIREMENTS}::int, ${operatorId}::int)`;
}

/** Taken by who records or voids a requirement or a life limit, alone, after the heads and components it is for. */
export async function holdRequirements(tx: Tx, operatorId: number): Promise<void> {
  await tx.$executeRaw`SELECT pg_advisory_xact_lock(${REQUIREMENTS}::int, ${operatorId}::int)`;
}

/** Everything the revisions of these codes may be for. */
export async function scopeOfCodes(tx: Tx, operatorId: number, codes: readonly string[]): Promise<Scope> {
  const rows = await tx.requirement.findMany({ where: { operatorId, code: { in: [...codes] } } });
  const parts = rows.flatMap((row) => row.partNumber ?? []);
  const wanted: Prisma.ComponentWhereInput[] = [
    ...(rows.some((row) => row.anchor === 'engine') ? [{ kind: { in: ['engine', 'apu'] } }] : []),
    ...(parts.length > 0 ? [{ partNumber: { in: parts } }] : []),
  ];
  const components =
    wanted.length === 0
      ? []
      : await tx.component.findMany({ where: { operatorId, OR: wanted }, select: { id: true } });
  const onAirframes = rows.some((row) => row.anchor === 'airframe' || row.anchor === 'position');
  const airframes = onAirframes
    ? await tx.airframe.findMany({ where: { operatorId }, select: { id: true } })
    : [];
  return { componentIds: components.map((row) => row.id), airframeIds: airframes.map((row) => row.id) };
}

/** The airframes at whose positions these components ever hung, by stays that were voided too. */
export async function airframesEverHungOn(
  tx: Tx,
  operatorId: number,
  componentIds: readonly string[],
): Promise<string[]> {
  const rows = await tx.$queryRaw<{ id: string }[]>`
    SELECT DISTINCT p.airframe_id AS id FROM stay st
      JOIN slot s ON s.operator_id = st.operator_id AND s.id = st.slot_id
      JOIN position p ON p.operator_id = s.operator_id AND p.id = s.position_id
     WHERE st.operator_id = ${operatorId}::int AND st.component_id = ANY (${[...componentIds]}::uuid[])`;
  return rows.map((row) => row.id);
}
