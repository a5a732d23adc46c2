import type { ActForm } from '../../../../ui/fields/act-form.js';
import { SelectField } from '../../../../ui/fields/select-field.js';
import { TextField } from '../../../../ui/fields/text-field.js';
import { WordsField } from '../../form-parts.js';
import { SubRows } from '../../sub-rows.js';
import { BLANK_TIER, DIMENSION_WORDS, type TypedTier, tierPath } from './typed-grants.js';
import type { TypedRequirement } from './typed-requirement.js';

interface OfFormProps {
  readonly form: ActForm<TypedRequirement>;
}

interface TierRowsProps extends OfFormProps {
  readonly name: 'early' | 'late' | 'variation';
  /** 'window.early': as the server names it. */
  readonly path: string;
  readonly legend: string;
  readonly noun: string;
}

const PARTS = [
  { name: 'percent', label: 'Share, %', hint: 'Of the interval' },
  { name: 'atMost', label: 'At most', hint: 'Hours as 50:00' },
  { name: 'upTo', label: 'For intervals up to', hint: 'Empty: any' },
] as const satisfies readonly { name: keyof TypedTier; label: string; hint: string }[];

/** What is granted, row by row: a share of the interval, an amount, or the lesser of both. */
function TierRows({ form, name, path, legend, noun }: TierRowsProps) {
  const tiers = form.typed[name];
  return (
    <SubRows
      legend={legend}
      noun={noun}
      rows={tiers}
      blank={BLANK_TIER}
      error={form.field(path).error}
      onRows={(next) => form.change({ [name]: next })}
    >
      {(tier, put, place) => {
        const at = `${path}.${tierPath(tiers, place)}`;
        return (
          <div className="sub-row-fields">
            <SelectField
              label="Of"
              options={DIMENSION_WORDS}
              value={tier.dimension}
              onChange={({ target }) =>
                put({
                  dimension: DIMENSION_WORDS.find(({ value }) => value === target.value)?.value ?? 'minutes',
                })
              }
            />
            {PARTS.map((part) => (
              <TextField
                key={part.name}
                {...form.field(`${at}.${part.name}`)}
                label={part.label}
                hint={part.name === 'atMost' && tier.dimension !== 'minutes' ? 'A whole number' : part.hint}
                mono
                value={tier[part.name]}
                onChange={({ target }) => put({ [part.name]: target.value })}
              />
            ))}
            {tier.dimension === 'months' && (
              <TextField
                {...form.field(`${at}.atMostDays`)}
                label="Days at most"
                mono
                inputMode="numeric"
                value={tier.atMostDays}
                onChange={({ target }) => put({ atMostDays: target.value })}
              />
            )}
          </div>
        );
      }}
    </SubRows>
  );
}

const FROM = [
  { value: 'from-done', label: 'What was done' },
  { value: 'from-due', label: 'What was due' },
] as const;

const CASES = [
  { name: 'early', label: 'Met before its window' },
  { name: 'within', label: 'Met inside its window' },
  { name: 'varied', label: 'Late, under an approved variation' },
  { name: 'beyond', label: 'Late, beyond all that is granted' },
] as const;

function RebaseFields({ form }: OfFormProps) {
  const { rebase } = form.typed;
  return (
    <fieldset className="stack sub-rows">
      <legend>The next is counted from</legend>
      <div className="sub-row-fields">
        {CASES.map(({ name, label }) => (
          <SelectField
            key={name}
            {...form.field(`rebase.${name}`)}
            label={label}
            options={FROM}
            value={rebase[name]}
            onChange={({ target }) =>
              form.change({
                rebase: { ...rebase, [name]: target.value === 'from-due' ? 'from-due' : 'from-done' },
              })
            }
          />
        ))}
      </div>
    </fieldset>
  );
}

/** How far planned times hold, how far one due may be varied, and from where the next is counted. */
export function ToleranceFields({ form }: OfFormProps) {
  const { kind, early, late, variation, repeat } = form.typed;
  const byText = kind === 'directive' || kind === 'airworthiness-limitation';
  const granted = early.length + late.length + variation.length > 0;
  const repeats = Object.values(repeat).some((value) => typeof value === 'string' && value.trim() !== '');
  return (
    <>
      <TierRows
        form={form}
        name="early"
        path="window.early"
        legend="Window before it is due"
        noun="early grant"
      />
      <TierRows
        form={form}
        name="late"
        path="window.late"
        legend="Window after it is due"
        noun="late grant"
      />
      <TierRows
        form={form}
        name="variation"
        path="variation"
        legend="Variation that may be approved, one time"
        noun="variation"
      />
      {granted && (
        <WordsField
          form={form}
          name="grantedBy"
          label="Where its own text grants this"
          hint={
            byText
              ? 'A directive and an airworthiness limitation have only what their own text grants'
              : 'Paragraph of the document'
          }
          optional={!byText}
        />
      )}
      {(repeats || granted) && <RebaseFields form={form} />}
    </>
  );
}
