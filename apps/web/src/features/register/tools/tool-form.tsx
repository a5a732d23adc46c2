import { TORQUE_UNITS } from '@strutbook/domain/torque/torque.js';
import { useAct } from '../../../server/act.js';
import { TOOLS_KEY, type Tool, type ToolView } from '../../../server/tools.js';
import { type Faults, useActForm } from '../../../ui/fields/act-form.js';
import { SelectField } from '../../../ui/fields/select-field.js';
import { RegisterForm, WordsField } from '../form-parts.js';
import { filled, missing } from '../plain-checks.js';
import { addTool, type NewTool } from './tool-acts.js';
import { KIND_CHOICES } from './tool-words.js';

interface Typed {
  readonly serialNumber: string;
  readonly description: string;
  readonly kind: Tool['kind'];
  readonly unit: string;
  readonly rangeLow: string;
  readonly rangeHigh: string;
  readonly deviation: string;
}

const START: Typed = {
  serialNumber: '',
  description: '',
  kind: 'torque-wrench',
  unit: 'N·m',
  rangeLow: '',
  rangeHigh: '',
  deviation: '',
};

const check = (typed: Typed): Faults =>
  missing(typed, {
    serialNumber: 'Enter the serial number marked on the tool',
    description: 'Enter what it is',
    ...(typed.kind === 'torque-wrench' ? { unit: 'Choose the unit it shows' } : {}),
  });

const wordsOf = (typed: Typed): NewTool => ({
  serialNumber: typed.serialNumber.trim(),
  description: typed.description.trim(),
  kind: typed.kind,
  ...filled('unit', typed.unit),
  ...filled('rangeLow', typed.rangeLow),
  ...filled('rangeHigh', typed.rangeHigh),
  ...filled('deviation', typed.deviation),
});

/** A tool to be registered: what is marked on it, its range and what its certificate allows. */
export function ToolForm({ onAdded }: { readonly onAdded: (tool: ToolView) => void }) {
  const act = useAct({ perform: addTool, onDone: onAdded, refresh: [TOOLS_KEY] });
  const form = useActForm({ start: START, check, words: wordsOf, act });
  const { typed, change, field } = form;
  const torque = typed.kind === 'torque-wrench';
  const choose = (kind: Tool['kind']) => change({ kind, unit: kind === 'torque-wrench' ? 'N·m' : '' });
  return (
    <RegisterForm form={form} act="Add the tool">
      <WordsField
        form={form}
        name="serialNumber"
        label="Serial number"
        hint="As marked on the tool"
        mono
        autoFocus
      />
      <WordsField
        form={form}
        name="description"
        label="What it is"
        hint="For example Torque wrench, 1/2 inch drive"
      />
      <SelectField
        {...field('kind')}
        label="Kind"
        options={KIND_CHOICES}
        value={typed.kind}
        onChange={({ target }) =>
          choose(KIND_CHOICES.find(({ value }) => value === target.value)?.value ?? 'other')
        }
      />
      {torque ? (
        <SelectField
          {...field('unit')}
          label="Unit it shows"
          options={TORQUE_UNITS.map((unit) => ({ value: unit, label: unit }))}
          value={typed.unit}
          onChange={({ target }) => change({ unit: target.value })}
        />
      ) : (
        <WordsField form={form} name="unit" label="Unit it shows" hint="For example bar or mm" optional />
      )}
      <div className="sub-row-fields">
        <WordsField form={form} name="rangeLow" label="Lowest" mono inputMode="decimal" optional />
        <WordsField form={form} name="rangeHigh" label="Highest" mono inputMode="decimal" optional />
        <WordsField form={form} name="deviation" label="Deviation, %" mono inputMode="decimal" optional />
      </div>
      <p className="field-hint">
        Range and deviation stand on its certificate.
        {torque && ' Without a range no torque taken with it is accepted.'}
      </p>
    </RegisterForm>
  );
}
