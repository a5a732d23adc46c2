import { useQuery } from '@tanstack/react-query';
import { parseDate } from '../../../format/utc-moment.js';
import { useAct } from '../../../server/act.js';
import { COMPONENTS_KEY, type Component, type ComponentKind } from '../../../server/components.js';
import { engineModelsQuery } from '../../../server/fleet.js';
import { type ActForm, type Faults, useActForm } from '../../../ui/fields/act-form.js';
import { CheckField } from '../../../ui/fields/check-field.js';
import { SelectField } from '../../../ui/fields/select-field.js';
import { TextField } from '../../../ui/fields/text-field.js';
import { RegisterForm, WordsField } from '../form-parts.js';
import { filled, missing, underRows } from '../plain-checks.js';
import { addComponent, type NewComponent } from '../register-acts.js';
import { SubRows } from '../sub-rows.js';
import { COMPONENT_KINDS, kindOf } from './component-kinds.js';

interface TypedSlot {
  readonly kind: 'module' | 'part';
  readonly name: string;
  readonly lifeLimited: boolean;
}

interface Typed {
  readonly kind: ComponentKind;
  readonly maker: string;
  readonly partNumber: string;
  readonly serialNumber: string;
  readonly description: string;
  readonly engineModelId: string;
  readonly lifeLimited: boolean;
  readonly podClock: 'airframe' | 'position';
  readonly owner: string;
  readonly lessor: string;
  readonly manufacturedOn: string;
  readonly firstInstalledOn: string;
  readonly slots: readonly TypedSlot[];
}

const START: Typed = {
  kind: 'engine',
  maker: '',
  partNumber: '',
  serialNumber: '',
  description: '',
  engineModelId: '',
  lifeLimited: false,
  podClock: 'airframe',
  owner: '',
  lessor: '',
  manufacturedOn: '',
  firstInstalledOn: '',
  slots: [],
};

const SLOT_KINDS = [
  { value: 'module', label: 'Module' },
  { value: 'part', label: 'Part' },
] as const;

const POD_CLOCKS = [
  { value: 'airframe', label: 'The airframe flies' },
  { value: 'position', label: 'The engine at its position runs' },
] as const;

const needsModel = (kind: ComponentKind): boolean => kind === 'engine' || kind === 'apu';

const faultsOfDate = (name: 'manufacturedOn' | 'firstInstalledOn', typed: string): Faults => {
  const date = parseDate(typed);
  return typed.trim() === '' || date.ok ? {} : { [name]: date.reason };
};

const check = (typed: Typed): Faults => ({
  ...missing(typed, {
    serialNumber: 'Enter the serial number, exactly as on the plate',
    partNumber: 'Enter the part number',
    description: 'Enter what it is',
    maker: 'Enter the maker',
    owner: 'Enter the owner',
    ...(needsModel(typed.kind) ? { engineModelId: 'Choose the model' } : {}),
  }),
  ...faultsOfDate('manufacturedOn', typed.manufacturedOn),
  ...faultsOfDate('firstInstalledOn', typed.firstInstalledOn),
  ...underRows('slots', typed.slots, (slot) => missing(slot, { name: 'Enter the name of the place' })),
});

const wordsOf = (typed: Typed): NewComponent => ({
  kind: typed.kind,
  maker: typed.maker.trim(),
  partNumber: typed.partNumber.trim(),
  serialNumber: typed.serialNumber.trim(),
  description: typed.description.trim(),
  owner: typed.owner.trim(),
  lifeLimited: typed.lifeLimited,
  ...filled('engineModelId', typed.engineModelId),
  ...(typed.kind === 'pod' ? { podClock: typed.podClock } : {}),
  ...filled('lessor', typed.lessor),
  ...filled('manufacturedOn', typed.manufacturedOn),
  ...filled('firstInstalledOn', typed.firstInstalledOn),
  ...(typed.slots.length === 0
    ? {}
    : { slots: typed.slots.map(({ name, ...slot }) => ({ ...slot, name: name.trim() })) }),
});

