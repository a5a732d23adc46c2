import { STATUS_WORDS } from '@strutbook/domain/life/status.js';
import { formatHours } from '@strutbook/domain/units/minutes.js';
import type { CountersDto, CyclesDto } from '../../../platform/http/counters.dto.js';
import type { CalendarLifeDto, LifeSourceDto } from '../wire/life.dto.js';
import type { LifeSheetDto, SheetLimitDto, SheetPartDto, SheetUseDto } from '../wire/life-sheet.dto.js';

/** A column of the sheet: a cell for each member, the same words wherever the sheet is told. */
export interface SheetColumn {
  readonly head: string;
  /** Where on paper it stands: with others in one of five cells. */
  readonly group: 'part' | 'limit' | 'used' | 'left' | 'standing';
  readonly cell: (part: SheetPartDto) => string;
}

const EVENTS = { new: 'new', 'first-installation': 'first installation', overhaul: 'overhaul' } as const;
const TRACE = {
  verified: 'On record',
  'worst-case': 'Worst case accepted',
  'not-verified': 'Not verified',
} as const;
const DIMENSIONS = {
  cycles: 'cycles',
  minutes: 'hours',
  days: 'days',
  authorisation: 'authorisation',
} as const;

/** The columns, in their order. */
export const SHEET_COLUMNS: readonly SheetColumn[] = [
  { head: 'Module', group: 'part', cell: ({ module }) => module },
  { head: 'Place', group: 'part', cell: ({ place }) => place },
  { head: 'Description', group: 'part', cell: ({ description }) => description },
  { head: 'Part number', group: 'part', cell: ({ partNumber }) => partNumber },
  { head: 'Serial number', group: 'part', cell: ({ serialNumber }) => serialNumber },
  { head: 'Limit by rating', group: 'limit', cell: ({ limits }) => limits.map(limitText).join('; ') },
  { head: 'Documents', group: 'limit', cell: ({ life }) => (life?.sources ?? []).map(sourceText).join('; ') },
  { head: 'Rating now', group: 'used', cell: ({ life }) => life?.ratingCode ?? '' },
  { head: 'Used by rating', group: 'used', cell: ({ usedAt }) => usedAt.map(useText).join('; ') },
  { head: 'Hours since new', group: 'used', cell: ({ sinceNew }) => hoursText(sinceNew.minutes) },
  { head: 'Cycles since new', group: 'used', cell: ({ sinceNew }) => cyclesText(sinceNew.cycles) },
  { head: 'Used fraction', group: 'used', cell: ({ life }) => fractionText(life?.used ?? null) },
  { head: 'Used', group: 'used', cell: ({ life }) => percentText(life?.used ?? null) },
  { head: 'Cycle limit', group: 'left', cell: ({ life }) => countText(life?.cycleLimit) },
  { head: 'Remaining cycles', group: 'left', cell: ({ life }) => countText(life?.remainingCycles) },
  { head: 'Hour limit', group: 'left', cell: ({ life }) => spanText(life?.minuteLimit) },
  { head: 'Remaining hours', group: 'left', cell: ({ life }) => spanText(life?.remainingMinutes) },
  { head: 'Calendar life', group: 'left', cell: ({ life }) => calendarText(life?.calendar ?? null) },
  { head: 'Good through', group: 'left', cell: ({ life }) => life?.goodThrough ?? '' },
  { head: 'Remaining days', group: 'left', cell: ({ life }) => countText(life?.remainingDays) },
  { head: 'Projected end', group: 'left', cell: ({ life }) => life?.projectedOn ?? '' },
  {
    head: 'Driven by',
    group: 'left',
    cell: ({ life }) => (life?.projectedBy == null ? '' : DIMENSIONS[life.projectedBy]),
  },
  { head: 'Basis', group: 'left', cell: ({ life }) => life?.basis ?? '' },
  { head: 'Status', group: 'standing', cell: ({ life }) => statusText(life) },
  { head: 'Trace', group: 'standing', cell: ({ trace }) => TRACE[trace] },
  { head: 'Flags', group: 'standing', cell: ({ flags }) => flags.join('; ') },
];

