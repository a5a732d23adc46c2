import { exactCycles } from '../../../../format/cycles.js';
import { hoursMinutes } from '../../../../format/hours.js';
import { useAct } from '../../../../server/act.js';
import { useActForm } from '../../../../ui/fields/act-form.js';
import { TextAreaField } from '../../../../ui/fields/text-area-field.js';
import { announce } from '../../../../ui/messages/announcements.js';
import { SheetDialog } from '../../../../ui/overlay/sheet-dialog.js';
import { RegisterForm } from '../../form-parts.js';
import { missing } from '../../plain-checks.js';
import { correctAccomplishment } from '../requirement-acts.js';
import { type Accomplishment, WHAT_IS_DUE } from '../requirement-queries.js';
import { faultsOfMet, MetFields, metWords, type TypedMet } from './met-fields.js';

interface Typed extends TypedMet {
  readonly reason: string;
}

interface CorrectMetFormProps {
  readonly row: Accomplishment;
  readonly onClose: () => void;
}

/** What an accomplishment should have said. The one that was wrong stays in sight, struck through. */
export function CorrectMetForm({ row, onClose }: CorrectMetFormProps) {
  const act = useAct({
    perform: correctAccomplishment,
    refresh: WHAT_IS_DUE,
    onDone: () => {
      announce(`The accomplishment on ${row.subject} is corrected. What is due was computed again.`);
      onClose();
    },
  });
  const start: Typed = {
    on: row.on,
    minutes: row.minutes === null ? '' : hoursMinutes(row.minutes),
    cycles: row.cycles === null ? '' : exactCycles(row.cycles),
    evidence: row.evidence,
    method: row.method ?? '',
    reason: '',
  };
  const form = useActForm({
    start,
    check: (typed) => ({ ...faultsOfMet(typed), ...missing(typed, { reason: 'Enter why it is corrected' }) }),
    words: (typed: Typed) => ({ id: row.id, body: { ...metWords(typed), reason: typed.reason.trim() } }),
    act,
  });
  return (
    <SheetDialog title={`Correct what was met on ${row.subject}`} shape="sheet" open onClose={onClose}>
      <RegisterForm form={form} act="Record the correction">
        <MetFields form={form} />
        <TextAreaField
          {...form.field('reason')}
          label="Why it is corrected"
          value={form.typed.reason}
          onChange={({ target }) => form.change({ reason: target.value })}
        />
      </RegisterForm>
    </SheetDialog>
  );
}
