import { parseHours } from '../../format/hours.js';
import type { Faults } from '../fields/act-form.js';

/** What a counter shows, as typed. */
export interface TypedFigures {
  readonly hours: string;
  readonly starts: string;
}

export const BLANK_FIGURES: TypedFigures = { hours: '', starts: '' };

const WHOLE = /^\d{1,8}$/;

/** What is plainly wrong with figures, by the server's names of the fields. */
export function checkFigures({ hours, starts }: TypedFigures): Faults {
  const time = parseHours(hours);
  return {
    ...(time.ok ? {} : { minutes: time.reason }),
    ...(WHOLE.test(starts.trim()) ? {} : { starts: 'Enter the starts as a whole number, for example 8226' }),
  };
}

/** The figures as they are sent; only of figures that are right. */
export function figuresOf({ hours, starts }: TypedFigures): {
  readonly minutes: number;
  readonly starts: number;
} {
  const time = parseHours(hours);
  return { minutes: time.ok ? time.minutes : 0, starts: Number(starts.trim()) };
}
