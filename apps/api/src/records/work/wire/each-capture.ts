import { applyDecorators } from '@nestjs/common';
import { ApiExtraModels, ApiProperty, refs } from '@nestjs/swagger';
import { Type } from 'class-transformer';
import { IsArray, ValidateNested } from 'class-validator';
import { CaptureDto } from './capture-base.dto.js';
import {
  CheckCaptureDto,
  ComponentOffCaptureDto,
  ComponentOnCaptureDto,
  CountCaptureDto,
  LeakCheckCaptureDto,
  PapersCaptureDto,
  PhotoCaptureDto,
  ReadingsCaptureDto,
  TextCaptureDto,
} from './captures.dto.js';
import { TorqueCaptureDto } from './torque-capture.dto.js';

const BY_KIND = {
  torque: TorqueCaptureDto,
  count: CountCaptureDto,
  'component-off': ComponentOffCaptureDto,
  'component-on': ComponentOnCaptureDto,
  papers: PapersCaptureDto,
  'leak-check': LeakCheckCaptureDto,
  readings: ReadingsCaptureDto,
  text: TextCaptureDto,
  check: CheckCaptureDto,
  photo: PhotoCaptureDto,
} as const;

/** Any capture, by its kind. */
export type AnyCaptureDto = InstanceType<(typeof BY_KIND)[keyof typeof BY_KIND]>;

/** A list of captures, each checked and described by its kind. */
export function EachCapture(): PropertyDecorator {
  const shapes = Object.values(BY_KIND);
  const described = applyDecorators(
    ApiProperty({ type: 'array', items: { oneOf: refs(...shapes) } }),
    IsArray(),
    ValidateNested({ each: true }),
    Type(() => CaptureDto, {
      keepDiscriminatorProperty: true,
      discriminator: {
        property: 'kind',
        subTypes: Object.entries(BY_KIND).map(([name, value]) => ({ name, value })),
      },
    }),
  );
  return (target, property) => {
    ApiExtraModels(...shapes)(target.constructor);
    described(target, property);
  };
}
