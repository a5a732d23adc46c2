import { useEffect, useRef } from 'react';
import { counted } from '../../format/counts.js';
import { hoursMinutes, thousands } from '../../format/hours.js';
import { Button } from '../../ui/actions/button.js';
import { Consequences } from '../../ui/consequences/consequences.js';
import type { FlightsAnswer } from './flights-data.js';

interface SavedFlightsProps {
  /** What was done: '2 flights saved'. */
  readonly what: string;
  readonly answer: FlightsAnswer;
  readonly onClose: () => void;
}

/** What an act on flights did: the airframe's totals, and the limits it reached. Stays until closed. */
export function SavedFlights({ what, answer, onClose }: SavedFlightsProps) {
  const { airframe, late } = answer;
  const total =
    airframe.minutes === null || airframe.flights === null
      ? 'not known: its opening balance is not complete'
      : `${hoursMinutes(airframe.minutes)} h, ${counted(airframe.flights, 'flight')}`;
  const box = useRef<HTMLElement>(null);
  // The button that began the act may be gone with its row: the reader goes on here.
  useEffect(() => box.current?.focus(), []);
  return (
    <section className="panel" ref={box} tabIndex={-1} aria-label={what}>
      <h2>{what}</h2>
      <p>Airframe total now: {total}.</p>
      {late && (
        <p>
          This lies before a change already recorded, so the counters at that change were computed again. Look
          at the packages made since.
        </p>
      )}
      <Consequences broken={answer} />
      <Button onClick={onClose}>Close this message</Button>
    </section>
  );
}

/** '2 flights saved, 5:12 h' */
export function savedWords({ flights }: FlightsAnswer): string {
  const minutes = flights.reduce((sum, flight) => sum + flight.minutes, 0);
  return `${thousands(flights.length)} ${flights.length === 1 ? 'flight' : 'flights'} saved, ${hoursMinutes(minutes)} h`;
}
