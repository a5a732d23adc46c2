import type { DueBasisDto, DueUseDto } from './due-list.dto.js';
import type { Projecting } from './due-row.js';
import type { DuePageRow } from './sql/due-columns.sql.js';

const STATEMENTS = {
  average: (days: number) =>
    `Dates are projected by what each airframe flew in the last ${days} days, on average. A forecast is never a limit.`,
  rate: () =>
    'Dates are projected by the planned rate in force for each airframe, with one landing and one start a flight. A forecast is never a limit.',
  flights: () =>
    'Dates are projected by the average of the flights planned for each airframe, from now to the last landing, with one landing and one start a flight. A forecast is never a limit.',
} as const;

/** By what the rows of a page are projected, with the numbers of their airframes. Total. */
export function basisOfPage(rows: readonly DuePageRow[], { basis, days }: Projecting): DueBasisDto {
  const uses = new Map<string, DueUseDto>();
  for (const { airframeId, registration, usedMinutes, usedFlights, usedDays } of rows)
    if (airframeId !== null && registration !== null && usedDays !== null)
      uses.set(airframeId, {
        ...{ airframeId, registration, days: usedDays },
        ...{ minutes: usedMinutes ?? 0, flights: usedFlights ?? 0 },
      });
  return {
    kind: basis,
    days: basis === 'average' ? days : null,
    statement: STATEMENTS[basis](days),
    uses: [...uses.values()].sort((a, b) => a.registration.localeCompare(b.registration, 'en')),
  };
}
