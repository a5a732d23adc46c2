import { IsOptional, IsUUID, Matches, MaxLength } from 'class-validator';
import { IsText } from '../../platform/http/field-forms.js';
import type { PackageKind, PackageStatus } from '../../records/work/package-head.js';
import { SentTyped, type SentTypedDto } from '../../records/work/wire/any-typed.js';
import { OrderDto } from '../../records/work/wire/order.dto.js';
import { AccountableItemDto, StepGroupDto } from '../../records/work/wire/procedure-content.dto.js';
import { StepDto } from '../../records/work/wire/step.dto.js';

/** The package that steps belong to. */
export class WorkPackageDto {
  id!: string;
  number!: string;
  kind!: PackageKind;
  title!: string;
  status!: PackageStatus;
  reference!: string | null;
  /** The code of the rule set it is released under. */
  ruleSet!: string;
  openedAt!: string;
  version!: number;
  airframe!: WorkAirframeDto | null;
  component!: WorkComponentDto | null;
  /** The revision of the procedure its steps were made from. */
  procedure!: WorkProcedureDto | null;
}

/** The airframe a package is on. */
export class WorkAirframeDto {
  id!: string;
  registration!: string;
}

/** The component a package is of. */
export class WorkComponentDto {
  id!: string;
  kind!: string;
  serialNumber!: string;
  partNumber!: string;
  description!: string;
}

/** The revision of a procedure. */
export class WorkProcedureDto {
  id!: string;
  code!: string;
  revision!: string;
  title!: string;
  document!: string;
  documentRevision!: string;
}

/** How many of a thing went out and came back; null while a count that is asked for is not there. */
export class CountAccountDto {
  what!: 'tags' | 'blanks' | 'tools';
  out!: number | null;
  in!: number | null;
}

/** The step that opened something. */
export class OpenedByDto {
  stepId!: string;
  number!: number;
  title!: string;
}

/** A thing that is open. */
export class OpenItemDto {
  item!: AccountableItemDto;
  openedBy!: OpenedByDto;
}

/** A package with its steps as they stand. */
export class WorkDto {
  package!: WorkPackageDto;
  order!: OrderDto | null;
  groups!: StepGroupDto[];
  items!: AccountableItemDto[];
  counts!: CountAccountDto[];
  openItems!: OpenItemDto[];
  steps!: StepDto[];
}

/** What was captured, exactly as typed. */
export class NewEntryDto {
  /** Key of the capture. */
  @IsText()
  @MaxLength(60)
  capture!: string;

  @SentTyped()
  typed!: SentTypedDto;

  /** The tool it was read with. */
  @IsOptional()
  @IsUUID()
  toolId?: string;
}

/** Which capture a picture is for, and its name. */
export class NewPhotoQueryDto {
  /** Key of the capture. */
  @IsText()
  @MaxLength(60)
  capture!: string;

  @IsText()
  @MaxLength(120)
  @Matches(/^[^/\\]+$/, { context: { fix: 'Give the name of the file without folders.' } })
  fileName!: string;
}

/** Why an entry is struck out. */
export class VoidEntryDto {
  @IsText()
  @MaxLength(400)
  reason!: string;
}

/** A step that waits for the person who asks. */
export class WaitingStepDto {
  id!: string;
  number!: number;
  title!: string;
  why!: 'to-do' | 'to-inspect' | 'rejected';
}

/** An open package with the steps in it that wait for the person who asks. */
export class WaitingPackageDto {
  id!: string;
  number!: string;
  kind!: PackageKind;
  title!: string;
  steps!: WaitingStepDto[];
}

/** What waits for the person who asks. */
export class MyWorkDto {
  packages!: WaitingPackageDto[];
}
