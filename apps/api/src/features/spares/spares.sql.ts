import { Prisma } from '../../platform/database/generated/client.js';

/** What a page of spares is asked by; null: not asked. */
export interface SparesAsk {
  readonly operatorId: number;
  readonly today: string;
  readonly kind: string | null;
  readonly partNumber: string | null;
  readonly engineModelId: string | null;
  readonly locationId: string | null;
  readonly owner: string | null;
  /** A pattern for LIKE, lower case. */
  readonly search: string | null;
  readonly fit: boolean | null;
  readonly place: FittingPlace | null;
  readonly sort: 'serial' | 'cycles' | 'hours' | 'since' | 'preservation';
  readonly limit: number;
  readonly after: { readonly key: number; readonly serial: string; readonly id: string } | null;
}

/** What a slot takes: its kind, and the models or part numbers that go there; null where any does. */
export interface FittingPlace {
  readonly kind: string;
  readonly modelIds: readonly string[] | null;
  readonly partNumbers: readonly string[] | null;
}

/** A part with what is held against it, or what is left of it. */
export interface HeldPart {
  readonly serial: string;
  readonly code: string;
  readonly detail: string | null;
}

/** A row of the page as the statement gives it. */
export interface SpareRow {
  readonly id: string;
  readonly kind: string;
  readonly partNumber: string;
  readonly serialNumber: string;
  readonly description: string;
  readonly engineModelId: string | null;
  readonly engineModel: string | null;
  readonly ratingCode: string | null;
  readonly owner: string;
  readonly lessor: string | null;
  readonly location: string | null;
  readonly locationKind: string | null;
  readonly since: Date | null;
  readonly fit: boolean;
  readonly visitId: string | null;
  readonly order: string | null;
  readonly tagStatus: string | null;
  readonly tagNumber: string | null;
  readonly goodUntil: string | null;
  readonly cycles: number | null;
  readonly cyclesPart: string | null;
  readonly minutes: number | null;
  readonly minutesPart: string | null;
  readonly goodThrough: string | null;
  readonly ratingOpen: boolean;
  readonly held: readonly HeldPart[] | null;
  readonly requirement: {
    readonly id: string;
    readonly code: string;
    readonly title: string;
    readonly dimension: string;
    readonly remaining: number | null;
    readonly dueOn: string | null;
    readonly verified: boolean;
  } | null;
  readonly key: number;
  readonly total: number;
}

const LAST = Prisma.raw(`'9e15'::float8`);

/** A part in no engine that runs at no rating: what is left is told by the engine it goes into, and fitting it judges that. */
const RATING_OPEN = Prisma.raw(
  "(verdict = 'not-verified' AND reason = 'RATING_UNKNOWN' AND engine_id IS NULL)",
);

function keyOf(sort: SparesAsk['sort']): Prisma.Sql {
  switch (sort) {
    case 'serial':
      return Prisma.sql`0::float8`;
    case 'cycles':
      return Prisma.sql`coalesce(cycles::float8, ${LAST})`;
    case 'hours':
      return Prisma.sql`coalesce(minutes::float8, ${LAST})`;
    case 'since':
      return Prisma.sql`coalesce(extract(epoch FROM since)::float8, ${LAST})`;
    case 'preservation':
      return Prisma.sql`coalesce(extract(epoch FROM good_until)::float8, ${LAST})`;
  }
}

/** For `spare`: what hangs in nothing and is not gone, by what the register says of it. */
function spares(ask: SparesAsk): Prisma.Sql {
  const { operatorId, kind, partNumber, engineModelId, locationId, owner, search, place } = ask;
  return Prisma.sql`
    SELECT c.id, c.kind, c.part_number, c.serial_number, c.description, c.engine_model_id, c.owner, c.lessor,
           l.name AS location, l.kind AS location_kind, st.from_at AS since
      FROM component c
      LEFT JOIN LATERAL (SELECT slot_id, location_id, from_at FROM stay
        WHERE operator_id = c.operator_id AND component_id = c.id AND voided_seq IS NULL AND to_at IS NULL LIMIT 1) st ON true
      LEFT JOIN location l ON l.operator_id = c.operator_id AND l.id = st.location_id
     WHERE c.operator_id = ${operatorId}::int AND st.slot_id IS NULL
       AND (l.kind IS NULL OR l.kind IN ('store', 'shop', 'quarantine'))
       AND (${kind}::text IS NULL OR c.kind = ${kind}::text)
       AND (${partNumber}::text IS NULL OR c.part_number = ${partNumber}::text)
       AND (${engineModelId}::uuid IS NULL OR c.engine_model_id = ${engineModelId}::uuid)
       AND (${locationId}::uuid IS NULL OR st.location_id = ${locationId}::uuid)
       AND (${owner}::text IS NULL OR c.owner = ${owner}::text OR c.lessor = ${owner}::text)
       AND (${search}::text IS NULL OR lower(c.serial_number) LIKE ${search}::text OR lower(c.part_number) LIKE ${search}::text
            OR lower(c.description) LIKE ${search}::text)
       AND (${place?.kind ?? null}::text IS NULL OR c.kind = ${place?.kind ?? null}::text)
       AND (${place?.modelIds == null}::boolean OR c.engine_model_id = ANY (${[...(place?.modelIds ?? [])]}::uuid[]))
       AND (${place?.partNumbers == null}::boolean OR c.part_number = ANY (${[...(place?.partNumbers ?? [])]}::text[]))`;
}