const BLANK_MODULE: TypedSlot = { kind: 'module', name: '', lifeLimited: false };
const BLANK_PART: TypedSlot = { kind: 'part', name: '', lifeLimited: true };

function PlacesInIt({ form }: { readonly form: ActForm<Typed> }) {
  const { typed, change, field } = form;
  return (
    <SubRows
      legend="Places in it"
      noun="place"
      hint="A place takes one module or one part. An empty place for a life-limited part blocks a release."
      rows={typed.slots}
      blank={typed.kind === 'module' ? BLANK_PART : BLANK_MODULE}
      error={field('slots').error}
      onRows={(slots) => change({ slots })}
    >
      {(slot, put, place) => (
        <div className="sub-row-fields">
          <SelectField
            {...field(`slots.${place}.kind`)}
            label="Takes a"
            options={SLOT_KINDS}
            value={slot.kind}
            onChange={(event) => put({ kind: event.target.value === 'part' ? 'part' : 'module' })}
          />
          <TextField
            {...field(`slots.${place}.name`)}
            label="Name"
            value={slot.name}
            onChange={(event) => put({ name: event.target.value })}
          />
          <CheckField
            label="For a life-limited part"
            checked={slot.lifeLimited}
            onChange={(event) => put({ lifeLimited: event.target.checked })}
          />
        </div>
      )}
    </SubRows>
  );
}

/** A component with the places in it. */
export function ComponentForm({ onAdded }: { readonly onAdded: (component: Component) => void }) {
  const models = useQuery(engineModelsQuery).data ?? [];
  const act = useAct({ perform: addComponent, onDone: onAdded, refresh: [COMPONENTS_KEY] });
  const form = useActForm({ start: START, check, words: wordsOf, act });
  const { typed, change, field } = form;
  return (
    <RegisterForm form={form} act="Add the component">
      <SelectField
        {...field('kind')}
        label="Kind"
        options={COMPONENT_KINDS}
        value={typed.kind}
        onChange={(event) => change({ kind: kindOf(event.target.value) ?? 'engine' })}
      />
      <WordsField form={form} name="serialNumber" label="Serial number" hint="Exactly as on the plate" mono />
      <WordsField form={form} name="partNumber" label="Part number" mono />
      <WordsField form={form} name="description" label="Description" hint="For example HPT disk 1" />
      <WordsField form={form} name="maker" label="Maker" />
      <SelectField
        {...field('engineModelId')}
        label={needsModel(typed.kind) ? 'Model' : 'Belongs in model'}
        unchosen={needsModel(typed.kind) ? 'Choose a model' : 'None'}
        options={models.map(({ id, maker, designation }) => ({
          value: id,
          label: `${maker} ${designation}`,
        }))}
        value={typed.engineModelId}
        onChange={(event) => change({ engineModelId: event.target.value })}
      />
      {typed.kind === 'pod' && (
        <SelectField
          {...field('podClock')}
          label="Its counters run while"
          options={POD_CLOCKS}
          value={typed.podClock}
          onChange={(event) =>
            change({ podClock: event.target.value === 'position' ? 'position' : 'airframe' })
          }
        />
      )}
      <CheckField
        label="It has a mandatory life"
        checked={typed.lifeLimited}
        onChange={(event) => change({ lifeLimited: event.target.checked })}
      />
      <WordsField form={form} name="owner" label="Owner" />
      <WordsField form={form} name="lessor" label="Lessor" optional />
      <WordsField
        form={form}
        name="manufacturedOn"
        label="Manufactured on"
        hint="Year-month-day"
        optional
        mono
      />
      <WordsField
        form={form}
        name="firstInstalledOn"
        label="First installed on"
        hint="Year-month-day, from its papers, if it came here used"
        optional
        mono
      />
      <PlacesInIt form={form} />
    </RegisterForm>
  );
}
