import { ApiProperty } from '@nestjs/swagger';
import { TORQUE_UNITS, type TorqueUnit } from '@strutbook/domain/torque/torque.js';
import { Type } from 'class-transformer';
import { IsBoolean, IsIn, IsOptional, MaxLength, ValidateNested } from 'class-validator';
import { CAPTURE_KINDS } from './capture-base.dto.js';
import { IsTyped, IsTypedValues } from './typed-forms.js';

/** What every typed entry has; one of an unknown kind has no more. */
export class TypedDto {
  @IsIn(CAPTURE_KINDS)
  kind!: string;
}

/** An extension or adapter on a wrench; lengths in one unit, the angle in degrees. */
export class ExtensionTypedDto {
  @IsTyped()
  @MaxLength(40)
  wrenchLength!: string;

  @IsTyped()
  @MaxLength(40)
  length!: string;

  @IsTyped()
  @MaxLength(40)
  angle!: string;
}

/** What the wrench showed or was set to, as typed. */
export class TorqueTypedDto extends TypedDto {
  @IsIn(['torque'])
  declare kind: 'torque';

  /** The fastener. */
  @IsTyped()
  @MaxLength(20)
  point!: string;

  @IsTyped()
  @MaxLength(40)
  indication!: string;

  @IsIn(TORQUE_UNITS)
  unit!: TorqueUnit;

  @IsIn(['set-value', 'reading'])
  method!: 'set-value' | 'reading';

  /** Run-on torque in the same unit; null where none was measured. */
  @IsOptional()
  @IsTyped()
  @MaxLength(40)
  runOn!: string | null;

  @IsOptional()
  @ValidateNested()
  @Type(() => ExtensionTypedDto)
  extension!: ExtensionTypedDto | null;
}

/** A number of tags, blanks or tools. */
export class CountTypedDto extends TypedDto {
  @IsIn(['count'])
  declare kind: 'count';

  @IsTyped()
  @MaxLength(40)
  number!: string;
}

/** A serial read from a plate, and where the person stands. */
class PlateTypedDto extends TypedDto {
  @IsTyped()
  @MaxLength(60)
  serialNumber!: string;

  @IsOptional()
  @IsTyped()
  @MaxLength(60)
  partNumber!: string | null;

  /** Null for a place inside a component. */
  @IsOptional()
  @IsTyped()
  @MaxLength(20)
  positionNumber!: string | null;
}

/** The serial that comes off. */
export class ComponentOffTypedDto extends PlateTypedDto {
  @IsIn(['component-off'])
  declare kind: 'component-off';
}

/** The serial that goes on. */
export class ComponentOnTypedDto extends PlateTypedDto {
  @IsIn(['component-on'])
  declare kind: 'component-on';
}

/** A plate against its release document. */
export class PapersTypedDto extends TypedDto {
  @IsIn(['papers'])
  declare kind: 'papers';

  @IsTyped()
  @MaxLength(60)
  plateSerial!: string;

  @IsTyped({ empty: true })
  @MaxLength(60)
  documentSerial!: string;

  @IsTyped({ empty: true })
  @MaxLength(60)
  documentNumber!: string;

  @IsIn(['serviceable', 'unserviceable'])
  tag!: 'serviceable' | 'unserviceable';
}

/** A look for leaks. */
export class LeakCheckTypedDto extends TypedDto {
  @IsIn(['leak-check'])
  declare kind: 'leak-check';

  @IsTyped({ empty: true })
  @MaxLength(40)
  minutes!: string;

  @IsTyped({ empty: true })
  @MaxLength(60)
  power!: string;

  @IsIn(['none', 'leak'])
  found!: 'none' | 'leak';
}

/** The readings of a run by their keys. */
export class ReadingsTypedDto extends TypedDto {
  @IsIn(['readings'])
  declare kind: 'readings';

  @ApiProperty({ type: 'object', additionalProperties: { type: 'string', maxLength: 40 } })
  @IsTypedValues()
  values!: Record<string, string>;
}

/** A text. */
export class TextTypedDto extends TypedDto {
  @IsIn(['text'])
  declare kind: 'text';

  @IsTyped({ lines: true })
  @MaxLength(2000)
  text!: string;
}

/** A condition seen and confirmed. */
export class CheckTypedDto extends TypedDto {
  @IsIn(['check'])
  declare kind: 'check';

  @IsBoolean()
  seen!: boolean;
}

/** A picture that was sent. */
export class PhotoTypedDto extends TypedDto {
  @IsIn(['photo'])
  declare kind: 'photo';

  fileName!: string;

  /** Of its bytes, hexadecimal. */
  sha256!: string;
}
