import type { DueEvent } from '@strutbook/domain/due/requirement.js';
import type { Tx } from '../../../platform/database/database.js';
import { groupRows } from '../../usage/group-rows.js';
import type { Subject } from '../subjects.js';

/** An event of a subject at which a requirement may be due. */
export interface SubjectEvent {
  readonly kind: DueEvent;
  readonly at: Date;
  /** What was done from here on was done at the event: since its removal, for a shop visit; else since that day began. */
  readonly metFrom: Date;
}

/** The events of subjects by their ids, in order; a constant number of statements. */
export async function loadEvents(
  tx: Tx,
  operatorId: number,
  subjects: readonly Subject[],
  at: Date | null,
): Promise<ReadonlyMap<string, readonly SubjectEvent[]>> {
  if (subjects.length === 0) return new Map();
  const of = (kind: Subject['kind']) =>
    subjects.filter((subject) => subject.kind === kind).map(({ id }) => id);
  const rows = await tx.$queryRaw<{ subjectId: string; kind: DueEvent; at: Date; metFrom: Date }[]>`
    WITH slotted AS (
      SELECT st.component_id AS subject_id, st.from_at, st.to_at FROM stay st
       WHERE st.operator_id = ${operatorId}::int AND st.component_id = ANY (${of('component')}::uuid[])
         AND st.slot_id IS NOT NULL AND st.voided_seq IS NULL
      UNION ALL
      SELECT p.id, st.from_at, st.to_at FROM position p
        JOIN slot s ON s.operator_id = p.operator_id AND s.position_id = p.id AND s.kind = p.kind
        JOIN stay st ON st.operator_id = s.operator_id AND st.slot_id = s.id AND st.voided_seq IS NULL
       WHERE p.operator_id = ${operatorId}::int AND p.id = ANY (${of('position')}::uuid[])
    ), hung AS (
      SELECT a.id AS subject_id, a.id AS airframe_id, '-infinity'::timestamptz AS from_at, NULL::timestamptz AS to_at
        FROM airframe a WHERE a.operator_id = ${operatorId}::int AND a.id = ANY (${of('airframe')}::uuid[])
      UNION ALL
      SELECT p.id, p.airframe_id, '-infinity', NULL FROM position p
       WHERE p.operator_id = ${operatorId}::int AND p.id = ANY (${of('position')}::uuid[])
      UNION ALL
      SELECT e.component_id, c.airframe_id, e.from_at, e.to_at FROM exposure e
        JOIN carrier c ON c.operator_id = e.operator_id AND c.id = e.carrier_id
       WHERE e.operator_id = ${operatorId}::int AND e.component_id = ANY (${of('component')}::uuid[])
         AND c.airframe_id IS NOT NULL
    ), event AS (
      SELECT s.subject_id, 'installation' AS kind, s.from_at AS at, date_trunc('day', s.from_at, 'UTC') AS met_from FROM slotted s
      UNION ALL
      SELECT s.subject_id, 'removal', s.to_at, date_trunc('day', s.to_at, 'UTC') FROM slotted s WHERE s.to_at IS NOT NULL
      UNION ALL
      SELECT r.component_id, 'shop-visit', r.at,
             date_trunc('day', coalesce((SELECT max(s.to_at) FROM slotted s WHERE s.subject_id = r.component_id AND s.to_at <= r.at), r.at), 'UTC')
        FROM reset r WHERE r.operator_id = ${operatorId}::int AND r.voided_seq IS NULL
         AND r.component_id = ANY (${of('component')}::uuid[])
      UNION ALL
      SELECT DISTINCT h.subject_id, o.kind, o.at, date_trunc('day', o.at, 'UTC') FROM hung h
        JOIN occurrence o ON o.operator_id = ${operatorId}::int AND o.airframe_id = h.airframe_id AND o.voided_seq IS NULL
         AND o.at >= h.from_at AND (h.to_at IS NULL OR o.at <= h.to_at)
    )
    SELECT subject_id AS "subjectId", kind, at, met_from AS "metFrom" FROM event
     WHERE ${at}::timestamptz IS NULL OR at <= ${at}::timestamptz ORDER BY at`;
  return groupRows(rows, (row) => row.subjectId);
}

/** The first event of a kind after an instant (null: ever) that what was done last did not meet; null: none. Total. */
export function unmetEvent(
  events: readonly SubjectEvent[],
  kind: DueEvent | null,
  { since, lastDoneAt }: { readonly since: Date | null; readonly lastDoneAt: Date | null },
): SubjectEvent | null {
  const found = events.find(
    (event) =>
      event.kind === kind &&
      (since === null || event.at > since) &&
      (lastDoneAt === null || lastDoneAt < event.metFrom),
  );
  return found ?? null;
}
