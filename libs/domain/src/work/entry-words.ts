import type { Capture, ReadingRow } from './capture.js';
import type { EntryReason, EntryReasonCode, StepEntry, Typed } from './entry.js';

type Detail = EntryReason['detail'];
type Phrase = (detail: Detail) => string;

const asked = (d: Detail) => (d['expected'] === null ? 'none' : String(d['expected']));

const TORQUE_REASONS = {
  NOT_A_NUMBER: (d) =>
    d['within'] === 'a whole number'
      ? `${d['what']}: ‘${d['typed']}’ is no whole number. Type it in digits, such as 6.`
      : `${d['what']} ‘${d['typed']}’ is no number. Type digits with at most one decimal point${d['within'] === undefined ? '' : `, ${d['within']}`}.`,
  BELOW_RANGE: (d) =>
    `${d['what']} ${d['value']} is below ${d['low']}. Check number and unit; else put it right, and enter the new one.`,
  ABOVE_RANGE: (d) =>
    `${d['what']} ${d['value']} is above ${d['high']}. Check number and unit; if both are right, do what the data says for exceeding it, and enter the new value.`,
  OUTSIDE_WINDOW: (d) =>
    d['window'] === null
      ? `Tool ${d['tool']} is not accurate enough for this range. Use one that deviates less.`
      : `${d['value']} is outside ${d['window']}, which allows for the tool’s deviation. Torque again inside it.`,
  NO_EFFECTIVE_LENGTH: () =>
    'Wrench and adapter have no effective length. Check both lengths, in one unit, and the angle.',
  RUN_ON_MISSING: () =>
    'The run-on torque is missing. Measure it while the nut runs down, before it seats, and enter it.',
  RUN_ON_BELOW: (d) =>
    `The run-on torque ${d['value']} is below ${d['low']}: the nut does not lock. Fit a new nut and begin again.`,
  RUN_ON_ABOVE: (d) =>
    `The run-on torque ${d['value']} is above ${d['high']}. Check the thread; fit a new nut and begin again.`,
  TOOL_MISSING: () => 'No tool is named. Choose the torque wrench used.',
  TOOL_NOT_CALIBRATED: (d) =>
    `Tool ${d['tool']} has no calibration on or before ${d['on']}. Use a calibrated tool, or record its calibration.`,
  TOOL_OUT_OF_DATE: (d) =>
    `The calibration of tool ${d['tool']} was due on ${d['dueOn']}; it was used on ${d['on']}. Torque again with a tool in date.`,
  TOOL_RANGE_UNKNOWN: (d) =>
    `The ${d['what']} of tool ${d['tool']} is not recorded. Record it from its certificate, or use another tool.`,
  TOOL_OUT_OF_RANGE: (d) =>
    `${d['setting']} is outside the range of tool ${d['tool']}, ${d['low']} to ${d['high']}. Use a tool whose range holds it.`,
  OUT_OF_ORDER: (d) => `Point ${d['first']} comes before point ${d['point']}. Torque that one first.`,
  NO_SUCH_POINT: (d) => `There is no point ${d['point']} here. Choose one of ${d['points']}.`,
} as const satisfies Partial<Record<EntryReasonCode, Phrase>>;

const OTHER_REASONS = {
  SERIAL_DIFFERS: (d) =>
    `The plate says serial ${d['typed']}, the order ${asked(d)}. Stop: check airframe, position and order, and ask before going on.`,
  PART_NUMBER_DIFFERS: (d) =>
    `The plate says part number ${d['typed']}, the ${d['by']} ${asked(d)}. Read the plate again; else have the ${d['by']} put right.`,
  POSITION_DIFFERS: (d) =>
    `${d['typed'] === null ? 'No position was typed' : `Position ${d['typed']} was typed`}; the order is for position ${asked(d)}. Stop: go to that position, or have the order changed and confirmed by a second person.`,
  NOT_IN_REGISTER: (d) =>
    `Serial ${d['typed']} is not in the register. Read the plate again, or register it with its papers.`,
  PAPERS_DIFFER: (d) =>
    `The plate says ${d['plate']}, the document ${d['document']}. Do not fit it: quarantine it until its papers are cleared.`,
  PAPERS_MISSING: (d) =>
    `The ${d['what']} is missing. Enter it as printed; without its papers it is not fitted.`,
  TAGGED_UNSERVICEABLE: (d) =>
    `Serial ${d['serial']} is unserviceable by ${d['by']}. Do not fit it: return it to store or quarantine.`,
  DURATION_MISSING: (d) =>
    `How long is missing. Enter the minutes looked at; at least ${d['minMinutes']} are asked for.`,
  DURATION_SHORT: (d) =>
    `${d['typed']} minutes are shorter than the ${d['minMinutes']} asked for. Do the check again for the full time.`,
  POWER_MISSING: (d) =>
    `The power is missing. Enter the power it was checked at; ${d['power']} is asked for.`,
  POWER_DIFFERS: (d) =>
    `It was checked at ${d['typed']}; ${d['power']} is asked for. Do the check again at that power.`,
  LEAK_FOUND: () => 'A leak was found. Find and correct it, then do the check again.',
  READING_MISSING: (d) => `${d['what']} is missing. Enter what was read.`,
  NOT_SEEN: () => 'It was not seen so. Put it right, look again, and confirm.',
  EMPTY: (d) => `${d['what']} is empty. Enter it.`,
} as const satisfies Partial<Record<EntryReasonCode, Phrase>>;

