import crypto from 'node:crypto';
import { withConnection } from '../database/connection.mjs';
import { prepareDatabase } from '../database/prepare.mjs';
import { scratchServer } from '../database/scratch-server.mjs';

/**
 * A server for the tests with a migrated template that each test file copies. Answers the environment by which
 * tests/support finds it, and how to take it away, with every database the tests left.
 */
export async function testServer(given) {
  const server = await scratchServer(given);
  const run = `strutbook_t_${crypto.randomBytes(4).toString('hex')}`;
  const template = `${run}_template`;
  const appPassword = crypto.randomBytes(18).toString('base64url');
  const stop = async () => {
    if (given)
      await withConnection(server.home, (client) =>
        client.query(`DROP DATABASE IF EXISTS ${template} WITH (FORCE)`),
      );
    await server.stop();
  };
  try {
    await withConnection(server.home, (client) => client.query(`CREATE DATABASE ${template}`));
    await prepareDatabase(server.url(template), { appPassword });
  } catch (error) {
    await stop();
    throw error;
  }
  return {
    env: { TEST_SERVER_URL: server.home, TEST_TEMPLATE: template, TEST_APP_PASSWORD: appPassword },
    stop,
  };
}
