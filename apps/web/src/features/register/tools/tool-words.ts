import { calendarDate } from '../../../format/utc-date.js';
import type { Tool } from '../../../server/tools.js';
import type { Status } from '../../../ui/status/statuses.js';

interface Look {
  readonly status: Status;
  readonly word: string;
  /** The worst first. */
  readonly rank: number;
}

const LOOKS: Readonly<Record<Tool['status'], Look>> = {
  'out-of-date': { status: 'over-limit', word: 'Out of date', rank: 0 },
  never: { status: 'not-verified', word: 'Never calibrated', rank: 1 },
  soon: { status: 'soon', word: 'Due soon', rank: 2 },
  'in-date': { status: 'in-limits', word: 'In date', rank: 3 },
};

/** How a tool's calibration stands: shape, word and urgency. */
export const lookOf = ({ status }: Pick<Tool, 'status'>): Look => LOOKS[status];

/** The statuses in the order of their urgency, for choosing one. */
export const STATUS_CHOICES = Object.entries(LOOKS).map(([value, { word }]) => ({ value, label: word }));

export const KIND_CHOICES = [
  { value: 'torque-wrench', label: 'Torque wrench' },
  { value: 'gauge', label: 'Gauge' },
  { value: 'other', label: 'Other' },
] as const satisfies readonly { readonly value: Tool['kind']; readonly label: string }[];

export const kindWord = (kind: Tool['kind']): string =>
  KIND_CHOICES.find(({ value }) => value === kind)?.label ?? kind;

/** '20 to 112,5 N·m', as typed. */
export function rangeText({ rangeLow, rangeHigh, unit }: Tool): string {
  if (rangeLow === null || rangeHigh === null)
    return unit === null ? 'None recorded' : `Not recorded, ${unit}`;
  return `${rangeLow} to ${rangeHigh} ${unit ?? ''}`.trim();
}

/** '± 4 %' */
export const deviationText = ({ deviation }: Tool): string =>
  deviation === null ? 'Not recorded' : `± ${deviation} %`;

/** '30 Jun 2027', or that there is none. */
export const dueText = ({ dueOn }: Pick<Tool, 'dueOn'>): string =>
  dueOn === null ? 'No calibration' : calendarDate(dueOn);
