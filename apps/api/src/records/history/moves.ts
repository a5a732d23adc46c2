import type { Tx } from '../../platform/database/database.js';
import { KIND_WORDS } from './subject.js';
import { placedInWords, precisionOf, type RecordedRow } from './tellable.js';

interface MoveRow {
  id: string;
  fromAt: Date;
  fromKind: string;
  fromText: string | null;
  toAt: Date | null;
  toKind: string | null;
  toText: string | null;
  reason: string | null;
  endReason: string | null;
  recordedSeq: bigint;
  endedSeq: bigint | null;
  voidedSeq: bigint | null;
  voidReason: string | null;
  componentKind: string;
  serialNumber: string;
  slotName: string | null;
  slotKind: string | null;
  positionNumber: number | null;
  registration: string | null;
  parentKind: string | null;
  parentSerial: string | null;
  location: string | null;
}

/** Where a component came to and left, voided stays included. */
export async function componentMoves(
  tx: Tx,
  operatorId: number,
  componentId: string,
): Promise<RecordedRow[]> {
  const rows = await movesWhere(tx, operatorId, { componentId, airframeId: null });
  return rows.flatMap((row) => {
    const place = placeOf(row);
    const inSlot = row.location === null;
    return told(row, {
      came: inSlot ? 'Installed' : 'Placed',
      went: inSlot ? 'Removed' : 'Left',
      cameDetail: inSlot ? `At ${place}` : `In ${place}`,
      wentDetail: `From ${place}`,
      place,
    });
  });
}

/** What came to the positions of an airframe and left them, voided stays included. */
export async function airframeMoves(tx: Tx, operatorId: number, airframeId: string): Promise<RecordedRow[]> {
  const rows = await movesWhere(tx, operatorId, { componentId: null, airframeId });
  return rows.flatMap((row) => {
    const what = `${KIND_WORDS[row.componentKind] ?? row.componentKind} ${row.serialNumber}`;
    const place = `position ${row.positionNumber}`;
    return told(row, {
      came: 'Installed',
      went: 'Removed',
      cameDetail: `${what} at ${place}`,
      wentDetail: `${what} from ${place}`,
      place,
    });
  });
}

interface MoveWords {
  readonly came: string;
  readonly went: string;
  readonly cameDetail: string;
  readonly wentDetail: string;
  readonly place: string;
}

function told(row: MoveRow, words: MoveWords): RecordedRow[] {
  const { voidedSeq, voidReason } = row;
  const came: RecordedRow = {
    id: `${row.id} from`,
    at: row.fromAt,
    precision: precisionOf(row.fromKind),
    placed: placedInWords(row.fromKind, row.fromText),
    recordedSeq: row.recordedSeq,
    voidedSeq,
    voidReason,
    title: words.came,
    detail: withReason(words.cameDetail, row.reason),
    event: { kind: 'installed', place: words.place, counters: null },
  };
  if (row.toAt === null) return [came];
  const went: RecordedRow = {
    id: `${row.id} to`,
    at: row.toAt,
    precision: precisionOf(row.toKind),
    placed: placedInWords(row.toKind, row.toText),
    recordedSeq: row.endedSeq ?? row.recordedSeq,
    voidedSeq,
    voidReason,
    title: words.went,
    detail: withReason(words.wentDetail, row.endReason),
    event: { kind: 'removed', place: words.place, reason: row.endReason, counters: null },
  };
  return [came, went];
}

function withReason(text: string, reason: string | null): string {
  return reason === null ? text : `${text}; ${reason}`;
}

function placeOf(row: MoveRow): string {
  if (row.location !== null) return row.location;
  if (row.registration !== null) return `position ${row.positionNumber} of ${row.registration}`;
  return `${row.slotName ?? row.slotKind} of ${(KIND_WORDS[row.parentKind ?? ''] ?? '').toLowerCase()} ${row.parentSerial}`;
}

function movesWhere(
  tx: Tx,
  operatorId: number,
  { componentId, airframeId }: { readonly componentId: string | null; readonly airframeId: string | null },
): Promise<MoveRow[]> {
  return tx.$queryRaw<MoveRow[]>`
    SELECT st.id, st.from_at AS "fromAt", st.from_kind AS "fromKind", st.from_text AS "fromText", st.to_at AS "toAt",
           st.to_kind AS "toKind", st.to_text AS "toText", st.reason, st.end_reason AS "endReason",
           st.recorded_seq AS "recordedSeq", st.ended_seq AS "endedSeq", st.voided_seq AS "voidedSeq",
           st.void_reason AS "voidReason", c.kind AS "componentKind", c.serial_number AS "serialNumber",
           s.name AS "slotName", s.kind AS "slotKind", p.number AS "positionNumber", a.registration,
           parent.kind AS "parentKind", parent.serial_number AS "parentSerial", l.name AS location
      FROM stay st
      JOIN component c ON c.operator_id = st.operator_id AND c.id = st.component_id
      LEFT JOIN location l ON l.operator_id = st.operator_id AND l.id = st.location_id
      LEFT JOIN slot s ON s.operator_id = st.operator_id AND s.id = st.slot_id
      LEFT JOIN position p ON p.operator_id = s.operator_id AND p.id = s.position_id
      LEFT JOIN airframe a ON a.operator_id = p.operator_id AND a.id = p.airframe_id
      LEFT JOIN component parent ON parent.operator_id = s.operator_id AND parent.id = s.component_id
     WHERE st.operator_id = ${operatorId}::int
       AND (st.component_id = ${componentId}::uuid
            OR st.slot_id IN (SELECT own.id FROM slot own JOIN position at ON at.operator_id = own.operator_id AND at.id = own.position_id
                               WHERE own.operator_id = ${operatorId}::int AND at.airframe_id = ${airframeId}::uuid))`;
}
