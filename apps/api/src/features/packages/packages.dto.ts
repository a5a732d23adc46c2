import { Type } from 'class-transformer';
import { IsIn, IsInt, IsOptional, IsUUID, Max, Min } from 'class-validator';
import { CountersDto } from '../../platform/http/counters.dto.js';

/** Which packages. */
export class PackagesQueryDto {
  @IsOptional()
  @IsUUID()
  airframeId?: string;

  @IsOptional()
  @IsIn(['open', 'released'])
  status?: 'open' | 'released';

  /** The 'next' of the page before. */
  @IsOptional()
  @IsUUID()
  after?: string;

  /** How many; 50 unless told. */
  @IsOptional()
  @Type(() => Number)
  @IsInt()
  @Min(1)
  @Max(200)
  limit?: number;
}

/** An airframe as a package names it. */
export class PackageAirframeDto {
  id!: string;
  registration!: string;
}

/** A package in the list. */
export class PackageRowDto {
  id!: string;
  number!: string;
  kind!: 'engine-change' | 'pod-swap';
  title!: string;
  status!: 'open' | 'released';
  openedAt!: string;
  airframe!: PackageAirframeDto | null;
  /** The number of its release; null while it has none. */
  releaseNumber!: string | null;
  version!: number;
}

/** A page of packages, the newest first. */
export class PackagesPageDto {
  rows!: PackageRowDto[];
  next!: string | null;
}

/** A component that a change moved, with its counters then. */
export class MovedComponentDto {
  id!: string;
  serialNumber!: string;
  partNumber!: string;
  sinceNew!: CountersDto | null;
  /** Since the installation that ended; null for what went on. */
  sinceInstalled!: CountersDto | null;
}

/** The position of a change. */
export class ChangePositionDto {
  id!: string;
  number!: number;
  label!: string;
}

/** What a package took off and put on. */
export class PackageChangeDto {
  /** Null for a change inside a component. */
  position!: ChangePositionDto | null;
  slot!: string;
  /** The name of the place. */
  slotName!: string;
  outgoing!: MovedComponentDto | null;
  incoming!: MovedComponentDto | null;
  at!: string;
  precision!: 'minute' | 'page' | 'day';
  /** The log page or the date the moment was told by; null when it is known to the minute. */
  placed!: string | null;
  reason!: string;
}

/** The release of a package, in short. */
export class PackageReleaseDto {
  id!: string;
  number!: string;
  signedAt!: string;
  person!: string;
  licence!: string | null;
}

/** One package. */
export class PackageDto {
  id!: string;
  number!: string;
  kind!: 'engine-change' | 'pod-swap';
  title!: string;
  status!: 'open' | 'released';
  openedAt!: string;
  airframe!: PackageAirframeDto | null;
  changes!: PackageChangeDto[];
  release!: PackageReleaseDto | null;
  version!: number;
}
