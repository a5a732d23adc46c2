import 'reflect-metadata';
import fs from 'node:fs';
import path from 'node:path';
import { buildApp } from './app.js';
import { POLICY } from './platform/access/policy.js';
import { openApiDocument } from './platform/server/open-api.js';

// node write-openapi.js [file]      writes the contract; without a file, the one the client is built from
// node write-openapi.js --routes    prints the routes as served, as described and as authorised, each sorted
const { app, routes } = await buildApp();
await app.init();
await app.getHttpAdapter().getInstance().ready();
const document = openApiDocument(app);
const [wanted] = process.argv.slice(2);
if (wanted === '--routes') {
  const served = [...routes].filter((route) => !/^(HEAD|OPTIONS) |^GET \/(\*|api\/docs)/.test(route));
  console.log(
    JSON.stringify({
      served: served.sort(),
      described: described().sort(),
      authorised: Object.keys(POLICY).sort(),
    }),
  );
} else {
  const file = path.resolve(
    wanted ?? path.join(import.meta.dirname, '../../../libs/api-client/openapi.json'),
  );
  const text = `${JSON.stringify(document, null, 2)}\n`;
  if (!fs.existsSync(file) || fs.readFileSync(file, 'utf8') !== text) fs.writeFileSync(file, text);
}
await app.close();

function described(): string[] {
  return Object.entries(document.paths).flatMap(([address, item]) =>
    Object.keys(item).map((method) => `${method.toUpperCase()} ${address.replaceAll(/\{(\w+)\}/g, ':$1')}`),
  );
}
