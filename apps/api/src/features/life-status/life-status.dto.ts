import { IsOptional } from 'class-validator';
import { IsInstantText } from '../../platform/http/field-forms.js';

/** As at when. */
export class LifeStatusQueryDto {
  /** 'YYYY-MM-DDTHH:MMZ', UTC; left out, it is now. */
  @IsOptional()
  @IsInstantText()
  at?: string;
}
