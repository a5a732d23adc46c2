import { amountIn, type Dimension } from '../../../../format/due-words.js';
import { calendarDate } from '../../../../format/utc-date.js';
import type { NewRequirement } from '../requirement-acts.js';
import type { Requirement } from '../requirement-queries.js';
import { COUNTED } from '../requirement-words.js';

/** What is read of a rule, recorded or only typed. */
export type RuleShape = Pick<
  Requirement,
  | 'threshold'
  | 'repeat'
  | 'combine'
  | 'monthRule'
  | 'countedFrom'
  | 'fromOn'
  | 'effectiveOn'
  | 'window'
  | 'variation'
  | 'grantedBy'
  | 'rebase'
  | 'serialFrom'
  | 'serialTo'
  | 'onlyWith'
  | 'unlessWith'
  | 'credit'
>;

type Amounts = NonNullable<NonNullable<RuleShape['threshold']>['notToExceed']>;
type Phase = NonNullable<RuleShape['threshold']>;
type Tiers = NonNullable<RuleShape['variation']>;
type Tier = Tiers['minutes'][number];

const DIMENSIONS = ['minutes', 'cycles', 'days', 'months'] as const;

const EVENT_WORDS: Readonly<Record<NonNullable<Phase['event']>, string>> = {
  'shop-visit': 'at the next shop visit',
  installation: 'at the next installation',
  removal: 'at the next removal',
  'main-base-return': 'at the next return to the main base',
};

const orList = (parts: readonly string[], word = 'or'): string => {
  const last = parts.at(-1) ?? '';
  return parts.length < 2 ? last : `${parts.slice(0, -1).join(', ')} ${word} ${last}`;
};

function amounts(granted: Amounts, monthRule: RuleShape['monthRule']): readonly string[] {
  return DIMENSIONS.flatMap((dimension) => {
    const amount = granted[dimension];
    if (amount === null) return [];
    const words = amountIn(dimension, amount);
    return dimension === 'months' && monthRule === 'month-end' ? `${words} to the month's end` : words;
  });
}

/** '500:00 h, 300 cycles or 6 months, whichever comes first, and never beyond 24 months'. */
function phaseText(phase: Phase, { combine, monthRule }: RuleShape): string {
  const counted = amounts(phase, monthRule);
  const parts = [
    ...(counted.length === 0
      ? []
      : [counted.length < 2 ? orList(counted) : `${orList(counted)}, whichever comes ${combine}`]),
    ...(phase.event === null ? [] : [EVENT_WORDS[phase.event]]),
  ];
  const bound =
    phase.notToExceed === null ? '' : `, and never beyond ${orList(amounts(phase.notToExceed, monthRule))}`;
  return `${parts.join(' or ')}${bound}`;
}

function fromText({ countedFrom, fromOn, effectiveOn }: RuleShape): string {
  if (countedFrom === 'date' && fromOn !== null) return calendarDate(fromOn);
  if (countedFrom === 'effective')
    return effectiveOn === ''
      ? 'the day it becomes effective'
      : `${calendarDate(effectiveOn)}, when it becomes effective`;
  return COUNTED.find(({ value }) => value === countedFrom)?.label.toLowerCase() ?? countedFrom;
}

/** 'First 3,000:00 h from overhaul, then every 500 cycles'. */
export function ruleText(rule: RuleShape): string {
  const { threshold, repeat } = rule;
  const from = fromText(rule);
  if (repeat === null)
    return threshold === null ? 'Nothing is granted' : `Once, ${phaseText(threshold, rule)} from ${from}`;
  const again = phaseText(repeat, rule);
  const every = again.startsWith('at ') ? again : `every ${again}`;
  if (threshold === null)
    return `${every.charAt(0).toUpperCase()}${every.slice(1)}, the first time from ${from}`;
  return `First ${phaseText(threshold, rule)} from ${from}, then ${every}`;
}

function tierText(dimension: Dimension, { upTo, percent, atMost, atMostDays }: Tier): string {
  const parts = [
    ...(percent === null ? [] : [`${percent} %`]),
    ...(atMost === null ? [] : [amountIn(dimension, atMost)]),
    ...(atMostDays === null ? [] : [amountIn('days', atMostDays)]),
  ];
  const name = { minutes: 'hours', cycles: 'cycles', days: 'days', months: 'months' }[dimension];
  const of = percent === null ? '' : ` of its ${name}`;
  const [share = '', ...rest] = parts;
  const most = rest.length === 0 ? '' : `, at most ${orList(rest)}`;
  const until = upTo === null ? '' : ` (intervals up to ${amountIn(dimension, upTo)})`;
  return `${share}${of}${most}${until}`;
}

/** '10 % of its hours, at most 50:00 h'; null when nothing is granted. */
export function grantsText(tiers: Tiers | null): string | null {
  if (tiers === null) return null;
  const told = DIMENSIONS.flatMap((dimension) =>
    tiers[dimension].map((tier) => tierText(dimension, tier)).filter((text) => text !== ''),
  );
  return told.length === 0 ? null : told.join('; ');
}

