import type { ToldFlight } from './act.js';
import { carriedBy, type PlainRecord, type PlainStay } from './plain-record.js';

const LONGEST = 1440;

/**
 * Whether everything on record can have been so at once: no airframe flies twice, no component is in two places,
 * no slot holds two, and nothing is taken out or put in in the air. Each pair is looked at.
 */
export function isConsistent(record: PlainRecord): boolean {
  return (
    record.flights.every((flight) => isFlight(flight) && !clashes(flight, record.flights)) &&
    record.stays.every(
      (stay) => stay.from >= 0 && (stay.to === null || stay.to > stay.from) && !overlaps(stay, record.stays),
    ) &&
    record.stays.every((stay) => isOnTheGround(record, stay))
  );
}

function isFlight({ takeOff, landing, exceptions }: ToldFlight): boolean {
  const flown = landing - takeOff;
  const within = exceptions.every(
    ({ shutDownMinutes }) => shutDownMinutes === null || (shutDownMinutes > 0 && shutDownMinutes <= flown),
  );
  return takeOff >= 0 && flown > 0 && flown <= LONGEST && within;
}

function clashes(flight: ToldFlight, all: readonly ToldFlight[]): boolean {
  return all.some(
    (other) =>
      other !== flight &&
      other.airframe === flight.airframe &&
      (other.page === flight.page || (other.takeOff < flight.landing && flight.takeOff < other.landing)),
  );
}

function overlaps(stay: PlainStay, all: readonly PlainStay[]): boolean {
  return all.some(
    (other) =>
      other.number !== stay.number &&
      (other.component === stay.component || (stay.slot !== null && other.slot === stay.slot)) &&
      (other.to === null || stay.from < other.to) &&
      (stay.to === null || other.from < stay.to),
  );
}

function isOnTheGround(record: PlainRecord, stay: PlainStay): boolean {
  const { slot, component: occupant, from, to } = stay;
  if (slot === null) return true;
  const begins = carriedBy(record, { slot, occupant }, from);
  const ends = to === null ? null : carriedBy(record, { slot, occupant }, to, true);
  const inTheAir = (airframe: string, at: number) =>
    record.flights.some(
      (flight) => flight.airframe === airframe && flight.takeOff < at && at < flight.landing,
    );
  if (begins !== null && inTheAir(begins.airframe, from)) return false;
  return !(ends !== null && to !== null && inTheAir(ends.airframe, to));
}
