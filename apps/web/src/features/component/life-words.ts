import { exactCycles, sharePercent } from '../../format/cycles.js';
import { hoursMinutes, thousands } from '../../format/hours.js';
import { remainingCycles, remainingMinutes } from '../../format/remaining.js';
import { calendarDate } from '../../format/utc-date.js';
import type { Life } from '../../server/wire.js';
import { calendarText, goodThroughText } from '../../ui/status/calendar-words.js';

/** What is left, in each dimension that is limited. */
export function leftText(life: Life | null): string {
  if (life === null) return 'Not known';
  if (life.kind === 'not-limited') return 'Not limited';
  if (life.kind === 'not-authorised') return 'Not authorised here';
  if (life.kind === 'unsubstantiated') return 'Not known';
  const told = [
    ...(life.remainingCycles === null ? [] : [remainingCycles(life.remainingCycles)]),
    ...(life.remainingMinutes === null ? [] : [remainingMinutes(life.remainingMinutes)]),
    ...(life.goodThrough === null ? [] : [goodThroughText(life.goodThrough, life.remainingDays)]),
  ];
  return told.length === 0 ? 'Not begun: it was never installed' : told.join(', ');
}

/** What has been used of what: '81.6 % used, 8,981 cycles of life 11,000'. */
export function usedText(life: Life): string {
  const share = life.used === null ? 'Share used not known' : `${sharePercent(life.used)} used`;
  const limits = [
    ...(life.cycleLimit === null ? [] : [`${thousands(life.cycleLimit)} cycles`]),
    ...(life.minuteLimit === null ? [] : [`${hoursMinutes(life.minuteLimit)} h`]),
    ...(life.calendar === null ? [] : [calendarText(life.calendar)]),
  ];
  return limits.length === 0 ? share : `${share} of ${limits.join(' and ')}`;
}

/** The documents a limit is from: the one that governs, and what it lowers. */
export function limitSource({ document, revision, sources }: Life): string | null {
  if (document === null) return null;
  const named = (from: { readonly document: string; readonly revision: string | null }) =>
    from.revision === null ? from.document : `${from.document}, revision ${from.revision}`;
  const manual = sources.find(({ basis }) => basis === 'manual');
  const lowered = sources.filter(({ basis, governs }) => basis === 'directive' && governs.length > 0);
  if (lowered.length === 0) return named({ document, revision });
  const by = lowered.map((source) => `directive ${named(source)}`).join(' and ');
  return manual === undefined ? `${by} alone` : `${by}, below ${named(manual)}`;
}

/** The day on which nothing is left, and what that rests on: a forecast where use drives it. */
export function endText({
  projectedOn,
  projectedBy,
  basis,
}: Pick<Life, 'projectedOn' | 'projectedBy' | 'basis'>): string {
  if (projectedOn === null) return basis;
  return projectedBy === 'days' ? calendarDate(projectedOn) : `about ${calendarDate(projectedOn)}`;
}

/** The arithmetic of a life, line by line. Source: the limit's own document, named in it. */
export function howWeGotIt(life: Life): readonly string[] {
  if (life.kind !== 'limited') return [];
  const source = limitSource(life);
  return [
    ...(life.cyclesUsed === null ? [] : [`Flown since new: ${exactCycles(life.cyclesUsed)} cycles.`]),
    ...(life.minutesUsed === null ? [] : [`Run since new: ${hoursMinutes(life.minutesUsed)} h.`]),
    ...cycleLines(life),
    ...hourLines(life),
    ...calendarLines(life),
    ...(source === null ? [] : [`The limit is from ${source}.`]),
    ...(life.flagged
      ? [`The worst case stands for something unknown, accepted by ${acceptedText(life)}.`]
      : []),
  ];
}

/** Who accepted a worst case, by which reference. */
export const acceptedText = ({ acceptedBy }: Pick<Life, 'acceptedBy'>): string =>
  acceptedBy.map(({ by, reference }) => `${by}, ${reference}`).join('; ');

function cycleLines({ used, cycleLimit, ratingCode, remainingCycles: left }: Life): readonly string[] {
  if (used === null || cycleLimit === null) return [];
  const share = `${thousands(used.units)}/${thousands(used.denominator)}`;
  const rating = ratingCode === null ? '' : ` at rating ${ratingCode}`;
  return [
    `Share of the life used, by the engine model’s rule for several ratings: ${share}, which is ${sharePercent(used)}.`,
    `Left${rating}: (1 − ${share}) × ${thousands(cycleLimit)} cycles, rounded down: ${thousands(left ?? 0)}.`,
  ];
}

function hourLines({ minuteLimit, minutesUsed, remainingMinutes: left }: Life): readonly string[] {
  if (minuteLimit === null || minutesUsed === null) return [];
  return [
    `Left in hours: ${hoursMinutes(minuteLimit)} − ${hoursMinutes(minutesUsed)} = ${hoursMinutes(left ?? 0)}.`,
  ];
}

function calendarLines({ calendar, goodThrough }: Life): readonly string[] {
  if (calendar === null || goodThrough === null) return [];
  const from = calendar.countedOn === null ? 'a day not known' : calendarDate(calendar.countedOn);
  return [
    `By the calendar: ${calendarText(calendar)}, counted from ${from}: good through ${calendarDate(goodThrough)}.`,
  ];
}