const FROM_WORDS = { 'from-done': 'what was done', 'from-due': 'what was due' } as const;

function rebaseText({ rebase }: RuleShape): string {
  const { early, within, varied, beyond } = rebase;
  return `The next is counted from ${FROM_WORDS[early]} where it is met early, from ${FROM_WORDS[within]} inside the window, from ${FROM_WORDS[varied]} late under an approved variation, and from ${FROM_WORDS[beyond]} beyond all that is granted.`;
}

function serialsText({ serialFrom, serialTo }: RuleShape): string | null {
  if (serialFrom === null && serialTo === null) return null;
  if (serialTo === null) return `For serial numbers from ${serialFrom} on.`;
  return serialFrom === null
    ? `For serial numbers up to ${serialTo}.`
    : `For serial numbers ${serialFrom} to ${serialTo}.`;
}

function windowText({ window }: RuleShape): string | null {
  const early = grantsText(window?.early ?? null);
  const late = grantsText(window?.late ?? null);
  if (early === null && late === null) return null;
  const parts = [...(early === null ? [] : [`${early} early`]), ...(late === null ? [] : [`${late} late`])];
  return `Planned times hold when it is met up to ${parts.join(', or up to ')}.`;
}

const CREDIT_WORDS = {
  none: 'Nothing that was met before counts for it.',
  revisions: 'What was met by earlier revisions of its code counts for it.',
  superseded: 'What was met by earlier revisions, and by what it supersedes, counts for it.',
} as const;

/** The whole rule in plain sentences, the one that says when it is due first. */
export function ruleSentences(rule: RuleShape): readonly string[] {
  const window = windowText(rule);
  const variation = grantsText(rule.variation);
  const serials = serialsText(rule);
  return [
    `${ruleText(rule)}.`,
    ...(window === null ? [] : [window]),
    ...(variation === null ? [] : [`One due may be varied by an approval, one time, by up to ${variation}.`]),
    ...(rule.grantedBy === null ? [] : [`This is granted by ${rule.grantedBy}.`]),
    ...(rule.repeat === null ? [] : [rebaseText(rule)]),
    ...(serials === null ? [] : [serials]),
    ...(rule.onlyWith.length === 0 ? [] : [`Only where ${orList(rule.onlyWith, 'and')} was met.`]),
    ...(rule.unlessWith.length === 0 ? [] : [`Not where ${orList(rule.unlessWith)} was met.`]),
    CREDIT_WORDS[rule.credit],
  ];
}

const amountsOf = (
  interval: NonNullable<NonNullable<NewRequirement['threshold']>['notToExceed']>,
): Amounts => ({
  minutes: interval.minutes ?? null,
  cycles: interval.cycles ?? null,
  days: interval.days ?? null,
  months: interval.months ?? null,
});

function phaseShape(phase: NewRequirement['threshold']): Phase | null {
  if (phase == null) return null;
  return {
    ...amountsOf(phase),
    event: phase.event ?? null,
    notToExceed: phase.notToExceed == null ? null : amountsOf(phase.notToExceed),
  };
}

function tiersShape(grants: NewRequirement['variation']): Tiers {
  const of = (dimension: Dimension): Tier[] =>
    (grants?.[dimension] ?? []).map(({ upTo, percent, atMost, atMostDays }) => ({
      upTo: upTo ?? null,
      percent: percent ?? null,
      atMost: atMost ?? null,
      atMostDays: atMostDays ?? null,
    }));
  return { minutes: of('minutes'), cycles: of('cycles'), days: of('days'), months: of('months') };
}

/** A rule as it would be sent, to be read before it is. */
export function shapeOf(words: NewRequirement): RuleShape {
  const { window, rebase } = words;
  return {
    threshold: phaseShape(words.threshold),
    repeat: phaseShape(words.repeat),
    combine: words.combine ?? 'first',
    monthRule: words.monthRule ?? 'same-day',
    countedFrom: words.countedFrom,
    fromOn: words.fromOn ?? null,
    effectiveOn: words.effectiveOn,
    window: window == null ? null : { early: tiersShape(window.early), late: tiersShape(window.late) },
    variation: words.variation == null ? null : tiersShape(words.variation),
    grantedBy: words.grantedBy ?? null,
    rebase: {
      early: rebase?.early ?? 'from-done',
      within: rebase?.within ?? 'from-due',
      varied: rebase?.varied ?? 'from-due',
      beyond: rebase?.beyond ?? 'from-done',
    },
    serialFrom: words.serialFrom ?? null,
    serialTo: words.serialTo ?? null,
    onlyWith: words.onlyWith ?? [],
    unlessWith: words.unlessWith ?? [],
    credit: words.credit ?? 'revisions',
  };
}
