import { readDecimal, readSignedDecimal } from '../torque/decimal.js';
import { isTorqueUnit } from '../torque/torque.js';
import { compare, type Fraction } from '../units/fraction.js';
import type { Capture, LeakCheckCapture, TorqueCapture } from './capture.js';

/** What is wrong with a procedure: a code, where ('steps[3].waitsFor'), why, and what to do. */
export interface ProcedureProblem {
  readonly code:
    | 'NO_STEPS'
    | 'KEY_TWICE'
    | 'NUMBER_OUT_OF_LINE'
    | 'NO_SUCH_GROUP'
    | 'NO_SUCH_STEP'
    | 'WAITS_FOR_LATER'
    | 'NO_SUCH_ITEM'
    | 'OPENED_NOT_CLOSED'
    | 'MOVED_TWICE'
    | 'COUNTED_ONE_WAY'
    | 'BAD_RANGE'
    | 'BAD_POINTS'
    | 'BAD_DURATION';
  readonly field: string;
  readonly reason: string;
  readonly fix: string;
}

/** A problem of a procedure. Total. */
export function problem(
  code: ProcedureProblem['code'],
  field: string,
  reason: string,
  fix: string,
): ProcedureProblem {
  return { code, field, reason, fix };
}

/** Keys used more than once, each at its second use. Total. */
export function twice(field: string, keyed: readonly { readonly key: string }[]): ProcedureProblem[] {
  return keyed.flatMap(({ key }, index) =>
    keyed.findIndex((each) => each.key === key) === index
      ? []
      : [
          problem(
            'KEY_TWICE',
            `${field}[${index}].key`,
            `The key ${key} is used before.`,
            'Give it its own key.',
          ),
        ],
  );
}

/** What is wrong with the figures of a capture: ranges, points, units, durations. Total. */
export function captureProblems(capture: Capture, field: string): ProcedureProblem[] {
  switch (capture.kind) {
    case 'torque':
      return torqueProblems(capture, field);
    case 'readings':
      return [
        ...twice(`${field}.rows`, capture.rows),
        ...capture.rows.flatMap((row, at) =>
          rangeProblems(row, `${field}.rows[${at}]`, row.label, readSignedDecimal),
        ),
      ];
    case 'leak-check':
      return leakCheckProblems(capture, field);
    default:
      return [];
  }
}

function torqueProblems(capture: TorqueCapture, field: string): ProcedureProblem[] {
  const { points, low, high, unit, runOn, label } = capture;
  const pointsFit = points.length > 0 && new Set(points).size === points.length && !points.includes('');
  return [
    ...(pointsFit
      ? []
      : [
          problem(
            'BAD_POINTS',
            `${field}.points`,
            `The points of ${label} are none, or one is named twice or not at all.`,
            'Name each fastener once, in the order they are torqued.',
          ),
        ]),
    ...(isTorqueUnit(unit)
      ? []
      : [
          problem(
            'BAD_RANGE',
            `${field}.unit`,
            `${unit} is no unit of torque.`,
            'Use N·m, lbf·ft, lbf·in or kgf·m.',
          ),
        ]),
    ...rangeProblems({ low, high }, field, label, readDecimal),
    ...rangeProblems(runOn, `${field}.runOn`, `Run-on torque of ${label}`, readDecimal),
  ];
}

/** Bounds that are no numbers, or the lower above the upper; a bound that is not set is none. */
function rangeProblems(
  { low, high }: { readonly low: string | null; readonly high: string | null },
  field: string,
  label: string,
  read: (typed: string) => Fraction | null,
): ProcedureProblem[] {
  const [from, to] = [low, high].map((bound) => (bound === null ? null : read(bound)));
  const unread = (low !== null && !from) || (high !== null && !to);
  if (!unread && (!from || !to || compare(from, to) <= 0)) return [];
  return [
    problem(
      'BAD_RANGE',
      field,
      `${label}: ${low ?? 'no bound'} to ${high ?? 'no bound'} is no range.`,
      'Give decimal numbers, the lower one first.',
    ),
  ];
}

function leakCheckProblems(
  { minMinutes, power, label }: LeakCheckCapture,
  field: string,
): ProcedureProblem[] {
  if (Number.isSafeInteger(minMinutes) && minMinutes > 0 && power.trim() !== '') return [];
  return [
    problem(
      'BAD_DURATION',
      field,
      `${label} says no duration or no power.`,
      'Give whole minutes, at least 1, and the power.',
    ),
  ];
}
