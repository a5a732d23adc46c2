import { applyDecorators } from '@nestjs/common';
import { ApiExtraModels, ApiProperty, refs } from '@nestjs/swagger';
import { Type } from 'class-transformer';
import { IsDefined, ValidateNested } from 'class-validator';
import {
  CheckTypedDto,
  ComponentOffTypedDto,
  ComponentOnTypedDto,
  CountTypedDto,
  LeakCheckTypedDto,
  PapersTypedDto,
  PhotoTypedDto,
  ReadingsTypedDto,
  TextTypedDto,
  TorqueTypedDto,
  TypedDto,
} from './typed.dto.js';

/** What may be sent by its kind; a picture comes as itself. */
const SENT = {
  torque: TorqueTypedDto,
  count: CountTypedDto,
  'component-off': ComponentOffTypedDto,
  'component-on': ComponentOnTypedDto,
  papers: PapersTypedDto,
  'leak-check': LeakCheckTypedDto,
  readings: ReadingsTypedDto,
  text: TextTypedDto,
  check: CheckTypedDto,
} as const;

/** What may be typed, by its kind. */
export type SentTypedDto = InstanceType<(typeof SENT)[keyof typeof SENT]>;
export type AnyTypedDto = SentTypedDto | PhotoTypedDto;

/** What was typed, checked and described by its kind. */
export function SentTyped(): PropertyDecorator {
  const shapes = Object.values(SENT);
  return withModels(
    shapes,
    applyDecorators(
      ApiProperty({ oneOf: refs(...shapes) }),
      IsDefined(),
      ValidateNested(),
      Type(() => TypedDto, {
        keepDiscriminatorProperty: true,
        discriminator: {
          property: 'kind',
          subTypes: Object.entries(SENT).map(([name, value]) => ({ name, value })),
        },
      }),
    ),
  );
}

/** What was typed, as an answer shows it. */
export function ShownTyped(): PropertyDecorator {
  const shapes = [...Object.values(SENT), PhotoTypedDto];
  return withModels(shapes, ApiProperty({ oneOf: refs(...shapes) }));
}

function withModels(
  shapes: readonly (new () => TypedDto)[],
  described: PropertyDecorator,
): PropertyDecorator {
  return (target, property) => {
    ApiExtraModels(...shapes)(target.constructor);
    described(target, property);
  };
}
