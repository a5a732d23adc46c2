import { ceil } from '@strutbook/domain/units/fraction.js';
import type { Counters } from '@strutbook/domain/usage/since.js';
import { dayToWire, toWire } from '../../platform/http/instants.js';
import type { AirframeDto, PositionSlotDto } from './airframe.dto.js';
import type { AirframeTypeDto, TypePositionDto } from './airframe-type.dto.js';

interface PositionRow {
  readonly number: number;
  readonly kind: string;
  readonly mount: string;
  readonly label: string;
}

interface TypeRow {
  readonly id: string;
  readonly maker: string;
  readonly designation: string;
  readonly version: number;
  readonly typePositionByAirframeType: readonly PositionRow[];
}

interface AirframeRow {
  readonly id: string;
  readonly registration: string;
  readonly serialNumber: string;
  readonly airframeTypeId: string;
  readonly ruleSet: string;
  readonly dayZone: string;
  readonly owner: string;
  readonly lessor: string | null;
  readonly manufacturedOn: Date | null;
  readonly version: number;
  readonly airframeType: { readonly maker: string; readonly designation: string };
  readonly positionByAirframe: readonly (PositionRow & {
    readonly id: string;
    readonly slotByPosition: readonly { readonly id: string; readonly kind: string }[];
  })[];
}

/** What the clock of an airframe says now. */
export interface Flown {
  readonly counters: Counters | undefined;
  readonly lastLandingAt: Date | null;
}

// The database's checks let no other words through.
function positionToWire({ number, kind, mount, label }: PositionRow): TypePositionDto {
  return { number, kind: kind as TypePositionDto['kind'], mount: mount as TypePositionDto['mount'], label };
}

/** A type as the wire has it. Total. */
export function airframeTypeToWire(row: TypeRow): AirframeTypeDto {
  const { id, maker, designation, version } = row;
  return { id, maker, designation, version, positions: row.typePositionByAirframeType.map(positionToWire) };
}

/** An airframe as the wire has it. Total. */
export function airframeToWire(row: AirframeRow, { counters, lastLandingAt }: Flown): AirframeDto {
  const {
    id,
    registration,
    serialNumber,
    airframeTypeId,
    ruleSet,
    dayZone,
    owner,
    lessor,
    manufacturedOn,
    version,
  } = row;
  return {
    id,
    registration,
    serialNumber,
    airframeTypeId,
    type: `${row.airframeType.maker} ${row.airframeType.designation}`,
    ruleSet,
    dayZone,
    owner,
    lessor,
    manufacturedOn: manufacturedOn === null ? null : dayToWire(manufacturedOn),
    version,
    minutes: counters?.minutes ?? null,
    flights: counters?.cycles == null ? null : ceil(counters.cycles),
    lastLandingAt: lastLandingAt === null ? null : toWire(lastLandingAt),
    positions: row.positionByAirframe.map((position) => ({
      id: position.id,
      ...positionToWire(position),
      slots: position.slotByPosition.map((slot) => ({
        id: slot.id,
        kind: slot.kind as PositionSlotDto['kind'],
      })),
    })),
  };
}
