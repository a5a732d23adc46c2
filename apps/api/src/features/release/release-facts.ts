import type { LoggedLeg } from '@strutbook/domain/release/snapshot.js';
import type { AccountableItem } from '@strutbook/domain/work/step.js';
import type { Tx } from '../../platform/database/database.js';
import { Prisma } from '../../platform/database/generated/client.js';
import { orNotFound } from '../../platform/problems/refusal.error.js';
import type { StepRow } from '../../records/work/kept-step.js';
import { entryJson, SIGNATURE_JSON } from '../../records/work/kept-step.sql.js';

interface Named {
  readonly id: string;
  readonly serial: string;
}

/** The place of a change or an order. */
export interface PlaceRow {
  readonly slotId: string;
  readonly slotKind: string;
  readonly slotName: string;
  readonly position: number | null;
  /** Serial number of the component whose slot it is; null for a slot of a position. */
  readonly parent: string | null;
}

/** A change the package made, as the statement gives it. */
export interface ChangeRow extends PlaceRow {
  readonly off: Named | null;
  readonly on: Named | null;
  readonly at: string;
  readonly reason: string;
  readonly counters: string;
}

/** An order of the package with what is in its slot now. */
export interface OrderRow extends PlaceRow {
  readonly id: string;
  readonly outgoing: Named | null;
  readonly incoming: Named | null;
  readonly installed: Named | null;
}

/** What somebody may sign, from a day to a day. */
export interface AuthorisationRow {
  readonly personId: string;
  readonly scope: string;
  readonly typeId: string | null;
  readonly fromOn: string;
  readonly toOn: string | null;
  readonly reference: string;
}

/** Everything the check of a package looks at but the lives and the requirements. */
export interface ReleaseFacts {
  readonly id: string;
  readonly number: string;
  readonly kind: string;
  readonly title: string;
  readonly reference: string | null;
  readonly status: string;
  readonly version: number;
  readonly ruleSet: string | null;
  /** The airframe it is on, or that its component hangs on. */
  readonly airframe: {
    readonly id: string;
    readonly registration: string;
    readonly serial: string;
    readonly ruleSet: string;
    readonly typeId: string;
    readonly type: string;
  } | null;
  readonly component: {
    readonly id: string;
    readonly kind: string;
    readonly serial: string;
    readonly partNumber: string;
    readonly description: string;
  } | null;
  readonly procedure: {
    readonly code: string;
    readonly revision: string;
    readonly document: string;
    readonly documentRevision: string;
  } | null;
  readonly items: readonly AccountableItem[];
  readonly steps: readonly StepRow[];
  readonly changes: readonly ChangeRow[];
  readonly orders: readonly OrderRow[];
  readonly calibrations: readonly {
    readonly toolId: string;
    readonly calibratedOn: string;
    readonly dueOn: string;
  }[];
  readonly authorisations: readonly AuthorisationRow[];
  readonly flights: readonly LoggedLeg[];
}

// The last flights of the log, in which a page or a station may be missing. Part of the text: the planner guesses what a
// limit it is not told might be, and would plan the statement anew each time.
const FLIGHTS_LOOKED_AT = Prisma.raw('100');
// A check looks at no picture.
const WITHOUT_PHOTO = entryJson('NULL');

// A place, of slot `s`, its position `p` and the component `parent`; and a component by its name in the statement.
const PLACE = Prisma.raw(
  `'slotId', s.id, 'slotKind', s.kind, 'slotName', s.name, 'position', p.number, 'parent', parent.serial_number`,
);
const named = (component: string) =>
  Prisma.raw(
    `CASE WHEN ${component}.id IS NULL THEN NULL ELSE json_build_object('id', ${component}.id, 'serial', ${component}.serial_number) END`,
  );

/**
 * Reads the package, its steps, entries, signatures, orders and changes, the calibrations of the tools used, what its
 * signers and `personId` may sign, and the last flights with the notes on their gaps, in one statement. Refuses: NOT_FOUND.
 */
