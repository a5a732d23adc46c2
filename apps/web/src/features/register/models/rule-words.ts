import { exactCycles } from '../../../format/cycles.js';

export type Weight = 'perFlight' | 'perLanding' | 'perTouchAndGo' | 'perStart' | 'perAbortedTakeOff';

/** The weights of a cycle rule with their labels and the event each is for. */
export const WEIGHTS: readonly { readonly name: Weight; readonly label: string; readonly event: string }[] = [
  { name: 'perFlight', label: 'A flight', event: 'a flight' },
  { name: 'perLanding', label: 'A landing', event: 'a landing' },
  { name: 'perTouchAndGo', label: 'A touch-and-go', event: 'a touch-and-go' },
  { name: 'perStart', label: 'A start', event: 'a start' },
  { name: 'perAbortedTakeOff', label: 'An aborted take-off', event: 'an aborted take-off' },
];

/** 'Counts 1 cycle for a flight, 0.5 for a touch-and-go.' */
export function ruleInWords(rule: Readonly<Record<Weight | 'denominator', number>>): string {
  const told = WEIGHTS.filter(({ name }) => rule[name] > 0).map(
    ({ name, event }) => `${exactCycles({ units: rule[name], denominator: rule.denominator })} for ${event}`,
  );
  return told.length === 0 ? 'Counts no cycles.' : `Counts cycles: ${told.join(', ')}.`;
}
