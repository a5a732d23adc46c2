import type { Capture } from '@strutbook/domain/work/capture.js';
import type { Typed } from '@strutbook/domain/work/entry.js';
import type { StepDefinition } from '@strutbook/domain/work/step.js';
import { refuse } from '../../platform/problems/refusal.error.js';
import type { SentTypedDto } from '../../records/work/wire/any-typed.js';

/** The capture of that key, of the kind when one is told. Refuses: INVALID_FIELDS. */
export function captureOf(
  { captures, number }: StepDefinition,
  key: string,
  kind: Capture['kind'] | null = null,
): Capture {
  const capture = captures.find((each) => each.key === key && (kind === null || each.kind === kind));
  const keys = captures.filter((each) => kind === null || each.kind === kind).map((each) => each.key);
  if (capture === undefined)
    wrong(
      'capture',
      `Step ${number} asks for no ${kind ?? 'entry'} ${key}.`,
      keys.length === 0 ? 'It asks for none.' : `Name one of these: ${keys.join(', ')}.`,
    );
  return capture;
}

/** What was typed as the core reads it: of the capture's kind and about its own points and rows. Refuses: INVALID_FIELDS. */
export function toTyped(capture: Capture, sent: SentTypedDto): Typed {
  if (capture.kind === 'photo')
    wrong('capture', 'A picture is captured here.', 'Send the picture itself, not words about it.');
  if (sent.kind !== capture.kind)
    wrong('typed.kind', `"${capture.label}" is of kind ${capture.kind}.`, `Send it as ${capture.kind}.`);
  switch (sent.kind) {
    case 'torque':
      refuseOtherPoint(capture, sent.point);
      return {
        ...sent,
        runOn: sent.runOn ?? null,
        extension: sent.extension == null ? null : { ...sent.extension },
      };
    case 'component-off':
    case 'component-on':
      return { ...sent, partNumber: sent.partNumber ?? null, positionNumber: sent.positionNumber ?? null };
    case 'readings':
      refuseOtherRows(capture, sent.values);
      return { kind: 'readings', values: { ...sent.values } };
    default:
      return { ...sent };
  }
}

function refuseOtherPoint(capture: Capture, point: string): void {
  if (capture.kind !== 'torque' || capture.points.includes(point)) return;
  wrong(
    'typed.point',
    `"${capture.label}" has no point ${point}.`,
    `Name one of these: ${capture.points.join(', ')}.`,
  );
}

function refuseOtherRows(capture: Capture, values: Readonly<Record<string, string>>): void {
  if (capture.kind !== 'readings') return;
  const keys = capture.rows.map((row) => row.key);
  const other = Object.keys(values).find((key) => !keys.includes(key));
  if (other !== undefined)
    wrong('typed.values', `"${capture.label}" has no reading ${other}.`, `Use these: ${keys.join(', ')}.`);
}

function wrong(field: string, reason: string, fix: string): never {
  return refuse({ code: 'INVALID_FIELDS', fields: [{ field, reason, fix }] });
}
