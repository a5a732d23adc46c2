import { NestFactory } from '@nestjs/core';

const dist = '../../apps/api/dist/';

/** Who asks: the person the filling made, or nobody of that operator. */
export const ACTOR = {
  operatorId: 1,
  fullName: 'Bench Person',
  licence: null,
  roles: ['records'],
  sessionId: '',
};

/** The product's own services on connections of their own to a database, as the application puts them together. */
export async function openApp(databaseUrl) {
  process.env.DATABASE_URL = databaseUrl;
  const { AppModule } = await import(`${dist}app.module.js`);
  const app = await NestFactory.createApplicationContext(AppModule, { logger: false });
  return {
    /** A service by its file under dist and the name of its class. */
    find: async (file, name) => app.get((await import(`${dist}${file}`))[name], { strict: false }),
    close: () => app.close(),
  };
}
