import fs from 'node:fs';
import { before as swaggerPlugin } from '@nestjs/swagger/plugin';
import { writeClientTypes } from './client-types.mjs';
import { compile } from './compile.mjs';
import { filesBelow } from './fingerprint.mjs';
import { inRoot } from './paths.mjs';
import { runNode } from './run.mjs';

const libs = ['libs/domain', 'libs/journal'];
const base = ['package-lock.json', 'tsconfig.base.json', 'apps/launcher/building'];
const hasSource = (folder) => filesBelow(inRoot(folder, 'src')).length > 0;

/** Lengths, bounds and types of class-validator reach the contract without being said twice. */
const withSwagger = (program) => ({
  before: [
    swaggerPlugin(
      {
        classValidatorShim: true,
        introspectComments: true,
        esmCompatible: true,
        dtoFileNameSuffix: ['.dto.ts'],
      },
      program,
    ),
  ],
});

/** The path that keeps Prisma's command line from downloading an engine. */
export const prismaEnvironment = {
  PRISMA_SCHEMA_ENGINE_BINARY: inRoot('apps/launcher/building/no-schema-engine.sh'),
  PRISMA_HIDE_UPDATE_MESSAGE: '1',
  CHECKPOINT_DISABLE: '1',
};

/** The build's steps in order: what each reads, a file that shows it was done, and how it is done. */
export const buildSteps = [
  ...libs.map((folder) => ({
    name: folder,
    part: 'libs',
    inputs: [...base, `${folder}/src`, `${folder}/tsconfig.json`],
    output: `${folder}/dist`,
    ready: () => hasSource(folder),
    work: () => compile(inRoot(folder)),
  })),
  {
    name: 'prisma client',
    part: 'api',
    inputs: ['package-lock.json', 'prisma/schema'],
    output: 'apps/api/src/platform/database/generated/client.ts',
    ready: () => fs.existsSync(inRoot('prisma/schema')),
    work: () =>
      runNode(
        [inRoot('node_modules/prisma/build/index.js'), 'generate', '--schema', inRoot('prisma/schema')],
        {
          env: prismaEnvironment,
          quiet: true,
        },
      ),
  },
  {
    name: 'apps/api',
    part: 'api',
    inputs: [
      ...base,
      ...libs.map((folder) => `${folder}/src`),
      'prisma/schema',
      'apps/api/src',
      'apps/api/tsconfig.json',
    ],
    output: 'apps/api/dist/main.js',
    ready: () => hasSource('apps/api'),
    work: () => compile(inRoot('apps/api'), withSwagger),
  },
  {
    name: 'libs/api-client',
    part: 'client',
    inputs: [...base, 'libs/api-client/openapi.json', 'libs/api-client/src', 'libs/api-client/tsconfig.json'],
    output: 'libs/api-client/dist',
    ready: () => fs.existsSync(inRoot('libs/api-client/openapi.json')) && hasSource('libs/api-client'),
    work: async () => {
      await writeClientTypes();
      compile(inRoot('libs/api-client'));
    },
  },
  {
    name: 'apps/web',
    part: 'web',
    inputs: [
      'package-lock.json',
      'tsconfig.base.json',
      'libs/domain/src',
      'libs/api-client/src',
      'libs/api-client/openapi.json',
      'apps/web',
    ],
    output: 'apps/web/dist/index.html',
    ready: () => fs.existsSync(inRoot('apps/web/index.html')),
    work: () =>
      runNode([inRoot('node_modules/vite/bin/vite.js'), 'build', '--logLevel', 'warn'], {
        cwd: inRoot('apps/web'),
      }),
  },
];
