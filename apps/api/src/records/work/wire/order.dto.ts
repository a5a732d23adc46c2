import { IsIn, IsInt, IsOptional, IsUUID, Max, MaxLength, Min } from 'class-validator';
import { IsText } from '../../../platform/http/field-forms.js';

/** What a package is to change: where, what comes off, what goes on, and why. */
export class NewOrderDto {
  /** The place, for one inside a component; else the position and what is changed there. */
  @IsOptional()
  @IsUUID()
  slotId?: string;

  /** The position's number; 0 is the auxiliary power unit. */
  @IsOptional()
  @IsInt()
  @Min(0)
  @Max(8)
  positionNumber?: number;

  /** What is changed at the position. */
  @IsOptional()
  @IsIn(['engine', 'pod', 'apu'])
  slot?: 'engine' | 'pod' | 'apu';

  /** The serial that comes off; left out when the place is empty. */
  @IsOptional()
  @IsText()
  @MaxLength(40)
  outgoingSerial?: string | null;

  /** The serial that goes on; left out when the place stays empty. */
  @IsOptional()
  @IsText()
  @MaxLength(40)
  incomingSerial?: string | null;

  /** The rating an incoming engine runs at from then on; left out, it keeps the one recorded. */
  @IsOptional()
  @IsText()
  @MaxLength(40)
  ratingCode?: string | null;

  /** The location the outgoing component goes to. */
  @IsOptional()
  @IsText()
  @MaxLength(80)
  removedToLocation?: string | null;

  /** Why it is changed. */
  @IsText()
  @MaxLength(200)
  reason!: string;
}

/** A component as an order names it. */
export class OrderedComponentDto {
  id!: string;
  kind!: string;
  serialNumber!: string;
  partNumber!: string;
  description!: string;
  /** Where the register has it now. */
  place!: string;
}

/** What a package is ordered to change. */
export class OrderDto {
  id!: string;
  slotId!: string;
  slot!: string;
  /** The name of the place. */
  slotName!: string;
  positionId!: string | null;
  /** Null for a place inside a component. */
  positionNumber!: number | null;
  outgoing!: OrderedComponentDto | null;
  incoming!: OrderedComponentDto | null;
  ratingCode!: string | null;
  removedToLocation!: string | null;
  reason!: string;
  /** Who confirmed it when it was amended. */
  confirmedBy!: string | null;
}
