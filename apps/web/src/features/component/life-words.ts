import { exactCycles, sharePercent } from '../../format/cycles.js';
import { hoursMinutes, thousands } from '../../format/hours.js';
import { remainingCycles, remainingMinutes } from '../../format/remaining.js';
import type { Life } from '../../server/wire.js';

/** What is left, in the unit that is limited; both when both are. */
export function leftText(life: Life | null): string {
  if (life === null) return 'Not known';
  if (life.kind === 'not-limited') return 'No limit';
  if (life.kind === 'not-authorised') return 'Not authorised here';
  if (life.kind === 'unsubstantiated') return 'Not known';
  const told = [
    ...(life.remainingCycles === null ? [] : [remainingCycles(life.remainingCycles)]),
    ...(life.remainingMinutes === null ? [] : [remainingMinutes(life.remainingMinutes)]),
  ];
  return told.length === 0 ? 'Not known' : told.join(', ');
}

/** What has been used of what: '81.6 % used, 8,981 cycles of life 11,000'. */
export function usedText(life: Life): string {
  const share = life.used === null ? 'Share used not known' : `${sharePercent(life.used)} used`;
  const limits = [
    ...(life.cycleLimit === null ? [] : [`${thousands(life.cycleLimit)} cycles`]),
    ...(life.minuteLimit === null ? [] : [`${hoursMinutes(life.minuteLimit)} h`]),
  ];
  return limits.length === 0 ? share : `${share} of ${limits.join(' and ')}`;
}

/** The document the limit is from. */
export function limitSource({ document, revision }: Life): string | null {
  if (document === null) return null;
  return revision === null ? document : `${document}, revision ${revision}`;
}

/** The arithmetic of a life, line by line. Source: the limit's own document, named in it. */
export function howWeGotIt(life: Life): readonly string[] {
  if (life.kind !== 'limited') return [];
  const rating = life.ratingCode === null ? '' : ` at rating ${life.ratingCode}`;
  const lines: string[] = [];
  if (life.cyclesUsed !== null) lines.push(`Flown since new: ${exactCycles(life.cyclesUsed)} cycles.`);
  if (life.minutesUsed !== null) lines.push(`Run since new: ${hoursMinutes(life.minutesUsed)} h.`);
  if (life.used !== null && life.cycleLimit !== null) {
    const { units, denominator } = life.used;
    lines.push(
      `Share of the life used, by the engine model’s rule for several ratings: ${thousands(units)}/${thousands(denominator)}, which is ${sharePercent(life.used)}.`,
    );
    lines.push(
      `Left${rating}: (1 − ${thousands(units)}/${thousands(denominator)}) × ${thousands(life.cycleLimit)} cycles, rounded down: ${thousands(life.remainingCycles ?? 0)}.`,
    );
  }
  if (life.minuteLimit !== null && life.minutesUsed !== null)
    lines.push(
      `Left in hours: ${hoursMinutes(life.minuteLimit)} − ${hoursMinutes(life.minutesUsed)} = ${hoursMinutes(life.remainingMinutes ?? 0)}.`,
    );
  const source = limitSource(life);
  if (source !== null) lines.push(`The limit is from ${source}.`);
  if (life.flagged) lines.push('The worst case stands for something unknown, under a recorded acceptance.');
  return lines;
}
