import { type ExactCycles, exactCycles } from './cycles.js';
import { hoursMinutes } from './hours.js';

interface Counted {
  readonly minutes: number | null;
  readonly cycles: ExactCycles | null;
}

/** '18,204:06 h, 7,981.5 cycles'; what is not known is said so, never nought. */
export function countersText({ minutes, cycles }: Counted): string {
  const hours = minutes === null ? 'hours not known' : `${hoursMinutes(minutes)} h`;
  return `${hours}, ${cycles === null ? 'cycles not known' : `${exactCycles(cycles)} cycles`}`;
}
