import type { Capture } from '@strutbook/domain/work/capture.js';
import type { Judgement, Typed } from '@strutbook/domain/work/entry.js';

type TypedTorque = Extract<Typed, { kind: 'torque' }>;

function torqueWords(
  capture: Capture,
  { point, indication, unit, method, runOn, extension }: TypedTorque,
  at: string | null,
): string {
  const which = capture.kind === 'torque' && capture.points.length > 1 ? `Bolt ${point}: ` : '';
  const parts = [
    `${which}${method === 'set-value' ? 'set to' : 'read'} ${indication} ${unit}`,
    ...(runOn === null ? [] : [`run-on ${runOn} ${unit}`]),
    ...(extension === null
      ? []
      : [`extension ${extension.length} on wrench ${extension.wrenchLength}, ${extension.angle}°`]),
    ...(at === null ? [] : [`${at} at the fastener`]),
  ];
  return parts.join('; ');
}

/** What was typed, letter by letter, with the words around it. Total. */
export function typedWords(capture: Capture, typed: Typed, { computed }: Judgement): string {
  switch (typed.kind) {
    case 'torque':
      return torqueWords(capture, typed, computed['atFastener'] ?? null);
    case 'count':
      return typed.number;
    case 'component-off':
    case 'component-on':
      return [
        `Serial ${typed.serialNumber}`,
        ...(typed.partNumber === null ? [] : [`part number ${typed.partNumber}`]),
        ...(typed.positionNumber === null ? [] : [`position ${typed.positionNumber}`]),
      ].join(', ');
    case 'papers':
      return `Plate ${typed.plateSerial}; document ${typed.documentNumber} for ${typed.documentSerial}; tag ${typed.tag}`;
    case 'leak-check':
      return `${typed.minutes} minutes at ${typed.power}, ${typed.found === 'leak' ? 'leak found' : 'no leak'}`;
    case 'readings':
      return capture.kind === 'readings'
        ? capture.rows
            .map(({ key, label, unit }) => `${label} ${typed.values[key] || 'not read'} ${unit}`)
            .join(', ')
        : Object.values(typed.values).join(', ');
    case 'text':
      return typed.text;
    case 'check':
      return typed.seen ? 'Seen and confirmed' : 'Not so';
    case 'photo':
      return typed.fileName;
  }
}
