import { Type } from 'class-transformer';
import {
  IsIn,
  IsInt,
  IsNotEmpty,
  IsOptional,
  IsString,
  IsUUID,
  Length,
  Matches,
  Max,
  MaxLength,
  Min,
  ValidateNested,
} from 'class-validator';
import { BoundaryDto } from '../../platform/http/boundary.dto.js';
import { CounterFiguresDto } from '../../platform/http/counter-figures.dto.js';
import { CountersDto } from '../../platform/http/counters.dto.js';
import { ObjectionDto } from '../../platform/http/objection.dto.js';
import { ConsequencesDto } from '../../records/consequences/consequences.dto.js';

/** A change at a position: what comes off, what goes on, when and why. */
export class ChangeRequestDto {
  @IsUUID()
  airframeId!: string;

  /** The position's number; 0 is the auxiliary power unit. */
  @IsInt()
  @Min(0)
  @Max(8)
  positionNumber!: number;

  /** What is changed there. */
  @IsIn(['engine', 'pod', 'apu'])
  slot!: 'engine' | 'pod' | 'apu';

  /** The serial that comes off, as on the order; left out when the place is empty. */
  @IsOptional()
  @IsString()
  @MaxLength(40)
  outgoingSerial?: string | null;

  /** The serial that goes on; left out when the place stays empty. */
  @IsOptional()
  @IsString()
  @MaxLength(40)
  incomingSerial?: string | null;

  @ValidateNested()
  @Type(() => BoundaryDto)
  boundary!: BoundaryDto;

  /** Why it was changed. */
  @IsString()
  @IsNotEmpty()
  @MaxLength(200)
  reason!: string;

  /** The rating the incoming engine runs at from then on; left out, it keeps the one recorded. */
  @IsOptional()
  @IsString()
  @Length(1, 40)
  ratingCode?: string;

  /** The location the outgoing component goes to. */
  @IsOptional()
  @IsString()
  @MaxLength(80)
  removedToLocation?: string;

  /** What the counter of an outgoing auxiliary power unit showed; asked of no other. */
  @IsOptional()
  @ValidateNested()
  @Type(() => CounterFiguresDto)
  outgoingReading?: CounterFiguresDto;

  /** What the counter of an incoming auxiliary power unit showed; asked of no other. */
  @IsOptional()
  @ValidateNested()
  @Type(() => CounterFiguresDto)
  incomingReading?: CounterFiguresDto;
}

/** A change confirmed against what the preview showed. */
export class ConfirmedChangeDto extends ChangeRequestDto {
  /** The digest of the preview that was confirmed. */
  @Matches(/^[0-9a-f]{64}$/)
  confirmDigest!: string;
}

/** A component of a change with its counters at that instant. */
export class ChangedComponentDto {
  id!: string;
  serialNumber!: string;
  partNumber!: string;
  description!: string;
  sinceNew!: CountersDto;
  /** Since the installation that ends; null for what goes on. */
  sinceInstalled!: CountersDto | null;
}

/** What the change would record: counters computed, objections told. */
export class ChangePreviewDto {
  /** The instant the boundary means. */
  at!: string;
  /** How exactly it is known: minute, page or day. */
  precision!: 'minute' | 'page' | 'day';
  outgoing!: ChangedComponentDto | null;
  incoming!: ChangedComponentDto | null;
  /** The rating the incoming engine will run at; null when none is recorded. */
  ratingCode!: string | null;
  objections!: ObjectionDto[];
  /** Send it back to confirm exactly this. */
  digest!: string;
}

/** The package a change was recorded as. */
export class RecordedChangeDto {
  /** The package's id. */
  id!: string;
  number!: string;
  kind!: 'engine-change' | 'pod-swap';
  version!: number;
  at!: string;
  objections!: ObjectionDto[];
  consequences!: ConsequencesDto;
}