export async function loadReleaseFacts(
  tx: Tx,
  operatorId: number,
  { packageId, personId }: { readonly packageId: string; readonly personId: string },
): Promise<ReleaseFacts> {
  const [row] = await tx.$queryRaw<ReleaseFacts[]>`/* planned once */
    WITH RECURSIVE work AS (
      SELECT * FROM work_package WHERE operator_id = ${operatorId}::int AND id = ${packageId}::uuid
    ), up AS (
      SELECT component_id AS id, NULL::uuid AS position_id, 0 AS depth FROM work WHERE component_id IS NOT NULL
      UNION ALL
      SELECT s.component_id, s.position_id, u.depth + 1 FROM up u
        JOIN stay st ON st.operator_id = ${operatorId}::int AND st.component_id = u.id AND st.voided_seq IS NULL AND st.to_at IS NULL
        JOIN slot s ON s.operator_id = st.operator_id AND s.id = st.slot_id
       WHERE u.depth < 8
    ), on_airframe AS (
      SELECT a.*, t.maker || ' ' || t.designation AS type FROM work w
        JOIN airframe a ON a.operator_id = w.operator_id AND a.id = coalesce(w.airframe_id,
          (SELECT p.airframe_id FROM up u JOIN position p ON p.operator_id = w.operator_id AND p.id = u.position_id))
        JOIN airframe_type t ON t.operator_id = a.operator_id AND t.id = a.airframe_type_id
    )
    SELECT w.id, w.number, w.kind, w.title, w.reference, w.status, w.version, w.rule_set AS "ruleSet",
      (SELECT json_build_object('id', a.id, 'registration', a.registration, 'serial', a.serial_number, 'ruleSet', a.rule_set,
          'typeId', a.airframe_type_id, 'type', a.type) FROM on_airframe a) AS airframe,
      (SELECT json_build_object('id', c.id, 'kind', c.kind, 'serial', c.serial_number, 'partNumber', c.part_number,
          'description', c.description) FROM component c
        WHERE c.operator_id = w.operator_id AND c.id = w.component_id) AS component,
      (SELECT json_build_object('code', p.code, 'revision', p.revision, 'document', p.document,
          'documentRevision', p.document_revision) FROM procedure p
        WHERE p.operator_id = w.operator_id AND p.id = w.procedure_id) AS procedure,
      coalesce((SELECT p.content::json -> 'items' FROM procedure p
        WHERE p.operator_id = w.operator_id AND p.id = w.procedure_id), '[]') AS items,
      coalesce((SELECT json_agg(json_build_object('id', ws.id, 'packageId', ws.package_id, 'version', ws.version,
          'contentHash', encode(ws.content_hash, 'hex'), 'definition', ws.definition,
          'entries', coalesce(entries.of, '[]'), 'signatures', coalesce(signatures.of, '[]')) ORDER BY ws.number)
        FROM work_step ws
        LEFT JOIN (SELECT e.step_id, json_agg(${WITHOUT_PHOTO} ORDER BY e.recorded_seq, e.id) AS of
            FROM step_entry e LEFT JOIN tool t ON t.operator_id = e.operator_id AND t.id = e.tool_id
           WHERE e.operator_id = ${operatorId}::int AND e.package_id = ${packageId}::uuid AND e.voided_seq IS NULL
           GROUP BY e.step_id) entries ON entries.step_id = ws.id
        LEFT JOIN (SELECT ss.step_id, json_agg(${SIGNATURE_JSON} ORDER BY ss.recorded_seq, ss.id) AS of
            FROM step_signature ss JOIN signature s ON s.operator_id = ss.operator_id AND s.id = ss.signature_id
           WHERE ss.operator_id = ${operatorId}::int AND ss.package_id = ${packageId}::uuid
           GROUP BY ss.step_id) signatures ON signatures.step_id = ws.id
       WHERE ws.operator_id = w.operator_id AND ws.package_id = w.id), '[]') AS steps,
      coalesce((SELECT json_agg(json_build_object(${PLACE}, 'off', ${named('off')}, 'on', ${named('onto')},
          'at', to_char(pc.at AT TIME ZONE 'UTC', 'YYYY-MM-DD"T"HH24:MI"Z"'), 'reason', pc.reason, 'counters', pc.counters)
          ORDER BY pc.recorded_seq, pc.id)
        FROM package_change pc
        JOIN slot s ON s.operator_id = pc.operator_id AND s.id = pc.slot_id
        LEFT JOIN position p ON p.operator_id = s.operator_id AND p.id = s.position_id
        LEFT JOIN component parent ON parent.operator_id = s.operator_id AND parent.id = s.component_id
        LEFT JOIN component off ON off.operator_id = pc.operator_id AND off.id = pc.outgoing_id
        LEFT JOIN component onto ON onto.operator_id = pc.operator_id AND onto.id = pc.incoming_id
       WHERE pc.operator_id = w.operator_id AND pc.package_id = w.id), '[]') AS changes,
      coalesce((SELECT json_agg(json_build_object('id', o.id, ${PLACE}, 'outgoing', ${named('off')}, 'incoming', ${named('onto')},
          'installed', ${named('there')})
          ORDER BY o.recorded_seq, o.id)
        FROM ordered_change o
        JOIN slot s ON s.operator_id = o.operator_id AND s.id = o.slot_id
        LEFT JOIN position p ON p.operator_id = s.operator_id AND p.id = s.position_id
        LEFT JOIN component parent ON parent.operator_id = s.operator_id AND parent.id = s.component_id
        LEFT JOIN component off ON off.operator_id = o.operator_id AND off.id = o.outgoing_id
        LEFT JOIN component onto ON onto.operator_id = o.operator_id AND onto.id = o.incoming_id
        LEFT JOIN stay st ON st.operator_id = o.operator_id AND st.slot_id = o.slot_id AND st.voided_seq IS NULL AND st.to_at IS NULL
        LEFT JOIN component there ON there.operator_id = st.operator_id AND there.id = st.component_id
       WHERE o.operator_id = w.operator_id AND o.package_id = w.id AND o.voided_seq IS NULL), '[]') AS orders,
      coalesce((SELECT json_agg(json_build_object('toolId', k.tool_id, 'calibratedOn', k.calibrated_on, 'dueOn', k.due_on)
          ORDER BY k.calibrated_on, k.recorded_seq)
        FROM tool_calibration k
       WHERE k.operator_id = w.operator_id AND k.voided_seq IS NULL AND k.tool_id IN (SELECT e.tool_id FROM step_entry e
              WHERE e.operator_id = w.operator_id AND e.package_id = w.id AND e.voided_seq IS NULL)), '[]') AS calibrations,
      coalesce((SELECT json_agg(json_build_object('personId', g.person_id, 'scope', g.scope, 'typeId', g.airframe_type_id,
          'fromOn', g.from_on, 'toOn', g.to_on, 'reference', g.reference) ORDER BY g.person_id, g.scope, g.from_on, g.id)
        FROM authorisation g
       WHERE g.operator_id = w.operator_id AND g.voided_seq IS NULL AND (g.person_id = ${personId}::uuid OR g.person_id IN (
             SELECT s.person_id FROM step_signature ss JOIN signature s ON s.operator_id = ss.operator_id AND s.id = ss.signature_id
              WHERE ss.operator_id = w.operator_id AND ss.package_id = w.id AND ss.voided_seq IS NULL))), '[]') AS authorisations,
      coalesce((SELECT json_agg(json_build_object('flightId', f.id, 'page', f.log_page, 'from', f.from_station, 'to', f.to_station,
          'takeOffAt', (extract(epoch FROM f.take_off_at) / 60)::int, 'landingAt', (extract(epoch FROM f.landing_at) / 60)::int,
          'notes', coalesce((SELECT json_agg(json_build_object('kind', n.kind, 'before', n.before, 'after', n.after, 'note', n.note,
              'voided', false) ORDER BY n.kind) FROM gap_note n
            WHERE n.operator_id = f.operator_id AND n.flight_id = f.id AND n.voided_seq IS NULL), '[]'))
          ORDER BY f.landing_at)
        FROM (SELECT * FROM flight l WHERE l.operator_id = ${operatorId}::int AND l.voided_seq IS NULL
                 AND l.airframe_id = (SELECT a.id FROM on_airframe a)
               ORDER BY l.landing_at DESC LIMIT ${FLIGHTS_LOOKED_AT}) f), '[]') AS flights
    FROM work w`;
  return orNotFound(row, 'package');
}
