import { NestFactory } from '@nestjs/core';

const dist = '../../apps/api/dist/';
const nobody = {
  operatorId: 1,
  personId: '00000000-0000-0000-0000-000000000000',
  fullName: '',
  licence: null,
  roles: [],
  sessionId: '',
};

/** The product's release check as the application puts it together, on connections of its own to a database. */
export async function openCheck(databaseUrl, packageId) {
  process.env.DATABASE_URL = databaseUrl;
  const { AppModule } = await import(`${dist}app.module.js`);
  const { Database } = await import(`${dist}platform/database/database.js`);
  const { ReleaseCheck } = await import(`${dist}features/release/release-check.js`);
  const app = await NestFactory.createApplicationContext(AppModule, { logger: false });
  const find = (what) => app.get(what, { strict: false });
  const [database, check] = [find(Database), find(ReleaseCheck)];
  return {
    make: () => database.inOperator(nobody, (tx) => check.make(tx, nobody, packageId)),
    close: () => app.close(),
  };
}
