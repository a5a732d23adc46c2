import { amountIn } from '../../../format/due-words.js';
import { calendarDate } from '../../../format/utc-date.js';
import type { RequirementStatus } from '../../../server/requirements.js';
import type { Requirement } from './requirement-queries.js';

export const KINDS = [
  { value: 'inspection', label: 'Inspection' },
  { value: 'overhaul', label: 'Overhaul' },
  { value: 'directive', label: 'Directive' },
  { value: 'bulletin', label: 'Bulletin' },
  { value: 'discard', label: 'Discard' },
  { value: 'check', label: 'Check' },
] as const;

export const ANCHORS = [
  { value: 'airframe', label: 'The airframe' },
  { value: 'position', label: 'What hangs at a position' },
  { value: 'engine', label: 'An engine' },
  { value: 'part', label: 'A part' },
] as const;

export const COUNTED = [
  { value: 'new', label: 'New' },
  { value: 'overhaul', label: 'Overhaul' },
  { value: 'installation', label: 'Installation' },
  { value: 'date', label: 'A date' },
] as const;

/** What may be counted from, by what is followed. */
export const COUNTED_FOR: Readonly<Record<Requirement['anchor'], readonly Requirement['countedFrom'][]>> = {
  airframe: ['new', 'date'],
  position: ['new', 'installation', 'date'],
  engine: ['new', 'overhaul', 'installation', 'date'],
  part: ['new', 'overhaul', 'installation', 'date'],
};

export const kindWord = (kind: string): string => KINDS.find(({ value }) => value === kind)?.label ?? kind;

/** 'Engines of Karneth Turbines K84', 'Position 2 on every airframe'. */
export function scopeText(requirement: Requirement): string {
  const { anchor, airframeType, positionNumber, engineModel, partNumber } = requirement;
  const type = airframeType === null ? 'every airframe' : airframeType;
  switch (anchor) {
    case 'airframe':
      return airframeType === null ? 'Every airframe' : `Airframes of type ${airframeType}`;
    case 'position':
      if (positionNumber === null) return `Every engine position on ${type}`;
      return `${positionNumber === 0 ? 'The APU' : `Position ${positionNumber}`} on ${type}`;
    case 'engine':
      return engineModel === null ? 'Every engine' : `Engines of model ${engineModel}`;
    case 'part':
      return `Parts ${partNumber ?? ''}`;
  }
}

const DIMENSIONS = ['minutes', 'cycles', 'days', 'months'] as const;

/** '500:00 h, 300 cycles or 6 months'; null when nothing is granted. */
function grantText(
  granted: Requirement['threshold'],
  { combine, monthRule }: Pick<Requirement, 'combine' | 'monthRule'>,
): string | null {
  if (granted === null) return null;
  const amounts = DIMENSIONS.flatMap((dimension) => {
    const amount = granted[dimension];
    if (amount === null) return [];
    const words = amountIn(dimension, amount);
    return dimension === 'months' && monthRule === 'month-end' ? `${words} to the month's end` : words;
  });
  const last = amounts.at(-1) ?? '';
  if (amounts.length < 2) return last;
  return `${amounts.slice(0, -1).join(', ')} or ${last}, whichever comes ${combine}`;
}

/** 'First at 3,000:00 h from overhaul, then every 500 cycles'. */
export function ruleText(requirement: Requirement): string {
  const { threshold, repeat, countedFrom, fromOn } = requirement;
  const from =
    countedFrom === 'date' && fromOn !== null
      ? calendarDate(fromOn)
      : (COUNTED.find(({ value }) => value === countedFrom)?.label.toLowerCase() ?? countedFrom);
  const first = grantText(threshold ?? repeat, requirement);
  const again = grantText(repeat, requirement);
  if (again === null) return `Once, ${first} from ${from}`;
  if (threshold === null) return `Every ${again}, the first time from ${from}`;
  return `First ${first} from ${from}, then every ${again}`;
}

/** Where to read about what a requirement is held against; null for a position. */
export function subjectHref({ componentId, airframeId }: RequirementStatus): string | null {
  if (componentId !== null) return `/components/${componentId}`;
  return airframeId === null ? null : `/positions/${airframeId}`;
}
