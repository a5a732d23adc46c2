import type { Capture } from '@strutbook/domain/work/capture.js';
import { limitWords } from '../../../format/reading.js';

/** What the data asks for of a capture, in words; empty where its label says it all. Total. */
export function askedWords(capture: Capture): string {
  if (capture.kind === 'torque')
    return `${capture.low} to ${capture.high} ${capture.unit}, ${capture.thread}; in the order ${capture.points.join(', ')}${capture.runOn.rule === 'none' ? '' : '; with run-on torque'}`;
  if (capture.kind === 'leak-check') return `at least ${capture.minMinutes} minutes at ${capture.power}`;
  if (capture.kind === 'readings')
    return capture.rows.map((row) => `${row.label} ${limitWords(row)} ${row.unit}`).join('; ');
  return capture.kind === 'count' ? `${capture.what} ${capture.direction}` : '';
}
