/**
 * An amount of use: whole minutes and whole counted events.
 *
 * As a reading it is not negative; as a difference or an exception it may be.
 */
export interface Counts {
  readonly minutes: number;
  readonly flights: number;
  readonly landings: number;
  readonly touchAndGoes: number;
  readonly starts: number;
  readonly abortedTakeOffs: number;
}

/** No use at all. */
export const zeroCounts: Counts = {
  minutes: 0,
  flights: 0,
  landings: 0,
  touchAndGoes: 0,
  starts: 0,
  abortedTakeOffs: 0,
};

/** The sum, kind by kind. Total. */
export function addCounts(a: Counts, b: Counts): Counts {
  return {
    minutes: a.minutes + b.minutes,
    flights: a.flights + b.flights,
    landings: a.landings + b.landings,
    touchAndGoes: a.touchAndGoes + b.touchAndGoes,
    starts: a.starts + b.starts,
    abortedTakeOffs: a.abortedTakeOffs + b.abortedTakeOffs,
  };
}

/** The difference `a − b`, kind by kind. Total. */
export function subtractCounts(a: Counts, b: Counts): Counts {
  return {
    minutes: a.minutes - b.minutes,
    flights: a.flights - b.flights,
    landings: a.landings - b.landings,
    touchAndGoes: a.touchAndGoes - b.touchAndGoes,
    starts: a.starts - b.starts,
    abortedTakeOffs: a.abortedTakeOffs - b.abortedTakeOffs,
  };
}

/** The same amount taken away instead of given. Total. */
export function negateCounts(counts: Counts): Counts {
  return subtractCounts(zeroCounts, counts);
}

/** Whether two amounts agree in every kind. Total. */
export function equalCounts(a: Counts, b: Counts): boolean {
  return (
    a.minutes === b.minutes &&
    a.flights === b.flights &&
    a.landings === b.landings &&
    a.touchAndGoes === b.touchAndGoes &&
    a.starts === b.starts &&
    a.abortedTakeOffs === b.abortedTakeOffs
  );
}
