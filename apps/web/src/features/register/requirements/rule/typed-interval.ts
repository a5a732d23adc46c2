import { parseHours } from '../../../../format/hours.js';
import type { Faults } from '../../../../ui/fields/act-form.js';
import { whole } from '../../plain-checks.js';
import type { NewRequirement } from '../requirement-acts.js';

/** An interval as typed. */
export interface TypedInterval {
  /** Typed as hours; the server's name for it is minutes. */
  readonly minutes: string;
  readonly cycles: string;
  readonly days: string;
  readonly months: string;
}

/** When it is due, as typed. */
export interface TypedPhase extends TypedInterval {
  /** '' is no event. */
  readonly event: string;
  /** The outer bound; empty is none. */
  readonly notToExceed: TypedInterval;
}

export const NO_INTERVAL: TypedInterval = { minutes: '', cycles: '', days: '', months: '' };
export const NO_PHASE: TypedPhase = { ...NO_INTERVAL, event: '', notToExceed: NO_INTERVAL };

export const EVENTS = [
  { value: 'shop-visit', label: 'The next shop visit' },
  { value: 'installation', label: 'The next installation' },
  { value: 'removal', label: 'The next removal' },
  { value: 'main-base-return', label: 'The next return to the main base' },
] as const;

const DIMENSIONS = ['minutes', 'cycles', 'days', 'months'] as const;

/** How many dimensions are typed. */
export const howMany = (interval: TypedInterval): number =>
  DIMENSIONS.filter((dimension) => interval[dimension].trim() !== '').length;

/** Whether anything says when it is due. */
export const isTyped = (phase: TypedPhase): boolean => howMany(phase) > 0 || phase.event !== '';

/** What is plainly wrong with an interval, by the server's field names. */
export function faultsOfInterval(interval: TypedInterval): Faults {
  const time = parseHours(interval.minutes);
  const counts = (['cycles', 'days', 'months'] as const).filter(
    (name) => interval[name].trim() !== '' && (whole(interval[name]) ?? 0) < 1,
  );
  return {
    ...(interval.minutes.trim() !== '' && !time.ok ? { minutes: time.reason } : {}),
    ...Object.fromEntries(counts.map((name) => [name, `Enter a whole number of ${name}, 1 or more`])),
  };
}

type Interval = NonNullable<NonNullable<NewRequirement['threshold']>['notToExceed']>;

/** An interval as it is sent. */
export function intervalOf(interval: TypedInterval): Interval {
  const time = parseHours(interval.minutes);
  const counts = (['cycles', 'days', 'months'] as const).flatMap((name) => {
    const count = whole(interval[name]);
    return count === null ? [] : [[name, count] as const];
  });
  return { ...(time.ok ? { minutes: time.minutes } : {}), ...Object.fromEntries(counts) };
}

/** When it is due, as it is sent. */
export function phaseOf(phase: TypedPhase): NonNullable<NewRequirement['threshold']> {
  const event = EVENTS.find(({ value }) => value === phase.event)?.value;
  return {
    ...intervalOf(phase),
    ...(event === undefined ? {} : { event }),
    ...(howMany(phase.notToExceed) === 0 ? {} : { notToExceed: intervalOf(phase.notToExceed) }),
  };
}
