import { formatHours } from '@strutbook/domain/units/minutes.js';
import type { Counts } from '@strutbook/domain/usage/counts.js';
import { equalCounts, zeroCounts } from '@strutbook/domain/usage/counts.js';
import { eachOperator } from './each-operator.js';
import { drawUpBalance } from './features/trial-balance/draw-up.js';

/** Prints, for every position of every airframe, every test cell and every counter, what was flown or run against where it went. Ends with 1 when a difference is not zero. */
await eachOperator(async (tx, { id, code }) => {
  const { asOf, balanced, rows, cells, counters } = await drawUpBalance(tx, id, new Date());
  console.log(
    `Trial balance of ${code}, as of ${asOf}. Hours, flights, landings, touch-and-goes, starts, aborted take-offs.`,
  );
  for (const row of rows) {
    console.log(`${row.registration} position ${row.positionNumber}`);
    print([
      ['flown', row.flown],
      ['run', row.runs],
      ['on engines', row.onEngines],
      ['empty', row.empty],
      ['not running', row.notRunning],
      ['difference', row.difference],
    ]);
  }
  const others = [
    ...cells.map((row) => ({ ...row, title: row.name })),
    ...counters.map((row) => ({ ...row, title: `Counter of ${row.serialNumber}` })),
  ];
  for (const { title, ran, taken, notTaken, difference } of others) {
    console.log(title);
    print([
      ['run', ran],
      ['taken', taken],
      ['not taken', notTaken],
      ['difference', difference],
    ]);
  }
  const places = rows.length + others.length;
  console.log(
    balanced
      ? `${places} positions, test cells and counters, every difference is zero.`
      : 'The records do not add up.',
  );
  return balanced;
});

function print(accounts: readonly (readonly [string, Counts])[]): void {
  for (const [name, counts] of accounts)
    console.log(
      `  ${name.padEnd(12)}${printed(counts)}${name === 'difference' && !equalCounts(counts, zeroCounts) ? '   NOT ZERO' : ''}`,
    );
}

function printed({ minutes, flights, landings, touchAndGoes, starts, abortedTakeOffs }: Counts): string {
  return [formatHours(minutes), flights, landings, touchAndGoes, starts, abortedTakeOffs]
    .map((value) => String(value).padStart(12))
    .join('');
}
