import { formatHours } from '../../units/minutes.js';
import type { ObjectionCode, WorkObjectionCode } from '../objection.js';
import type { Detail, Phrase } from './phrase.js';

const engine = (d: Detail) =>
  d['position'] === null ? `Engine ${d['serial']}` : `Engine ${d['serial']} at position ${d['position']}`;
const component = (d: Detail) => (d['position'] === undefined ? `Component ${d['serial']}` : engine(d));
const part = (d: Detail) =>
  d['partNumber'] === undefined ? component(d) : `Part ${d['partNumber']} serial ${d['serial']}`;
const partThere = (d: Detail) =>
  d['slot'] === undefined ? part(d) : `${part(d)} (${d['slot']}, engine ${d['engine']})`;
/** Why a component is not fit, by its tag or the shop it was not returned from. */
function whyUnfit(d: Detail): string {
  if (d['why'] === 'in-shop') return `It was sent to a shop (${d['reference']}), and no return is recorded.`;
  if (d['why'] === 'quarantine') return `Tag ${d['reference']} puts it in quarantine.`;
  if (d['why'] === 'unserviceable') return `Tag ${d['reference']} says it is unserviceable.`;
  return 'It is recorded as unserviceable.';
}

const whole = (value: Detail[string] | undefined) => (typeof value === 'number' ? value : null);

function left(d: Detail): string {
  const [cycles, minutes] = [whole(d['remaining']), whole(d['remainingMinutes'])];
  const told = [
    ...(cycles === null ? [] : [leftOf(cycles, String(Math.abs(cycles)), `${d['limit']} cycles`)]),
    ...(minutes === null
      ? []
      : [
          leftOf(
            minutes,
            formatHours(Math.abs(minutes)),
            `${formatHours(whole(d['minutesLimit']) ?? 0)} hours`,
          ),
        ]),
  ];
  const day = d['goodThrough'];
  return [...told, ...(typeof day === 'string' ? [`good through ${day}`] : [])].join(', ');
}

/** '229 of 9000 cycles remain', '4 past 9000 cycles'. */
function leftOf(remaining: number, amount: string, limit: string): string {
  return remaining < 0 ? `${amount} past ${limit}` : `${amount} of ${limit} remain`;
}

const logPage = (d: Detail) =>
  d['page'] === null || d['page'] === undefined ? 'Flight log' : `Log page ${d['page']}`;
const jump = (d: Detail) =>
  d['reason'] === 'stations'
    ? `It left from ${d['leftFrom']}, but the flight before arrived at ${d['arrivedAt']}`
    : `It follows page ${d['pageBefore']}`;

