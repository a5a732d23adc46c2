import { addCounts, type Counts, subtractCounts } from './counts.js';

/** What was posted for one position of one airframe, over the same flights and runs. */
export interface BalanceAccounts {
  readonly airframeId: string;
  readonly positionCarrierId: string;
  /** What the airframe flew. */
  readonly flown: Counts;
  /** Ground runs of the position. */
  readonly runs: Counts;
  /** What the engines there took. */
  readonly onEngines: Counts;
  /** What passed while no engine was there. */
  readonly empty: Counts;
  /** What passed while the engine there did not run. */
  readonly notRunning: Counts;
}

/** One row of the trial balance; a difference that is not zero is minutes or events lost or made up. */
export interface BalanceRow extends BalanceAccounts {
  readonly difference: Counts;
}

/**
 * The trial balance: at each position, flown and run must be what engines took, what passed it empty and
 * what it did not run. Answers every row with its difference. Total.
 */
export function trialBalance(accounts: readonly BalanceAccounts[]): readonly BalanceRow[] {
  return accounts.map((row) => ({
    ...row,
    difference: subtractCounts(
      addCounts(row.flown, row.runs),
      addCounts(row.onEngines, addCounts(row.empty, row.notRunning)),
    ),
  }));
}

/** What one counter or test cell ran, and what was taken of it. */
export interface RunAccounts {
  /** What was run: by the runs themselves, or from reading to reading. */
  readonly ran: Counts;
  /** What the engine or the auxiliary power unit took. */
  readonly taken: Counts;
  /** What was run while nothing was there to take it, or before the opening balance, which holds it already. */
  readonly notTaken: Counts;
}

/** One row of the balance of what runs by itself. */
export type RunBalanceRow<T extends RunAccounts> = T & { readonly difference: Counts };

/** The balance of test cells and counters: what ran must be what was taken, and what nothing was there to take. Total. */
export function runBalance<T extends RunAccounts>(accounts: readonly T[]): readonly RunBalanceRow<T>[] {
  return accounts.map((row) => ({
    ...row,
    difference: subtractCounts(row.ran, addCounts(row.taken, row.notTaken)),
  }));
}
