import { type CallHandler, type ExecutionContext, Injectable, type NestInterceptor } from '@nestjs/common';
import type { FastifyReply } from 'fastify';
import { map, type Observable } from 'rxjs';
import { etagOf } from './act-key.js';

/** An answer with a whole-number `version` gets it as its ETag, which If-Match sends back. */
@Injectable()
export class EntityTagInterceptor implements NestInterceptor {
  intercept(context: ExecutionContext, next: CallHandler<unknown>): Observable<unknown> {
    const reply = context.switchToHttp().getResponse<FastifyReply>();
    return next.handle().pipe(
      map((body) => {
        const version = typeof body === 'object' && body !== null && 'version' in body ? body.version : null;
        if (typeof version === 'number' && Number.isInteger(version))
          void reply.header('etag', etagOf(version));
        return body;
      }),
    );
  }
}
