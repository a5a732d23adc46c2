import { useState } from 'react';
import { layOver, readBlock } from './paste-block.js';
import { BLANK_FLIGHT, type FlightField, isBlank, type TypedFlight } from './typed-flight.js';

/** The server takes so many flights at a time. */
export const MOST_FLIGHTS = 50;

export interface GridRow {
  /** Names the row while it is typed, so that its cells keep their focus. */
  readonly key: number;
  readonly flight: TypedFlight;
  readonly pasted: boolean;
}

export interface Rows {
  readonly rows: readonly GridRow[];
  readonly put: (row: number, next: Partial<TypedFlight>) => void;
  /** Takes the field's text from the row above. */
  readonly fillDown: (row: number, field: FlightField) => void;
  /** Adds a row with the date of the last. False when there may be no more. */
  readonly add: () => boolean;
  readonly remove: (row: number) => void;
  /** Lays a block over the rows. Null when done, else why not. */
  readonly paste: (text: string, row: number, field: FlightField, registration: string) => string | null;
  readonly begin: (flights: readonly TypedFlight[]) => void;
}

let lastKey = 0;

function rowOf(flight: TypedFlight, pasted = false): GridRow {
  lastKey += 1;
  return { key: lastKey, flight, pasted };
}

const rowsOf = (flights: readonly TypedFlight[]): GridRow[] =>
  (flights.length === 0 ? [BLANK_FLIGHT] : flights).map((flight) => rowOf(flight));

/** The rows of the grid; onChange hears every change, so that a draft can be kept. */
export function useRows(
  start: readonly TypedFlight[],
  onChange: (flights: readonly TypedFlight[]) => void,
): Rows {
  const [rows, setRows] = useState(() => rowsOf(start));
  const set = (next: GridRow[]) => {
    setRows(next);
    onChange(next.map(({ flight }) => flight));
  };
  const put: Rows['put'] = (at, next) =>
    set(rows.map((row, place) => (place === at ? { ...row, flight: { ...row.flight, ...next } } : row)));
  return {
    rows,
    put,
    fillDown: (at, field) => {
      const above = rows[at - 1];
      if (above !== undefined) put(at, { [field]: above.flight[field] });
    },
    add: () => {
      if (rows.length >= MOST_FLIGHTS) return false;
      const date = rows.at(-1)?.flight.date ?? '';
      set([...rows, rowOf({ ...BLANK_FLIGHT, date })]);
      return true;
    },
    remove: (at) => set(rows.length === 1 ? rowsOf([]) : rows.filter((_, place) => place !== at)),
    paste: (text, at, field, registration) => {
      const block = readBlock(text, field, registration);
      if (!block.ok) return block.reason;
      // A block with headings is of whole rows: it begins below what is typed already.
      const from = block.by === 'place' ? at : firstFree(rows);
      const laid = layOver(
        rows.map(({ flight }) => flight),
        from,
        block.cells,
      );
      if (laid.length > MOST_FLIGHTS)
        return `That makes ${laid.length} rows, but ${MOST_FLIGHTS} are saved at a time. Paste fewer, or import a file.`;
      const next = laid.map((flight, place) => {
        const old = rows[place];
        const within = place >= from && place < from + block.cells.length;
        return within || old === undefined ? { ...rowOf(flight, within), ...(old && { key: old.key }) } : old;
      });
      set(next);
      return null;
    },
    begin: (flights) => set(rowsOf(flights)),
  };
}

function firstFree(rows: readonly GridRow[]): number {
  const last = rows.findLastIndex(({ flight }) => !isBlank(flight));
  return last + 1;
}
