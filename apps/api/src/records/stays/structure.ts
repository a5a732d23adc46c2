import { Injectable } from '@nestjs/common';
import type { Tx } from '../../platform/database/database.js';
import {
  FILLED_SLOTS,
  type FilledSlot,
  filledBeneath,
  filledSlots,
  inEngine,
  namedComponents,
  type SlotColumns,
} from './structure.sql.js';

/** A slot of a position, and what was in it at the instant asked. */
export interface PositionSlot {
  readonly airframeId: string;
  readonly positionId: string;
  readonly number: number;
  readonly positionKind: string;
  readonly mount: string;
  readonly label: string;
  readonly slotId: string;
  readonly slotKind: string;
  readonly componentId: string | null;
  readonly stayId: string | null;
  readonly fromAt: Date | null;
  readonly fromKind: string | null;
  readonly emptySince: Date | null;
}

/** Where a component was at an instant. */
export interface WhereAt {
  readonly componentId: string;
  readonly stayId: string;
  readonly fromAt: Date;
  readonly fromKind: string;
  readonly slotId: string | null;
  readonly slotName: string | null;
  readonly parentId: string | null;
  readonly positionId: string | null;
  readonly airframeId: string | null;
  readonly locationId: string | null;
}

/** What is in what, now (null) or at an instant. */
@Injectable()
export class Structure {
  /** All slots beneath these components, parents before children, with what is in them. */
  async beneath(
    tx: Tx,
    operatorId: number,
    componentIds: readonly string[],
    at: Date | null,
  ): Promise<FilledSlot[]> {
    // As one text: hundreds of slots as rows would take longer to take in than to find.
    const [row] = await tx.$queryRaw<{ slots: string }[]>`/* planned once */
      WITH RECURSIVE ${filledBeneath({ operatorId, componentIds: namedComponents(componentIds), at })} SELECT ${FILLED_SLOTS}::text AS slots`;
    return row === undefined ? [] : filledSlots(JSON.parse(row.slots) as SlotColumns);
  }

  /** The slots of these airframes' positions (null: of all airframes) with what is in them. */
  async onAirframes(
    tx: Tx,
    operatorId: number,
    airframeIds: readonly string[] | null,
    at: Date | null,
  ): Promise<PositionSlot[]> {
    return tx.$queryRaw<PositionSlot[]>`/* planned once */
      SELECT p.airframe_id AS "airframeId", p.id AS "positionId", p.number, p.kind AS "positionKind", p.mount, p.label,
             s.id AS "slotId", s.kind AS "slotKind", st.component_id AS "componentId", st.id AS "stayId",
             st.from_at AS "fromAt", st.from_kind AS "fromKind",
             CASE WHEN st.id IS NULL THEN (SELECT max(gone.to_at) FROM stay gone
                WHERE gone.operator_id = s.operator_id AND gone.slot_id = s.id AND gone.voided_seq IS NULL
                  AND (${at}::timestamptz IS NULL OR gone.to_at <= ${at}::timestamptz)) END AS "emptySince"
        FROM position p
        JOIN slot s ON s.operator_id = p.operator_id AND s.position_id = p.id
        LEFT JOIN stay st ON st.operator_id = s.operator_id AND st.slot_id = s.id AND st.voided_seq IS NULL
         AND CASE WHEN ${at}::timestamptz IS NULL THEN st.to_at IS NULL
                  ELSE st.from_at <= ${at}::timestamptz AND (st.to_at IS NULL OR st.to_at > ${at}::timestamptz) END
       WHERE p.operator_id = ${operatorId}::int
         AND (${airframeIds === null}::boolean OR p.airframe_id = ANY (${[...(airframeIds ?? [])]}::uuid[]))
       ORDER BY p.airframe_id, p.number, s.kind`;
  }

  /** Where these components are, now (null) or at an instant; one that is nowhere is left out. */
  async whereAre(
    tx: Tx,
    operatorId: number,
    componentIds: readonly string[],
    at: Date | null,
  ): Promise<ReadonlyMap<string, WhereAt>> {
    const rows = await tx.$queryRaw<WhereAt[]>`
      SELECT st.component_id AS "componentId", st.id AS "stayId", st.from_at AS "fromAt", st.from_kind AS "fromKind",
             st.slot_id AS "slotId", s.name AS "slotName", s.component_id AS "parentId", s.position_id AS "positionId",
             p.airframe_id AS "airframeId", st.location_id AS "locationId"
        FROM stay st
        LEFT JOIN slot s ON s.operator_id = st.operator_id AND s.id = st.slot_id
        LEFT JOIN position p ON p.operator_id = s.operator_id AND p.id = s.position_id
       WHERE st.operator_id = ${operatorId}::int AND st.component_id = ANY (${[...componentIds]}::uuid[])
         AND st.voided_seq IS NULL
         AND CASE WHEN ${at}::timestamptz IS NULL THEN st.to_at IS NULL
                  ELSE st.from_at <= ${at}::timestamptz AND (st.to_at IS NULL OR st.to_at > ${at}::timestamptz) END`;
    return new Map(rows.map((row) => [row.componentId, row]));
  }

  /** For each component the engine it is in (itself, when it is one), now or at an instant; null when in none. */
  async engineOf(
    tx: Tx,
    operatorId: number,
    componentIds: readonly string[],
    at: Date | null,
  ): Promise<ReadonlyMap<string, string>> {
    const rows = await tx.$queryRaw<{ id: string; engineId: string }[]>`
      WITH RECURSIVE ${inEngine({ operatorId, componentIds: namedComponents(componentIds), at })} SELECT id, engine_id AS "engineId" FROM in_engine`;
    return new Map(rows.map((row) => [row.id, row.engineId]));
  }
}
