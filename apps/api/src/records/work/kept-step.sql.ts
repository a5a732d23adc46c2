import { Prisma } from '../../platform/database/generated/client.js';

/** A KeptEntry as JSON, its texts not yet read: of step_entry `e` and its tool `t`; `photoId` tells where its picture's id is from. */
export const entryJson = (photoId: string): Prisma.Sql =>
  Prisma.raw(`json_build_object('id', e.id, 'capture', e.capture, 'point', e.point, 'kind', e.kind,
    'typed', e.typed, 'judged', e.judged, 'tool', t.serial_number, 'toolId', e.tool_id, 'componentId', e.component_id,
    'personId', e.person_id, 'personName', e.person_name, 'voided', e.voided_seq IS NOT NULL, 'voidReason', e.void_reason,
    'photoId', ${photoId}, 'enteredAt', to_char(e.entered_at AT TIME ZONE 'UTC', 'YYYY-MM-DD"T"HH24:MI:SS.MS"Z"'))`);

/** A KeptSignature as JSON: of step_signature `ss` and its signature `s`. */
export const SIGNATURE_JSON: Prisma.Sql =
  Prisma.raw(`json_build_object('id', ss.id, 'meaning', ss.meaning, 'coversId', ss.covers_id,
    'contentHash', encode(ss.content_hash, 'hex'), 'personId', s.person_id, 'personName', s.person_name,
    'licence', s.licence, 'method', s.method, 'performedAt', (extract(epoch FROM ss.performed_at) / 60)::int,
    'signedAt', floor(extract(epoch FROM s.signed_at) / 60)::int, 'undone', ss.voided_seq IS NOT NULL,
    'undoneReason', ss.void_reason, 'reinspection', ss.reinspection_reason IS NOT NULL,
    'reinspectionReason', ss.reinspection_reason)`);
