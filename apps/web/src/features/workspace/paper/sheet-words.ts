import type { Capture } from '@strutbook/domain/work/capture.js';
import { isAccepted, lastEntry } from '../captures/capture-entries.js';
import type { Step, Work } from '../work/work-shapes.js';

const BLANK = 'value, tool, name, date and time UTC';

/** A blank for each thing that is not accepted yet: for a torque, one for each bolt. */
export function blanksOf(step: Step, capture: Capture): string[] {
  if (capture.kind !== 'torque') return isAccepted(lastEntry(step, capture)) ? [] : [BLANK];
  const open = capture.points.filter((point) => !isAccepted(lastEntry(step, capture, point)));
  return open.map((point) => (capture.points.length < 2 ? BLANK : `Bolt ${point}: ${BLANK}`));
}

/** 'Order: off KT-377, on KT-655, position 3'; null where nothing is ordered. */
export function orderWords({ order }: Work): string | null {
  if (order === null) return null;
  const off = order.outgoing === null ? '' : `off ${order.outgoing.serialNumber}`;
  const on = order.incoming === null ? '' : `on ${order.incoming.serialNumber}`;
  const where = order.positionNumber === null ? '' : `, position ${order.positionNumber}`;
  return `Order: ${[off, on].filter(Boolean).join(', ')}${where}`;
}
