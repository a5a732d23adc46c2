import { Param, ParseUUIDPipe, type PipeTransform } from '@nestjs/common';
import { RefusalError } from '../problems/refusal.error.js';

const uuid: PipeTransform = new ParseUUIDPipe({
  // An id that is none names no record, as one that nobody has.
  exceptionFactory: () => new RefusalError({ code: 'NOT_FOUND', what: 'record' }),
});

/** The id in the address: `@Id() id: string`, or `@Id('stayId') stayId: string`. Refuses: NOT_FOUND when it is no UUID. */
export function Id(name = 'id'): ParameterDecorator {
  return Param(name, uuid);
}
