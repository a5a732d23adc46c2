import { formatHours } from '@strutbook/domain/units/minutes.js';
import type { ToldCycles, ToldLine } from '../../../records/history/told-line.js';

/** A paragraph of a cell. */
export interface CellText {
  readonly text: string;
  readonly weight: 'regular' | 'bold' | 'figures';
}

/** A row of the printed history: one cell a column, in the order of the line's members. */
export interface HistoryRow {
  readonly struck: boolean;
  readonly cells: readonly (readonly CellText[])[];
}

/** The columns' heads. */
export const HISTORY_HEADS = ['When (UTC)', 'What', 'Adds', 'Total', 'Recorded'] as const;

/** A line of a history as a row of paper: every member but the way to its package in words, in order, nothing else. Total. */
export function historyRow({ at, placed, title, detail, struck, adds, totals, entry }: ToldLine): HistoryRow {
  return {
    struck: struck !== null,
    cells: [
      [figures(printedInstant(at)), ...(placed === null ? [] : [regular(placed)])],
      [
        { text: title, weight: 'bold' },
        regular(detail),
        ...(struck === null
          ? []
          : [regular(`Struck ${printedInstant(struck.recordedAt)} by ${struck.by}: ${struck.reason}`)]),
      ],
      adds === null ? [] : [figures(printedAdded(adds.minutes)), figures(printedCycles(adds.cycles))],
      [figures(printedHours(totals.minutes)), figures(printedCount(totals.cycles))],
      [
        figures(
          `${entry.number === null ? 'No entry' : `No. ${entry.number}`} ${printedInstant(entry.recordedAt)}`,
        ),
        figures([entry.by, ...(entry.hash === null ? [] : [entry.hash])].join(' ')),
      ],
    ],
  };
}

/** '2026-11-12T08:10Z' as '2026-11-12 08:10Z'. Total. */
export function printedInstant(at: string): string {
  return at.replace('T', ' ');
}

/** Whole minutes as 'h:mm h'; what is not known says so. Total. */
export function printedHours(minutes: number | null): string {
  return minutes === null ? 'hours not known' : `${formatHours(minutes)} h`;
}

/** Whole cycles; what is not known says so. Total. */
export function printedCount(cycles: number | null): string {
  return cycles === null ? 'cycles not known' : `${cycles} cyc`;
}

function printedAdded(minutes: number | null): string {
  return minutes === null || minutes < 0 ? printedHours(minutes) : `+${printedHours(minutes)}`;
}

/** 2 halves as '+1 cyc', 3 halves as '+1 1/2 cyc': exact, as on the screen. */
function printedCycles(cycles: ToldCycles | null): string {
  if (cycles === null) return 'cycles not known';
  const units = Math.abs(cycles.units);
  const whole = Math.floor(units / cycles.denominator);
  const rest = units % cycles.denominator;
  const part = rest === 0 ? '' : `${rest}/${cycles.denominator}`;
  const amount = [...(whole > 0 || part === '' ? [String(whole)] : []), part].join(' ').trim();
  return `${cycles.units < 0 ? '-' : '+'}${amount} cyc`;
}

function regular(text: string): CellText {
  return { text, weight: 'regular' };
}

function figures(text: string): CellText {
  return { text, weight: 'figures' };
}
