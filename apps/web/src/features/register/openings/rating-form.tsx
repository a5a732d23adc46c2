import { useQuery } from '@tanstack/react-query';
import { useAct } from '../../../server/act.js';
import { COMPONENTS_KEY, type Component } from '../../../server/components.js';
import { engineModelsQuery, FLEET_KEY } from '../../../server/fleet.js';
import { type Faults, useActForm } from '../../../ui/fields/act-form.js';
import { SelectField } from '../../../ui/fields/select-field.js';
import { RegisterForm, WordsField } from '../form-parts.js';
import { BoundaryFields } from '../placing/boundary-fields.js';
import { BLANK_BOUNDARY, boundaryWords, faultsOfBoundary } from '../placing/typed-boundary.js';
import { missing, under } from '../plain-checks.js';
import { changeRating } from '../register-acts.js';
import type { RecordedFact } from './fact-acts.js';

const START = { boundary: BLANK_BOUNDARY, ratingCode: '', source: '' };
type Typed = typeof START;

const check = (typed: Typed): Faults => ({
  ...missing(typed, {
    ratingCode: 'Choose the rating',
    source: 'Enter the document or plate that shows it',
  }),
  ...under('boundary', faultsOfBoundary(typed.boundary)),
});

interface RatingFormProps {
  readonly component: Component;
  readonly onDone: (done: RecordedFact) => void;
}

/** From when an engine runs at a rating. */
export function RatingForm({ component, onDone }: RatingFormProps) {
  const models = useQuery(engineModelsQuery).data ?? [];
  const ratings = models.find(({ id }) => id === component.engineModelId)?.ratings ?? [];
  const act = useAct({ perform: changeRating, onDone, refresh: [COMPONENTS_KEY, FLEET_KEY, ['history']] });
  const form = useActForm({
    start: START,
    check,
    words: ({ boundary, ratingCode, source }: Typed) => ({
      componentId: component.id,
      boundary: boundaryWords(boundary),
      ratingCode,
      source: source.trim(),
    }),
    act,
  });
  const { typed, change, field } = form;
  return (
    <RegisterForm form={form} act="Record the rating">
      <SelectField
        {...field('ratingCode')}
        label="Rating"
        unchosen="Choose a rating"
        options={ratings.map(({ code, description }) => ({
          value: code,
          label: description === null ? code : `${code}, ${description}`,
        }))}
        value={typed.ratingCode}
        onChange={(event) => change({ ratingCode: event.target.value })}
      />
      <BoundaryFields
        legend="From when"
        instantLabel="From"
        value={typed.boundary}
        onChange={(boundary) => change({ boundary })}
        field={(name) => {
          const own = field(`boundary.${name}`);
          // The server names the moment itself by one word.
          return name === 'at' ? { ...own, error: own.error ?? field('at').error } : own;
        }}
        airframeKnown={component.place.airframeId !== null}
      />
      <WordsField form={form} name="source" label="Source" hint="The document or plate that shows it" />
    </RegisterForm>
  );
}
