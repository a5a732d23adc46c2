import { useState } from 'react';
import { useAct } from '../../../server/act.js';
import { COMPONENTS_KEY } from '../../../server/components.js';
import { FLEET_KEY } from '../../../server/fleet.js';
import type { FieldMessage } from '../../../ui/messages/error-summary.js';
import { fieldMessages } from '../../../ui/messages/field-messages.js';
import { FLIGHTS_KEY, type FlightsAnswer, logFlights, type NewFlight } from '../flights-data.js';
import { cellId } from './cell-id.js';
import {
  FLIGHT_FIELDS,
  type FlightFaults,
  type FlightField,
  faultsOf,
  flightWords,
  isBlank,
} from './typed-flight.js';
import type { GridRow } from './use-rows.js';

type RowFaults = readonly (FlightFaults | undefined)[];

interface Sent {
  readonly airframeId: string;
  readonly flights: readonly NewFlight[];
}

export interface FlightEntry {
  /** What is wrong, by the row's place in the grid. */
  readonly faults: RowFaults;
  readonly messages: readonly FieldMessage[];
  readonly attempt: number;
  readonly busy: boolean;
  readonly error: Error | null;
  readonly save: () => void;
  /** Takes back what was said of the rows, when they are others now. */
  readonly forget: () => void;
}

const isField = (name: string): name is FlightField | 'exceptions' =>
  name === 'exceptions' || FLIGHT_FIELDS.some((field) => field === name);

/** 'flights.3.exceptions.0.minutes' -> [3, 'exceptions'] among the flights sent. */
function placeIn(path: string | null): readonly [number, FlightField | 'exceptions'] | null {
  const match = /^flights\.(\d+)\.(\w+)/.exec(path ?? '');
  const name = match?.[2] ?? '';
  return match === null || !isField(name) ? null : [Number(match[1]), name];
}

/** The server's messages by the rows of the grid, of which blank ones were not sent. */
function refusedRows(error: unknown, sentRows: readonly number[]): RowFaults {
  const faults: (FlightFaults | undefined)[] = [];
  for (const { path, message } of fieldMessages(error)) {
    const place = placeIn(path);
    const row = place === null ? undefined : sentRows[place[0]];
    if (place !== null && row !== undefined) faults[row] = { ...faults[row], [place[1]]: message };
  }
  return faults;
}

const ownMessages = (faults: RowFaults): FieldMessage[] =>
  faults.flatMap((row, place) =>
    Object.entries(row ?? {}).map(([field, message]) => ({
      fieldId: cellId(place, field),
      message: `Row ${place + 1}: ${message}`,
    })),
  );

/** Messages of the refusal that belong to no cell. */
const wholeMessages = (error: unknown): FieldMessage[] =>
  fieldMessages(error)
    .filter(({ path }) => placeIn(path) === null)
    .map(({ message }) => ({ fieldId: null, message }));

/** Saving the grid: plain checks, one act for all rows, and whose fault it is when it is refused. */
export function useFlightEntry(
  airframeId: string,
  rows: readonly GridRow[],
  onSaved: (answer: FlightsAnswer) => void,
): FlightEntry {
  const [plain, setPlain] = useState<RowFaults>([]);
  const [sentRows, setSentRows] = useState<readonly number[]>([]);
  const [attempt, setAttempt] = useState(0);
  const saving = useAct<Sent, FlightsAnswer>({
    perform: logFlights,
    refresh: [FLIGHTS_KEY, FLEET_KEY, COMPONENTS_KEY, ['history']],
    onDone: onSaved,
  });
  const filled = rows.flatMap(({ flight }, place) => (isBlank(flight) ? [] : [{ flight, place }]));
  const save = () => {
    setAttempt(attempt + 1);
    const faults: (FlightFaults | undefined)[] = [];
    for (const { flight, place } of filled) {
      const found = faultsOf(flight);
      if (Object.keys(found).length > 0) faults[place] = found;
    }
    if (filled.length === 0) faults[0] = { logPage: 'Enter at least one flight' };
    setPlain(faults);
    const flights = filled.flatMap(({ flight }) => flightWords(flight) ?? []);
    if (faults.length > 0) saving.reset();
    else if (!saving.isPending) {
      setSentRows(filled.map(({ place }) => place));
      saving.mutate({ airframeId, flights });
    }
  };
  const faults = plain.length > 0 ? plain : refusedRows(saving.error, sentRows);
  return {
    faults,
    messages: [...(plain.length > 0 ? [] : wholeMessages(saving.error)), ...ownMessages(faults)],
    attempt: attempt * 2 + (saving.error === null ? 0 : 1),
    busy: saving.isPending,
    error: saving.error,
    save,
    forget: () => {
      setPlain([]);
      saving.reset();
    },
  };
}
