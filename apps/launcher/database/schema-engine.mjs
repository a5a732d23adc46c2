// Development only: asks Prisma's schema engine, as WebAssembly, in what a database and prisma/schema differ.
import fs from 'node:fs';
import { createRequire } from 'node:module';
import path from 'node:path';
import { pathToFileURL } from 'node:url';
import { PrismaPg } from '@prisma/adapter-pg';
import { bindMigrationAwareSqlAdapterFactory } from '@prisma/driver-adapter-utils';
import { filesBelow } from '../building/fingerprint.mjs';
import { inRoot } from '../building/paths.mjs';

const require = createRequire(import.meta.url);
const schemaFolder = inRoot('prisma/schema');

async function loadEngine() {
  const folder = path.dirname(require.resolve('@prisma/schema-engine-wasm'));
  const glue = await import(pathToFileURL(path.join(folder, 'schema_engine_bg.js')).href);
  globalThis.PRISMA_WASM_PANIC_REGISTRY = {
    set_message: (message) => {
      throw new Error(`Prisma's schema engine broke down: ${message}`);
    },
  };
  const bytes = fs.readFileSync(path.join(folder, 'schema_engine_bg.wasm'));
  const { instance } = await WebAssembly.instantiate(bytes, { './schema_engine_bg.js': glue });
  glue.__wbg_set_wasm(instance.exports);
  instance.exports.__wbindgen_start?.();
  return glue.SchemaEngine;
}

// PostgreSQL's internal one-byte type, which adapter-pg 7.10 refuses to read, and the text type it can take for it.
const oneByteType = 18;
const nameType = 19;
const characterColumn = 6;

function readingOneByteTypes(connection) {
  let columns = [];
  const performIO = connection.performIO.bind(connection);
  const queryRaw = connection.queryRaw.bind(connection);
  connection.performIO = async (query) => {
    const result = await performIO(query);
    columns = (result.fields ?? []).flatMap((field, index) =>
      field.dataTypeID === oneByteType ? [index] : [],
    );
    for (const index of columns) result.fields[index].dataTypeID = nameType;
    return result;
  };
  connection.queryRaw = async (query) => {
    const result = await queryRaw(query);
    for (const index of columns) result.columnTypes[index] = characterColumn;
    return result;
  };
  return connection;
}

function adapterFor(url) {
  const factory = new PrismaPg({ connectionString: url });
  const connect = factory.connect.bind(factory);
  factory.connect = async () => readingOneByteTypes(await connect());
  return bindMigrationAwareSqlAdapterFactory(factory);
}

/** The SQL that would bring the database at the address to what prisma/schema says; empty when they agree. */
export async function differenceToSchema(url) {
  const files = filesBelow(schemaFolder)
    .filter((file) => file.endsWith('.prisma'))
    .map((file) => ({ path: file, content: fs.readFileSync(file, 'utf8') }));
  const SchemaEngine = await loadEngine();
  const datamodels = files.map((file) => [file.path, file.content]);
  const engine = await SchemaEngine.new({ datamodels }, () => {}, adapterFor(url));
  const result = await engine.diff({
    from: { tag: 'schemaDatasource', files, configDir: schemaFolder },
    to: { tag: 'schemaDatamodel', files },
    script: true,
    exitCode: true,
    filters: { externalTables: [], externalEnums: [] },
  });
  return result.exitCode === 0 ? '' : result.stdout;
}