/**
 * One page of what is installed nowhere, in one statement: where it is, what is held against fitting it, and what is left
 * in it. Off the wing a due point's reading is what is left: its clock stands still at zero.
 */
export function sparesPage(ask: SparesAsk): Prisma.Sql {
  const { operatorId, today, fit, sort, limit, after } = ask;
  return Prisma.sql`
  WITH RECURSIVE spare AS MATERIALIZED (${spares(ask)}),
  beneath (top, id) AS (
    SELECT id, id FROM spare
    UNION ALL
    SELECT b.top, st.component_id FROM beneath b
      JOIN slot s ON s.operator_id = ${operatorId}::int AND s.component_id = b.id
      JOIN stay st ON st.operator_id = s.operator_id AND st.slot_id = s.id AND st.voided_seq IS NULL AND st.to_at IS NULL
  ), tagged AS MATERIALIZED (
    SELECT DISTINCT ON (component_id) component_id, status, tag_number FROM serviceability_tag
     WHERE operator_id = ${operatorId}::int AND voided_seq IS NULL ORDER BY component_id, at DESC, recorded_seq DESC
  ), visit AS MATERIALIZED (
    SELECT v.component_id, v.id, v.order_reference FROM shop_visit v
     WHERE v.operator_id = ${operatorId}::int AND v.voided_seq IS NULL
       AND NOT EXISTS (SELECT FROM shop_return r WHERE r.operator_id = v.operator_id AND r.visit_id = v.id AND r.voided_seq IS NULL)
  ), due AS MATERIALIZED (
    SELECT b.top, p.component_id, p.kind, p.verdict, p.dimension, p.due_at, p.due_on, p.span, p.reason, p.requirement_id, p.id, p.engine_id,
           c.serial_number
      FROM beneath b
      JOIN due_point p ON p.operator_id = ${operatorId}::int AND p.component_id = b.id
      JOIN component c ON c.operator_id = p.operator_id AND c.id = p.component_id
     WHERE p.carrier_id IS NULL
  ), life AS (
    SELECT top,
           min(due_at) FILTER (WHERE dimension = 'cycles') AS cycles,
           (array_agg(serial_number ORDER BY due_at) FILTER (WHERE dimension = 'cycles'))[1] AS cycles_part,
           min(due_at) FILTER (WHERE dimension = 'minutes') AS minutes,
           (array_agg(serial_number ORDER BY due_at) FILTER (WHERE dimension = 'minutes'))[1] AS minutes_part,
           min(due_on) AS good_through
      FROM due WHERE kind = 'life-limit' AND verdict = 'limited' GROUP BY top
  ), held AS (
    SELECT top, json_agg(json_build_object('serial', serial_number, 'code', code, 'detail', detail) ORDER BY code, serial_number) AS parts
      FROM (
        SELECT top, serial_number, CASE
                 WHEN verdict = 'not-authorised' THEN 'not-authorised'
                 WHEN verdict = 'not-verified' THEN 'not-verified'
                 WHEN due_at < 0 OR due_on < ${today}::date THEN 'over-limit'
                 ELSE 'at-limit' END AS code, reason AS detail
          FROM due WHERE kind = 'life-limit' AND (verdict <> 'limited' OR due_at <= 0 OR due_on < ${today}::date)
           AND NOT ${RATING_OPEN}
        UNION ALL
        SELECT b.top, c.serial_number, t.status, t.tag_number
          FROM beneath b
          JOIN tagged t ON t.component_id = b.id AND t.status <> 'serviceable'
          JOIN component c ON c.operator_id = ${operatorId}::int AND c.id = b.id
        UNION ALL
        SELECT b.top, c.serial_number, 'in-shop', v.order_reference
          FROM beneath b JOIN visit v ON v.component_id = b.id
          JOIN component c ON c.operator_id = ${operatorId}::int AND c.id = b.id
      ) AS each GROUP BY top
  ), judged AS MATERIALIZED (
    SELECT s.*, life.cycles, life.cycles_part, life.minutes, life.minutes_part, life.good_through, held.parts, t.status, t.tag_number,
           v.id AS visit_id, v.order_reference, kept.good_until,
           held.parts IS NULL AND coalesce(s.location_kind = 'store', false) AS fit,
           EXISTS (SELECT FROM due d WHERE d.top = s.id AND d.kind = 'life-limit' AND ${RATING_OPEN}) AS rating_open
      FROM spare s
      LEFT JOIN life ON life.top = s.id
      LEFT JOIN held ON held.top = s.id
      LEFT JOIN tagged t ON t.component_id = s.id
      LEFT JOIN visit v ON v.component_id = s.id
      LEFT JOIN LATERAL (SELECT good_until FROM preservation
        WHERE operator_id = ${operatorId}::int AND component_id = s.id AND voided_seq IS NULL
        ORDER BY at DESC, recorded_seq DESC LIMIT 1) kept ON true
  ), keyed AS (
    SELECT *, ${keyOf(sort)} AS key, count(*) OVER () AS total FROM judged
     WHERE ${fit}::boolean IS NULL OR fit = ${fit}::boolean
  ), page AS MATERIALIZED (
    SELECT * FROM keyed
     WHERE ${after === null}::boolean
        OR (key, serial_number, id) > (${after?.key ?? 0}::float8, ${after?.serial ?? ''}::text, ${after?.id ?? null}::uuid)
     ORDER BY key, serial_number, id LIMIT ${limit}::int
  )
  SELECT p.id, p.kind, p.part_number AS "partNumber", p.serial_number AS "serialNumber", p.description,
         p.engine_model_id AS "engineModelId", m.maker || ' ' || m.designation AS "engineModel", r.code AS "ratingCode",
         p.owner, p.lessor, p.location, p.location_kind AS "locationKind", p.since, p.fit, p.visit_id AS "visitId",
         p.order_reference AS "order", p.status AS "tagStatus", p.tag_number AS "tagNumber",
         to_char(p.good_until, 'YYYY-MM-DD') AS "goodUntil", p.cycles::float8 AS cycles, p.cycles_part AS "cyclesPart",
         p.minutes::float8 AS minutes, p.minutes_part AS "minutesPart", to_char(p.good_through, 'YYYY-MM-DD') AS "goodThrough",
         p.parts AS held, p.rating_open AS "ratingOpen", next.requirement, p.key, p.total::int AS total
    FROM page p
    LEFT JOIN engine_model m ON m.operator_id = ${operatorId}::int AND m.id = p.engine_model_id
    LEFT JOIN LATERAL (SELECT rating_id FROM rating_change
      WHERE operator_id = ${operatorId}::int AND component_id = p.id AND voided_seq IS NULL
      ORDER BY at DESC, recorded_seq DESC LIMIT 1) now ON true
    LEFT JOIN rating r ON r.operator_id = ${operatorId}::int AND r.id = now.rating_id
    LEFT JOIN LATERAL (
      SELECT json_build_object('id', q.id, 'code', q.code, 'title', q.title, 'dimension', d.dimension, 'remaining', d.due_at,
                               'dueOn', to_char(d.due_on, 'YYYY-MM-DD'), 'verified', d.verdict <> 'not-verified') AS requirement
        FROM due d JOIN requirement q ON q.operator_id = ${operatorId}::int AND q.id = d.requirement_id
       WHERE d.top = p.id
       ORDER BY d.verdict <> 'not-verified', CASE
           WHEN d.due_at IS NOT NULL THEN d.due_at::float8 / greatest(d.span, 1)
           ELSE (d.due_on - ${today}::date)::float8 / greatest(d.span * CASE d.dimension WHEN 'months' THEN 30 ELSE 1 END, 1) END,
         q.code, d.id
       LIMIT 1) AS next ON true
   ORDER BY p.key, p.serial_number, p.id`;
}
