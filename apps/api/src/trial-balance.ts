import { formatHours } from '@strutbook/domain/units/minutes.js';
import type { Counts } from '@strutbook/domain/usage/counts.js';
import { equalCounts, zeroCounts } from '@strutbook/domain/usage/counts.js';
import { eachOperator } from './each-operator.js';
import { drawUpBalance } from './features/trial-balance/draw-up.js';

/** Prints, for every position of every airframe, what was flown against where it went. Ends with 1 when a difference is not zero. */
await eachOperator(async (tx, { id, code }) => {
  const { asOf, balanced, rows } = await drawUpBalance(tx, id, new Date());
  console.log(
    `Trial balance of ${code}, as of ${asOf}. Hours, flights, landings, touch-and-goes, starts, aborted take-offs.`,
  );
  for (const row of rows) {
    console.log(`${row.registration} position ${row.positionNumber}`);
    for (const [name, counts] of [
      ['flown', row.flown],
      ['on engines', row.onEngines],
      ['empty', row.empty],
      ['not running', row.notRunning],
      ['difference', row.difference],
    ] as const)
      console.log(
        `  ${name.padEnd(12)}${printed(counts)}${name === 'difference' && !equalCounts(counts, zeroCounts) ? '   NOT ZERO' : ''}`,
      );
  }
  console.log(
    balanced ? `${rows.length} positions, every difference is zero.` : 'The records do not add up.',
  );
  return balanced;
});

function printed({ minutes, flights, landings, touchAndGoes, starts, abortedTakeOffs }: Counts): string {
  return [formatHours(minutes), flights, landings, touchAndGoes, starts, abortedTakeOffs]
    .map((value) => String(value).padStart(12))
    .join('');
}
