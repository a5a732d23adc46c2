import { Type } from 'class-transformer';
import { IsDefined, IsIn, IsOptional, Matches, MaxLength, ValidateNested } from 'class-validator';
import { IsText } from '../../platform/http/field-forms.js';
import { PACKAGE_KINDS, type PackageKind } from '../../records/work/package-head.js';
import { ProcedureContentDto } from '../../records/work/wire/procedure-content.dto.js';

/** Which procedures. */
export class ProceduresQueryDto {
  @IsOptional()
  @IsIn(PACKAGE_KINDS)
  kind?: PackageKind;
}

/** A revision of a procedure; once recorded it stays as it is. */
export class NewProcedureDto {
  @Matches(/^[A-Z0-9]+([./-][A-Z0-9]+)*$/, {
    context: { fix: 'Use capital letters and digits, with points, strokes or hyphens between them.' },
  })
  @MaxLength(40)
  code!: string;

  @IsText()
  @MaxLength(20)
  revision!: string;

  @IsText()
  @MaxLength(200)
  title!: string;

  @IsIn(PACKAGE_KINDS)
  kind!: PackageKind;

  /** The approved data it is made from. */
  @IsText()
  @MaxLength(200)
  document!: string;

  @IsText()
  @MaxLength(40)
  documentRevision!: string;

  /** Designation of the type of airframe it is for; left out when it is for an engine model, or for any. */
  @IsOptional()
  @IsText()
  @MaxLength(100)
  airframeType?: string;

  /** Designation of the model of engine it is for; left out when it is for a type of airframe, or for any. */
  @IsOptional()
  @IsText()
  @MaxLength(100)
  engineModel?: string;

  @IsDefined()
  @ValidateNested()
  @Type(() => ProcedureContentDto)
  content!: ProcedureContentDto;
}

/** A procedure in the list. */
export class ProcedureRowDto {
  id!: string;
  code!: string;
  revision!: string;
  title!: string;
  kind!: PackageKind;
  document!: string;
  documentRevision!: string;
  /** Designation of the type of airframe it is for. */
  airframeType!: string | null;
  /** Designation of the model of engine it is for. */
  engineModel!: string | null;
  /** How many steps it has. */
  steps!: number;
  /** Whether no later revision of it is recorded. */
  latest!: boolean;
}

/** A procedure with its steps. */
export class ProcedureDto {
  id!: string;
  code!: string;
  revision!: string;
  title!: string;
  kind!: PackageKind;
  document!: string;
  documentRevision!: string;
  airframeType!: string | null;
  engineModel!: string | null;
  content!: ProcedureContentDto;
  /** SHA-256 of its content in canonical form, hexadecimal. */
  contentHash!: string;
}
