import { Type } from 'class-transformer';
import { IsIn, IsInt, IsOptional, IsUUID, Max, Min } from 'class-validator';
import { CountersDto } from '../../platform/http/counters.dto.js';
import { PACKAGE_KINDS, type PackageKind, type PackageStatus } from '../../records/work/package-head.js';
import { OrderDto } from '../../records/work/wire/order.dto.js';

/** Which packages. */
export class PackagesQueryDto {
  @IsOptional()
  @IsUUID()
  airframeId?: string;

  /** Packages of this component itself. */
  @IsOptional()
  @IsUUID()
  componentId?: string;

  @IsOptional()
  @IsIn(PACKAGE_KINDS)
  kind?: PackageKind;

  @IsOptional()
  @IsIn(['open', 'released', 'withdrawn'])
  status?: PackageStatus;

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

/** A component as a package names it. */
export class PackageComponentDto {
  id!: string;
  kind!: string;
  serialNumber!: string;
  partNumber!: string;
  description!: string;
}

/** How many steps there are, and how many are signed, and inspected where they ask for it. */
export class StepCountsDto {
  signed!: number;
  total!: number;
}

/** A package in the list. */
export class PackageRowDto {
  id!: string;
  number!: string;
  kind!: PackageKind;
  title!: string;
  status!: PackageStatus;
  openedAt!: string;
  /** What it is on; null for a package of a component. */
  airframe!: PackageAirframeDto | null;
  component!: PackageComponentDto | null;
  /** The place it changes, such as 'Position 3'; null where nothing is changed. */
  place!: string | null;
  /** The number of the order as the planner's papers have it. */
  reference!: string | null;
  /** None in a change logged as one act. */
  steps!: StepCountsDto;
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

/** The revision of a procedure whose steps the package has. */
export class PackageProcedureDto {
  id!: string;
  code!: string;
  revision!: string;
  title!: string;
  document!: string;
  documentRevision!: string;
}

/** A requirement the work is to meet, and what it is held against. */
export class PackageRequirementDto {
  id!: string;
  requirementId!: string;
  code!: string;
  title!: string;
  kind!: string;
  document!: string;
  revision!: string;
  subject!: string;
  airframeId!: string | null;
  positionId!: string | null;
  componentId!: string | null;
}

/** Why a package was withdrawn, by whom and when. */
export class PackageWithdrawalDto {
  person!: string;
  at!: string;
  reason!: string;
}

/** One package. */
export class PackageDto extends PackageRowDto {
  /** The code of the rule set it is released under. */
  ruleSet!: string;
  procedure!: PackageProcedureDto | null;
  /** What it is ordered to change; null where nothing is, and for a change logged as one act. */
  order!: OrderDto | null;
  requirements!: PackageRequirementDto[];
  changes!: PackageChangeDto[];
  release!: PackageReleaseDto | null;
  /** Null unless it is withdrawn. */
  withdrawal!: PackageWithdrawalDto | null;
}
