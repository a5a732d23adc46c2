import {
  RUN_ON_RULES,
  type RunOnRule,
  TORQUE_UNITS,
  type TorqueUnit,
} from '@strutbook/domain/torque/torque.js';
import { Type } from 'class-transformer';
import {
  ArrayMaxSize,
  ArrayMinSize,
  ArrayUnique,
  IsArray,
  IsDefined,
  IsIn,
  IsOptional,
  Matches,
  MaxLength,
  ValidateNested,
} from 'class-validator';
import { IsText } from '../../../platform/http/field-forms.js';
import { CaptureDto } from './capture-base.dto.js';

const DECIMAL = /^\d{1,9}([.,]\d{1,9})?$/;
const asNumber = { context: { fix: 'Enter digits with at most one decimal mark, such as 105.0.' } };

/** What run-on torque does to the range, and the range it must lie in itself. */
export class RunOnDto {
  @IsIn(RUN_ON_RULES)
  rule!: RunOnRule;

  @IsOptional()
  @Matches(DECIMAL, asNumber)
  low!: string | null;

  @IsOptional()
  @Matches(DECIMAL, asNumber)
  high!: string | null;
}

/** A torque to be reached at each point, in the order of the points. */
export class TorqueCaptureDto extends CaptureDto {
  @IsIn(['torque'])
  declare kind: 'torque';

  /** The fasteners in the order they are torqued. */
  @IsArray()
  @ArrayMinSize(1)
  @ArrayMaxSize(60)
  @ArrayUnique()
  @IsText({ each: true })
  @MaxLength(20, { each: true })
  points!: string[];

  /** The approved range at the fastener, bounds included. */
  @Matches(DECIMAL, asNumber)
  low!: string;

  @Matches(DECIMAL, asNumber)
  high!: string;

  @IsIn(TORQUE_UNITS)
  unit!: TorqueUnit;

  @IsIn(['dry', 'lubricated'])
  thread!: 'dry' | 'lubricated';

  @IsDefined()
  @ValidateNested()
  @Type(() => RunOnDto)
  runOn!: RunOnDto;

  /** What acceptance is judged on. */
  @IsIn(['range', 'window'])
  binds!: 'range' | 'window';
}
