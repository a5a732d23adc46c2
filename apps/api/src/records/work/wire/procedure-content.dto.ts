import { POD_PLACES, type PodPlace } from '@strutbook/domain/work/step.js';
import { Type } from 'class-transformer';
import {
  ArrayMaxSize,
  ArrayMinSize,
  ArrayUnique,
  IsArray,
  IsIn,
  IsInt,
  IsOptional,
  Matches,
  Max,
  MaxLength,
  Min,
  ValidateNested,
} from 'class-validator';
import { IsText } from '../../../platform/http/field-forms.js';
import { KEY } from './capture-base.dto.js';
import { type AnyCaptureDto, EachCapture } from './each-capture.js';

const asKey = { context: { fix: 'Use small letters, digits and single hyphens, such as part-fuel-supply.' } };

/** A group of steps. */
export class StepGroupDto {
  @Matches(KEY, asKey)
  @MaxLength(60)
  key!: string;

  @Matches(/^[A-Z]{1,2}$/)
  letter!: string;

  @IsText()
  @MaxLength(120)
  title!: string;

  /** Which side of a change it belongs to. */
  @IsIn(['out', 'in', 'both'])
  lane!: 'out' | 'in' | 'both';

  /** Where on the powerplant it is. */
  @IsIn(POD_PLACES)
  place!: PodPlace;
}

/** A thing opened or parted in the work that must be closed or joined in it. */
export class AccountableItemDto {
  @Matches(KEY, asKey)
  @MaxLength(60)
  key!: string;

  @IsIn(['connection', 'cowl', 'panel', 'safety'])
  kind!: 'connection' | 'cowl' | 'panel' | 'safety';

  @IsText()
  @MaxLength(120)
  name!: string;

  @IsOptional()
  @IsIn(['left', 'right'])
  side!: 'left' | 'right' | null;
}

/** The document and revision behind a step's numbers. */
export class StepSourceDto {
  @IsText()
  @MaxLength(200)
  document!: string;

  @IsText()
  @MaxLength(40)
  revision!: string;
}

/** One thing to do, as the approved data has it. */
export class StepDefinitionDto {
  @Matches(KEY, asKey)
  @MaxLength(60)
  key!: string;

  /** Its place in the order, from 1. */
  @IsInt()
  @Min(1)
  @Max(200)
  number!: number;

  /** The key of its group. */
  @Matches(KEY, asKey)
  @MaxLength(60)
  group!: string;

  /** One action, verb first. */
  @IsText()
  @MaxLength(300)
  title!: string;

  @IsOptional()
  @IsText({ lines: true })
  @MaxLength(2000)
  text!: string | null;

  /** Shown before the action. */
  @IsArray()
  @ArrayMaxSize(10)
  @IsText({ lines: true, each: true })
  @MaxLength(2000, { each: true })
  cautions!: string[];

  @IsOptional()
  @ValidateNested()
  @Type(() => StepSourceDto)
  source!: StepSourceDto | null;

  /** Keys of steps that come before. */
  @IsArray()
  @ArrayMaxSize(200)
  @ArrayUnique()
  @Matches(KEY, { each: true, ...asKey })
  waitsFor!: string[];

  @IsIn(['none', 'independent'])
  inspection!: 'none' | 'independent';

  @ArrayMaxSize(20)
  @EachCapture()
  captures!: AnyCaptureDto[];

  /** Keys of things it opens or parts. */
  @IsArray()
  @ArrayMaxSize(100)
  @ArrayUnique()
  @Matches(KEY, { each: true, ...asKey })
  opens!: string[];

  /** Keys of things it closes or joins. */
  @IsArray()
  @ArrayMaxSize(100)
  @ArrayUnique()
  @Matches(KEY, { each: true, ...asKey })
  closes!: string[];

  /** Signing it moves the component of the order. */
  @IsOptional()
  @IsIn(['removal', 'installation'])
  moves!: 'removal' | 'installation' | null;
}

/** What a procedure holds. */
export class ProcedureContentDto {
  @IsArray()
  @ArrayMinSize(1)
  @ArrayMaxSize(40)
  @ValidateNested({ each: true })
  @Type(() => StepGroupDto)
  groups!: StepGroupDto[];

  @IsArray()
  @ArrayMaxSize(200)
  @ValidateNested({ each: true })
  @Type(() => AccountableItemDto)
  items!: AccountableItemDto[];

  @IsArray()
  @ArrayMinSize(1)
  @ArrayMaxSize(200)
  @ValidateNested({ each: true })
  @Type(() => StepDefinitionDto)
  steps!: StepDefinitionDto[];
}
