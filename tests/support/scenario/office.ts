import { randomUUID } from 'node:crypto';
import { type Founded, foundOperator, type RunningApi, startApi } from '../api.js';
import { authorise } from '../authorise.js';
import { startDatabase, type TestDatabase, withClient } from '../database.js';
import { HttpClient } from '../http-client.js';
import { done } from './problem.js';

/** A database, the API serving it, and its first operator's administrator, signed in. */
export interface Office {
  readonly database: TestDatabase;
  readonly api: RunningApi;
  readonly founded: Founded;
  readonly administrator: HttpClient;
  readonly close: () => Promise<void>;
}

/** Starts it all, in a database of its own. `env` is added to the API's environment. */
export async function openOffice(
  options: { readonly env?: Readonly<Record<string, string>> } = {},
): Promise<Office> {
  const database = await startDatabase();
  try {
    const founded = await foundOperator(database);
    const api = await startApi({ database, ...options });
    const administrator = await signedIn(api, founded);
    const close = async () => {
      await api.stop();
      await database.drop();
    };
    return { database, api, founded, administrator, close };
  } catch (error) {
    await database.drop();
    throw error;
  }
}

/** A person's client with a session of its own. */
export async function signedIn(
  api: Pick<RunningApi, 'baseUrl'>,
  { signInName, password, operatorCode }: Pick<Founded, 'signInName' | 'password' | 'operatorCode'>,
): Promise<HttpClient> {
  const client = new HttpClient(api.baseUrl);
  await client.signIn({ signInName, password, operatorCode });
  return client;
}

/** Someone who works for an operator. */
export interface Staff {
  readonly signInName: string;
  readonly fullName: string;
  readonly roles: readonly string[];
  readonly licence?: string;
}

/** Adds a person who need not change the password first, authorised for all that the roles may sign. */
export async function hire(
  { administrator, founded }: Pick<Office, 'administrator' | 'founded'>,
  person: Staff,
  options: { readonly authorised: boolean } = { authorised: true },
): Promise<Pick<Founded, 'signInName' | 'password' | 'operatorCode'> & { readonly id: string }> {
  const { password, operatorCode } = founded;
  const { id } = done(
    await administrator.post<{ readonly id: string }>('/api/people', {
      ...person,
      password,
      mustChangePassword: false,
    }),
  );
  if (options.authorised) await authorise(administrator, { id, roles: person.roles });
  return { id, signInName: person.signInName, password, operatorCode };
}

/** Adds a person, with the administrator's own password for convenience, and signs in as that person. */
export async function employ(
  { api, administrator, founded }: Pick<Office, 'api' | 'administrator' | 'founded'>,
  person: Staff,
  options?: { readonly authorised: boolean },
): Promise<HttpClient> {
  return signedIn(api, await hire({ administrator, founded }, person, options));
}

/**
 * Makes another operator in the same database, with an administrator who has the first one's password. The
 * product makes one operator a database; its tables and its rules hold any number.
 */
export async function foundAnother(
  { database, founded }: Pick<Office, 'database' | 'founded'>,
  operatorCode: string,
): Promise<Founded> {
  const another = {
    ...founded,
    operatorCode,
    operatorName: `Operator ${operatorCode}`,
    signInName: `admin-${operatorCode.toLowerCase()}`,
  };
  await withClient(database.adminUrl, async (client) => {
    const { rows } = await client.query('INSERT INTO operator (code, name) VALUES ($1, $2) RETURNING id', [
      operatorCode,
      another.operatorName,
    ]);
    await client.query(
      `INSERT INTO person (operator_id, id, sign_in_name, full_name, roles, password_hash)
       SELECT $1, $2, $3, full_name, roles, password_hash FROM person WHERE sign_in_name = $4`,
      [rows[0]?.id, randomUUID(), another.signInName, founded.signInName],
    );
  });
  return another;
}
