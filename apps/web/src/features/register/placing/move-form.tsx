import { useQuery } from '@tanstack/react-query';
import { useAct } from '../../../server/act.js';
import { COMPONENTS_KEY, type Component } from '../../../server/components.js';
import { FLEET_KEY, locationsQuery } from '../../../server/fleet.js';
import { tellBroken } from '../../../ui/consequences/broken-note.js';
import { type Faults, useActForm } from '../../../ui/fields/act-form.js';
import { SelectField } from '../../../ui/fields/select-field.js';
import { RegisterForm, WordsField } from '../form-parts.js';
import { filled, missing, under } from '../plain-checks.js';
import { type NewPlacement, place } from '../register-acts.js';
import { BoundaryFields } from './boundary-fields.js';
import { BLANK_BOUNDARY, boundaryWords, faultsOfBoundary, type TypedBoundary } from './typed-boundary.js';

interface MoveFormProps {
  readonly component: Component;
  readonly onMoved: (location: string) => void;
}

interface Typed {
  readonly locationName: string;
  readonly boundary: TypedBoundary;
  readonly reason: string;
}

const START: Typed = { locationName: '', boundary: BLANK_BOUNDARY, reason: '' };

const check = (typed: Typed): Faults => ({
  ...missing(typed, { locationName: 'Choose a location' }),
  ...under('boundary', faultsOfBoundary(typed.boundary)),
});

/** Puts a component to a location. */
export function MoveForm({ component, onMoved }: MoveFormProps) {
  const locations = useQuery(locationsQuery).data ?? [];
  const moving = useAct({
    perform: place,
    refresh: [COMPONENTS_KEY, FLEET_KEY, ['history']],
    onDone: ({ consequences }, { locationName }) => {
      tellBroken('The move was recorded', consequences);
      onMoved(locationName ?? '');
    },
  });
  const form = useActForm({
    start: START,
    check,
    words: ({ locationName, boundary, reason }: Typed): NewPlacement => ({
      componentId: component.id,
      locationName,
      boundary: boundaryWords(boundary),
      ...filled('reason', reason),
    }),
    act: moving,
  });
  const { typed, change, field } = form;
  return (
    <RegisterForm form={form} act="Record the move">
      <SelectField
        {...field('locationName')}
        label="Location"
        unchosen="Choose a location"
        options={locations.map(({ name }) => ({ value: name, label: name }))}
        value={typed.locationName}
        onChange={(event) => change({ locationName: event.target.value })}
      />
      <BoundaryFields
        legend="There since"
        value={typed.boundary}
        onChange={(boundary) => change({ boundary })}
        field={(name) => field(`boundary.${name}`)}
        airframeKnown={component.place.airframeId !== null}
      />
      <WordsField form={form} name="reason" label="Reason" optional />
    </RegisterForm>
  );
}
