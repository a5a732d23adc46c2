/** A duty as it is told: what is granted, how far planned times hold, and from where the next is counted. */
export type Measure = 'minutes' | 'cycles' | 'days' | 'months';
export type Granted = Readonly<Partial<Record<Measure, number | undefined>>>;

export interface PlainTier {
  readonly upTo?: number | undefined;
  readonly percent?: number | undefined;
  readonly atMost?: number | undefined;
}

export interface PlainRule {
  readonly threshold: Granted | null;
  readonly repeat: Granted;
  readonly early: Readonly<Partial<Record<Measure, readonly PlainTier[]>>>;
  readonly late: Readonly<Partial<Record<Measure, readonly PlainTier[]>>>;
  readonly rebase: Readonly<Record<'early' | 'within' | 'beyond', 'from-done' | 'from-due'>>;
  readonly monthRule: 'same-day' | 'month-end';
  readonly combine: 'first' | 'last';
}

/** A flight in minutes since the record began; it uses one cycle and a half for each touch-and-go. */
export interface PlainFlight {
  readonly takeOff: number;
  readonly landing: number;
  readonly touchAndGoes: number;
}

export const FIRST_DAY = Date.UTC(2025, 0, 1) / 86_400_000;
export const OPENING = { minutes: 60_000, cycles: 1_000 };

/** What one measure says: due, the end of what is granted past it, and what is left, all in whole units or day numbers. */
export interface PlainDue {
  readonly due: number;
  readonly latest: number;
  readonly left: number;
  readonly isOver: boolean;
}

/** Minutes in hundredths, cycles in two-hundredths: so that a half and a percent are whole. */
const FINE = { minutes: 100, cycles: 200 } as const;

/** The counter at a minute, in fine units, added up flight by flight. */
function counterAt(flights: readonly PlainFlight[], measure: 'minutes' | 'cycles', minute: number): number {
  let sum = OPENING[measure] * FINE[measure];
  for (const { takeOff, landing, touchAndGoes } of flights)
    if (landing <= minute)
      sum += measure === 'minutes' ? (landing - takeOff) * 100 : 200 + touchAndGoes * 100;
  return sum;
}

function tierOf(tiers: readonly PlainTier[] | undefined, interval: number): PlainTier | null {
  for (const tier of tiers ?? []) if (tier.upTo === undefined || interval <= tier.upTo) return tier;
  return null;
}

/** What is next due in one measure, with everything that was done told again from the beginning. */
export function plainDue(
  measure: Measure,
  rule: PlainRule,
  facts: { readonly flights: readonly PlainFlight[]; readonly done: readonly number[]; readonly now: number },
): PlainDue | null {
  const done = [...facts.done].sort((a, b) => a - b);
  return measure === 'minutes' || measure === 'cycles'
    ? counterDue(measure, rule, { ...facts, done })
    : dayDue(measure, rule, { ...facts, done });
}

type Facts = Parameters<typeof plainDue>[2];

function intervalAfter(rule: PlainRule, times: number, measure: Measure): number | undefined {
  return (times === 0 && rule.threshold !== null ? rule.threshold : rule.repeat)[measure];
}

/** What a tier grants of an interval of a counter, in fine units. */
function counterGrant(tier: PlainTier | null, interval: number, fine: number): number {
  const share =
    tier?.percent === undefined ? Number.POSITIVE_INFINITY : (interval * tier.percent * fine) / 100;
  const least = Math.min(share, (tier?.atMost ?? Number.POSITIVE_INFINITY) * fine);
  return Number.isFinite(least) ? least : 0;
}

