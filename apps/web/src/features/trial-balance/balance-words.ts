import { hoursMinutes, thousands } from '../../format/hours.js';
import { momentText } from '../../format/when.js';
import type { BalanceSpan, Counts } from './trial-balance-queries.js';

type Kind = keyof Counts;

/** The kinds that are counted, in the order they are read. */
export const KINDS: readonly { readonly kind: Kind; readonly word: string; readonly one: string }[] = [
  { kind: 'minutes', word: 'Hours', one: 'hours' },
  { kind: 'flights', word: 'Flights', one: 'flight' },
  { kind: 'landings', word: 'Landings', one: 'landing' },
  { kind: 'touchAndGoes', word: 'Touch-and-goes', one: 'touch-and-go' },
  { kind: 'starts', word: 'Starts', one: 'start' },
  { kind: 'abortedTakeOffs', word: 'Aborted take-offs', one: 'aborted take-off' },
];

/** 840 minutes -> '14:00', 7 flights -> '7'. */
export const amountOf = (kind: Kind, counts: Counts): string =>
  kind === 'minutes' ? hoursMinutes(counts.minutes) : thousands(counts[kind]);

/** Whether it is nothing in every kind. */
export const isNothing = (counts: Counts): boolean => KINDS.every(({ kind }) => counts[kind] === 0);

/** A difference, each kind that is not zero: '−0:01 h, 1 flight'. */
export function differenceText(difference: Counts): string {
  const told = KINDS.flatMap(({ kind, one, word }) => {
    const amount = difference[kind];
    if (amount === 0) return [];
    if (kind === 'minutes') return `${hoursMinutes(amount)} h`;
    return `${thousands(amount)} ${Math.abs(amount) === 1 ? one : word.toLowerCase()}`;
  });
  return told.length === 0 ? '0:00' : told.join(', ');
}

/** '3 Mar 2024 06:00 UTC to 5 Mar 2024 06:00 UTC'. */
export function spanText({ from, to }: Pick<BalanceSpan, 'from' | 'to'>): string {
  if (from === null && to === null) return 'Always';
  if (from === null) return `Until ${momentText(to ?? '')}`;
  return to === null ? `Since ${momentText(from)}` : `${momentText(from)} to ${momentText(to)}`;
}
