import { useAct } from '../../../../server/act.js';
import type { RequirementStatus } from '../../../../server/requirements.js';
import { useActForm } from '../../../../ui/fields/act-form.js';
import { announce } from '../../../../ui/messages/announcements.js';
import { SheetDialog } from '../../../../ui/overlay/sheet-dialog.js';
import { RegisterForm } from '../../form-parts.js';
import { addAccomplishment, type NewAccomplishment } from '../requirement-acts.js';
import { WHAT_IS_DUE } from '../requirement-queries.js';
import { heldOn } from './held-on.js';
import { faultsOfMet, MetFields, metWords, NOT_MET, type TypedMet } from './met-fields.js';

const wordsOf = (typed: TypedMet, row: RequirementStatus): NewAccomplishment => ({
  requirementId: row.requirementId,
  ...heldOn(row),
  ...metWords(typed),
});

interface MetFormProps {
  readonly row: RequirementStatus;
  readonly onClose: () => void;
}

/** Records by hand that a requirement was met: work done before these records began, or elsewhere. */
export function MetForm({ row, onClose }: MetFormProps) {
  const act = useAct({
    perform: addAccomplishment,
    refresh: WHAT_IS_DUE,
    onDone: () => {
      announce(`${row.code} is recorded as met on ${row.subject}. What is due next was computed.`);
      onClose();
    },
  });
  const form = useActForm({
    start: { ...NOT_MET, method: row.assessment?.method ?? '' },
    check: faultsOfMet,
    words: (typed: TypedMet) => wordsOf(typed, row),
    act,
  });
  return (
    <SheetDialog title={`${row.code} was met on ${row.subject}`} shape="sheet" open onClose={onClose}>
      <RegisterForm form={form} act="Record it">
        <p>
          For work done before these records began, or elsewhere. Work of a package is recorded by its
          release.
        </p>
        <MetFields form={form} />
      </RegisterForm>
    </SheetDialog>
  );
}
