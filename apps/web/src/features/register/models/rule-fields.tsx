import type { AirframeType } from '../../../server/fleet.js';
import type { Faults, FieldState } from '../../../ui/fields/act-form.js';
import { SelectField } from '../../../ui/fields/select-field.js';
import { TextField } from '../../../ui/fields/text-field.js';
import { filled, missing, whole } from '../plain-checks.js';
import type { NewCycleRule } from '../register-acts.js';
import { ruleInWords, WEIGHTS, type Weight } from './rule-words.js';

export type TypedRule = Readonly<
  Record<Weight | 'denominator' | 'airframeTypeId' | 'source' | 'revision', string>
>;

/** A rule to fill in: what counts as a cycle comes from the document alone, no weight is supplied. */
export const BLANK_RULE: TypedRule = {
  airframeTypeId: '',
  perFlight: '',
  perLanding: '',
  perTouchAndGo: '',
  perStart: '',
  perAbortedTakeOff: '',
  denominator: '',
  source: '',
  revision: '',
};

/** What is plainly wrong with a rule. */
export const checkRule = (rule: TypedRule): Faults => ({
  ...Object.fromEntries(
    WEIGHTS.filter(({ name }) => whole(rule[name]) === null).map(({ name }) => [
      name,
      'Enter a whole number',
    ]),
  ),
  ...((whole(rule.denominator) ?? 0) < 1 ? { denominator: 'Enter a whole number, 1 or more' } : {}),
  ...missing(rule, { source: 'Enter the document the rule comes from', revision: 'Enter its revision' }),
});

const weightsOf = (rule: TypedRule): Record<Weight | 'denominator', number> => ({
  perFlight: whole(rule.perFlight) ?? 0,
  perLanding: whole(rule.perLanding) ?? 0,
  perTouchAndGo: whole(rule.perTouchAndGo) ?? 0,
  perStart: whole(rule.perStart) ?? 0,
  perAbortedTakeOff: whole(rule.perAbortedTakeOff) ?? 0,
  denominator: whole(rule.denominator) ?? 1,
});

/** A rule as it is sent. */
export const ruleWords = (rule: TypedRule): NewCycleRule => ({
  ...weightsOf(rule),
  source: rule.source.trim(),
  revision: rule.revision.trim(),
  ...filled('airframeTypeId', rule.airframeTypeId),
});

interface RuleFieldsProps {
  readonly rule: TypedRule;
  readonly put: (next: Partial<TypedRule>) => void;
  readonly types: readonly AirframeType[];
  readonly field: (name: string) => FieldState;
}

/** How counted events make cycles, on one airframe type or on any. */
export function RuleFields({ rule, put, types, field }: RuleFieldsProps) {
  const readable = Object.keys(checkRule(rule)).every((name) => name === 'source' || name === 'revision');
  return (
    <>
      <SelectField
        {...field('airframeTypeId')}
        label="On airframe type"
        unchosen="Any type"
        options={types.map(({ id, maker, designation }) => ({ value: id, label: `${maker} ${designation}` }))}
        value={rule.airframeTypeId}
        onChange={(event) => put({ airframeTypeId: event.target.value })}
      />
      <p className="quiet">
        What each adds to the cycles, in parts: with 2 parts to a cycle, 1 is half a cycle. Enter 0 for what
        adds nothing.
      </p>
      <div className="sub-row-fields">
        {WEIGHTS.map(({ name, label }) => (
          <TextField
            key={name}
            {...field(name)}
            label={label}
            mono
            inputMode="numeric"
            value={rule[name]}
            onChange={(event) => put({ [name]: event.target.value })}
          />
        ))}
        <TextField
          {...field('denominator')}
          label="Parts to a cycle"
          mono
          inputMode="numeric"
          value={rule.denominator}
          onChange={(event) => put({ denominator: event.target.value })}
        />
      </div>
      <p className="quiet" role="status">
        {readable ? ruleInWords(weightsOf(rule)) : 'The rule is told here in words when all six are entered.'}
      </p>
      <div className="sub-row-fields">
        <TextField
          {...field('source')}
          label="Document"
          value={rule.source}
          onChange={(event) => put({ source: event.target.value })}
        />
        <TextField
          {...field('revision')}
          label="Revision"
          mono
          value={rule.revision}
          onChange={(event) => put({ revision: event.target.value })}
        />
      </div>
    </>
  );
}
