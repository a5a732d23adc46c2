import fs from 'node:fs';
import { inRoot } from '../building/paths.mjs';
import { keepRecord, keptRecord } from './data-folder.mjs';
import { runChild } from './run-child.mjs';

const record = 'first-run.json';
const loader = 'seed/load.mjs';

const seedFile = (name) => JSON.parse(fs.readFileSync(inRoot('seed', name), 'utf8'));
const withDemo = () => process.env.DEMO !== 'off' && fs.existsSync(inRoot(loader));

/** The demo's operator and its administrator, as the demo's own files name them. */
function demoFounders() {
  const { code, name } = seedFile('operator.json');
  const administrator = seedFile('people.json').find(({ roles }) => roles.includes('administrator'));
  const { signInName, fullName, password } = administrator;
  return { operatorCode: code, operatorName: name, signInName, fullName, password };
}

/** Without the demo: one operator, and one administrator whose password the API makes. */
function plainFounders(env = process.env) {
  return {
    operatorCode: env.OPERATOR_CODE ?? 'MAIN',
    operatorName: env.OPERATOR_NAME ?? 'Main operator',
    signInName: env.ADMIN_SIGN_IN ?? 'admin',
    fullName: env.ADMIN_NAME ?? 'Administrator',
    password: null,
  };
}

/**
 * Makes the operator and its administrator when the database has none. Without the demo the administrator gets a
 * password for one time, which is printed here and kept nowhere.
 * Errors: StepFailed.
 */
export async function foundOperator({ folder, adminUrl }) {
  if (keptRecord(folder, record)) return;
  const demo = withDemo();
  const wanted = demo ? demoFounders() : plainFounders();
  const env = { OWNER_DATABASE_URL: adminUrl, BOOTSTRAP_JSON: JSON.stringify(wanted) };
  const lines = await runChild('apps/api/dist/bootstrap.js', { env });
  const made = JSON.parse(lines.findLast((line) => line.startsWith('{')));
  // An operator that was there before is somebody's own: the demo is not loaded into it.
  keepRecord(folder, record, {
    operatorCode: wanted.operatorCode,
    demo: demo && made.created ? 'to load' : 'none',
  });
  if (!made.created || demo) return;
  console.log(`\nFirst start. Operator ${wanted.operatorCode}, administrator ${made.signInName}.`);
  console.log(`Password for the first sign-in, shown this once and kept nowhere:\n    ${made.password}\n`);
}

/**
 * Loads the demo through the API, when the first start was to have it and it is not loaded yet. A load that fails
 * is reported and tried again at the next start.
 */
export async function loadDemo({ folder, baseUrl, signal }) {
  const known = keptRecord(folder, record);
  if (known?.demo !== 'to load') return;
  console.log('loading the demo …');
  const { signInName, password, operatorCode } = demoFounders();
  const env = {
    BASE_URL: baseUrl,
    SEED_OPERATOR: operatorCode,
    SEED_SIGN_IN: signInName,
    SEED_PASSWORD: password,
  };
  try {
    await runChild(loader, { env, signal, onLine: (line) => console.log(`demo: ${line}`) });
    keepRecord(folder, record, { ...known, demo: 'loaded' });
  } catch (error) {
    if (signal.aborted) return;
    console.error(`The demo was not loaded whole; the next start tries again.\n${error.message}`);
  }
}

/** Prints how to sign in to the demo, at every start that has it. */
export function printSignIns(folder) {
  const known = keptRecord(folder, record);
  if (!known || known.demo === 'none') return;
  console.log(`\nThe demo's sign-ins (operator ${known.operatorCode}):`);
  for (const { signInName, password, roles } of seedFile('people.json')) {
    console.log(`    ${signInName.padEnd(20)} ${password.padEnd(26)} ${roles.join(', ')}`);
  }
}
