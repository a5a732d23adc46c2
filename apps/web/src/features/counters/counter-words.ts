import { counted } from '../../format/counts.js';
import { thousands } from '../../format/hours.js';
import { boundaryText, momentText } from '../../format/when.js';
import type { Addend, Basis, ExplainedCounter, ToldMoment } from './counters-data.js';

/** The counters as the trade calls them. */
export const BASIS_WORDS: Readonly<Record<Basis, string>> = {
  new: 'Since new',
  overhaul: 'Since overhaul',
  'shop-visit': 'Since shop visit',
  repair: 'Since repair',
  installation: 'Since installation',
};

const RESET_WORDS = {
  overhaul: 'overhaul',
  'shop-visit': 'shop visit',
  repair: 'repair',
  installation: 'installation',
  opening: 'opening balance',
} as const satisfies Record<NonNullable<ExplainedCounter['reset']>['kind'], string>;

/** 'after log page 0417 (3 Nov 2026 09:10Z)', said no more exactly than it was told. */
export function toldText({ at, precision, text, kind }: ToldMoment): string {
  const { main, exactly } = boundaryText(at, precision, text);
  const edge =
    kind === 'before-first'
      ? 'before the first flight of '
      : kind === 'after-last'
        ? 'after the last flight of '
        : '';
  return exactly === null ? main : `${edge}${edge === '' ? main.toLowerCase() : main} (${exactly})`;
}

/** What the counter began again with: 'Set by the overhaul of 3 Nov 2025 10:00Z: Shop report 7'. */
export function resetText({ basis, reset }: ExplainedCounter): string {
  if (reset === null)
    return basis === 'new' ? 'Never reset: it counts from new.' : 'Nothing on record has reset it.';
  const { kind, moment, evidence } = reset;
  if (kind === 'opening')
    return `Its last one was before these records: the ${RESET_WORDS[kind]} of ${toldText(moment)} says so, ${evidence}`;
  if (kind === 'installation') return `Set by the installation ${toldText(moment)}: ${evidence}`;
  return `Set by the ${RESET_WORDS[kind]} of ${toldText(moment)}: ${evidence}`;
}

type Rule = NonNullable<Addend['rule']>;

function share(weight: number, denominator: number): string {
  return weight % denominator === 0 ? thousands(weight / denominator) : `${weight}/${denominator}`;
}

/** '1 a flight, 1/2 a touch-and-go' */
export function ruleText(rule: Rule): string {
  const weights = [
    [rule.perFlight, 'flight'],
    [rule.perLanding, 'landing'],
    [rule.perTouchAndGo, 'touch-and-go'],
    [rule.perStart, 'start'],
    [rule.perAbortedTakeOff, 'aborted take-off'],
  ] as const;
  const told = weights
    .filter(([weight]) => weight !== 0)
    .map(([weight, event]) => `${share(weight, rule.denominator)} a ${event}`);
  return told.length === 0 ? 'nothing counts' : told.join(', ');
}

type Counts = NonNullable<Addend['counts']>;

/** '12 flights, 14 landings, 2 touch-and-goes, 12 starts' */
export function eventsText({ flights, landings, touchAndGoes, starts, abortedTakeOffs }: Counts): string {
  return [
    ...(flights === 0 && landings === 0 && starts > 0
      ? []
      : [counted(flights, 'flight'), counted(landings, 'landing')]),
    ...(touchAndGoes === 0 ? [] : [counted(touchAndGoes, 'touch-and-go', 'touch-and-goes')]),
    counted(starts, 'start'),
    ...(abortedTakeOffs === 0 ? [] : [counted(abortedTakeOffs, 'aborted take-off')]),
  ].join(', ');
}

/** 'from 3 Nov 2025 10:00Z to 4 Dec 2025 09:00Z'; without an end: 'since …'. */
export function spanText(from: string | null, to: string | null): string {
  if (from === null) return to === null ? '' : `to ${momentText(to)}`;
  return to === null ? `since ${momentText(from)}` : `from ${momentText(from)} to ${momentText(to)}`;
}

/** How well a balance is shown by the records behind it. */
export const TRACE_WORDS = {
  shown: 'Trace shown',
  stated: 'Stated only',
  'not-shown': 'Trace not shown',
} as const;
