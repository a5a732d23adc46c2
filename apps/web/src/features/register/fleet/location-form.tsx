import { useAct } from '../../../server/act.js';
import { FLEET_KEY, type Location } from '../../../server/fleet.js';
import { useActForm } from '../../../ui/fields/act-form.js';
import { SelectField } from '../../../ui/fields/select-field.js';
import { RegisterForm, WordsField } from '../form-parts.js';
import { missing } from '../plain-checks.js';
import { addLocation } from '../register-acts.js';

export const LOCATION_KINDS = [
  { value: 'store', label: 'Store' },
  { value: 'shop', label: 'Shop' },
  { value: 'quarantine', label: 'Quarantine' },
  { value: 'transferred-out', label: 'Transferred out' },
  { value: 'scrapped', label: 'Scrapped' },
] as const;

type Kind = Location['kind'];

const START: { readonly name: string; readonly kind: Kind } = { name: '', kind: 'store' };

/** A place for components that are not installed. */
export function LocationForm({ onAdded }: { readonly onAdded: (location: Location) => void }) {
  const act = useAct({ perform: addLocation, onDone: onAdded, refresh: [FLEET_KEY] });
  const form = useActForm({
    start: START,
    check: (typed) => missing(typed, { name: 'Enter the name' }),
    words: ({ name, kind }) => ({ name: name.trim(), kind }),
    act,
  });
  return (
    <RegisterForm form={form} act="Add the location">
      <WordsField form={form} name="name" label="Name" autoFocus />
      <SelectField
        {...form.field('kind')}
        label="Kind"
        options={LOCATION_KINDS}
        value={form.typed.kind}
        onChange={(event) =>
          form.change({
            kind: LOCATION_KINDS.find(({ value }) => value === event.target.value)?.value ?? 'store',
          })
        }
      />
    </RegisterForm>
  );
}
