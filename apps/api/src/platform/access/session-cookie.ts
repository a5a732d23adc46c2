import type { FastifyReply, FastifyRequest } from 'fastify';
import type { Config } from '../config/config.js';

/** The cookie's name; with `__Host-` a browser takes it only over TLS, from this host, for every path. */
export function sessionCookieName({ secure }: Pick<Config, 'secure'>): string {
  return secure ? '__Host-session' : 'session';
}

/** The session's token from the request; null when there is none or it has not the form of one. Total. */
export function sessionToken(request: FastifyRequest, config: Config): string | null {
  const value = request.cookies[sessionCookieName(config)];
  return value !== undefined && /^[A-Za-z0-9_-]{43}$/.test(value) ? value : null;
}

export function setSessionCookie(reply: FastifyReply, config: Config, token: string, expires: Date): void {
  void reply.setCookie(sessionCookieName(config), token, attributes(config, expires));
}

export function clearSessionCookie(reply: FastifyReply, config: Config): void {
  void reply.setCookie(sessionCookieName(config), '', attributes(config, new Date(0)));
}

function attributes({ secure }: Config, expires: Date) {
  return { path: '/', httpOnly: true, sameSite: 'strict' as const, secure, expires };
}
