import { useQuery } from '@tanstack/react-query';
import { parseHours } from '../../../format/hours.js';
import { parseDate } from '../../../format/utc-moment.js';
import { useAct } from '../../../server/act.js';
import { engineModelsQuery, FLEET_KEY, type LifeLimit } from '../../../server/fleet.js';
import { type ActForm, type Faults, useActForm } from '../../../ui/fields/act-form.js';
import { SelectField } from '../../../ui/fields/select-field.js';
import { COUNTED_FROM } from '../../../ui/status/calendar-words.js';
import { RegisterForm, WordsField } from '../form-parts.js';
import { filled, missing, whole } from '../plain-checks.js';
import { addLifeLimit, type NewLifeLimit } from '../register-acts.js';

type Authorisation = LifeLimit['authorisation'];
type CalendarUnit = NonNullable<LifeLimit['calendarUnit']>;
type CountedFrom = NonNullable<LifeLimit['calendarFrom']>;
type MonthRule = NonNullable<LifeLimit['monthRule']>;

interface Typed {
  readonly engineModelId: string;
  readonly partNumber: string;
  readonly ratingCode: string;
  readonly authorisation: Authorisation;
  readonly cycles: string;
  /** Typed as hours; the server's name for it is minutes. */
  readonly minutes: string;
  readonly calendarSpan: string;
  readonly calendarUnit: CalendarUnit;
  readonly calendarFrom: CountedFrom;
  readonly monthRule: MonthRule;
  readonly basis: LifeLimit['basis'];
  readonly document: string;
  readonly revision: string;
  readonly effectiveOn: string;
}

const START: Typed = {
  engineModelId: '',
  partNumber: '',
  ratingCode: '',
  authorisation: 'limited',
  cycles: '',
  minutes: '',
  calendarSpan: '',
  calendarUnit: 'months',
  calendarFrom: 'new',
  monthRule: 'same-day',
  basis: 'manual',
  document: '',
  revision: '',
  effectiveOn: '',
};

export const AUTHORISATIONS = [
  { value: 'limited', label: 'Limited' },
  { value: 'not-limited', label: 'Not limited' },
  { value: 'not-authorised', label: 'Not authorised' },
] as const;

export const BASES = [
  { value: 'manual', label: 'Manual' },
  { value: 'directive', label: 'Directive' },
] as const;

const UNITS = [
  { value: 'months', label: 'Months' },
  { value: 'days', label: 'Days' },
] as const;

const MONTH_RULES = [
  { value: 'same-day', label: 'To the same day' },
  { value: 'month-end', label: 'To the month’s end' },
] as const;

/** The choice with this value; the first, for a value nobody offers. */
function chosen<Value extends string>(
  options: readonly [{ readonly value: Value }, ...{ readonly value: Value }[]],
  value: string,
): Value {
  return (options.find((option) => option.value === value) ?? options[0]).value;
}

function faultsOfLimit({ authorisation, cycles, minutes, calendarSpan }: Typed): Faults {
  if (authorisation !== 'limited') return {};
  if ([cycles, minutes, calendarSpan].every((typed) => typed.trim() === ''))
    return { cycles: 'Enter a limit in cycles, in hours, on the calendar, or several' };
  const time = parseHours(minutes);
  return {
    ...(cycles.trim() !== '' && (whole(cycles) ?? 0) < 1 ? { cycles: 'Enter a whole number of cycles' } : {}),
    ...(minutes.trim() !== '' && !time.ok ? { minutes: time.reason } : {}),
    ...(calendarSpan.trim() !== '' && (whole(calendarSpan) ?? 0) < 1
      ? { calendarSpan: 'Enter a whole number of days or months' }
      : {}),
  };
}

const check = (typed: Typed): Faults => {
  const date = parseDate(typed.effectiveOn);
  return {
    ...missing(typed, {
      engineModelId: 'Choose the engine model',
      partNumber: 'Enter the part number',
      document: 'Enter the document',
      revision: 'Enter its revision',
    }),
    ...faultsOfLimit(typed),
    ...(date.ok ? {} : { effectiveOn: date.reason }),
  };
};

function wordsOf(typed: Typed): NewLifeLimit {
  const time = parseHours(typed.minutes);
  const limited = typed.authorisation === 'limited';
  const cycles = whole(typed.cycles);
  return {
    engineModelId: typed.engineModelId,
    partNumber: typed.partNumber.trim(),
    authorisation: typed.authorisation,
    document: typed.document.trim(),
    revision: typed.revision.trim(),
    effectiveOn: typed.effectiveOn.trim(),
    ...filled('ratingCode', typed.ratingCode),
    ...(limited && cycles !== null ? { cycles } : {}),
    ...(limited && time.ok ? { minutes: time.minutes } : {}),
    ...(limited ? calendarOf(typed) : {}),
    basis: typed.basis,
  };
}

