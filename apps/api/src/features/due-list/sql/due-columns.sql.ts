import type { DutyDue } from './duty.sql.js';

/** The names of what the rows `p` of a page are about, as the page is told. `operator` is the operator's parameter. */
export const rowColumns = (operator: string, { from = 'page', more = '' } = {}): string => `
SELECT p.id, p.kind, p.component_id AS "componentId", k.description, k.part_number AS "partNumber", k.serial_number AS "serialNumber",
       p.engine_id AS "engineId", e.serial_number AS "engineSerial", a.id AS "airframeId", a.registration,
       o.number AS "positionNumber", p.verdict, p.dimension, p.flagged, p.reason, p.rank, p.urgency::float8 AS urgency,
       coalesce(p.due_at, 0)::float8 AS "dueAt", floor(p.left_units / p.denominator::numeric)::float8 AS remaining,
       CASE WHEN p.rank = 2 THEN p.urgency::float8 END AS "daysLeft", to_char(p.due_on, 'YYYY-MM-DD') AS "dueOn",
       coalesce(p.span, CASE p.dimension WHEN 'cycles' THEN l.cycles WHEN 'minutes' THEN l.minutes END)::float8 AS "limit",
       coalesce(q.document, l.document) AS document, coalesce(q.revision, l.revision) AS revision,
       q.id AS "requirementId", q.code AS "requirementCode", q.title AS "requirementTitle", q.kind AS "requirementKind", q.combine,
       dd.dues, u.used_minutes::float8 AS "usedMinutes", u.used_flights::float8 AS "usedFlights", u.period AS "usedDays"${more}
  FROM ${from} p
  LEFT JOIN component k ON k.operator_id = ${operator}::int AND k.id = p.component_id
  LEFT JOIN component e ON e.operator_id = ${operator}::int AND e.id = p.engine_id
  LEFT JOIN airframe a ON a.operator_id = ${operator}::int AND a.id = p.airframe_id
  LEFT JOIN position o ON o.operator_id = ${operator}::int AND o.id = p.position_id
  LEFT JOIN life_limit l ON l.operator_id = ${operator}::int AND l.id = p.life_limit_id
  LEFT JOIN hand u ON u.carrier_id = p.airframe_id
  LEFT JOIN duty_dues dd ON dd.duty_id = p.duty_id AND dd.subject_id = p.subject_id
  LEFT JOIN requirement q ON q.operator_id = ${operator}::int AND q.id = p.requirement_id`;

/** A row of a page as its statement gives it. */
export interface DuePageRow {
  id: string;
  kind: 'life-limit' | 'counters' | 'requirement';
  /** Null for a requirement of an airframe or a position, as are its numbers. */
  componentId: string | null;
  description: string | null;
  partNumber: string | null;
  serialNumber: string | null;
  engineId: string | null;
  engineSerial: string | null;
  airframeId: string | null;
  registration: string | null;
  positionNumber: number | null;
  verdict: string;
  dimension: string;
  flagged: boolean;
  reason: string | null;
  rank: number;
  urgency: number;
  dueAt: number;
  remaining: number | null;
  daysLeft: number | null;
  dueOn: string | null;
  limit: number | null;
  document: string | null;
  revision: string | null;
  requirementId: string | null;
  requirementCode: string | null;
  requirementTitle: string | null;
  requirementKind: string | null;
  combine: 'first' | 'last' | null;
  dues: DutyDue[] | null;
  /** What its airframe uses in so many days by the basis; null for what hangs on none. */
  usedMinutes: number | null;
  usedFlights: number | null;
  usedDays: number | null;
}
