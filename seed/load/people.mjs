// The demonstration's people at their own sessions.
import { Client } from './client.mjs';
import { json } from './files.mjs';

/** Signs people in as they are needed. Answers a function from a sign-in name to {client, password, pin, session}. */
export function colleagues(base) {
  const known = new Map();
  return (signInName) => {
    if (!known.has(signInName)) known.set(signInName, signIn(base, signInName));
    return known.get(signInName);
  };
}

async function signIn(base, signInName) {
  const { password, pin } = json('people.json').find((person) => person.signInName === signInName);
  const client = new Client(base);
  return { client, password, pin, session: await client.signIn(signInName, password) };
}

/** Everyone who signs chooses their PIN, unless they have one. */
export async function pins(colleague) {
  const signers = json('people.json').filter(({ pin }) => pin !== null);
  let chosen = 0;
  for (const { signInName } of signers) {
    const { client, password, pin, session } = await colleague(signInName);
    if (session.hasPin) continue;
    await client.post('/api/session/pin', { password, pin });
    chosen += 1;
  }
  return `${chosen} PINs chosen, ${signers.length - chosen} were`;
}
