import { remainingCycles, remainingDays, remainingMinutes } from '../../format/remaining.js';
import { calendarDate } from '../../format/utc-date.js';
import type { InstalledEngine, PositionView, Tightest } from '../../server/wire.js';

/** 'Position 1', 'APU': what the type calls it, and a bare number as a position. */
export function positionLabel({
  kind,
  number,
  label,
}: Pick<PositionView, 'kind' | 'number' | 'label'>): string {
  if (kind === 'apu') return 'APU';
  return label.trim() === '' || /^\d+$/.test(label.trim()) ? `Position ${number}` : label;
}

/** '2,019 cycles left', '4 cycles past', '12 days left', 'Not verified'. */
export function tightestAmount({
  remainingCycles: cycles,
  remainingMinutes: minutes,
  remainingDays: days,
}: Omit<Tightest, 'componentId' | 'description' | 'serialNumber'>): string {
  if (cycles !== null) return remainingCycles(cycles);
  if (minutes !== null) return remainingMinutes(minutes);
  return days === null ? 'Not verified' : remainingDays(days);
}

/** 'Ends first 11 Feb 2027, by the calendar'; null where nothing can be projected, or the tightest part tells why. */
export function soonestText({ soonest }: Pick<InstalledEngine, 'soonest'>): string | null {
  if (soonest === null || soonest.reason !== null) return null;
  const { projectedOn, goodThrough, basis } = soonest;
  if (projectedOn === null) return `Ends first: ${basis.toLowerCase()}`;
  return `Ends first ${goodThrough === null ? 'about ' : ''}${calendarDate(projectedOn)}, ${basis.charAt(0).toLowerCase()}${basis.slice(1)}`;
}

/** Engines by number, then the APU: the order in which they are read out. */
export function inReadingOrder(positions: readonly PositionView[]): readonly PositionView[] {
  const rank = (position: PositionView): number => (position.kind === 'apu' ? 100 : 0) + position.number;
  return [...positions].sort((a, b) => rank(a) - rank(b));
}
