import { parseDate } from '../../../../format/utc-moment.js';
import type { Faults } from '../../../../ui/fields/act-form.js';
import { filled, missing, under, whole } from '../../plain-checks.js';
import type { NewRequirement } from '../requirement-acts.js';
import { faultsOfTiers, grantsOf, type TypedTier } from './typed-grants.js';
import { faultsOfInterval, howMany, isTyped, NO_PHASE, phaseOf, type TypedPhase } from './typed-interval.js';

type Rebase = Required<NonNullable<NewRequirement['rebase']>>;

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
  readonly serialFrom: string;
  readonly serialTo: string;
  /** Codes, parted by commas. */
  readonly onlyWith: string;
  readonly unlessWith: string;
  readonly threshold: TypedPhase;
  readonly repeat: TypedPhase;
  readonly combine: 'first' | 'last';
  readonly monthRule: 'same-day' | 'month-end';
  readonly countedFrom: NewRequirement['countedFrom'];
  readonly fromOn: string;
  readonly early: readonly TypedTier[];
  readonly late: readonly TypedTier[];
  readonly variation: readonly TypedTier[];
  readonly grantedBy: string;
  readonly rebase: Rebase;
  readonly supersedesId: string;
  readonly terminatesId: string;
  readonly credit: NonNullable<NewRequirement['credit']>;
  readonly mandatory: boolean;
}

export const START: TypedRequirement = {
  ...{ code: '', title: '', kind: 'inspection', document: '', revision: '', effectiveOn: '' },
  ...{ anchor: 'engine', airframeTypeId: '', positionNumber: '', engineModelId: '', partNumber: '' },
  ...{ serialFrom: '', serialTo: '', onlyWith: '', unlessWith: '' },
  ...{ threshold: NO_PHASE, repeat: NO_PHASE, combine: 'first', monthRule: 'same-day' },
  ...{ countedFrom: 'new', fromOn: '', early: [], late: [], variation: [], grantedBy: '' },
  rebase: { early: 'from-done', within: 'from-due', varied: 'from-due', beyond: 'from-done' },
  ...{ supersedesId: '', terminatesId: '', credit: 'revisions', mandatory: false },
};

const codesOf = (typed: string): string[] =>
  typed
    .split(',')
    .map((code) => code.trim())
    .filter((code) => code !== '');

/** Whether more than one dimension is typed in either interval: only then one comes first. */
export const needsCombining = ({ threshold, repeat }: TypedRequirement): boolean =>
  [threshold, repeat].some((phase) => howMany(phase) > 1);

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
    ...under('threshold.notToExceed', faultsOfInterval(typed.threshold.notToExceed)),
    ...under('repeat', faultsOfInterval(typed.repeat)),
    ...under('repeat.notToExceed', faultsOfInterval(typed.repeat.notToExceed)),
    ...under('window.early', faultsOfTiers(typed.early)),
    ...under('window.late', faultsOfTiers(typed.late)),
    ...under('variation', faultsOfTiers(typed.variation)),
    ...(isTyped(typed.threshold) || isTyped(typed.repeat)
      ? {}
      : { 'threshold.minutes': 'Enter when it is due: hours, cycles, days, months or an event' }),
  };
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

/** What only some are, and what it hangs on. */
function boundsOf(typed: TypedRequirement): Partial<NewRequirement> {
  const [onlyWith, unlessWith] = [codesOf(typed.onlyWith), codesOf(typed.unlessWith)];
  return {
    ...(typed.anchor === 'position'
      ? {}
      : { ...filled('serialFrom', typed.serialFrom), ...filled('serialTo', typed.serialTo) }),
    ...(onlyWith.length === 0 ? {} : { onlyWith }),
    ...(unlessWith.length === 0 ? {} : { unlessWith }),
    ...filled('supersedesId', typed.supersedesId),
    ...filled('terminatesId', typed.terminatesId),
    credit: typed.credit,
    ...(typed.kind === 'bulletin' && typed.mandatory ? { mandatory: true } : {}),
  };
}

function tolerancesOf(typed: TypedRequirement): Partial<NewRequirement> {
  const [early, late, variation] = [grantsOf(typed.early), grantsOf(typed.late), grantsOf(typed.variation)];
  return {
    ...(early === null && late === null
      ? {}
      : { window: { ...(early === null ? {} : { early }), ...(late === null ? {} : { late }) } }),
    ...(variation === null ? {} : { variation }),
    ...filled('grantedBy', typed.grantedBy),
    rebase: typed.rebase,
  };
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
    ...boundsOf(typed),
    ...(isTyped(threshold) ? { threshold: phaseOf(threshold) } : {}),
    ...(isTyped(repeat) ? { repeat: phaseOf(repeat) } : {}),
    combine,
    monthRule,
    countedFrom,
    ...(countedFrom === 'date' ? { fromOn: typed.fromOn.trim() } : {}),
    ...tolerancesOf(typed),
  };
}