function counterDue(
  measure: 'minutes' | 'cycles',
  rule: PlainRule,
  { flights, done, now }: Facts,
): PlainDue | null {
  const fine = FINE[measure];
  const granted = (side: 'early' | 'late', interval: number) =>
    counterGrant(tierOf(rule[side][measure], interval), interval, fine);
  let from = OPENING[measure] * fine;
  for (const [index, minute] of done.entries()) {
    const at = counterAt(flights, measure, minute);
    const interval = intervalAfter(rule, index, measure);
    const due = from + (interval ?? 0) * fine;
    const isEarly = interval === undefined || at < due - granted('early', interval);
    const isWithin = interval !== undefined && at <= due + granted('late', interval);
    const meeting = isEarly ? 'early' : isWithin ? 'within' : 'beyond';
    from = interval !== undefined && rule.rebase[meeting] === 'from-due' ? due : at;
  }
  const interval = intervalAfter(rule, done.length, measure);
  if (interval === undefined) return null;
  const due = from + interval * fine;
  const latest = due + granted('late', interval);
  const reading = counterAt(flights, measure, now);
  return {
    due: Math.floor(due / fine),
    latest: Math.floor(latest / fine),
    left: Math.floor((due - reading) / fine),
    // Whole units tell whether it is over: what is left is rounded down.
    isOver: Math.floor((latest - reading) / fine) < 0,
  };
}

/** So many months on: to the same day, or the month's last where it is shorter; or always to the month's last. */
function monthsOn(day: number, months: number, anchor: number, rule: PlainRule['monthRule']): number {
  const date = new Date(day * 86_400_000);
  const last = Date.UTC(date.getUTCFullYear(), date.getUTCMonth() + months + 1, 0) / 86_400_000;
  if (rule === 'month-end') return last;
  return last - Math.max(0, new Date(last * 86_400_000).getUTCDate() - anchor);
}

const dayOfMonth = (day: number) => new Date(day * 86_400_000).getUTCDate();

/** The day due after an interval from a day, and the first and last day inside the window around it. */
function dayWindow(
  measure: 'days' | 'months',
  rule: PlainRule,
  { from, anchor, interval }: { readonly from: number; readonly anchor: number; readonly interval: number },
) {
  const due = measure === 'days' ? from + interval : monthsOn(from, interval, anchor, rule.monthRule);
  const moved = (side: 'early' | 'late') => {
    const tier = tierOf(rule[side][measure], interval);
    const sign = side === 'late' ? 1 : -1;
    const spans: number[] = [];
    if (tier?.percent !== undefined) spans.push(Math.floor(((due - from) * tier.percent) / 100));
    if (tier?.atMost !== undefined && measure === 'days') spans.push(tier.atMost);
    if (tier?.atMost !== undefined && measure === 'months')
      spans.push(Math.abs(monthsOn(due, sign * tier.atMost, dayOfMonth(due), 'same-day') - due));
    return spans.length === 0 ? due : due + sign * Math.min(...spans);
  };
  return { due, earliest: moved('early'), latest: moved('late') };
}

function dayDue(measure: 'days' | 'months', rule: PlainRule, { done, now }: Facts): PlainDue | null {
  let from = FIRST_DAY;
  let anchor = dayOfMonth(from);
  for (const [index, minute] of done.entries()) {
    const on = FIRST_DAY + Math.floor(minute / 1440);
    const interval = intervalAfter(rule, index, measure);
    const around = interval === undefined ? null : dayWindow(measure, rule, { from, anchor, interval });
    if (around !== null && keepsDue(on, around, rule)) from = around.due;
    else [from, anchor] = [on, dayOfMonth(on)];
  }
  const interval = intervalAfter(rule, done.length, measure);
  if (interval === undefined) return null;
  const { due, latest } = dayWindow(measure, rule, { from, anchor, interval });
  const today = FIRST_DAY + Math.floor(now / 1440);
  return { due, latest, left: due - today, isOver: today > latest };
}

/** Whether the next is counted from the due day; met on that very day it is the same, and keeps the day of the month. */
function keepsDue(
  on: number,
  { due, earliest, latest }: ReturnType<typeof dayWindow>,
  rule: PlainRule,
): boolean {
  const meeting = on < earliest ? 'early' : on <= latest ? 'within' : 'beyond';
  return on === due || rule.rebase[meeting] === 'from-due';
}
