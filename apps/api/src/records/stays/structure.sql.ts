import { type Columns, rowsOf } from '../../platform/database/columns.js';
import { Prisma } from '../../platform/database/generated/client.js';

/** A slot beneath a component, and what was in it at the instant asked. */
export interface FilledSlot {
  readonly slotId: string;
  readonly name: string;
  readonly kind: string;
  readonly lifeLimited: boolean;
  readonly parentId: string;
  readonly componentId: string | null;
  /** What is in it, as the register has it; null for an empty slot. */
  readonly part: {
    readonly kind: string;
    readonly partNumber: string;
    readonly serialNumber: string;
    readonly lifeLimited: boolean;
    readonly engineModelId: string | null;
  } | null;
}

/** What the texts below are about: components of an operator (a uuid[]), now (null) or at an instant. */
export interface StructureAsk {
  readonly operatorId: number;
  readonly componentIds: Prisma.Sql;
  readonly at: Date | null;
}

/** Components named by their ids, which the planner takes for a few, however many: it then plans once for all. */
export function namedComponents(componentIds: readonly string[]): Prisma.Sql {
  return Prisma.sql`ARRAY(SELECT unnest(${[...componentIds]}::uuid[]))`;
}

/** Whether a stay stands at that instant. */
export function standsAt(at: Date | null): Prisma.Sql {
  return at === null
    ? Prisma.sql`voided_seq IS NULL AND to_at IS NULL`
    : Prisma.sql`voided_seq IS NULL AND from_at <= ${at}::timestamptz AND (to_at IS NULL OR to_at > ${at}::timestamptz)`;
}

/**
 * For WITH RECURSIVE: `filled`, all slots beneath the components with what is in them. Nobody can guess how much hangs
 * beneath: LATERAL with a limit keeps the planner from reading the whole fleet's tables for one engine.
 */
export function filledBeneath({ operatorId, componentIds, at }: StructureAsk): Prisma.Sql {
  const inSlot = Prisma.sql`(SELECT component_id FROM stay
    WHERE operator_id = ${operatorId}::int AND slot_id = s.id AND ${standsAt(at)} ORDER BY from_at DESC LIMIT 1)`;
  return Prisma.sql`tree AS (
      SELECT s.id, s.name, s.kind, s.life_limited, s.sort, s.component_id AS parent_id, st.component_id AS filled_by, 1 AS depth
        FROM slot s LEFT JOIN LATERAL ${inSlot} st ON true
       WHERE s.operator_id = ${operatorId}::int AND s.component_id = ANY (${componentIds})
      UNION ALL
      SELECT s.id, s.name, s.kind, s.life_limited, s.sort, s.component_id, st.component_id, t.depth + 1
        FROM tree t
        CROSS JOIN LATERAL (
          SELECT * FROM slot WHERE operator_id = ${operatorId}::int AND component_id = t.filled_by OFFSET 0) s
        LEFT JOIN LATERAL ${inSlot} st ON true
       WHERE t.depth < 8
    ), filled AS MATERIALIZED (
      SELECT t.*, c.kind AS part_kind, c.part_number, c.serial_number, c.life_limited AS part_limited, c.engine_model_id
        FROM tree t
        LEFT JOIN LATERAL (
          SELECT * FROM component WHERE operator_id = ${operatorId}::int AND id = t.filled_by LIMIT 1) c ON true
       ORDER BY t.depth, t.sort, t.name
    )`;
}

interface SlotRow extends Omit<FilledSlot, 'part'> {
  readonly partKind: string | null;
  readonly partNumber: string;
  readonly serialNumber: string;
  readonly partLimited: boolean;
  readonly engineModelId: string | null;
}

/** The slots of `filled` as JSON. */
export const FILLED_SLOTS = Prisma.sql`(SELECT json_build_object('slotId', array_agg(id), 'name', array_agg(name),
  'kind', array_agg(kind), 'lifeLimited', array_agg(life_limited), 'parentId', array_agg(parent_id),
  'componentId', array_agg(filled_by), 'partKind', array_agg(part_kind),
  'partNumber', array_agg(part_number), 'serialNumber', array_agg(serial_number), 'partLimited', array_agg(part_limited),
  'engineModelId', array_agg(engine_model_id)) FROM filled)`;

/** Slots as `FILLED_SLOTS` gives them: parents before children. */
export type SlotColumns = Columns<SlotRow>;

/** The slots of such JSON. Total. */
export function filledSlots(columns: SlotColumns): FilledSlot[] {
  return rowsOf(columns).map(
    ({ partKind, partNumber, serialNumber, partLimited, engineModelId, ...slot }): FilledSlot => ({
      ...slot,
      part:
        partKind === null
          ? null
          : { kind: partKind, partNumber, serialNumber, lifeLimited: partLimited, engineModelId },
    }),
  );
}

/** For WITH RECURSIVE: `in_engine`, each component with the engine or auxiliary power unit it is in (itself, when it is one); one in none is left out. */
export function inEngine({ operatorId, componentIds, at }: StructureAsk): Prisma.Sql {
  return Prisma.sql`up AS (
      SELECT c.id, c.id AS holder, c.kind FROM component c
       WHERE c.operator_id = ${operatorId}::int AND c.id = ANY (${componentIds})
      UNION ALL
      SELECT u.id, c.id, c.kind FROM up u
        CROSS JOIN LATERAL (
          SELECT operator_id, slot_id FROM stay
           WHERE operator_id = ${operatorId}::int AND component_id = u.holder AND ${standsAt(at)} LIMIT 1) st
        JOIN slot s ON s.operator_id = st.operator_id AND s.id = st.slot_id
        JOIN component c ON c.operator_id = s.operator_id AND c.id = s.component_id
       WHERE u.kind NOT IN ('engine', 'apu')
    ), in_engine AS (SELECT id, holder AS engine_id FROM up WHERE kind IN ('engine', 'apu'))`;
}
