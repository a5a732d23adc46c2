/** Minute 0 of the scenarios: far enough back that nothing in them lies in the future. */
const FIRST = Date.UTC(2025, 0, 1);

/** The instant so many minutes after 2025-01-01T00:00Z, as the API writes it. */
export function instantAt(minutes: number): string {
  return `${new Date(FIRST + minutes * 60_000).toISOString().slice(0, 16)}Z`;
}

/** Minutes since 2025-01-01T00:00Z of an instant of the API or the database. */
export function minutesOf(instant: string | Date): number {
  return (new Date(instant).getTime() - FIRST) / 60_000;
}

/** The date so many days after 2025-01-01. */
export function dateAt(days: number): string {
  return new Date(FIRST + days * 86_400_000).toISOString().slice(0, 10);
}
