import { parseDate } from '../../../../format/utc-moment.js';
import { useAct } from '../../../../server/act.js';
import type { RequirementStatus } from '../../../../server/requirements.js';
import { type Faults, useActForm } from '../../../../ui/fields/act-form.js';
import { ChoiceField } from '../../../../ui/fields/choice-field.js';
import { SelectField } from '../../../../ui/fields/select-field.js';
import { announce } from '../../../../ui/messages/announcements.js';
import { SheetDialog } from '../../../../ui/overlay/sheet-dialog.js';
import { RegisterForm, WordsField } from '../../form-parts.js';
import { filled, missing } from '../../plain-checks.js';
import { addAssessment, type NewAssessment } from '../requirement-acts.js';
import { WHAT_IS_DUE } from '../requirement-queries.js';
import { heldOn } from './held-on.js';

interface Typed {
  readonly of: 'one' | 'all';
  readonly applicable: 'yes' | 'no' | '';
  readonly reason: string;
  readonly method: string;
  readonly assessedBy: string;
  readonly reference: string;
  readonly on: string;
}

const APPLICABLE = [
  { value: 'yes', label: 'It applies' },
  { value: 'no', label: 'It does not apply' },
] as const;

const START: Typed = {
  ...{ of: 'one', applicable: '', reason: '', method: '', assessedBy: '', reference: '', on: '' },
};

function check(typed: Typed): Faults {
  const day = parseDate(typed.on);
  return {
    ...missing(typed, {
      applicable: 'Choose whether it applies',
      ...(typed.applicable === 'no' ? { reason: 'Enter why it does not apply' } : {}),
      assessedBy: 'Enter who assessed it',
      reference: 'Enter the paper on which it is found',
    }),
    ...(day.ok ? {} : { on: day.reason }),
  };
}

const wordsOf = (typed: Typed, row: RequirementStatus): NewAssessment => ({
  requirementId: row.requirementId,
  ...(typed.of === 'one' ? heldOn(row) : {}),
  applicable: typed.applicable === 'yes',
  ...filled('reason', typed.reason),
  ...(typed.applicable === 'yes' ? filled('method', typed.method) : {}),
  assessedBy: typed.assessedBy.trim(),
  reference: typed.reference.trim(),
  on: typed.on.trim(),
});

interface AssessFormProps {
  readonly row: RequirementStatus;
  readonly onClose: () => void;
}

/** Records whether this revision applies, as a competent person found. A later revision needs its own. */
export function AssessForm({ row, onClose }: AssessFormProps) {
  const act = useAct({
    perform: addAssessment,
    refresh: WHAT_IS_DUE,
    onDone: ({ applicable, subject }) => {
      announce(`${row.code} ${applicable ? 'applies' : 'does not apply'} to ${subject}, as assessed.`);
      onClose();
    },
  });
  const form = useActForm({ start: START, check, words: (typed: Typed) => wordsOf(typed, row), act });
  const { typed, change, field } = form;
  const applicable = field('applicable');
  return (
    <SheetDialog title={`Does ${row.code} apply to ${row.subject}?`} shape="sheet" open onClose={onClose}>
      <RegisterForm form={form} act="Record the assessment">
        <p>
          Revision <span className="serial">{row.revision}</span> of {row.document} is assessed; a later one
          needs its own.
        </p>
        <SelectField
          label="Assessed for"
          options={[
            { value: 'one', label: `${row.subject} alone` },
            { value: 'all', label: 'Everything it may be for' },
          ]}
          value={typed.of}
          onChange={({ target }) => change({ of: target.value === 'all' ? 'all' : 'one' })}
        />
        {applicable.error !== null && <p className="field-error">{applicable.error}</p>}
        <ChoiceField
          id={applicable.id}
          legend="Does it apply?"
          options={APPLICABLE}
          value={typed.applicable === '' ? null : typed.applicable}
          onChoose={(chosen) => change({ applicable: chosen })}
        />
        <WordsField
          form={form}
          name="reason"
          label={typed.applicable === 'no' ? 'Why it does not apply' : 'Why'}
          optional={typed.applicable !== 'no'}
        />
        {typed.applicable !== 'no' && (
          <WordsField
            form={form}
            name="method"
            label="Method"
            hint="The paragraph or part it is to be complied with by, where there is a choice"
            optional
          />
        )}
        <WordsField form={form} name="assessedBy" label="Assessed by" />
        <WordsField form={form} name="reference" label="Reference" hint="The paper on which it is found" />
        <WordsField form={form} name="on" label="Assessed on" hint="Year-month-day" mono />
      </RegisterForm>
    </SheetDialog>
  );
}
