import { Type } from 'class-transformer';
import { IsNotEmpty, IsOptional, IsString, IsUUID, MaxLength, ValidateNested } from 'class-validator';
import { BoundaryDto } from '../../platform/http/boundary.dto.js';
import { CounterFiguresDto } from '../../platform/http/counter-figures.dto.js';
import { ConsequencesDto } from '../../records/consequences/consequences.dto.js';

/** A component put to a place: into a slot, or to a location. */
export class PlacementDto {
  @IsUUID()
  componentId!: string;

  /** The slot it goes into; or else the location's name. */
  @IsOptional()
  @IsUUID()
  slotId?: string;

  /** The location it goes to. */
  @IsOptional()
  @IsString()
  @MaxLength(80)
  locationName?: string;

  /** When it came there. Its open stay ends then: at a location, or in another component when it goes to a location. */
  @ValidateNested()
  @Type(() => BoundaryDto)
  boundary!: BoundaryDto;

  /** When it left again, for a stay of the past. */
  @IsOptional()
  @ValidateNested()
  @Type(() => BoundaryDto)
  until?: BoundaryDto;

  @IsOptional()
  @IsString()
  @MaxLength(200)
  reason?: string;

  /** What the counter showed of an auxiliary power unit that comes to a position; asked of no other. */
  @IsOptional()
  @ValidateNested()
  @Type(() => CounterFiguresDto)
  counterReading?: CounterFiguresDto;

  /** What it showed when it left again. */
  @IsOptional()
  @ValidateNested()
  @Type(() => CounterFiguresDto)
  untilCounterReading?: CounterFiguresDto;
}

/** Why a record is voided; it stays to be seen. */
export class VoidReasonDto {
  @IsString()
  @IsNotEmpty()
  @MaxLength(200)
  reason!: string;
}

/** The stay a placement recorded. */
export class PlacedStayDto {
  id!: string;
  componentId!: string;
  /** The instant its beginning means. */
  at!: string;
  precision!: 'minute' | 'page' | 'day';
  /** The stay that ended by it, if any. */
  endedStayId!: string | null;
  consequences!: ConsequencesDto;
}

/** The stay that was voided. */
export class VoidedStayDto {
  id!: string;
  componentId!: string;
  consequences!: ConsequencesDto;
}
