import { parseMoment } from '../../../format/utc-moment.js';
import { wireMinute } from '../../../format/when.js';
import { useAct } from '../../../server/act.js';
import { COMPONENTS_KEY, type Component } from '../../../server/components.js';
import { FLEET_KEY } from '../../../server/fleet.js';
import { type Faults, useActForm } from '../../../ui/fields/act-form.js';
import { MomentField } from '../../../ui/fields/moment-field.js';
import { SelectField } from '../../../ui/fields/select-field.js';
import { RegisterForm, WordsField } from '../form-parts.js';
import { missing } from '../plain-checks.js';
import { addReset, type NewReset } from '../register-acts.js';
import type { RecordedFact } from './fact-acts.js';

interface Typed {
  readonly kind: NewReset['kind'];
  readonly at: string;
  readonly evidence: string;
}

const START: Typed = { kind: 'shop-visit', at: '', evidence: '' };

const KINDS = [
  { value: 'shop-visit', label: 'Shop visit' },
  { value: 'overhaul', label: 'Overhaul' },
  { value: 'repair', label: 'Repair' },
] as const;

const check = (typed: Typed): Faults => {
  const moment = parseMoment(typed.at);
  return {
    ...missing(typed, { evidence: 'Enter the document that shows it' }),
    ...(moment.ok ? {} : { at: moment.reason }),
  };
};

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
    words: ({ kind, at, evidence }: Typed): NewReset => {
      const moment = parseMoment(at);
      return {
        componentId: component.id,
        kind,
        at: moment.ok ? wireMinute(moment.instant) : at,
        evidence: evidence.trim(),
      };
    },
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
      <MomentField
        {...field('at')}
        label="Counters begin again at"
        value={typed.at}
        onTyped={(at) => change({ at })}
      />
      <WordsField form={form} name="evidence" label="Evidence" hint="The document that shows it" />
    </RegisterForm>
  );
}
