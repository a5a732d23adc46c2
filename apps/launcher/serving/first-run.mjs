import fs from 'node:fs';
import { inRoot } from '../building/paths.mjs';
import { keepRecord, keptRecord, keptSecret } from './data-folder.mjs';
import { runChild } from './run-child.mjs';

const record = 'first-run.json';
const demoOperator = 'seed/operator.json';

const withDemo = () => process.env.DEMO !== 'off' && fs.existsSync(inRoot('seed/load.mjs'));

/** Who is made on the first start. The demo's operator is the demo's to name. */
function founders(folder) {
  const env = process.env;
  const plain = {
    operatorCode: env.OPERATOR_CODE ?? 'MAIN',
    operatorName: env.OPERATOR_NAME ?? 'Main operator',
    signInName: env.ADMIN_SIGN_IN ?? 'admin',
    fullName: env.ADMIN_NAME ?? 'Administrator',
    password: null,
  };
  if (!withDemo()) return plain;
  const own = fs.existsSync(inRoot(demoOperator))
    ? JSON.parse(fs.readFileSync(inRoot(demoOperator), 'utf8'))
    : {};
  return { ...plain, ...own, password: keptSecret(folder, 'demo-password') };
}

/**
 * Makes the operator and its administrator when the database has none. Without the demo the administrator gets a
 * password for one time, which is printed here and kept nowhere.
 * Errors: StepFailed.
 */
export async function foundOperator({ folder, adminUrl }) {
  if (keptRecord(folder, record)) return;
  const wanted = founders(folder);
  const env = { OWNER_DATABASE_URL: adminUrl, BOOTSTRAP_JSON: JSON.stringify(wanted) };
  const lines = await runChild('apps/api/dist/bootstrap.js', { env });
  const made = JSON.parse(lines.findLast((line) => line.startsWith('{')));
  const { operatorCode, signInName } = wanted;
  // An operator that was there before is somebody's own: the demo is not loaded into it.
  const demo = made.created && wanted.password !== null ? 'to load' : 'none';
  keepRecord(folder, record, { operatorCode, signInName, demo, signIns: [] });
  if (made.created && demo === 'none') {
    console.log(
      `\nFirst start. Operator ${operatorCode}; sign in as "${made.signInName}" with the password for one time`,
    );
    console.log(`    ${made.password}\nIt is shown this once and kept nowhere.\n`);
  }
}

const signInsIn = (lines) => {
  const line = lines.findLast((text) => text.startsWith('{"signIns"'));
  return line ? JSON.parse(line).signIns : [];
};

/**
 * Loads the demo through the API, when the first start was to have it and it is not loaded yet. A load that fails
 * is reported and tried again at the next start.
 */
export async function loadDemo({ folder, baseUrl, signal }) {
  const known = keptRecord(folder, record);
  if (known?.demo !== 'to load') return;
  console.log('loading the demo …');
  const env = {
    BASE_URL: baseUrl,
    SEED_OPERATOR: known.operatorCode,
    SEED_SIGN_IN: known.signInName,
    SEED_PASSWORD: keptSecret(folder, 'demo-password'),
  };
  try {
    const lines = await runChild('seed/load.mjs', {
      env,
      signal,
      onLine: (line) => console.log(`demo: ${line}`),
    });
    keepRecord(folder, record, { ...known, demo: 'loaded', signIns: signInsIn(lines) });
  } catch (error) {
    if (signal.aborted) return;
    console.error(`The demo was not loaded whole; the next start tries again.\n${error.message}`);
  }
}

/** Prints how to sign in to the demo, at every start that has it. */
export function printSignIns(folder) {
  const known = keptRecord(folder, record);
  if (!known || known.demo === 'none') return;
  const password = keptSecret(folder, 'demo-password');
  const people =
    known.signIns.length > 0 ? known.signIns : [{ signInName: known.signInName, role: 'administrator' }];
  console.log(`The demo's sign-ins (operator ${known.operatorCode}):`);
  for (const person of people) {
    console.log(
      `    ${person.signInName.padEnd(16)} ${(person.password ?? password).padEnd(26)} ${person.role ?? ''}`,
    );
  }
}
