import { Prisma } from '../../platform/database/generated/client.js';
import { standsAt } from '../stays/structure.sql.js';

/** From `top`: what is looked beneath (a uuid[]). */
export const TOPS = Prisma.sql`ARRAY(SELECT id FROM top)`;

/** From `filled` and `head`: the part numbers of limited parts (a text[]), and the pods among all (a uuid[]). */
export const PART_NUMBERS = Prisma.sql`ARRAY(SELECT DISTINCT part_number FROM filled WHERE part_limited)`;
export const PODS = Prisma.sql`(ARRAY(SELECT filled_by FROM filled WHERE part_kind = 'pod')
  || ARRAY(SELECT id FROM head WHERE kind = 'pod'))`;

/** From `top` and `filled`: all of it (a uuid[]). */
export const ALL_HANGING = Prisma.sql`(${TOPS} || ARRAY(SELECT filled_by FROM filled WHERE filled_by IS NOT NULL))`;

/** For `held`, where no airframe is asked for. */
export const NO_POSITIONS = Prisma.sql`
  SELECT NULL::uuid AS position_id, 0 AS number, '' AS slot_kind, NULL::uuid AS component_id WHERE false`;

/** For `held`: the slots of an airframe's positions with what is in them. */
export function heldSlots(operatorId: number, airframeId: string, at: Date | null): Prisma.Sql {
  return Prisma.sql`
    SELECT p.id AS position_id, p.number, s.kind AS slot_kind, st.component_id
      FROM position p
      CROSS JOIN LATERAL (SELECT * FROM slot WHERE operator_id = p.operator_id AND position_id = p.id OFFSET 0) s
      LEFT JOIN LATERAL (SELECT component_id FROM stay
        WHERE operator_id = s.operator_id AND slot_id = s.id AND ${standsAt(at)} LIMIT 1) st ON true
     WHERE p.operator_id = ${operatorId}::int AND p.airframe_id = ${airframeId}::uuid`;
}

/**
 * For `head`, from `top`, `filled` and `in_engine`: those components, and the engines above and beneath, each with its
 * model and the rating it runs at then, or will.
 */
export function headsOf(
  operatorId: number,
  at: Date | null,
  willRunAt: ReadonlyMap<string, string>,
): Prisma.Sql {
  const then = at === null ? Prisma.empty : Prisma.sql`AND at <= ${at}::timestamptz`;
  return Prisma.sql`
    SELECT c.id, c.kind, c.serial_number AS "serialNumber", c.part_number AS "partNumber", c.description, c.engine_model_id AS "engineModelId",
           m.designation, r.id AS "ratingId", r.code AS "ratingCode"
      FROM component c
      LEFT JOIN engine_model m ON m.operator_id = c.operator_id AND m.id = c.engine_model_id
      LEFT JOIN LATERAL (
        SELECT rating_id FROM rating_change
         WHERE operator_id = c.operator_id AND component_id = c.id AND voided_seq IS NULL ${then}
         ORDER BY at DESC, recorded_seq DESC LIMIT 1) now ON true
      LEFT JOIN rating r ON r.operator_id = c.operator_id
        AND r.id = coalesce((${JSON.stringify(Object.fromEntries(willRunAt))}::jsonb ->> c.id::text)::uuid, now.rating_id)
     WHERE c.operator_id = ${operatorId}::int AND c.id = ANY (${TOPS}
        || ARRAY(SELECT filled_by FROM filled WHERE part_kind = 'engine') || ARRAY(SELECT engine_id FROM in_engine))`;
}
