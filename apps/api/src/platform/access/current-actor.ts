import { createParamDecorator, type ExecutionContext } from '@nestjs/common';
import type { FastifyRequest } from 'fastify';
import '../http/request.js';
import { refuse } from '../problems/refusal.error.js';
import type { Actor } from './actor.js';

/** The signed-in person of this request. Refuses: NOT_SIGNED_IN. */
export const CurrentActor = createParamDecorator<unknown>(
  (_: unknown, context: ExecutionContext): Actor =>
    context.switchToHttp().getRequest<FastifyRequest>().actor ?? refuse({ code: 'NOT_SIGNED_IN' }),
);