/** The words for what is held against an aircraft, its engines, their parts and its log. */
export const RECORD_PHRASES = {
  ENGINE_MISSING: (d) => ({
    record: `Position ${d['position']}`,
    reason: 'No engine is installed there.',
    fix: 'Record the installation of the engine.',
  }),
  OVER_LIMIT: (d) => ({
    record: partThere(d),
    reason: `Its life limit is passed: ${left(d)}.`,
    fix: 'Replace the part, and report the overrun.',
  }),
  AT_LIMIT: (d) => ({
    record: partThere(d),
    reason: `Its life is used up: ${left(d)}. The next flight would pass the limit.`,
    fix: 'Replace the part before the next flight.',
  }),
  NOT_AUTHORISED: (d) => ({
    record: partThere(d),
    reason: `The part number is not authorised in ${d['model'] ?? 'this model'} at this rating.`,
    fix: 'Fit a part number authorised there, or correct the model or rating.',
  }),
  ENGINE_NOT_AUTHORISED: (d) => ({
    record: component(d),
    reason: 'Its model is not authorised at this position.',
    fix: 'Fit an engine of a model recorded for this type, or record its cycle rule for the type from approved data.',
  }),
  LIMITED_PART_MISSING: (d) => ({
    record: `${d['slot']} of engine ${d['engine']}`,
    reason: 'A life-limited part is expected there and none is recorded.',
    fix: 'Record the part that is fitted, with its trace.',
  }),
  LIMITED_PART_UNTRACED: (d) => ({
    record: partThere(d),
    reason: `Its life is not substantiated; not known: ${d['missing'] || 'its history'}.`,
    fix: 'Complete the trace, or record the acceptance of the worst case with its reference.',
  }),
  NO_LIMIT_RECORDED: (d) => ({
    record: partThere(d),
    reason: 'No life limit in force is recorded for its part number in this model and rating.',
    fix: 'Record the limit from the approved document with its revision.',
  }),
  COUNTERS_UNKNOWN: (d) => ({
    record: engine(d),
    reason: `Its ${d['missing'] ?? 'counters'} since new are not known.`,
    fix: 'Record the opening balance with its source.',
  }),
  RATING_UNKNOWN: (d) => ({
    record: engine(d),
    reason: 'The rating it runs at is not recorded.',
    fix: 'Record the rating from the data plate or the release document.',
  }),
  PART_UNSERVICEABLE: (d) => ({
    record: partThere(d),
    reason: whyUnfit(d),
    fix:
      d['why'] === 'in-shop'
        ? 'Record its return from the shop, or fit another.'
        : 'Fit a serviceable one, or record the release document that makes it serviceable.',
  }),
  PART_SERVICEABILITY_UNKNOWN: (d) => ({
    record: partThere(d),
    reason: 'Nobody recorded whether it is serviceable.',
    fix: 'Record its release document.',
  }),
  PRESERVATION_OVER: (d) => ({
    record: partThere(d),
    reason: `Its preservation was good until ${d['goodUntil']}.`,
    fix: 'Inspect it as its manual says for preservation that ran out, and record what was done.',
  }),
  DISPOSITION_MISSING: (d) => ({
    record: partThere(d),
    reason: 'It is life-limited, came off, and nothing says how it is controlled since.',
    fix: 'Record the tag, mark or segregation, and its life status with it.',
  }),
  SHOP_PAPERS_MISSING: (d) => ({
    record: partThere(d),
    reason: 'It came from the shop without a release certificate.',
    fix: 'Obtain the certificate, or tag it as unserviceable until then.',
  }),
  SHORT_OF_PLANNED_STAY: (d) => ({
    record: partThere(d),
    reason: `It does not last the planned stay of ${d['plannedStay']} cycles: ${left(d)}.`,
    fix: 'Plan its replacement, or a shorter stay.',
  }),
  MIXED_MODELS: (d) => ({
    record: `Airframe ${d['registration']}`,
    reason: `Different engine models are installed: ${d['models']}.`,
    fix: 'Check that the mix is approved for this airframe.',
  }),
  WORST_CASE_ACCEPTED: (d) => ({
    record: partThere(d),
    reason: `What is unknown is counted at its worst, under a recorded acceptance: ${left(d)}.`,
    fix: 'Nothing, while the acceptance holds.',
  }),
  LOG_GAP: (d) => ({
    record: logPage(d),
    reason:
      d['reason'] === 'stations'
        ? `${jump(d)}: a flight may be missing, and with it its hours and cycles.`
        : `${jump(d)}: a page may be missing, and with it its hours and cycles.`,
    fix: 'Enter the missing flight, or explain the gap by a note at this flight.',
  }),
  LOG_GAP_EXPLAINED: (d) => ({
    record: logPage(d),
    reason: `${jump(d)}. Noted: “${d['note']}”`,
    fix: 'Nothing, while the note holds.',
  }),
  REQUIREMENT_OVER: (d) => ({
    record: `${d['name']} on ${d['on']}`,
    reason: `It is over: ${d['why']}`,
    fix: 'Do it and record it, or name it in this package.',
  }),
  DUE_WITHIN_PLANNED_FLYING: (d) => ({
    record: `${d['name']} on ${d['on']}`,
    reason: `It would be over at or before the landing of the flight planned to take off ${d['takeOff']} UTC.`,
    fix: 'Do it before that flight, or plan the flying otherwise.',
  }),
  REQUIREMENT_NOT_VERIFIED: (d) => ({
    record: `${d['name']} on ${d['on']}`,
    reason: `When it is due is not verified: ${d['why']}`,
    fix: 'Record when it was last done, with its evidence, or why it does not apply.',
  }),
  REQUIREMENT_IN_TOLERANCE: (d) => ({
    record: `${d['name']} on ${d['on']}`,
    reason: `It is past its due, inside what it grants: ${d['why']}`,
    fix: 'Do it before the end of what is granted.',
  }),
} as const satisfies Record<Exclude<ObjectionCode, WorkObjectionCode>, Phrase>;
