import { remainingCycles, remainingMinutes } from '../../format/remaining.js';
import type { PositionView, Tightest } from '../../server/wire.js';

/** 'Position 1', 'APU': what the type calls it, and a bare number as a position. */
export function positionLabel({
  kind,
  number,
  label,
}: Pick<PositionView, 'kind' | 'number' | 'label'>): string {
  if (kind === 'apu') return 'APU';
  return label.trim() === '' || /^\d+$/.test(label.trim()) ? `Position ${number}` : label;
}

/** '2,019 cycles left', '4 cycles past', 'Not verified'. */
export function tightestAmount({ remainingCycles: cycles, remainingMinutes: minutes }: Tightest): string {
  if (cycles !== null) return remainingCycles(cycles);
  return minutes !== null ? remainingMinutes(minutes) : 'Not verified';
}

/** Engines by number, then the APU: the order in which they are read out. */
export function inReadingOrder(positions: readonly PositionView[]): readonly PositionView[] {
  const rank = (position: PositionView): number => (position.kind === 'apu' ? 100 : 0) + position.number;
  return [...positions].sort((a, b) => rank(a) - rank(b));
}
