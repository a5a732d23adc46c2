import { judgeTorque, type ToolFacts } from '@strutbook/domain/torque/judge-torque.js';
import type { TorqueUnit } from '@strutbook/domain/torque/torque.js';
import type { TorqueCapture } from '@strutbook/domain/work/capture.js';
import type { ExtensionTyped, Judgement, Typed } from '@strutbook/domain/work/entry.js';
import { reasonText } from '@strutbook/domain/work/entry-words.js';
import { parseReading, verdictOf, verdictWords } from '../../../format/reading.js';
import type { Judged } from '../../../ui/reading/reading-field.js';
import { isAccepted, lastEntry } from '../captures/capture-entries.js';
import type { Step } from '../work/work-shapes.js';

export type TypedTorque = Extract<Typed, { kind: 'torque' }>;

/** What stands in the form, all of it as typed. */
export interface TorqueDraft {
  readonly method: 'set-value' | 'reading';
  readonly indication: string;
  readonly runOn: string;
  readonly extension: ExtensionTyped;
}

const NO_EXTENSION: ExtensionTyped = { wrenchLength: '', length: '', angle: '' };

export const EMPTY_DRAFT: TorqueDraft = {
  method: 'set-value',
  indication: '',
  runOn: '',
  extension: NO_EXTENSION,
};

/** Whether the data asks for the run-on torque. */
export const asksRunOn = ({ runOn }: TorqueCapture): boolean =>
  runOn.rule !== 'none' || runOn.low !== null || runOn.high !== null;

const acceptedPoints = (step: Step, capture: TorqueCapture): string[] =>
  capture.points.filter((point) => isAccepted(lastEntry(step, capture, point)));

/** The first point of the order that is not accepted; the last when all are. */
export const nextPoint = (step: Step, capture: TorqueCapture): string => {
  const done = new Set(acceptedPoints(step, capture));
  return capture.points.find((point) => !done.has(point)) ?? capture.points.at(-1) ?? '';
};

const isUsed = ({ wrenchLength, length, angle }: ExtensionTyped): boolean =>
  [wrenchLength, length, angle].some((text) => text.trim() !== '');

/** The draft as it would be recorded; what was left empty is null, the rest is not touched. */
export function typedTorque(draft: TorqueDraft, point: string, unit: TorqueUnit): TypedTorque {
  const { indication, method, runOn, extension } = draft;
  return {
    kind: 'torque',
    point,
    indication,
    unit,
    method,
    runOn: runOn.trim() === '' ? null : runOn,
    extension: isUsed(extension) ? extension : null,
  };
}

const RANGE = /^([\d.]+) to ([\d.]+) /;
const number = (text: string | null | undefined): string | null => text?.split(' ')[0] ?? null;

/** The judgement as the field shows it: range, pointer, and the verdict in a few words. */
export function judgedField(judgement: Judgement, capture: TorqueCapture): Judged {
  const { computed, verdict, reasons } = judgement;
  const [, low, high] = RANGE.exec(computed['required'] ?? '') ?? [];
  const range = low === undefined || high === undefined ? null : { low, high };
  const at = number(computed['atFastener']);
  const read = at === null ? null : parseReading(at);
  const where = range !== null && read?.ok === true ? verdictOf(read.value, range) : null;
  const outside = where !== null && where.kind !== 'inside';
  const first = reasons[0];
  const words =
    (outside || verdict === 'accepted') && where !== null && range !== null
      ? verdictWords(where, capture.unit, range)
      : first === undefined
        ? 'Accepted'
        : reasonText(first);
  return { range, at, inside: verdict === 'accepted', words };
}

/** Judges the draft as the server will. */
export function judgeDraft(
  step: Step,
  capture: TorqueCapture,
  typed: TypedTorque,
  tool: ToolFacts | null,
  on: string,
): Judgement {
  return judgeTorque(capture, typed, tool, acceptedPoints(step, capture), on);
}
