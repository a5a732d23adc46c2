import { useQuery } from '@tanstack/react-query';
import { useAct } from '../../../server/act.js';
import { airframeTypesQuery, type EngineModel, FLEET_KEY } from '../../../server/fleet.js';
import { type Faults, useActForm } from '../../../ui/fields/act-form.js';
import { SelectField } from '../../../ui/fields/select-field.js';
import { TextField } from '../../../ui/fields/text-field.js';
import { RegisterForm, WordsField } from '../form-parts.js';
import { filled, missing, underRows } from '../plain-checks.js';
import { addEngineModel, type NewEngineModel } from '../register-acts.js';
import { SubRows } from '../sub-rows.js';
import { BLANK_RULE, checkRule, RuleFields, ruleWords, type TypedRule } from './rule-fields.js';

interface TypedRating {
  readonly code: string;
  readonly description: string;
}

interface Typed {
  readonly kind: EngineModel['kind'];
  readonly maker: string;
  readonly designation: string;
  readonly lifeMethod: EngineModel['lifeMethod'];
  readonly lifeSource: string;
  readonly ratings: readonly TypedRating[];
  readonly cycleRules: readonly TypedRule[];
}

const START: Typed = {
  kind: 'engine',
  maker: '',
  designation: '',
  lifeMethod: 'pro-rata',
  lifeSource: '',
  ratings: [],
  cycleRules: [BLANK_RULE],
};

const KINDS = [
  { value: 'engine', label: 'Engine' },
  { value: 'apu', label: 'Auxiliary power unit' },
] as const;

export const LIFE_METHODS = [
  { value: 'pro-rata', label: 'Added in proportion to each rating’s limit' },
  { value: 'lowest-limit', label: 'All cycles against the lowest limit' },
] as const;

const check = (typed: Typed): Faults => ({
  ...missing(typed, {
    maker: 'Enter the maker',
    designation: 'Enter the designation',
    lifeSource: 'Enter the document that says how lives are joined',
  }),
  ...underRows('ratings', typed.ratings, (rating) =>
    missing(rating, { code: 'Enter the code of the rating' }),
  ),
  ...underRows('cycleRules', typed.cycleRules, checkRule),
});

const wordsOf = (typed: Typed): NewEngineModel => ({
  kind: typed.kind,
  maker: typed.maker.trim(),
  designation: typed.designation.trim(),
  lifeMethod: typed.lifeMethod,
  lifeSource: typed.lifeSource.trim(),
  ratings: typed.ratings.map(({ code, description }) => ({
    code: code.trim(),
    ...filled('description', description),
  })),
  cycleRules: typed.cycleRules.map(ruleWords),
});

/** A model of engine: its ratings, and how its events make cycles. */
export function EngineModelForm({ onAdded }: { readonly onAdded: (model: EngineModel) => void }) {
  const types = useQuery(airframeTypesQuery).data ?? [];
  const act = useAct({ perform: addEngineModel, onDone: onAdded, refresh: [FLEET_KEY] });
  const form = useActForm({ start: START, check, words: wordsOf, act });
  const { typed, change, field } = form;
  return (
    <RegisterForm form={form} act="Add the model">
      <SelectField
        {...field('kind')}
        label="Kind"
        options={KINDS}
        value={typed.kind}
        onChange={(event) => change({ kind: event.target.value === 'apu' ? 'apu' : 'engine' })}
      />
      <WordsField form={form} name="maker" label="Maker" />
      <WordsField form={form} name="designation" label="Designation" mono />
      <SelectField
        {...field('lifeMethod')}
        label="Lives at several ratings are"
        options={LIFE_METHODS}
        value={typed.lifeMethod}
        onChange={(event) =>
          change({ lifeMethod: event.target.value === 'lowest-limit' ? 'lowest-limit' : 'pro-rata' })
        }
      />
      <WordsField form={form} name="lifeSource" label="Document that says so" />
      <SubRows
        legend="Ratings"
        noun="rating"
        hint="The thrust ratings it can run at; life limits may depend on them."
        rows={typed.ratings}
        blank={{ code: '', description: '' }}
        error={field('ratings').error}
        onRows={(ratings) => change({ ratings })}
      >
        {(rating, put, place) => (
          <div className="sub-row-fields">
            <TextField
              {...field(`ratings.${place}.code`)}
              label="Code"
              mono
              value={rating.code}
              onChange={(event) => put({ code: event.target.value })}
            />
            <TextField
              {...field(`ratings.${place}.description`)}
              label="Description"
              optional
              value={rating.description}
              onChange={(event) => put({ description: event.target.value })}
            />
          </div>
        )}
      </SubRows>
      <SubRows
        legend="Cycle rules"
        noun="cycle rule"
        hint="Weights over a denominator. With denominator 2, a weight of 1 is half a cycle."
        least={1}
        rows={typed.cycleRules}
        blank={BLANK_RULE}
        error={field('cycleRules').error}
        onRows={(cycleRules) => change({ cycleRules })}
      >
        {(rule, put, place) => (
          <RuleFields
            rule={rule}
            put={put}
            types={types}
            field={(name) => field(`cycleRules.${place}.${name}`)}
          />
        )}
      </SubRows>
    </RegisterForm>
  );
}
