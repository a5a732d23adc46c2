import { useQuery } from '@tanstack/react-query';
import { parseMoment } from '../../../format/utc-moment.js';
import { wireMinute } from '../../../format/when.js';
import { useAct } from '../../../server/act.js';
import { COMPONENTS_KEY, type Component } from '../../../server/components.js';
import { engineModelsQuery, FLEET_KEY } from '../../../server/fleet.js';
import { type Faults, useActForm } from '../../../ui/fields/act-form.js';
import { MomentField } from '../../../ui/fields/moment-field.js';
import { SelectField } from '../../../ui/fields/select-field.js';
import { RegisterForm, WordsField } from '../form-parts.js';
import { missing } from '../plain-checks.js';
import { changeRating } from '../register-acts.js';
import type { RecordedFact } from './fact-acts.js';

const START = { at: '', ratingCode: '', source: '' };
type Typed = typeof START;

const check = (typed: Typed): Faults => {
  const moment = parseMoment(typed.at);
  return {
    ...missing(typed, {
      ratingCode: 'Choose the rating',
      source: 'Enter the document or plate that shows it',
    }),
    ...(moment.ok ? {} : { at: moment.reason }),
  };
};

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
    words: ({ at, ratingCode, source }: Typed) => {
      const moment = parseMoment(at);
      return {
        componentId: component.id,
        at: moment.ok ? wireMinute(moment.instant) : at,
        ratingCode,
        source: source.trim(),
      };
    },
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
      <MomentField {...field('at')} label="From" value={typed.at} onTyped={(at) => change({ at })} />
      <WordsField form={form} name="source" label="Source" hint="The document or plate that shows it" />
    </RegisterForm>
  );
}
