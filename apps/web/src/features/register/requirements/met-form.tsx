import { parseHours } from '../../../format/hours.js';
import { parseDate } from '../../../format/utc-moment.js';
import { useAct } from '../../../server/act.js';
import type { RequirementStatus } from '../../../server/requirements.js';
import { type Faults, useActForm } from '../../../ui/fields/act-form.js';
import { announce } from '../../../ui/messages/announcements.js';
import { SheetDialog } from '../../../ui/overlay/sheet-dialog.js';
import { RegisterForm, WordsField } from '../form-parts.js';
import { readCycles } from '../openings/typed-cycles.js';
import { missing } from '../plain-checks.js';
import { addAccomplishment, type NewAccomplishment } from './requirement-acts.js';
import { WHAT_IS_DUE } from './requirement-queries.js';

interface Typed {
  readonly on: string;
  /** Typed as hours; the server's name for it is minutes. */
  readonly minutes: string;
  readonly cycles: string;
  readonly evidence: string;
}

const START: Typed = { on: '', minutes: '', cycles: '', evidence: '' };

function check(typed: Typed): Faults {
  const day = parseDate(typed.on);
  const time = parseHours(typed.minutes);
  return {
    ...(day.ok ? {} : { on: day.reason }),
    ...(typed.minutes.trim() !== '' && !time.ok ? { minutes: time.reason } : {}),
    ...(typed.cycles.trim() !== '' && readCycles(typed.cycles) === null
      ? { cycles: 'Enter cycles, for example 6000' }
      : {}),
    ...missing(typed, { evidence: 'Enter the papers that prove it' }),
  };
}

function wordsOf(typed: Typed, row: RequirementStatus): NewAccomplishment {
  const time = parseHours(typed.minutes);
  const cycles = readCycles(typed.cycles);
  const { requirementId, componentId, positionId, airframeId } = row;
  return {
    requirementId,
    ...(componentId === null ? {} : { componentId }),
    ...(positionId === null ? {} : { positionId }),
    ...(airframeId === null ? {} : { airframeId }),
    on: typed.on.trim(),
    ...(time.ok ? { minutes: time.minutes } : {}),
    ...(cycles === null ? {} : { cycles: cycles.units, cycleDenominator: cycles.denominator }),
    evidence: typed.evidence.trim(),
  };
}

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
  const form = useActForm({ start: START, check, words: (typed) => wordsOf(typed, row), act });
  return (
    <SheetDialog title={`${row.code} was met on ${row.subject}`} shape="sheet" open onClose={onClose}>
      <RegisterForm form={form} act="Record it">
        <p>
          For work done before these records began, or elsewhere. Work of a package is recorded by its
          release.
        </p>
        <WordsField form={form} name="on" label="Met on" hint="Year-month-day" mono autoFocus />
        <div className="sub-row-fields">
          <WordsField
            form={form}
            name="minutes"
            label="Hours since new"
            hint="For example 10000:00"
            optional
            mono
          />
          <WordsField form={form} name="cycles" label="Cycles since new" optional mono />
        </div>
        <p className="field-hint">
          As the papers say. Left empty, they are read from the flights here at the beginning of that day.
        </p>
        <WordsField form={form} name="evidence" label="Evidence" hint="The papers that prove it" />
      </RegisterForm>
    </SheetDialog>
  );
}
