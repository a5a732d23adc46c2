import { useAct } from '../../../../server/act.js';
import { useActForm } from '../../../../ui/fields/act-form.js';
import { SelectField } from '../../../../ui/fields/select-field.js';
import { RegisterForm, WordsField } from '../../form-parts.js';
import { addRequirement } from '../requirement-acts.js';
import { type Requirement, WHAT_IS_DUE } from '../requirement-queries.js';
import { KINDS } from '../requirement-words.js';
import { BearingFields, OnlyFields } from './bearing-fields.js';
import { PhaseFields } from './phase-fields.js';
import { RulePreview } from './rule-preview.js';
import { CountedFields, ScopeFields } from './scope-fields.js';
import { ToleranceFields } from './tolerance-fields.js';
import { check, needsCombining, START, wordsOf } from './typed-requirement.js';

const COMBINE = [
  { value: 'first', label: 'Whichever comes first' },
  { value: 'last', label: 'Whichever comes last' },
] as const;

const MONTH_RULES = [
  { value: 'same-day', label: 'To the same day of the month' },
  { value: 'month-end', label: "To the month's end" },
] as const;

/** One revision of a document's duty: what it is for, when it is due first, and when again. */
export function RequirementForm({ onAdded }: { readonly onAdded: (requirement: Requirement) => void }) {
  const act = useAct({ perform: addRequirement, onDone: onAdded, refresh: WHAT_IS_DUE });
  const form = useActForm({ start: START, check, words: wordsOf, act });
  const { typed, change, field } = form;
  const inMonths = [typed.threshold, typed.repeat].some(({ months }) => months.trim() !== '');
  return (
    <RegisterForm form={form} act="Add the requirement">
      <div className="sub-row-fields">
        <WordsField form={form} name="code" label="Code" mono autoFocus />
        <SelectField
          {...field('kind')}
          label="Kind"
          options={KINDS}
          value={typed.kind}
          onChange={({ target }) =>
            change({ kind: KINDS.find(({ value }) => value === target.value)?.value ?? 'inspection' })
          }
        />
      </div>
      <WordsField form={form} name="title" label="Title" />
      <ScopeFields form={form} />
      <OnlyFields form={form} />
      {typed.countedFrom !== 'accomplishment' && (
        <PhaseFields
          form={form}
          name="threshold"
          legend="Due the first time"
          hint="Left empty, it is due the first time after the repeat."
        />
      )}
      <CountedFields form={form} />
      <PhaseFields
        form={form}
        name="repeat"
        legend="Due again"
        hint="Counted from the last time it was met. Left empty, it is met once."
      />
      {needsCombining(typed) && (
        <SelectField
          {...field('combine')}
          label="Of hours, cycles and dates"
          options={COMBINE}
          value={typed.combine}
          onChange={({ target }) => change({ combine: target.value === 'last' ? 'last' : 'first' })}
        />
      )}
      {inMonths && (
        <SelectField
          {...field('monthRule')}
          label="Months go"
          options={MONTH_RULES}
          value={typed.monthRule}
          onChange={({ target }) =>
            change({ monthRule: target.value === 'month-end' ? 'month-end' : 'same-day' })
          }
        />
      )}
      <ToleranceFields form={form} />
      <BearingFields form={form} />
      <WordsField form={form} name="document" label="Document" />
      <div className="sub-row-fields">
        <WordsField form={form} name="revision" label="Revision" mono />
        <WordsField form={form} name="effectiveOn" label="Effective on" hint="Year-month-day" mono />
      </div>
      <RulePreview typed={typed} />
    </RegisterForm>
  );
}
