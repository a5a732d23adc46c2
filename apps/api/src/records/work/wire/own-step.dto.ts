import { ArrayMaxSize, IsIn, IsOptional, MaxLength } from 'class-validator';
import { IsText } from '../../../platform/http/field-forms.js';
import { type AnyCaptureDto, EachCapture } from './each-capture.js';

/** A step of a package that no procedure has. */
export class OwnStepDto {
  /** One action, verb first. */
  @IsText()
  @MaxLength(300)
  title!: string;

  @IsOptional()
  @IsText({ lines: true })
  @MaxLength(2000)
  text?: string | null;

  @IsIn(['none', 'independent'])
  inspection!: 'none' | 'independent';

  @IsOptional()
  @ArrayMaxSize(20)
  @EachCapture()
  captures?: AnyCaptureDto[];

  /** Signing it moves the component of the order. */
  @IsOptional()
  @IsIn(['removal', 'installation'])
  moves?: 'removal' | 'installation' | null;
}
