import { parseHours } from '../../../../format/hours.js';
import { parseDate } from '../../../../format/utc-moment.js';
import { useAct } from '../../../../server/act.js';
import type { RequirementStatus } from '../../../../server/requirements.js';
import { type Faults, useActForm } from '../../../../ui/fields/act-form.js';
import { TextAreaField } from '../../../../ui/fields/text-area-field.js';
import { announce } from '../../../../ui/messages/announcements.js';
import { SheetDialog } from '../../../../ui/overlay/sheet-dialog.js';
import { RegisterForm, WordsField } from '../../form-parts.js';
import { missing, whole } from '../../plain-checks.js';
import { addVariation, type NewVariation } from '../requirement-acts.js';
import { WHAT_IS_DUE } from '../requirement-queries.js';
import { heldOn } from './held-on.js';
import { variableText } from './tolerance-words.js';

const START = { minutes: '', cycles: '', days: '', approvedBy: '', reference: '', reason: '', on: '' };
type Typed = typeof START;

type Amount = 'minutes' | 'cycles' | 'days';

/** What of it is counted, so what may be varied; months are varied by days. */
function amountsOf({ dues }: RequirementStatus): readonly Amount[] {
  const has = (...names: string[]) =>
    dues.some(({ dimension, isBound }) => !isBound && names.includes(dimension));
  return [
    ...(has('minutes') ? (['minutes'] as const) : []),
    ...(has('cycles') ? (['cycles'] as const) : []),
    ...(has('days', 'months') ? (['days'] as const) : []),
  ];
}

const AMOUNT_WORDS = { minutes: 'hours', cycles: 'cycles', days: 'days' } as const;

function check(typed: Typed, amounts: readonly Amount[]): Faults {
  const day = parseDate(typed.on);
  const time = parseHours(typed.minutes);
  const none = [typed.minutes, typed.cycles, typed.days].every((text) => text.trim() === '');
  const count = (name: 'cycles' | 'days'): Faults =>
    typed[name].trim() !== '' && whole(typed[name]) === null ? { [name]: `Enter whole ${name}` } : {};
  return {
    ...(none
      ? {
          [amounts[0] ?? 'minutes']:
            `Enter how far past its due it may go: ${amounts.map((name) => AMOUNT_WORDS[name]).join(' or ')}`,
        }
      : {}),
    ...(typed.minutes.trim() !== '' && !time.ok ? { minutes: time.reason } : {}),
    ...count('cycles'),
    ...count('days'),
    ...missing(typed, {
      approvedBy: 'Enter who approved it',
      reference: 'Enter the paper by which it is approved',
      reason: 'Enter what could not be foreseen',
    }),
    ...(day.ok ? {} : { on: day.reason }),
  };
}

function wordsOf(typed: Typed, row: RequirementStatus): NewVariation {
  const time = parseHours(typed.minutes);
  const [cycles, days] = [whole(typed.cycles), whole(typed.days)];
  return {
    requirementId: row.requirementId,
    ...heldOn(row),
    // Who approved it saw this accomplishment; a later one must not be varied unseen.
    ...(row.lastDone === null ? {} : { accomplishmentId: row.lastDone.id }),
    ...(time.ok ? { minutes: time.minutes } : {}),
    ...(cycles === null ? {} : { cycles }),
    ...(days === null ? {} : { days }),
    approvedBy: typed.approvedBy.trim(),
    reference: typed.reference.trim(),
    reason: typed.reason.trim(),
    on: typed.on.trim(),
  };
}

interface VaryFormProps {
  readonly row: RequirementStatus;
  readonly onClose: () => void;
}

/** Records an approved variation of what is due now, one time, within what the requirement permits. */
export function VaryForm({ row, onClose }: VaryFormProps) {
  const act = useAct({
    perform: addVariation,
    refresh: WHAT_IS_DUE,
    onDone: () => {
      announce(`The variation of ${row.code} on ${row.subject} is recorded.`);
      onClose();
    },
  });
  const amounts = amountsOf(row);
  const only = amounts.length === 1;
  const form = useActForm({
    start: START,
    check: (typed: Typed) => check(typed, amounts),
    words: (typed: Typed) => wordsOf(typed, row),
    act,
  });
  return (
    <SheetDialog title={`Vary ${row.code} on ${row.subject}`} shape="sheet" open onClose={onClose}>
      <RegisterForm form={form} act="Record the variation">
        <p>For what is due now, one time. {variableText(row)}</p>
        <div className="sub-row-fields">
          {amounts.includes('minutes') && (
            <WordsField
              form={form}
              name="minutes"
              label="Hours past its due"
              hint="For example 20:00"
              optional={!only}
              mono
            />
          )}
          {amounts.includes('cycles') && (
            <WordsField form={form} name="cycles" label="Cycles past its due" optional={!only} mono />
          )}
          {amounts.includes('days') && (
            <WordsField form={form} name="days" label="Days past its due" optional={!only} mono />
          )}
        </div>
        <WordsField form={form} name="approvedBy" label="Approved by" />
        <WordsField form={form} name="reference" label="Reference" hint="The paper by which it is approved" />
        <TextAreaField
          {...form.field('reason')}
          label="What could not be foreseen"
          value={form.typed.reason}
          onChange={({ target }) => form.change({ reason: target.value })}
        />
        <WordsField form={form} name="on" label="Approved on" hint="Year-month-day" mono />
      </RegisterForm>
    </SheetDialog>
  );
}
