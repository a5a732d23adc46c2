import { parseHours } from '../../../format/hours.js';
import { parseDate } from '../../../format/utc-moment.js';
import type { Faults } from '../../../ui/fields/act-form.js';
import { filled, missing, under, whole } from '../plain-checks.js';
import type { NewRequirement } from './requirement-acts.js';

/** An interval as typed. */
export interface TypedInterval {
  /** Typed as hours; the server's name for it is minutes. */
  readonly minutes: string;
  readonly cycles: string;
  readonly days: string;
  readonly months: string;
}

/** A requirement as typed. */
export interface TypedRequirement {
  readonly code: string;
  readonly title: string;
  readonly kind: NewRequirement['kind'];
  readonly document: string;
  readonly revision: string;
  readonly effectiveOn: string;
  readonly anchor: NewRequirement['anchor'];
  readonly airframeTypeId: string;
  readonly positionNumber: string;
  readonly engineModelId: string;
  readonly partNumber: string;
  readonly threshold: TypedInterval;
  readonly repeat: TypedInterval;
  readonly combine: 'first' | 'last';
  readonly monthRule: 'same-day' | 'month-end';
  readonly countedFrom: NewRequirement['countedFrom'];
  readonly fromOn: string;
}

const NOTHING: TypedInterval = { minutes: '', cycles: '', days: '', months: '' };

export const START: TypedRequirement = {
  code: '',
  title: '',
  kind: 'inspection',
  document: '',
  revision: '',
  effectiveOn: '',
  anchor: 'engine',
  airframeTypeId: '',
  positionNumber: '',
  engineModelId: '',
  partNumber: '',
  threshold: NOTHING,
  repeat: NOTHING,
  combine: 'first',
  monthRule: 'same-day',
  countedFrom: 'new',
  fromOn: '',
};

const isTyped = (interval: TypedInterval): boolean =>
  Object.values(interval).some((text: string) => text.trim() !== '');

/** Whether more than one dimension is typed in either interval: only then one comes first. */
export const needsCombining = ({ threshold, repeat }: TypedRequirement): boolean =>
  [threshold, repeat].some(
    (interval) => Object.values(interval).filter((text: string) => text.trim() !== '').length > 1,
  );

function faultsOfInterval(interval: TypedInterval): Faults {
  const time = parseHours(interval.minutes);
  const counts = (['cycles', 'days', 'months'] as const).filter(
    (name) => interval[name].trim() !== '' && (whole(interval[name]) ?? 0) < 1,
  );
  return {
    ...(interval.minutes.trim() !== '' && !time.ok ? { minutes: time.reason } : {}),
    ...Object.fromEntries(counts.map((name) => [name, `Enter a whole number of ${name}, 1 or more`])),
  };
}

/** A few plain checks before sending; the server is the judge. */
export function check(typed: TypedRequirement): Faults {
  const effective = parseDate(typed.effectiveOn);
  const from = parseDate(typed.fromOn);
  return {
    ...missing(typed, {
      code: 'Enter its code',
      title: 'Enter its title',
      document: 'Enter the document',
      revision: 'Enter its revision',
      ...(typed.anchor === 'part' ? { partNumber: 'Enter the part number' } : {}),
    }),
    ...(effective.ok ? {} : { effectiveOn: effective.reason }),
    ...(typed.countedFrom === 'date' && !from.ok ? { fromOn: from.reason } : {}),
    ...under('threshold', faultsOfInterval(typed.threshold)),
    ...under('repeat', faultsOfInterval(typed.repeat)),
    ...(isTyped(typed.threshold) || isTyped(typed.repeat)
      ? {}
      : { 'threshold.minutes': 'Enter when it is due: hours, cycles, days or months' }),
  };
}

function intervalOf(interval: TypedInterval): NonNullable<NewRequirement['threshold']> {
  const time = parseHours(interval.minutes);
  const counts = (['cycles', 'days', 'months'] as const).flatMap((name) => {
    const count = whole(interval[name]);
    return count === null ? [] : [[name, count] as const];
  });
  return { ...(time.ok ? { minutes: time.minutes } : {}), ...Object.fromEntries(counts) };
}

function scopeOf(typed: TypedRequirement): Partial<NewRequirement> {
  const type = filled('airframeTypeId', typed.airframeTypeId);
  switch (typed.anchor) {
    case 'airframe':
      return type;
    case 'position': {
      const number = whole(typed.positionNumber);
      return { ...type, ...(number === null ? {} : { positionNumber: number }) };
    }
    case 'engine':
      return filled('engineModelId', typed.engineModelId);
    case 'part':
      return { partNumber: typed.partNumber.trim() };
  }
}

/** The requirement as it is sent. */
export function wordsOf(typed: TypedRequirement): NewRequirement {
  const { kind, anchor, combine, monthRule, countedFrom, threshold, repeat } = typed;
  return {
    code: typed.code.trim(),
    title: typed.title.trim(),
    kind,
    document: typed.document.trim(),
    revision: typed.revision.trim(),
    effectiveOn: typed.effectiveOn.trim(),
    anchor,
    ...scopeOf(typed),
    ...(isTyped(threshold) ? { threshold: intervalOf(threshold) } : {}),
    ...(isTyped(repeat) ? { repeat: intervalOf(repeat) } : {}),
    combine,
    monthRule,
    countedFrom,
    ...(countedFrom === 'date' ? { fromOn: typed.fromOn.trim() } : {}),
  };
}
