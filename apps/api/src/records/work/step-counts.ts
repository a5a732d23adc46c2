import type { Tx } from '../../platform/database/database.js';

/** How many steps a package has, and how many of them are signed, and inspected where they ask for it. */
export interface StepCounts {
  readonly signed: number;
  readonly total: number;
}

/** The counts of these packages in one statement; one without steps is left out. The rule is the core's isFinished. */
export async function stepCounts(
  tx: Tx,
  operatorId: number,
  packageIds: readonly string[],
): Promise<ReadonlyMap<string, StepCounts>> {
  const rows = await tx.$queryRaw<(StepCounts & { packageId: string })[]>`
    SELECT w.package_id AS "packageId", count(*)::int AS total,
           (count(*) FILTER (WHERE done.id IS NOT NULL
              AND (w.definition::jsonb ->> 'inspection' = 'none' OR looked.id IS NOT NULL)))::int AS signed
      FROM work_step w
      LEFT JOIN step_signature done ON done.operator_id = w.operator_id AND done.step_id = w.id AND done.meaning = 'done'
       AND done.voided_seq IS NULL AND done.content_hash = w.content_hash
      LEFT JOIN step_signature looked ON looked.operator_id = w.operator_id AND looked.step_id = w.id
       AND looked.meaning = 'inspection' AND looked.covers_id = done.id AND looked.voided_seq IS NULL
       AND looked.content_hash = w.content_hash
     WHERE w.operator_id = ${operatorId}::int AND w.package_id = ANY (${[...packageIds]}::uuid[])
     GROUP BY w.package_id`;
  return new Map(rows.map(({ packageId, signed, total }) => [packageId, { signed, total }]));
}
