/**
 * Runs `fill` while nothing is entered into the indexes of these tables and none of their triggers fires, then writes
 * tables and indexes anew. Everything is the product's own afterwards, constraints and triggers in force; what was filled
 * was not checked by them, which for flights that may not overlap takes ten times as long as all the rest. For a
 * throw-away database alone: it tells the catalogue that an index is not ready, as its superuser.
 */
export async function unindexed(client, tables, fill) {
  const ready = (is) =>
    client.query('UPDATE pg_index SET indisready = $2 WHERE indrelid::regclass::text = ANY ($1)', [
      tables,
      is,
    ]);
  const { rows: always } = await client.query(
    `SELECT tgrelid::regclass AS of, quote_ident(tgname) AS name FROM pg_trigger
      WHERE tgrelid::regclass::text = ANY ($1) AND NOT tgisinternal AND tgenabled = 'A'`,
    [tables],
  );
  await ready(false);
  for (const table of tables) await client.query(`ALTER TABLE ${table} DISABLE TRIGGER ALL`);
  await fill();
  await ready(true);
  for (const table of tables) {
    await client.query(`ALTER TABLE ${table} ENABLE TRIGGER ALL`);
    await client.query(`VACUUM FULL ${table}`);
  }
  for (const { of, name } of always) await client.query(`ALTER TABLE ${of} ENABLE ALWAYS TRIGGER ${name}`);
}
