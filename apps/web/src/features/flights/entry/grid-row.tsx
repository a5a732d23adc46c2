import { hoursMinutes } from '../../../format/hours.js';
import { Button } from '../../../ui/actions/button.js';
import { StatusShape } from '../../../ui/status/status-shape.js';
import { cellId } from './cell-id.js';
import {
  FIELD_WORDS,
  type FlightFaults,
  type FlightField,
  flownMinutes,
  type TypedFlight,
} from './typed-flight.js';
import type { GridRow } from './use-rows.js';

interface GridRowProps {
  readonly row: GridRow;
  readonly place: number;
  readonly faults: FlightFaults;
  readonly onPut: (next: Partial<TypedFlight>) => void;
  readonly onExceptions: () => void;
  readonly onRemove: () => void;
}

const BEFORE = ['logPage', 'date', 'fromStation', 'toStation', 'takeOffAt', 'landingAt'] as const;
const AFTER = ['touchAndGoes', 'starts', 'abortedTakeOffs'] as const;
const COLUMNS = 13;

interface CellProps extends Pick<GridRowProps, 'row' | 'place' | 'onPut'> {
  readonly field: FlightField;
  readonly fault: string | undefined;
}

function Cell({ row, place, field, fault, onPut }: CellProps) {
  const id = cellId(place, field);
  const wrong = fault !== undefined;
  return (
    <td className={`grid-cell-${field}${wrong ? ' grid-wrong' : ''}`}>
      <input
        id={id}
        data-row={place}
        data-field={field}
        type="text"
        className="field-input field-mono"
        autoComplete="off"
        spellCheck={false}
        aria-label={`${FIELD_WORDS[field]}, row ${place + 1}`}
        aria-invalid={wrong ? true : undefined}
        aria-describedby={wrong ? `${id}-error` : undefined}
        value={row.flight[field]}
        onChange={(event) => onPut({ [field]: event.target.value })}
      />
    </td>
  );
}

function timeText(flight: TypedFlight): string {
  const flown = flownMinutes(flight);
  if (flown === null) return '';
  return flown <= 0 ? 'Check' : hoursMinutes(flown);
}

/** One flight in its cells; below them what is wrong with it. */
export function GridRowCells({ row, place, faults, onPut, onExceptions, onRemove }: GridRowProps) {
  const exceptions = row.flight.exceptions.length;
  const wrong = Object.entries(faults);
  const cell = (field: FlightField) => (
    <Cell key={field} {...{ row, place, field, onPut }} fault={faults[field]} />
  );
  return (
    <>
      <tr>
        <th scope="row" className="grid-number">
          {place + 1}
          {row.pasted && <span className="small"> New</span>}
        </th>
        {BEFORE.map(cell)}
        <td className="grid-time">{timeText(row.flight)}</td>
        {AFTER.map(cell)}
        <td>
          <Button
            kind="quiet"
            id={cellId(place, 'exceptions')}
            aria-label={`Positions that did not run throughout, row ${place + 1}: ${exceptions === 0 ? 'none' : exceptions}`}
            onClick={onExceptions}
          >
            {exceptions === 0 ? 'None' : exceptions}
          </Button>
        </td>
        <td>
          <Button kind="quiet" aria-label={`Remove row ${place + 1}`} onClick={onRemove}>
            Remove
          </Button>
        </td>
      </tr>
      {wrong.length > 0 && (
        <tr className="grid-faults">
          <td colSpan={COLUMNS}>
            <ul>
              {wrong.map(([field, message]) => (
                <li key={field} className="field-error" id={`${cellId(place, field)}-error`}>
                  <StatusShape status="over-limit" />
                  <span>{message}</span>
                </li>
              ))}
            </ul>
          </td>
        </tr>
      )}
    </>
  );
}
