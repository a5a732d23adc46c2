import { useQuery } from '@tanstack/react-query';
import { parseDate } from '../../../format/utc-moment.js';
import { useAct } from '../../../server/act.js';
import { type Airframe, airframeTypesQuery, FLEET_KEY, ruleSetsQuery } from '../../../server/fleet.js';
import { type Faults, useActForm } from '../../../ui/fields/act-form.js';
import { SelectField } from '../../../ui/fields/select-field.js';
import { RegisterForm, WordsField } from '../form-parts.js';
import { filled, missing } from '../plain-checks.js';
import { addAirframe, type NewAirframe } from '../register-acts.js';

const START = {
  registration: '',
  serialNumber: '',
  airframeTypeId: '',
  ruleSet: '',
  dayZone: 'UTC',
  owner: '',
  lessor: '',
  manufacturedOn: '',
};
type Typed = typeof START;

/** A date that may be left out. */
export const faultOfOptionalDate = (typed: string): Faults => {
  const date = parseDate(typed);
  return typed.trim() === '' || date.ok ? {} : { manufacturedOn: date.reason };
};

const check = (typed: Typed): Faults => ({
  ...missing(typed, {
    registration: 'Enter the registration',
    serialNumber: 'Enter the manufacturer’s serial number',
    airframeTypeId: 'Choose the type',
    ruleSet: 'Choose the rule set it is maintained under',
    owner: 'Enter the owner',
  }),
  ...faultOfOptionalDate(typed.manufacturedOn),
});

const wordsOf = (typed: Typed): NewAirframe => ({
  registration: typed.registration.trim(),
  serialNumber: typed.serialNumber.trim(),
  airframeTypeId: typed.airframeTypeId,
  ruleSet: typed.ruleSet,
  owner: typed.owner.trim(),
  ...filled('dayZone', typed.dayZone),
  ...filled('lessor', typed.lessor),
  ...filled('manufacturedOn', typed.manufacturedOn),
});

/** An airframe; its positions come with its type. */
export function AirframeForm({ onAdded }: { readonly onAdded: (airframe: Airframe) => void }) {
  const types = useQuery(airframeTypesQuery).data ?? [];
  const ruleSets = useQuery(ruleSetsQuery).data ?? [];
  const act = useAct({ perform: addAirframe, onDone: onAdded, refresh: [FLEET_KEY] });
  const form = useActForm({ start: START, check, words: wordsOf, act });
  const { typed, change, field } = form;
  return (
    <RegisterForm form={form} act="Add the airframe">
      <WordsField form={form} name="registration" label="Registration" mono autoFocus />
      <WordsField form={form} name="serialNumber" label="Manufacturer’s serial number" mono />
      <SelectField
        {...field('airframeTypeId')}
        label="Type"
        unchosen="Choose a type"
        options={types.map(({ id, maker, designation }) => ({ value: id, label: `${maker} ${designation}` }))}
        value={typed.airframeTypeId}
        onChange={(event) => change({ airframeTypeId: event.target.value })}
      />
      <SelectField
        {...field('ruleSet')}
        label="Rule set"
        hint="The law it is maintained under. It decides the release statement."
        unchosen="Choose a rule set"
        options={ruleSets.map(({ code, name }) => ({ value: code, label: name }))}
        value={typed.ruleSet}
        onChange={(event) => change({ ruleSet: event.target.value })}
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
        className="field-short"
      />
      <WordsField
        form={form}
        name="dayZone"
        label="Zone in which days are counted"
        hint="For example UTC or Europe/Vienna"
      />
    </RegisterForm>
  );
}
