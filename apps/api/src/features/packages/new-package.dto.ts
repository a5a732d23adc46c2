import { Type } from 'class-transformer';
import { ArrayMaxSize, IsArray, IsIn, IsOptional, IsUUID, MaxLength, ValidateNested } from 'class-validator';
import { IsText } from '../../platform/http/field-forms.js';
import { PACKAGE_KINDS, type PackageKind } from '../../records/work/package-head.js';
import { NewOrderDto } from '../../records/work/wire/order.dto.js';
import { OwnStepDto } from '../../records/work/wire/own-step.dto.js';

/** A requirement that the work is to meet, and what it is held against: exactly one of the three, or none for what the package is on. */
export class NewPackageRequirementDto {
  @IsUUID()
  requirementId!: string;

  @IsOptional()
  @IsUUID()
  airframeId?: string;

  @IsOptional()
  @IsUUID()
  positionId?: string;

  @IsOptional()
  @IsUUID()
  componentId?: string;
}

/** A package to be opened: on one airframe, or of one component. */
export class NewPackageDto {
  @IsIn(PACKAGE_KINDS)
  kind!: PackageKind;

  @IsText()
  @MaxLength(200)
  title!: string;

  /** The number of the order as the planner's papers have it. */
  @IsOptional()
  @IsText()
  @MaxLength(80)
  reference?: string;

  @IsOptional()
  @IsUUID()
  airframeId?: string;

  @IsOptional()
  @IsUUID()
  componentId?: string;

  /** The rule set a component is released under while it hangs on no airframe. */
  @IsOptional()
  @IsText()
  @MaxLength(40)
  ruleSet?: string;

  /** The revision of a procedure whose steps the package gets. */
  @IsOptional()
  @IsUUID()
  procedureId?: string;

  /** Steps that no procedure has, after those of the procedure. */
  @IsOptional()
  @IsArray()
  @ArrayMaxSize(100)
  @ValidateNested({ each: true })
  @Type(() => OwnStepDto)
  steps?: OwnStepDto[];

  /** What is to be changed; required for an engine change and a pod swap. */
  @IsOptional()
  @ValidateNested()
  @Type(() => NewOrderDto)
  order?: NewOrderDto;

  /** Requirements the work is to meet. */
  @IsOptional()
  @IsArray()
  @ArrayMaxSize(50)
  @ValidateNested({ each: true })
  @Type(() => NewPackageRequirementDto)
  requirements?: NewPackageRequirementDto[];
}

/** Why a package is given up. */
export class WithdrawPackageDto {
  @IsText()
  @MaxLength(400)
  reason!: string;
}
