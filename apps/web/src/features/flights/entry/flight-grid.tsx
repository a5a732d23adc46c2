import { type ClipboardEvent, type KeyboardEvent, useRef } from 'react';
import { GridRowCells } from './grid-row.js';
import { isBlock } from './paste-block.js';
import type { FlightFaults, FlightField } from './typed-flight.js';
import { FLIGHT_FIELDS } from './typed-flight.js';
import type { Rows } from './use-rows.js';
import '../../../ui/table/data-table.css';

interface FlightGridProps {
  readonly caption: string;
  readonly rows: Rows;
  /** What is wrong, row by row. */
  readonly faults: readonly (FlightFaults | undefined)[];
  readonly onPaste: (text: string, row: number, field: FlightField) => void;
  readonly onExceptions: (row: number) => void;
}

const HEADS_BEFORE = ['Page', 'Date', 'From', 'To', 'Take-off', 'Landing'] as const;
const HEADS_AFTER = ['T&G', 'Starts', 'Abort.'] as const;

/** Where a cell is, told by the cell itself. */
function placeOf(target: EventTarget): { readonly row: number; readonly field: FlightField } | null {
  if (!(target instanceof HTMLInputElement)) return null;
  const field = FLIGHT_FIELDS.find((name) => name === target.dataset['field']);
  const row = Number(target.dataset['row']);
  return field === undefined || !Number.isInteger(row) ? null : { row, field };
}

type Place = { readonly row: number; readonly field: FlightField };

/** Where a key leads from a cell: a cell, the row below, filling from above; null when it is not for the grid. */
function moveOf(event: KeyboardEvent, from: Place, last: number): Place | 'below' | 'fill' | null {
  const held = event.ctrlKey || event.metaKey;
  if (held && event.key.toLowerCase() === 'd') return 'fill';
  if (held && event.key === 'Home') return { row: 0, field: 'logPage' };
  if (held && event.key === 'End') return { row: last, field: 'abortedTakeOffs' };
  if (event.key === 'Enter') return 'below';
  if (event.key === 'ArrowDown') return { ...from, row: Math.min(last, from.row + 1) };
  if (event.key === 'ArrowUp') return { ...from, row: Math.max(0, from.row - 1) };
  return null;
}

/** Flights in rows and cells. Enter and the arrows go up and down, Tab goes on, Ctrl+D fills down. */
export function FlightGrid({ caption, rows, faults, onPaste, onExceptions }: FlightGridProps) {
  const table = useRef<HTMLTableElement>(null);
  const goTo = (row: number, field: FlightField) => {
    const cell = table.current?.querySelector<HTMLInputElement>(`[data-row="${row}"][data-field="${field}"]`);
    cell?.focus();
    cell?.select();
  };
  const goToNew = (row: number, field: FlightField) => requestAnimationFrame(() => goTo(row, field));
  const press = (event: KeyboardEvent<HTMLTableElement>) => {
    const place = placeOf(event.target);
    if (place === null) return;
    const { row, field } = place;
    const move = moveOf(event, place, rows.rows.length - 1);
    if (move === 'below' && row === rows.rows.length - 1) {
      if (rows.add()) goToNew(row + 1, 'logPage');
    } else if (move === 'below') goTo(row + 1, field);
    else if (move === 'fill') rows.fillDown(row, field);
    else if (move === null) return;
    else goTo(move.row, move.field);
    event.preventDefault();
  };
  const take = (event: ClipboardEvent<HTMLTableElement>) => {
    const text = event.clipboardData.getData('text/plain');
    const place = placeOf(event.target);
    if (place === null || !isBlock(text)) return;
    event.preventDefault();
    onPaste(text, place.row, place.field);
  };
  return (
    <div className="table-scroll">
      {/* The keys and pastes of all cells are heard here. */}
      <table className="data-table grid-table" ref={table} onKeyDown={press} onPaste={take}>
        <caption>{caption}</caption>
        <thead>
          <tr>
            <th scope="col">Row</th>
            {HEADS_BEFORE.map((short) => (
              <th key={short} scope="col">
                {short}
              </th>
            ))}
            <th scope="col" className="cell-end">
              Time
            </th>
            {HEADS_AFTER.map((short) => (
              <th key={short} scope="col">
                {short}
              </th>
            ))}
            <th scope="col">Exceptions</th>
            <th scope="col">
              <span className="visually-hidden">Remove</span>
            </th>
          </tr>
        </thead>
        <tbody>
          {rows.rows.map((row, place) => (
            <GridRowCells
              key={row.key}
              row={row}
              place={place}
              faults={faults[place] ?? {}}
              onPut={(next) => rows.put(place, next)}
              onExceptions={() => onExceptions(place)}
              onRemove={() => {
                rows.remove(place);
                goToNew(Math.max(0, place - 1), 'logPage');
              }}
            />
          ))}
        </tbody>
      </table>
    </div>
  );
}
