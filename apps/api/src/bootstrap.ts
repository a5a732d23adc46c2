import { randomInt } from 'node:crypto';
import { hash } from '@node-rs/argon2';
import pg from 'pg';
import { PASSWORD_COST } from './platform/access/passwords.js';
import { Config } from './platform/config/config.js';
import { newId } from './platform/database/uuid.js';

interface Founders {
  readonly operatorCode: string;
  readonly operatorName: string;
  readonly signInName: string;
  readonly fullName: string;
  /** Null asks for a password for one time, which must be changed at the first sign-in. */
  readonly password: string | null;
}

/** Letters and digits that cannot be taken for each other. */
const SIGNS = 'abcdefghijkmnpqrstuvwxyz23456789';

/** 24 signs of 32: 120 bits. */
function passwordForOneTime(): string {
  const groups = Array.from({ length: 6 }, () =>
    Array.from({ length: 4 }, () => SIGNS[randomInt(SIGNS.length)]).join(''),
  );
  return groups.join('-');
}

/** Makes the operator and its first administrator, as owner, when the database has no operator yet. */
async function found(client: pg.Client, founders: Founders) {
  const { operatorCode, operatorName, fullName } = founders;
  const signInName = founders.signInName.trim().toLowerCase();
  const password = founders.password ?? passwordForOneTime();
  const passwordHash = await hash(password, PASSWORD_COST);
  await client.query('BEGIN');
  await client.query('SET LOCAL ROLE owner');
  await client.query('LOCK TABLE operator IN EXCLUSIVE MODE'); // two first starts at once make one operator
  const { rows } = await client.query<{ there: boolean }>('SELECT EXISTS (SELECT FROM operator) AS there');
  if (rows[0]?.there === true) {
    await client.query('ROLLBACK');
    return { created: false, signInName, password: null };
  }
  const { rows: made } = await client.query<{ id: number }>(
    'INSERT INTO operator (code, name) VALUES ($1, $2) RETURNING id',
    [operatorCode, operatorName],
  );
  await client.query(
    `INSERT INTO person (operator_id, id, sign_in_name, full_name, roles, password_hash, must_change_password)
     VALUES ($1, $2, $3, $4, '{administrator}', $5, $6)`,
    [made[0]?.id, newId(), signInName, fullName, passwordHash, founders.password === null],
  );
  await client.query('COMMIT');
  return { created: true, signInName, password };
}

const { ownerDatabaseUrl, bootstrapJson } = Config.forBootstrap();
const client = new pg.Client({ connectionString: ownerDatabaseUrl });
await client.connect();
try {
  console.log(JSON.stringify(await found(client, JSON.parse(bootstrapJson) as Founders)));
} finally {
  await client.end();
}
