import type { ReadingRow } from '@strutbook/domain/work/capture.js';

/** '88.0 to 92.5', 'at most 865' */
export function limitWords({ low, high }: Pick<ReadingRow, 'low' | 'high'>): string {
  if (low !== null && high !== null) return `${low} to ${high}`;
  if (low !== null) return `at least ${low}`;
  return high === null ? 'none set' : `at most ${high}`;
}
