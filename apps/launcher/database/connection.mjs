import pg from 'pg';

/** Runs `work` with one connection to the address, closed in any case. */
export async function withConnection(connectionString, work) {
  const client = new pg.Client({ connectionString, application_name: 'strutbook-launcher' });
  client.on('error', () => {}); // a lost connection shows in the next query
  await client.connect();
  try {
    return await work(client);
  } finally {
    await client.end().catch(() => {});
  }
}

/** The same server and user, another database. */
export function onDatabase(url, database) {
  const other = new URL(url);
  other.pathname = `/${encodeURIComponent(database)}`;
  return other.href;
}

/** The same server and database, another user. */
export function asUser(url, user, password) {
  const other = new URL(url);
  other.username = encodeURIComponent(user);
  other.password = encodeURIComponent(password);
  return other.href;
}
