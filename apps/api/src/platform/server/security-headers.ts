import helmet from '@fastify/helmet';
import type { FastifyInstance } from 'fastify';
import type { Config } from '../config/config.js';

const DIRECTIVES: Readonly<Record<string, string[]>> = {
  'default-src': ["'none'"],
  'script-src': ["'self'"],
  'style-src': ["'self'"],
  'font-src': ["'self'"],
  'connect-src': ["'self'"],
  'img-src': ["'self'", 'data:', 'blob:'],
  'manifest-src': ["'self'"],
  'object-src': ["'none'"],
  'base-uri': ["'none'"],
  'form-action': ["'self'"],
  'frame-ancestors': ["'none'"],
};

const asPolicy = (directives: Readonly<Record<string, string[]>>): string =>
  Object.entries(directives)
    .map(([name, sources]) => `${name} ${sources.join(' ')}`)
    .join(';');

/** The documentation's page alone may style its elements one by one, which its viewer does. */
export const DOCUMENTATION_POLICY = asPolicy({ ...DIRECTIVES, 'style-src': ["'self'", "'unsafe-inline'"] });

const YEAR_SECONDS = 365 * 24 * 3600;

/** The headers of every answer, errors included. */
export async function addSecurityHeaders(server: FastifyInstance, { secure }: Config): Promise<void> {
  await server.register(helmet, {
    contentSecurityPolicy: { useDefaults: false, directives: { ...DIRECTIVES } },
    crossOriginEmbedderPolicy: false,
    crossOriginOpenerPolicy: { policy: 'same-origin' },
    crossOriginResourcePolicy: { policy: 'same-origin' },
    referrerPolicy: { policy: 'no-referrer' },
    strictTransportSecurity: secure ? { maxAge: YEAR_SECONDS, includeSubDomains: true } : false,
    xFrameOptions: { action: 'deny' },
  });
  server.addHook('onRequest', async (request, reply) => {
    void reply.header('x-request-id', request.id);
    void reply.header(
      'permissions-policy',
      'camera=(self), geolocation=(), microphone=(), payment=(), usb=()',
    );
    // Records are never kept by a cache between; what may be kept says so itself.
    if (request.url.startsWith('/api/') || request.url.startsWith('/health/'))
      void reply.header('cache-control', 'no-store');
  });
}
