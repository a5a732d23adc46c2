import { Config } from './platform/config/config.js';
import { Database, type Tx } from './platform/database/database.js';

/** An operator whose records a command looks at. */
export interface OperatorLooked {
  readonly id: number;
  readonly code: string;
}

const LONGEST_MS = 60 * 60_000;

/**
 * Runs a command's work for each operator in turn, each in its own transaction, and ends the process: with 0 when
 * every one answered true, with 1 when one did not or something failed.
 */
export async function eachOperator(
  work: (tx: Tx, operator: OperatorLooked) => Promise<boolean>,
): Promise<void> {
  const database = new Database(Config.from());
  let sound = true;
  try {
    const operators = await database.headline<{ id: number; code: string }>(
      'SELECT id, code FROM operators_for_sign_in()',
    );
    for (const { id, code } of operators) {
      const limits = { wholeMs: LONGEST_MS, statementMs: LONGEST_MS };
      if (!(await database.inOperator({ operatorId: id }, (tx) => work(tx, { id, code }), limits)))
        sound = false;
    }
  } catch (error) {
    sound = false;
    console.error(error instanceof Error ? error.message : error);
  } finally {
    await database.onApplicationShutdown();
  }
  process.exitCode = sound ? 0 : 1;
}
