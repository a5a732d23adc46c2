import { equalCounts, zeroCounts } from '@strutbook/domain/usage/counts.js';
import { trialBalance } from '@strutbook/domain/usage/trial-balance.js';
import type { Tx } from '../../platform/database/database.js';
import { toWire } from '../../platform/http/instants.js';
import { balanceAccounts } from '../../records/usage/balance-accounts.js';
import type { TrialBalanceDto } from './trial-balance.dto.js';

/** The trial balance of one operator: of each position, what was flown against where it went. */
export async function drawUpBalance(tx: Tx, operatorId: number, now: Date): Promise<TrialBalanceDto> {
  const positions = await balanceAccounts(tx, operatorId);
  const balance = trialBalance(positions.map((position) => position.accounts));
  const rows = positions.flatMap(({ registration, number, airframeId, positionId }, index) => {
    const row = balance[index];
    if (row === undefined) return [];
    const { flown, onEngines, empty, notRunning, difference } = row;
    return [
      {
        airframeId,
        registration,
        positionId,
        positionNumber: number,
        flown,
        onEngines,
        empty,
        notRunning,
        difference,
      },
    ];
  });
  return { asOf: toWire(now), balanced: rows.every((row) => equalCounts(row.difference, zeroCounts)), rows };
}
