import { randomUUID } from 'node:crypto';
import fastifyCookie from '@fastify/cookie';
import { ConsoleLogger } from '@nestjs/common';
import { NestFactory } from '@nestjs/core';
import { FastifyAdapter, type NestFastifyApplication } from '@nestjs/platform-fastify';
import type { FastifyInstance } from 'fastify';
import { AppModule } from './app.module.js';
import { Config } from './platform/config/config.js';
import { acceptCsv, BODY_LIMIT_BYTES } from './platform/server/csv-body.js';
import { serveDocumentation } from './platform/server/documentation.js';
import { drainOnClose } from './platform/server/draining.js';
import { acceptJson } from './platform/server/json-body.js';
import { openApiDocument } from './platform/server/open-api.js';
import { acceptPictures } from './platform/server/picture-body.js';
import { answerClientError, answerFrameworkError, makeProblems } from './platform/server/raw-problems.js';
import './platform/http/request.js';
import { addSecurityHeaders } from './platform/server/security-headers.js';
import { serveWebClient } from './platform/server/web-client.js';

export interface BuiltApp {
  readonly app: NestFastifyApplication;
  /** Every route that is served, 'METHOD /pattern', once the app has been initialised. */
  readonly routes: ReadonlySet<string>;
}

/** The application, complete and not yet listening; it has asked the database nothing. */
export async function buildApp(): Promise<BuiltApp> {
  const routes = new Set<string>();
  const adapter = new FastifyAdapter({
    bodyLimit: BODY_LIMIT_BYTES,
    requestTimeout: 60_000,
    keepAliveTimeout: 65_000,
    genReqId: () => randomUUID(),
    frameworkErrors: answerFrameworkError,
    clientErrorHandler: answerClientError,
  });
  const server = adapter.getInstance() as unknown as FastifyInstance;
  server.addHook('onRoute', ({ method, url }) => {
    for (const each of [method].flat()) routes.add(`${each} ${url}`);
  });
  const app = await NestFactory.create<NestFastifyApplication>(AppModule, adapter, {
    bodyParser: false, // our own: JSON alone, no forms
    logger: new ConsoleLogger({ json: true, logLevels: ['warn', 'error', 'fatal'] }),
    abortOnError: false,
    return503OnClosing: true,
  });
  app.setGlobalPrefix('api', { exclude: ['health/live', 'health/ready'] });
  await prepareServer(server, app);
  return { app, routes };
}

async function prepareServer(server: FastifyInstance, app: NestFastifyApplication): Promise<void> {
  const config = app.get(Config);
  acceptJson(server);
  server.decorateRequest('session', null);
  server.decorateRequest('actor', null);
  server.decorateRequest('answer', null);
  drainOnClose(server);
  makeProblems(server);
  await server.register(fastifyCookie);
  await addSecurityHeaders(server, config);
  acceptCsv(server, config);
  acceptPictures(server, config);
  server.addHook('onSend', async (request, reply) => {
    // A repeated act answers as it did first, whatever the route's usual status.
    if (request.answer !== null && reply.statusCode < 400) void reply.status(request.answer.status);
  });
  await serveDocumentation(server, () => openApiDocument(app));
  await serveWebClient(server, config.webDist);
}
