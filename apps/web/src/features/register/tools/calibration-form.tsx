import { parseDate } from '../../../format/utc-moment.js';
import { useAct } from '../../../server/act.js';
import { TOOLS_KEY, type ToolView } from '../../../server/tools.js';
import { type Faults, useActForm } from '../../../ui/fields/act-form.js';
import { RegisterForm, WordsField } from '../form-parts.js';
import { missing } from '../plain-checks.js';
import { type NewCalibration, recordCalibration } from './tool-acts.js';

interface Typed {
  readonly calibratedOn: string;
  readonly dueOn: string;
  readonly certificate: string;
}

const START: Typed = { calibratedOn: '', dueOn: '', certificate: '' };

function check(typed: Typed): Faults {
  const made = parseDate(typed.calibratedOn);
  const due = parseDate(typed.dueOn);
  return {
    ...(made.ok ? {} : { calibratedOn: made.reason }),
    ...(due.ok ? {} : { dueOn: due.reason }),
    ...missing(typed, { certificate: 'Enter the number of the certificate' }),
  };
}

interface CalibrationFormProps {
  readonly toolId: string;
  readonly onRecorded: (tool: ToolView) => void;
}

/** A calibration from its certificate. */
export function CalibrationForm({ toolId, onRecorded }: CalibrationFormProps) {
  const act = useAct({ perform: recordCalibration, onDone: onRecorded, refresh: [TOOLS_KEY] });
  const words = (typed: Typed): NewCalibration => ({
    toolId,
    calibratedOn: typed.calibratedOn.trim(),
    dueOn: typed.dueOn.trim(),
    certificate: typed.certificate.trim(),
  });
  const form = useActForm({ start: START, check, words, act });
  return (
    <RegisterForm form={form} act="Record the calibration">
      <WordsField form={form} name="certificate" label="Certificate" hint="Its number" mono autoFocus />
      <div className="sub-row-fields">
        <WordsField form={form} name="calibratedOn" label="Calibrated on" hint="Year-month-day" mono />
        <WordsField form={form} name="dueOn" label="Due on" hint="Good through this day" mono />
      </div>
      <p className="field-hint">
        The newest calibration counts, also where an older one would last longer. What was accepted before
        stays as it was judged.
      </p>
    </RegisterForm>
  );
}
