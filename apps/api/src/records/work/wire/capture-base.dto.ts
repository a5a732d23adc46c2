import { IsIn, Matches, MaxLength } from 'class-validator';
import { IsText } from '../../../platform/http/field-forms.js';

export const CAPTURE_KINDS = [
  'torque',
  'count',
  'component-off',
  'component-on',
  'papers',
  'leak-check',
  'readings',
  'text',
  'check',
  'photo',
] as const;

/** A key as procedures use it: 'part-fuel-supply'. */
export const KEY = /^[a-z0-9]+(-[a-z0-9]+)*$/;

/** What every capture has; one of an unknown kind has no more. */
export class CaptureDto {
  @IsIn(CAPTURE_KINDS)
  kind!: string;

  /** Unique in its step. */
  @Matches(KEY, {
    context: { fix: 'Use small letters, digits and single hyphens, such as mount-bolts.' },
  })
  @MaxLength(60)
  key!: string;

  @IsText()
  @MaxLength(200)
  label!: string;
}
