import { IsIn, IsUUID, MaxLength } from 'class-validator';
import { IsInstantText, IsText } from '../../../platform/http/field-forms.js';

/** An event of an airframe at which a requirement may be due. */
export class NewOccurrenceDto {
  @IsUUID()
  airframeId!: string;

  @IsIn(['main-base-return'])
  kind!: 'main-base-return';

  @IsInstantText()
  at!: string;

  /** The papers that show it, such as the log page. */
  @MaxLength(300)
  @IsText()
  evidence!: string;
}

/** An event of an airframe as it was recorded. */
export class OccurrenceDto {
  id!: string;
  airframeId!: string;
  kind!: 'main-base-return';
  at!: string;
  evidence!: string;
  voided!: boolean;
  voidReason!: string | null;
}
