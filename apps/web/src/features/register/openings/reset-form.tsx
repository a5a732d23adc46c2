import { useAct } from '../../../server/act.js';
import { COMPONENTS_KEY, type Component } from '../../../server/components.js';
import { FLEET_KEY } from '../../../server/fleet.js';
import { type Faults, useActForm } from '../../../ui/fields/act-form.js';
import { SelectField } from '../../../ui/fields/select-field.js';
import { RegisterForm, WordsField } from '../form-parts.js';
import { BoundaryFields } from '../placing/boundary-fields.js';
import {
  BLANK_BOUNDARY,
  boundaryWords,
  faultsOfBoundary,
  type TypedBoundary,
} from '../placing/typed-boundary.js';
import { missing, under } from '../plain-checks.js';
import { addReset, type NewReset } from '../register-acts.js';
import type { RecordedFact } from './fact-acts.js';

interface Typed {
  readonly kind: NewReset['kind'];
  readonly boundary: TypedBoundary;
  readonly evidence: string;
}

const START: Typed = { kind: 'shop-visit', boundary: BLANK_BOUNDARY, evidence: '' };

const KINDS = [
  { value: 'shop-visit', label: 'Shop visit' },
  { value: 'overhaul', label: 'Overhaul' },
  { value: 'repair', label: 'Repair' },
] as const;

const check = (typed: Typed): Faults => ({
  ...missing(typed, { evidence: 'Enter the document that shows it' }),
  ...under('boundary', faultsOfBoundary(typed.boundary)),
});

interface ResetFormProps {
  readonly component: Component;
  readonly onDone: (done: RecordedFact) => void;
}

/** An overhaul or shop visit, from which a counter begins again. It never resets the life of a part. */
export function ResetForm({ component, onDone }: ResetFormProps) {
  const act = useAct({ perform: addReset, onDone, refresh: [COMPONENTS_KEY, FLEET_KEY, ['history']] });
  const form = useActForm({
    start: START,
    check,
    words: ({ kind, boundary, evidence }: Typed): NewReset => ({
      componentId: component.id,
      kind,
      boundary: boundaryWords(boundary),
      evidence: evidence.trim(),
    }),
    act,
  });
  const { typed, change, field } = form;
  return (
    <RegisterForm form={form} act="Record it">
      <SelectField
        {...field('kind')}
        label="What"
        options={KINDS}
        value={typed.kind}
        onChange={(event) =>
          change({ kind: KINDS.find(({ value }) => value === event.target.value)?.value ?? 'shop-visit' })
        }
      />
      <BoundaryFields
        legend="When it was"
        instantLabel="Counters begin again at"
        value={typed.boundary}
        onChange={(boundary) => change({ boundary })}
        field={(name) => {
          const own = field(`boundary.${name}`);
          // The server names the moment itself by one word.
          return name === 'at' ? { ...own, error: own.error ?? field('at').error } : own;
        }}
        airframeKnown={component.place.airframeId !== null}
      />
      <WordsField form={form} name="evidence" label="Evidence" hint="The document that shows it" />
    </RegisterForm>
  );
}