function calendarOf({ calendarSpan, calendarUnit, calendarFrom, monthRule }: Typed): Partial<NewLifeLimit> {
  const span = whole(calendarSpan);
  if (span === null) return {};
  return {
    ...{ calendarSpan: span, calendarUnit, calendarFrom },
    ...(calendarUnit === 'months' ? { monthRule } : {}),
  };
}

/** A calendar life, in store too: how long, from when, and how months are counted. */
function CalendarFields({ form }: { readonly form: ActForm<Typed> }) {
  const { typed, change, field } = form;
  return (
    <fieldset className="stack">
      <legend>On the calendar, flown or stored</legend>
      <div className="sub-row-fields">
        <WordsField form={form} name="calendarSpan" label="How long" mono inputMode="numeric" optional />
        <SelectField
          {...field('calendarUnit')}
          label="In"
          options={UNITS}
          value={typed.calendarUnit}
          onChange={(event) => change({ calendarUnit: chosen(UNITS, event.target.value) })}
        />
      </div>
      {typed.calendarSpan.trim() !== '' && (
        <div className="sub-row-fields">
          <SelectField
            {...field('calendarFrom')}
            label="Counted from"
            options={COUNTED_FROM}
            value={typed.calendarFrom}
            onChange={(event) => change({ calendarFrom: chosen(COUNTED_FROM, event.target.value) })}
          />
          {typed.calendarUnit === 'months' && (
            <SelectField
              {...field('monthRule')}
              label="Months go"
              options={MONTH_RULES}
              value={typed.monthRule}
              onChange={(event) => change({ monthRule: chosen(MONTH_RULES, event.target.value) })}
            />
          )}
        </div>
      )}
    </fieldset>
  );
}

/** One row of a document's revision: a part number's limit in a model, at a rating or at any. */
export function LifeLimitForm({ onAdded }: { readonly onAdded: (limit: LifeLimit) => void }) {
  const models = useQuery(engineModelsQuery).data ?? [];
  const act = useAct({ perform: addLifeLimit, onDone: onAdded, refresh: [FLEET_KEY, ['components']] });
  const form = useActForm({ start: START, check, words: wordsOf, act });
  const { typed, change, field } = form;
  const ratings = models.find(({ id }) => id === typed.engineModelId)?.ratings ?? [];
  return (
    <RegisterForm form={form} act="Add the life limit">
      <SelectField
        {...field('engineModelId')}
        label="Engine model"
        unchosen="Choose a model"
        options={models.map(({ id, maker, designation }) => ({
          value: id,
          label: `${maker} ${designation}`,
        }))}
        value={typed.engineModelId}
        onChange={(event) => change({ engineModelId: event.target.value, ratingCode: '' })}
      />
      <WordsField form={form} name="partNumber" label="Part number" mono />
      <SelectField
        {...field('ratingCode')}
        label="Rating"
        unchosen="Any rating"
        options={ratings.map(({ code }) => ({ value: code, label: code }))}
        value={typed.ratingCode}
        onChange={(event) => change({ ratingCode: event.target.value })}
      />
      <SelectField
        {...field('authorisation')}
        label="What the document says"
        options={AUTHORISATIONS}
        value={typed.authorisation}
        onChange={(event) => change({ authorisation: chosen(AUTHORISATIONS, event.target.value) })}
      />
      {typed.authorisation === 'limited' && (
        <>
          <div className="sub-row-fields">
            <WordsField form={form} name="cycles" label="Cycles" mono inputMode="numeric" />
            <WordsField form={form} name="minutes" label="Hours" hint="For example 12000:00" mono />
          </div>
          <CalendarFields form={form} />
        </>
      )}
      <SelectField
        {...field('basis')}
        label="Kind of document"
        options={BASES}
        value={typed.basis}
        onChange={(event) => change({ basis: chosen(BASES, event.target.value) })}
      />
      <WordsField form={form} name="document" label="Document" />
      <div className="sub-row-fields">
        <WordsField form={form} name="revision" label="Revision" mono />
        <WordsField form={form} name="effectiveOn" label="Effective on" hint="Year-month-day" mono />
      </div>
    </RegisterForm>
  );
}
