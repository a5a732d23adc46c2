import type { Capture, ReadingRow, TorqueCapture } from '@strutbook/domain/work/capture.js';
import { limitWords } from '../../../format/reading.js';

const RUN_ON = {
  none: null,
  add: 'The run-on torque is measured and added to the range.',
  'one-third': 'The run-on torque is measured, and added when it is a third of the torque or more.',
} as const;

function torqueLines({ points, low, high, unit, thread, runOn, binds }: TorqueCapture): string[] {
  const rule = RUN_ON[runOn.rule];
  return [
    `${low} to ${high} ${unit} at the fastener, thread ${thread}`,
    ...(points.length > 1 ? [`${points.length} points, in the order ${points.join(', ')}`] : []),
    ...(rule === null ? [] : [rule]),
    ...(runOn.low === null && runOn.high === null ? [] : [`Run-on torque ${limitWords(runOn)} ${unit}`]),
    ...(binds === 'window' ? ['The range is narrowed by what the tool may deviate.'] : []),
  ];
}

const readingLine = ({ label, low, high, unit }: ReadingRow): string =>
  low === null && high === null
    ? `${label}: recorded, in ${unit}`
    : `${label}: ${limitWords({ low, high })} ${unit}`;

/** What a capture asks for, below its label. Total. */
export function captureLines(capture: Capture): string[] {
  switch (capture.kind) {
    case 'torque':
      return torqueLines(capture);
    case 'count':
      return [`How many ${capture.what} ${capture.direction === 'out' ? 'went out' : 'came back'}`];
    case 'component-off':
      return ['Serial and part number of what comes off, read from its plate'];
    case 'component-on':
      return ['Serial and part number of what goes on, read from its plate'];
    case 'papers':
      return ['The plate against the release document and the tag'];
    case 'leak-check':
      return [`At least ${capture.minMinutes} minutes at ${capture.power}, and what was found`];
    case 'readings':
      return capture.rows.map(readingLine);
    case 'text':
      return [capture.required ? 'A text' : 'A text, where there is something to say'];
    case 'check':
      return ['Seen and confirmed'];
    case 'photo':
      return [capture.required ? 'A picture' : 'A picture, where one helps'];
  }
}
