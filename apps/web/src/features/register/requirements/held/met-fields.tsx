import { parseHours } from '../../../../format/hours.js';
import { parseDate } from '../../../../format/utc-moment.js';
import type { ActForm, Faults } from '../../../../ui/fields/act-form.js';
import { WordsField } from '../../form-parts.js';
import { readCycles } from '../../openings/typed-cycles.js';
import { filled, missing } from '../../plain-checks.js';
import type { CorrectedAccomplishment } from '../requirement-acts.js';

/** When something was met, as typed. */
export interface TypedMet {
  readonly on: string;
  /** Typed as hours; the server's name for it is minutes. */
  readonly minutes: string;
  readonly cycles: string;
  readonly evidence: string;
  readonly method: string;
}

export const NOT_MET: TypedMet = { on: '', minutes: '', cycles: '', evidence: '', method: '' };

/** What is plainly wrong with it, by the server's field names. */
export function faultsOfMet(typed: TypedMet): Faults {
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

/** As it is sent. */
export function metWords(typed: TypedMet): Omit<CorrectedAccomplishment, 'reason'> {
  const time = parseHours(typed.minutes);
  const cycles = readCycles(typed.cycles);
  return {
    on: typed.on.trim(),
    ...(time.ok ? { minutes: time.minutes } : {}),
    ...(cycles === null ? {} : { cycles: cycles.units, cycleDenominator: cycles.denominator }),
    evidence: typed.evidence.trim(),
    ...filled('method', typed.method),
  };
}

/** When it was met, at which counters, and what proves it. */
export function MetFields<Typed extends TypedMet>({ form }: { readonly form: ActForm<Typed> }) {
  const fields = form as unknown as ActForm<TypedMet>;
  return (
    <>
      <WordsField form={fields} name="on" label="Met on" hint="Year-month-day" mono autoFocus />
      <div className="sub-row-fields">
        <WordsField
          form={fields}
          name="minutes"
          label="Hours since new"
          hint="For example 10000:00"
          optional
          mono
        />
        <WordsField form={fields} name="cycles" label="Cycles since new" optional mono />
      </div>
      <p className="field-hint">
        As the papers say. Left empty, they are read from the flights here at the beginning of that day.
      </p>
      <WordsField form={fields} name="evidence" label="Evidence" hint="The papers that prove it" />
      <WordsField
        form={fields}
        name="method"
        label="Method"
        hint="The paragraph or part it was complied with by, where there is a choice"
        optional
      />
    </>
  );
}
