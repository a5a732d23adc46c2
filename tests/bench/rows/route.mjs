import assert from 'node:assert/strict';
import { fork } from 'node:child_process';
import { once } from 'node:events';
import { signedIn } from './http.mjs';

/** A plain route of the API, the list of locations, against node:http with pg in a process of its own; the same answer. */
export async function routeWays(appUrl, http) {
  const child = fork(new URL('./route-server.mjs', import.meta.url), {
    env: { ...process.env, DATABASE_URL: appUrl },
  });
  const [{ port }] = await once(child, 'message');
  const byHand = signedIn(`http://127.0.0.1:${port}`);
  const product = () => http('GET', '/api/locations');
  const twin = () => byHand('GET', '/');
  const [own, hand] = [await product(), await twin()];
  assert.equal(own.status, 200, own.text);
  assert.deepEqual(JSON.parse(own.text), JSON.parse(hand.text));
  return { product, twin, close: () => child.kill() };
}
