import { timingSafeEqual } from 'node:crypto';
import { type CanActivate, type ExecutionContext, Injectable } from '@nestjs/common';
import type { FastifyRequest } from 'fastify';
import { Config } from '../config/config.js';
import '../http/request.js';
import { refuse } from '../problems/refusal.error.js';
import { type Actor, holdsOne } from './actor.js';
import { Holders } from './holders.js';
import { type Authority, authorityOf, OPEN_BEFORE_PASSWORD } from './policy.js';
import { sessionToken } from './session-cookie.js';
import { Sessions, type SessionView } from './sessions.js';

/** Lets a request through when its session, its origin and its role allow the route; refuses all others. */
@Injectable()
export class AccessGuard implements CanActivate {
  constructor(
    private readonly config: Config,
    private readonly sessions: Sessions,
    private readonly holders: Holders,
  ) {}

  async canActivate(context: ExecutionContext): Promise<boolean> {
    const request = context.switchToHttp().getRequest<FastifyRequest>();
    const pattern = request.routeOptions.url ?? '';
    const authority = authorityOf(request.method, pattern) ?? [];
    const changes = request.method !== 'GET' && request.method !== 'HEAD';
    if (changes) refuseOtherSite(request);
    const token = sessionToken(request, this.config);
    const session = token === null ? null : await this.sessions.find(token);
    request.session = session;
    request.actor = session === null ? null : actorOf(session);
    if (authority === 'anyone') return true;
    if (session === null) return refuse({ code: 'NOT_SIGNED_IN' });
    if (changes) refuseWrongToken(request, session);
    const route = `${request.method} ${pattern}`;
    if (session.mustChangePassword && !OPEN_BEFORE_PASSWORD.has(route))
      refuse({ code: 'PASSWORD_CHANGE_NEEDED' });
    await this.refuseWithoutRole(session, authority);
    return true;
  }

  private async refuseWithoutRole(
    session: SessionView,
    authority: Exclude<Authority, 'anyone'>,
  ): Promise<void> {
    if (authority === 'signed-in' || holdsOne(session, authority)) return;
    refuse({
      code: 'NOT_ALLOWED',
      holders: authority,
      names: await this.holders.of(session.operatorId, authority),
    });
  }
}

function actorOf({ operatorId, personId, fullName, licence, roles, sessionId }: SessionView): Actor {
  return { operatorId, personId, fullName, licence, roles, sessionId };
}

/** Browsers say where a request comes from; programs say nothing, and bring no cookie of someone else's. */
function refuseOtherSite({ headers }: FastifyRequest): void {
  const site = headers['sec-fetch-site'];
  if (site !== undefined && site !== 'same-origin' && site !== 'none') refuse({ code: 'OTHER_SITE' });
}

/** Refuses: CSRF_TOKEN_WRONG unless the request carries its session's own token. */
export function refuseWrongToken({ headers }: FastifyRequest, { csrfToken }: SessionView): void {
  const sent = Buffer.from(String(headers['x-csrf-token'] ?? ''));
  const known = Buffer.from(csrfToken);
  if (sent.length !== known.length || !timingSafeEqual(sent, known)) refuse({ code: 'CSRF_TOKEN_WRONG' });
}
