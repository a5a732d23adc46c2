import { Type } from 'class-transformer';
import {
  ArrayMaxSize,
  ArrayMinSize,
  IsArray,
  IsIn,
  IsInt,
  Max,
  MaxLength,
  Min,
  ValidateNested,
} from 'class-validator';
import { IsText } from '../../platform/http/field-forms.js';

/** A place for a powerplant on every airframe of a type. */
export class TypePositionDto {
  /** From the left outboard, beginning at 1; the auxiliary power unit's is 0. */
  @IsInt()
  @Min(0)
  @Max(12)
  number!: number;

  @IsIn(['engine', 'apu'])
  kind!: 'engine' | 'apu';

  @IsIn(['left-wing', 'right-wing', 'tail'])
  mount!: 'left-wing' | 'right-wing' | 'tail';

  @MaxLength(40)
  @IsText()
  label!: string;
}

/** A new type of airframe. */
export class NewAirframeTypeDto {
  @MaxLength(80)
  @IsText()
  maker!: string;

  @MaxLength(40)
  @IsText()
  designation!: string;

  @IsArray()
  @ArrayMinSize(1)
  @ArrayMaxSize(13)
  @ValidateNested({ each: true })
  @Type(() => TypePositionDto)
  positions!: TypePositionDto[];
}

/** A type of airframe and where its powerplants are mounted. */
export class AirframeTypeDto {
  id!: string;
  maker!: string;
  designation!: string;
  version!: number;
  positions!: TypePositionDto[];
}