/** What stands above the table, named. */
export function sheetFacts(sheet: LifeSheetDto): { readonly name: string; readonly value: string }[] {
  const { subject } = sheet;
  return [
    { name: 'Operator', value: sheet.operator },
    { name: 'As at', value: `${sheet.at.replace('T', ' ')}` },
    { name: 'Component', value: `${subject.description}, ${subject.kind}` },
    { name: 'Part number', value: subject.partNumber },
    { name: 'Serial number', value: subject.serialNumber },
    { name: 'Model', value: subject.model ?? 'Not recorded' },
    { name: 'Rating', value: subject.ratingCode ?? 'Not recorded' },
    { name: 'Where', value: subject.place },
    { name: 'Hours since new', value: hoursText(subject.sinceNew.minutes) },
    { name: 'Cycles since new', value: cyclesText(subject.sinceNew.cycles) },
    { name: 'Rule set', value: sheet.ruleSet ?? 'On no airframe' },
    { name: 'Limits in cycles', value: sheet.limiterByCycles ?? 'Nothing' },
    { name: 'Limits by date', value: sheet.limiterByDate ?? 'Nothing' },
  ];
}

function statusText(life: SheetPartDto['life']): string {
  if (life === null) return STATUS_WORDS['not-verified'];
  if (life.kind === 'not-limited') return 'Not limited';
  return life.kind === 'not-authorised' ? 'Not authorised' : STATUS_WORDS[life.status];
}

function limitText({ ratingCode, authorisation, cycles, minutes, calendar }: SheetLimitDto): string {
  const at = ratingCode ?? 'Any rating';
  if (authorisation !== 'limited')
    return `${at}: ${authorisation === 'not-authorised' ? 'not authorised' : 'not limited'}`;
  const told = [
    ...(cycles === null ? [] : [`${cycles} cycles`]),
    ...(minutes === null ? [] : [hoursText(minutes)]),
    ...calendar.map(calendarText),
  ];
  return `${at}: ${told.join(', ')}`;
}

function calendarText(life: CalendarLifeDto | null): string {
  if (life === null) return '';
  const { span, unit, countedFrom, monthRule, countedOn } = life;
  const end = unit === 'months' && monthRule === 'month-end' ? " to the month's end" : '';
  return `${span} ${unit}${end} from ${EVENTS[countedFrom]} (${countedOn ?? 'no day on record'})`;
}

function sourceText({ basis, document, revision, effectiveOn, governs }: LifeSourceDto): string {
  const of = governs.map((each) => DIMENSIONS[each]).join(' and ');
  const role = of === '' ? basis : `${basis}, governs ${of}`;
  return `${document}, revision ${revision} of ${effectiveOn} (${role})`;
}

function useText({ ratingCode, cycles, minutes }: SheetUseDto): string {
  return `${ratingCode ?? 'Rating not known'}: ${cyclesText(cycles)}, ${hoursText(minutes)}`;
}

function hoursText(minutes: CountersDto['minutes']): string {
  return minutes === null ? 'hours not known' : `${formatHours(minutes)} h`;
}

function spanText(minutes: number | null | undefined): string {
  return minutes == null ? '' : `${formatHours(minutes)} h`;
}

function cyclesText(cycles: CyclesDto | null): string {
  if (cycles === null) return 'cycles not known';
  const { units, denominator } = cycles;
  const rest = units % denominator;
  return `${Math.trunc(units / denominator)}${rest === 0 ? '' : ` ${rest}/${denominator}`} cycles`;
}

function fractionText(used: CyclesDto | null): string {
  return used === null ? '' : `${used.units}/${used.denominator}`;
}

/** Cut after one decimal, so that 100 is said only when all is used; the fraction beside it is exact. */
function percentText(used: CyclesDto | null): string {
  return used === null ? '' : `${(Math.floor((used.units * 1000) / used.denominator) / 10).toFixed(1)} %`;
}

function countText(count: number | null | undefined): string {
  return count == null ? '' : String(count);
}
