import type { ReactNode } from 'react';
import { Button } from '../../ui/actions/button.js';
import './register.css';

interface SubRowsProps<Row> {
  /** 'Positions' */
  readonly legend: string;
  /** 'position' */
  readonly noun: string;
  readonly rows: readonly Row[];
  readonly blank: Row;
  /** At least so many rows stay. */
  readonly least?: number;
  readonly hint?: ReactNode;
  readonly error?: string | null | undefined;
  readonly onRows: (next: readonly Row[]) => void;
  readonly children: (row: Row, put: (next: Partial<Row>) => void, place: number) => ReactNode;
}

/** Several of one kind inside a form: ratings, positions, places. */
export function SubRows<Row extends object>({
  legend,
  noun,
  rows,
  blank,
  least = 0,
  hint,
  error,
  onRows,
  children,
}: SubRowsProps<Row>) {
  const put = (place: number) => (next: Partial<Row>) =>
    onRows(rows.map((row, at) => (at === place ? { ...row, ...next } : row)));
  return (
    <fieldset className="sub-rows">
      <legend>{legend}</legend>
      {hint !== undefined && <p className="field-hint">{hint}</p>}
      {(error ?? '') !== '' && <p className="field-error">{error}</p>}
      {rows.map((row, place) => (
        // Rows have no name before they are saved; removing one moves the words of those below.
        // biome-ignore lint/suspicious/noArrayIndexKey: the fields are controlled
        <fieldset key={place} className="sub-row">
          <legend className="visually-hidden">
            {noun} {place + 1}
          </legend>
          {children(row, put(place), place)}
          {rows.length > least && (
            <div>
              <Button
                kind="quiet"
                aria-label={`Remove ${noun} ${place + 1}`}
                onClick={() => onRows(rows.filter((_, at) => at !== place))}
              >
                Remove
              </Button>
            </div>
          )}
        </fieldset>
      ))}
      <div>
        <Button onClick={() => onRows([...rows, blank])}>Add a {noun}</Button>
      </div>
    </fieldset>
  );
}
