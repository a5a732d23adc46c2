import { Type } from 'class-transformer';
import {
  ArrayMaxSize,
  IsArray,
  IsBoolean,
  IsIn,
  IsInt,
  IsOptional,
  IsUUID,
  Max,
  MaxLength,
  Min,
  ValidateNested,
} from 'class-validator';
import { IsDayText, IsInstantText, IsText } from '../../platform/http/field-forms.js';

export const COMPONENT_KINDS = ['engine', 'module', 'part', 'pod', 'apu'] as const;
export type ComponentKind = (typeof COMPONENT_KINDS)[number];

/** A place in a new component that takes one module or part. */
export class NewSlotDto {
  @IsIn(['module', 'part'])
  kind!: 'module' | 'part';

  @MaxLength(80)
  @IsText()
  name!: string;

  /** Whether a part with a mandatory life belongs here: an empty place then blocks a release. */
  @IsBoolean()
  lifeLimited!: boolean;
}

/** A new component; its places come with it. */
export class NewComponentDto {
  @IsIn(COMPONENT_KINDS)
  kind!: 'engine' | 'module' | 'part' | 'pod' | 'apu';

  @MaxLength(80)
  @IsText()
  maker!: string;

  @MaxLength(60)
  @IsText()
  partNumber!: string;

  @MaxLength(60)
  @IsText()
  serialNumber!: string;

  @MaxLength(120)
  @IsText()
  description!: string;

  /** An engine's own model; for a module or part the model it belongs in. */
  @IsOptional()
  @IsUUID()
  engineModelId?: string | null;

  /** Whether the component has a mandatory life; not, unless told. */
  @IsOptional()
  @IsBoolean()
  lifeLimited?: boolean;

  /** For a pod: whether it counts the airframe's use or that of its position. */
  @IsOptional()
  @IsIn(['airframe', 'position'])
  podClock?: 'airframe' | 'position' | null;

  @MaxLength(120)
  @IsText()
  owner!: string;

  @IsOptional()
  @MaxLength(120)
  @IsText()
  lessor?: string | null;

  @IsOptional()
  @IsDayText()
  manufacturedOn?: string | null;

  /** From its papers, where it came here used: a calendar life may count from it. */
  @IsOptional()
  @IsDayText()
  firstInstalledOn?: string | null;

  @IsOptional()
  @IsArray()
  @ArrayMaxSize(200)
  @ValidateNested({ each: true })
  @Type(() => NewSlotDto)
  slots?: NewSlotDto[];
}

/** Asks for components, by serial number. */
export class ComponentsQueryDto {
  @IsOptional()
  @IsIn(COMPONENT_KINDS)
  kind?: 'engine' | 'module' | 'part' | 'pod' | 'apu';

  /** Part of a serial number or part number; capitals and small letters are the same. */
  @IsOptional()
  @MaxLength(60)
  @IsText()
  search?: string;

  /** Where the page before ended. */
  @IsOptional()
  @MaxLength(400)
  @IsText()
  after?: string;

  /** Rows a page, at most 200; 50 unless told. */
  @IsOptional()
  @Type(() => Number)
  @IsInt()
  @Min(1)
  @Max(200)
  limit?: number;
}

/** Asks for things as they were. */
export class AsOfQueryDto {
  /** As of this instant; now, unless told. */
  @IsOptional()
  @IsInstantText()
  at?: string;
}
