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
