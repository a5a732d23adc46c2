import { COUNTED, type CountCapture } from '@strutbook/domain/work/capture.js';
import { Type } from 'class-transformer';
import {
  ArrayMaxSize,
  ArrayMinSize,
  IsArray,
  IsBoolean,
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
import { CaptureDto, KEY } from './capture-base.dto.js';

const SIGNED = /^[-−]?\d{1,9}([.,]\d{1,9})?$/;
const asNumber = { context: { fix: 'Enter digits with at most one decimal mark, such as 1.5.' } };

/** A number of tags, blanks or tools that went out or came back. */
export class CountCaptureDto extends CaptureDto {
  @IsIn(['count'])
  declare kind: 'count';

  @IsIn(COUNTED)
  what!: CountCapture['what'];

  @IsIn(['out', 'in'])
  direction!: 'out' | 'in';
}

/** The serial that comes off. */
export class ComponentOffCaptureDto extends CaptureDto {
  @IsIn(['component-off'])
  declare kind: 'component-off';
}

/** The serial that goes on. */
export class ComponentOnCaptureDto extends CaptureDto {
  @IsIn(['component-on'])
  declare kind: 'component-on';
}

/** The plate of what is to be fitted against its release document. */
export class PapersCaptureDto extends CaptureDto {
  @IsIn(['papers'])
  declare kind: 'papers';
}

/** A look for leaks. */
export class LeakCheckCaptureDto extends CaptureDto {
  @IsIn(['leak-check'])
  declare kind: 'leak-check';

  /** The shortest time, in whole minutes. */
  @IsInt()
  @Min(1)
  @Max(600)
  minMinutes!: number;

  /** The power the data asks for. */
  @IsText()
  @MaxLength(60)
  power!: string;
}

/** One instrument of a run; bounds included, null where the data sets none. */
export class ReadingRowDto {
  @Matches(KEY)
  @MaxLength(60)
  key!: string;

  @IsText()
  @MaxLength(120)
  label!: string;

  @IsText()
  @MaxLength(20)
  unit!: string;

  @IsOptional()
  @Matches(SIGNED, asNumber)
  low!: string | null;

  @IsOptional()
  @Matches(SIGNED, asNumber)
  high!: string | null;
}

/** The readings of a run, all at one time. */
export class ReadingsCaptureDto extends CaptureDto {
  @IsIn(['readings'])
  declare kind: 'readings';

  @IsArray()
  @ArrayMinSize(1)
  @ArrayMaxSize(40)
  @ValidateNested({ each: true })
  @Type(() => ReadingRowDto)
  rows!: ReadingRowDto[];
}

/** A text. */
export class TextCaptureDto extends CaptureDto {
  @IsIn(['text'])
  declare kind: 'text';

  @IsBoolean()
  required!: boolean;
}

/** A condition seen and confirmed. */
export class CheckCaptureDto extends CaptureDto {
  @IsIn(['check'])
  declare kind: 'check';
}

/** A picture. */
export class PhotoCaptureDto extends CaptureDto {
  @IsIn(['photo'])
  declare kind: 'photo';

  @IsBoolean()
  required!: boolean;
}