const REASONS: Readonly<Record<EntryReasonCode, Phrase>> = { ...TORQUE_REASONS, ...OTHER_REASONS };

/** Why an entry is not accepted, in words, and what to do about it. Total. */
export function reasonText({ code, detail }: EntryReason): string {
  return REASONS[code](detail);
}

/**
 * An entry in one line: what was captured (the label, the point), as it was typed with its unit, the torque at the
 * fastener, the tool, and the verdict. The key stands for a capture that is not known. Total.
 */
export function entryText(capture: Capture | null, entry: StepEntry): string {
  const name = `${capture?.label ?? entry.capture}${entry.point === null ? '' : ` ${entry.point}`}`;
  const tool = entry.tool === null ? '' : `, tool ${entry.tool}`;
  return `${name}: ${typedText(entry.typed, capture, entry)}${tool}; ${entry.judgement.verdict}`;
}

function typedText(typed: Typed, capture: Capture | null, { judgement }: StepEntry): string {
  switch (typed.kind) {
    case 'torque':
      return torqueText(typed, judgement.computed['atFastener'] ?? null);
    case 'count':
      return typed.number;
    case 'component-off':
    case 'component-on':
      return [
        `serial ${typed.serialNumber}`,
        ...(typed.partNumber === null ? [] : [`part number ${typed.partNumber}`]),
        ...(typed.positionNumber === null ? [] : [`position ${typed.positionNumber}`]),
      ].join(', ');
    case 'papers':
      return `plate ${typed.plateSerial}, document ${typed.documentNumber} for ${typed.documentSerial}, tagged ${typed.tag}`;
    case 'leak-check':
      return `${typed.minutes || 'no'} minutes at ${typed.power || 'no power'}, ${typed.found === 'leak' ? 'leak found' : 'no leak'}`;
    case 'readings':
      return readingsText(typed.values, capture);
    case 'text':
      return typed.text;
    case 'check':
      return typed.seen ? 'seen' : 'not seen';
    case 'photo':
      return `picture ${typed.fileName}, SHA-256 ${typed.sha256}`;
  }
}

function torqueText(typed: Extract<Typed, { kind: 'torque' }>, atFastener: string | null): string {
  const { extension } = typed;
  return [
    `${typed.indication} ${typed.unit} ${typed.method === 'set-value' ? 'set' : 'read'}`,
    ...(typed.runOn === null ? [] : [`run-on ${typed.runOn} ${typed.unit}`]),
    ...(extension === null
      ? []
      : [`wrench ${extension.wrenchLength}, adapter ${extension.length} at ${extension.angle}°`]),
    ...(atFastener === null ? [] : [`${atFastener} at the fastener`]),
  ].join(', ');
}

function readingsText(values: Readonly<Record<string, string>>, capture: Capture | null): string {
  if (capture?.kind !== 'readings')
    return Object.entries(values)
      .map(([key, value]) => `${key} ${value}`)
      .join(', ');
  return capture.rows.map((row) => readingText(row, values[row.key])).join(', ');
}

function readingText({ label, unit }: ReadingRow, value = ''): string {
  return value.trim() === '' ? `${label} not read` : `${label} ${value} ${unit}`.trimEnd();
}
