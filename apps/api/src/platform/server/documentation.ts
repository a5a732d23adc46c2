import { createReadStream, type ReadStream } from 'node:fs';
import { createRequire } from 'node:module';
import path from 'node:path';
import { fileURLToPath } from 'node:url';
import type { OpenAPIObject } from '@nestjs/swagger';
import type { FastifyInstance } from 'fastify';
import { DOCUMENTATION_POLICY } from './security-headers.js';

const PAGE = `<!doctype html>
<html lang="en">
<head>
<meta charset="utf-8">
<title>Strutbook API</title>
<meta name="viewport" content="width=device-width">
<link rel="stylesheet" href="/api/docs/swagger-ui.css">
<script src="/api/docs/swagger-ui-bundle.js" defer></script>
<script src="/api/docs/start.js" defer></script>
</head>
<body><div id="api"></div></body>
</html>
`;

/** Changes need the session's token and a key for each act; the page adds both, so that trying a route works. */
const START = `let token = null;
const session = fetch('/api/session').then((answer) => (answer.ok ? answer.json() : null)).then((found) => {
  token = found?.csrfToken ?? null;
}, () => {});
addEventListener('load', () => {
  SwaggerUIBundle({
    url: '/api/docs-json', dom_id: '#api', deepLinking: true, validatorUrl: null,
    requestInterceptor: async (request) => {
      await session;
      if (request.method !== undefined && request.method !== 'GET') {
        if (token !== null) request.headers['x-csrf-token'] = token;
        request.headers['idempotency-key'] ??= Array.from(crypto.getRandomValues(new Uint8Array(16)), (b) => b.toString(16)).join('');
      }
      return request;
    },
  });
});
`;

/** The viewer's files, which come with Nest's own description of the API. */
function viewerFolder(): string {
  const nearby = createRequire(fileURLToPath(import.meta.resolve('@nestjs/swagger')));
  return path.dirname(nearby.resolve('swagger-ui-dist/package.json'));
}

/** Serves the contract at /api/docs-json and a page to read and try it at /api/docs, under a policy of its own. */
export async function serveDocumentation(
  server: FastifyInstance,
  document: () => OpenAPIObject,
): Promise<void> {
  const folder = viewerFolder();
  let text: string | null = null;
  const answers: Readonly<
    Record<string, { readonly type: string; readonly content: () => string | ReadStream }>
  > = {
    '/api/docs': { type: 'text/html', content: () => PAGE },
    '/api/docs/start.js': { type: 'text/javascript', content: () => START },
    '/api/docs/swagger-ui.css': {
      type: 'text/css',
      content: () => createReadStream(path.join(folder, 'swagger-ui.css')),
    },
    '/api/docs/swagger-ui-bundle.js': {
      type: 'text/javascript',
      content: () => createReadStream(path.join(folder, 'swagger-ui-bundle.js')),
    },
    '/api/docs-json': { type: 'application/json', content: () => (text ??= JSON.stringify(document())) },
  };
  for (const [address, { type, content }] of Object.entries(answers)) {
    server.get(address, async (_, reply) =>
      reply
        .header('content-security-policy', DOCUMENTATION_POLICY)
        .header('cache-control', 'no-cache')
        .type(`${type}; charset=utf-8`)
        .send(content()),
    );
  }
}
