import { counterPostings } from '@strutbook/domain/runs/apu-counter.js';
import { addCounts, zeroCounts } from '@strutbook/domain/usage/counts.js';
import type { RunAccounts } from '@strutbook/domain/usage/trial-balance.js';
import type { Tx } from '../../platform/database/database.js';
import { loadReadings } from '../counting/counter-readings.js';
import { readClocks } from '../usage/clock-readings.js';
import { passedEmpty, runsByCarrier, takenByCarrier } from './balance-accounts.js';

/** A test cell whose accounts are drawn up. */
export interface BalancedCell extends RunAccounts {
  readonly testCellId: string;
  readonly name: string;
}

/** A counter of an auxiliary power unit whose accounts are drawn up. */
export interface BalancedCounter extends RunAccounts {
  readonly componentId: string;
  readonly serialNumber: string;
}

/** The accounts of every test cell: its runs, what engines took, and what passed it empty. */
export async function cellAccounts(tx: Tx, operatorId: number): Promise<BalancedCell[]> {
  const cells = await tx.testCell.findMany({
    where: { operatorId },
    orderBy: { name: 'asc' },
    select: { id: true, name: true, slotByTestCell: { select: { id: true } } },
  });
  const runs = await runsByCarrier(tx, operatorId);
  const taken = await takenByCarrier(tx, operatorId, 'engine');
  const empty = await passedEmpty(
    tx,
    operatorId,
    cells.flatMap(({ id, slotByTestCell }) =>
      slotByTestCell.map((slot) => ({ carrierId: id, slotId: slot.id })),
    ),
  );
  return cells.map(({ id, name }) => ({
    testCellId: id,
    name,
    ran: runs.get(id) ?? zeroCounts,
    taken: taken.get(id) ?? zeroCounts,
    notTaken: empty.get(id) ?? zeroCounts,
  }));
}

/** The accounts of every counter: from reading to reading, and what its unit took by its exposure. */
export async function counterAccounts(tx: Tx, operatorId: number): Promise<BalancedCounter[]> {
  const units = await tx.component.findMany({
    where: { operatorId, kind: 'apu', counterReadingByComponent: { some: { voidedSeq: null } } },
    orderBy: [{ serialNumber: 'asc' }, { id: 'asc' }],
    select: { id: true, serialNumber: true, exposureByComponent: { select: { fromAt: true } } },
  });
  const readings = await loadReadings(
    tx,
    operatorId,
    units.map((unit) => unit.id),
  );
  const taken = await takenByCarrier(tx, operatorId, 'apu');
  const starts = units.flatMap(({ id, exposureByComponent }) => {
    const from = firstOf(exposureByComponent.map((row) => row.fromAt));
    return from === null ? [] : [{ carrierId: id, at: from }];
  });
  const reading = await readClocks(tx, operatorId, starts);
  return units.map(({ id, serialNumber }) => {
    const start = starts.find((ask) => ask.carrierId === id);
    return {
      componentId: id,
      serialNumber,
      ran: counterPostings(readings.get(id) ?? [], id).reduce(
        (sum, posting) => addCounts(sum, posting.counts),
        zeroCounts,
      ),
      taken: taken.get(id) ?? zeroCounts,
      notTaken: start === undefined ? zeroCounts : reading(start),
    };
  });
}

function firstOf(instants: readonly Date[]): Date | null {
  return instants.reduce<Date | null>((first, at) => (first === null || at < first ? at : first), null);
}
