import { daysBetween } from '@strutbook/domain/units/calendar.js';
import { floor, subtract } from '@strutbook/domain/units/fraction.js';
import { formatHours } from '@strutbook/domain/units/minutes.js';
import { type FieldRefusal } from '../../../platform/problems/api-refusals.js';
import { refuse } from '../../../platform/problems/refusal.error.js';
import { ruleOf } from '../../../records/requirements/rule/requirement-rule.js';
import { grantsAnything } from '../../../records/requirements/rule/stored-rule.js';
import type { Standing } from '../../../records/requirements/standings.js';
import type { NewVariationDto } from './variation.dto.js';

const FIELDS = ['minutes', 'cycles', 'days'] as const;
type Field = (typeof FIELDS)[number];

/** Refuses a variation of what permits none, or past what is permitted. Refuses: REFUSED_BY_FACTS, INVALID_FIELDS. */
export function refuseUnpermitted(asked: NewVariationDto, standing: Standing): void {
  refuseSilent(standing);
  const { due, isDoubtful } = standing;
  if (due.kind !== 'open' || isDoubtful)
    refuse({
      code: 'REFUSED_BY_FACTS',
      field: 'requirementId',
      reason: 'Nothing is due by it here that could be varied.',
      fix: 'Look at what is due, and at whether it applies, first.',
    });
  if (due.kind !== 'open') return;
  const given = FIELDS.filter((field) => asked[field] != null);
  if (given.length === 0)
    refuse({
      code: 'INVALID_FIELDS',
      fields: [
        {
          field: 'minutes',
          reason: 'Nothing says how far past its due it may go.',
          fix: 'Enter hours, cycles or days.',
        },
      ],
    });
  const fields = given.flatMap((field) => faultOf(field, asked[field] ?? 0, due) ?? []);
  const [first] = fields;
  if (first !== undefined) refuse({ code: 'REFUSED_BY_FACTS', ...first });
}

/** Refuses of what says nothing of a variation. Refuses: REFUSED_BY_FACTS. */
function refuseSilent({ requirement }: Standing): void {
  if (grantsAnything(ruleOf(requirement).variation)) return;
  const byText = requirement.kind === 'directive' || requirement.kind === 'airworthiness-limitation';
  refuse({
    code: 'REFUSED_BY_FACTS',
    field: 'requirementId',
    reason: byText
      ? 'Its text grants no variation, and it has only what its own text grants.'
      : 'It permits no variation.',
    fix: byText
      ? 'Do it when it is due, or ask the authority for another method of compliance and record that revision.'
      : 'Do it when it is due, or record the revision of the programme that permits one.',
  });
}

function faultOf(
  field: Field,
  asked: number,
  { dues }: Extract<Standing['due'], { kind: 'open' }>,
): FieldRefusal | null {
  const isOf = (dimension: string) =>
    field === 'days' ? dimension === 'days' || dimension === 'months' : dimension === field;
  const varied = dues.filter(({ dimension, isBound }) => !isBound && isOf(dimension));
  if (varied.length === 0)
    return {
      field,
      reason: `It is not due by ${field === 'minutes' ? 'hours' : field === 'days' ? 'the calendar' : field}.`,
      fix: 'Leave it out; vary what it is due by.',
    };
  const most = Math.min(
    ...varied.map(({ dueAt, variableAt, dueOn, variableOn }) => {
      if (dueAt !== null && variableAt !== null) return floor(subtract(variableAt, dueAt));
      return dueOn === null || variableOn === null ? 0 : daysBetween(dueOn, variableOn);
    }),
  );
  if (asked <= most) return null;
  const words = field === 'minutes' ? `${formatHours(most)} hours` : `${most} ${field}`;
  return {
    field,
    reason: `It permits ${words} at most.`,
    fix:
      most === 0
        ? 'Leave it out.'
        : `Enter ${field === 'minutes' ? `${words} (${most} minutes)` : words} or less.`,
  };
}
