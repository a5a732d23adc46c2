import { equalCounts, zeroCounts } from '@strutbook/domain/usage/counts.js';
import { runBalance, trialBalance } from '@strutbook/domain/usage/trial-balance.js';
import type { Tx } from '../../platform/database/database.js';
import { toWire } from '../../platform/http/instants.js';
import { balanceAccounts } from '../../records/balance/balance-accounts.js';
import { cellAccounts, counterAccounts } from '../../records/balance/balance-runs.js';
import type { TrialBalanceDto } from './trial-balance.dto.js';

/** The trial balance of one operator: of each position, test cell and counter, what was flown or run against where it went. */
export async function drawUpBalance(tx: Tx, operatorId: number, now: Date): Promise<TrialBalanceDto> {
  const positions = await balanceAccounts(tx, operatorId);
  const balance = trialBalance(positions.map((position) => position.accounts));
  const rows = positions.flatMap(({ registration, number, airframeId, positionId }, index) => {
    const row = balance[index];
    if (row === undefined) return [];
    const { flown, runs, onEngines, empty, notRunning, difference } = row;
    return [
      {
        airframeId,
        registration,
        positionId,
        positionNumber: number,
        flown,
        runs,
        onEngines,
        empty,
        notRunning,
        difference,
      },
    ];
  });
  const cells = runBalance(await cellAccounts(tx, operatorId)).map((row) => ({ ...row }));
  const counters = runBalance(await counterAccounts(tx, operatorId)).map((row) => ({ ...row }));
  const balanced = [...rows, ...cells, ...counters].every((row) => equalCounts(row.difference, zeroCounts));
  return { asOf: toWire(now), balanced, rows, cells, counters };
}
