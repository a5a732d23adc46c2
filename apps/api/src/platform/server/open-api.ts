import type { INestApplication } from '@nestjs/common';
import { DocumentBuilder, type OpenAPIObject, SwaggerModule } from '@nestjs/swagger';
import { authorityOf } from '../access/policy.js';
import { ProblemDto } from '../problems/problem.dto.js';

const METHODS = ['get', 'post', 'put', 'patch', 'delete'] as const;

/** 'PeopleController', 'add' becomes 'peopleAdd'. */
const operationId = (controller: string, method: string): string => {
  const subject = controller.replace(/Controller$/, '');
  return (
    subject.charAt(0).toLowerCase() + subject.slice(1) + method.charAt(0).toUpperCase() + method.slice(1)
  );
};

/** The contract of the API as it is built: routes, shapes, problems, and who may use each. */
export function openApiDocument(app: INestApplication): OpenAPIObject {
  const description =
    'Records of powerplants: where each part is, what it has run, what it may still run. ' +
    'Instants are UTC in whole minutes, running times whole minutes. Every refusal is a problem (RFC 9457).';
  const outline = new DocumentBuilder()
    .setTitle('Strutbook')
    .setDescription(description)
    .setVersion('1')
    .addCookieAuth('session', { type: 'apiKey', in: 'cookie', name: '__Host-session' }, 'session')
    .addSecurityRequirements('session')
    .build();
  const document = SwaggerModule.createDocument(app, outline, {
    operationIdFactory: operationId,
    extraModels: [ProblemDto],
  });
  describeProblems(document);
  return sorted(document) as OpenAPIObject;
}

/** Problems are described once, and every route may answer one. */
function describeProblems(document: OpenAPIObject): void {
  document.components ??= {};
  document.components.responses = {
    Problem: {
      description: 'The request was refused or failed, and nothing was changed.',
      content: { 'application/problem+json': { schema: { $ref: '#/components/schemas/ProblemDto' } } },
    },
  };
  for (const [path, item] of Object.entries(document.paths)) {
    for (const method of METHODS) {
      const operation = item[method];
      if (operation === undefined) continue;
      operation.responses['default'] = { $ref: '#/components/responses/Problem' };
      const authority = authorityOf(method.toUpperCase(), path.replaceAll(/\{(\w+)\}/g, ':$1'));
      Object.assign(operation, { 'x-authority': authority ?? 'nobody' });
      if (authority === 'anyone') operation.security = [];
    }
  }
}

/**
 * The same value with the members of every object in order, and the words of every choice: the compiler gives those of
 * a union in the order in which it met them, so a change shows as itself alone.
 */
function sorted(value: unknown): unknown {
  if (Array.isArray(value)) return value.map(sorted);
  if (typeof value !== 'object' || value === null) return value;
  return Object.fromEntries(
    Object.entries(value)
      .filter(([, member]) => member !== undefined)
      .sort(([a], [b]) => (a < b ? -1 : 1))
      .map(([key, member]) => [key, key === 'enum' && isWords(member) ? [...member].sort() : sorted(member)]),
  );
}

const isWords = (value: unknown): value is readonly string[] =>
  Array.isArray(value) && value.every((word) => typeof word === 'string');
