import type { FileFlight } from './file-flight.js';

/** A row that overlaps another of the same airframe; the one further down in the file is told. */
export interface Overlap {
  readonly row: FileFlight;
  readonly other: FileFlight;
}

/**
 * The overlaps among the flights of one airframe in a file: one sweep in order of take-off. A flight may begin at
 * the minute in which another ended. Total.
 */
export function overlapsInFile(flights: readonly FileFlight[]): readonly Overlap[] {
  const overlaps: Overlap[] = [];
  let latest: FileFlight | null = null;
  for (const flight of flights.toSorted((a, b) => a.takeOffAt - b.takeOffAt || a.line - b.line)) {
    if (latest !== null && flight.takeOffAt < latest.landingAt)
      overlaps.push(
        flight.line > latest.line ? { row: flight, other: latest } : { row: latest, other: flight },
      );
    if (latest === null || flight.landingAt > latest.landingAt) latest = flight;
  }
  return overlaps;
}
