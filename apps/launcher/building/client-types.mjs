import fs from 'node:fs';
import openapiTS, { astToString } from 'openapi-typescript';
import { inRoot } from './paths.mjs';

export const contractFile = inRoot('libs/api-client/openapi.json');
export const clientTypesFile = inRoot('libs/api-client/src/schema.gen.d.ts');

const head = '// Generated from openapi.json by `npm run contract`. Do not edit.\n\n';

/** The client's types, as text, of the contract document that is committed. */
export async function clientTypes() {
  const tree = await openapiTS(JSON.parse(fs.readFileSync(contractFile, 'utf8')), { alphabetize: true });
  return head + astToString(tree);
}

/** Writes the client's types beside its source, when they differ. */
export async function writeClientTypes() {
  const text = await clientTypes();
  const there = fs.existsSync(clientTypesFile) ? fs.readFileSync(clientTypesFile, 'utf8') : '';
  if (there !== text) fs.writeFileSync(clientTypesFile, text);
}
