import { useAct } from '../../../server/act.js';
import { type AirframeType, FLEET_KEY } from '../../../server/fleet.js';
import { type Faults, useActForm } from '../../../ui/fields/act-form.js';
import { SelectField } from '../../../ui/fields/select-field.js';
import { TextField } from '../../../ui/fields/text-field.js';
import { RegisterForm, WordsField } from '../form-parts.js';
import { missing, underRows, whole } from '../plain-checks.js';
import { addAirframeType, type NewAirframeType } from '../register-acts.js';
import { SubRows } from '../sub-rows.js';

type Position = NewAirframeType['positions'][number];

interface TypedPosition {
  readonly number: string;
  readonly kind: Position['kind'];
  readonly mount: Position['mount'];
  readonly label: string;
}

interface Typed {
  readonly maker: string;
  readonly designation: string;
  readonly positions: readonly TypedPosition[];
}

const START: Typed = {
  maker: '',
  designation: '',
  positions: [
    { number: '1', kind: 'engine', mount: 'left-wing', label: 'Position 1' },
    { number: '2', kind: 'engine', mount: 'right-wing', label: 'Position 2' },
  ],
};

const BLANK: TypedPosition = { number: '', kind: 'engine', mount: 'right-wing', label: '' };

const KINDS = [
  { value: 'engine', label: 'Engine' },
  { value: 'apu', label: 'Auxiliary power unit' },
] as const;

export const MOUNTS = [
  { value: 'left-wing', label: 'Left wing' },
  { value: 'right-wing', label: 'Right wing' },
  { value: 'tail', label: 'Tail' },
] as const;

const checkPosition = (position: TypedPosition): Faults => ({
  ...(whole(position.number) === null
    ? { number: 'Enter a whole number; 0 is the auxiliary power unit' }
    : {}),
  ...missing(position, { label: 'Enter a name, for example Position 1' }),
});

const check = (typed: Typed): Faults => ({
  ...missing(typed, { maker: 'Enter the maker', designation: 'Enter the designation' }),
  ...underRows('positions', typed.positions, checkPosition),
});

const wordsOf = ({ maker, designation, positions }: Typed): NewAirframeType => ({
  maker: maker.trim(),
  designation: designation.trim(),
  positions: positions.map(({ number, label, ...rest }) => ({
    ...rest,
    number: whole(number) ?? 0,
    label: label.trim(),
  })),
});

/** A type of airframe and where its powerplants are mounted. */
export function AirframeTypeForm({ onAdded }: { readonly onAdded: (type: AirframeType) => void }) {
  const act = useAct({ perform: addAirframeType, onDone: onAdded, refresh: [FLEET_KEY] });
  const form = useActForm({ start: START, check, words: wordsOf, act });
  return (
    <RegisterForm form={form} act="Add the airframe type">
      <WordsField form={form} name="maker" label="Maker" autoFocus />
      <WordsField form={form} name="designation" label="Designation" mono />
      <SubRows
        legend="Positions"
        noun="position"
        hint="Numbered from the left outboard, beginning at 1. The auxiliary power unit is 0."
        least={1}
        rows={form.typed.positions}
        blank={BLANK}
        error={form.field('positions').error}
        onRows={(positions) => form.change({ positions })}
      >
        {(position, put, place) => (
          <div className="sub-row-fields">
            <TextField
              {...form.field(`positions.${place}.number`)}
              label="Number"
              mono
              inputMode="numeric"
              value={position.number}
              onChange={(event) => put({ number: event.target.value })}
            />
            <TextField
              {...form.field(`positions.${place}.label`)}
              label="Name"
              value={position.label}
              onChange={(event) => put({ label: event.target.value })}
            />
            <SelectField
              {...form.field(`positions.${place}.kind`)}
              label="Takes"
              options={KINDS}
              value={position.kind}
              onChange={(event) => put({ kind: event.target.value === 'apu' ? 'apu' : 'engine' })}
            />
            <SelectField
              {...form.field(`positions.${place}.mount`)}
              label="Mounted on"
              options={MOUNTS}
              value={position.mount}
              onChange={(event) =>
                put({ mount: MOUNTS.find(({ value }) => value === event.target.value)?.value ?? 'tail' })
              }
            />
          </div>
        )}
      </SubRows>
    </RegisterForm>
  );
}
