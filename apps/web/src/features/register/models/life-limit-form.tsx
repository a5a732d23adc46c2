import { useQuery } from '@tanstack/react-query';
import { parseHours } from '../../../format/hours.js';
import { parseDate } from '../../../format/utc-moment.js';
import { useAct } from '../../../server/act.js';
import { engineModelsQuery, FLEET_KEY, type LifeLimit } from '../../../server/fleet.js';
import { type Faults, useActForm } from '../../../ui/fields/act-form.js';
import { SelectField } from '../../../ui/fields/select-field.js';
import { RegisterForm, WordsField } from '../form-parts.js';
import { filled, missing, whole } from '../plain-checks.js';
import { addLifeLimit, type NewLifeLimit } from '../register-acts.js';

type Authorisation = LifeLimit['authorisation'];

interface Typed {
  readonly engineModelId: string;
  readonly partNumber: string;
  readonly ratingCode: string;
  readonly authorisation: Authorisation;
  readonly cycles: string;
  /** Typed as hours; the server's name for it is minutes. */
  readonly minutes: string;
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
  document: '',
  revision: '',
  effectiveOn: '',
};

export const AUTHORISATIONS = [
  { value: 'limited', label: 'Limited' },
  { value: 'not-limited', label: 'Not limited' },
  { value: 'not-authorised', label: 'Not authorised' },
] as const;

function faultsOfLimit({ authorisation, cycles, minutes }: Typed): Faults {
  if (authorisation !== 'limited') return {};
  if (cycles.trim() === '' && minutes.trim() === '')
    return { cycles: 'Enter a limit in cycles, in hours, or both' };
  const time = parseHours(minutes);
  return {
    ...(cycles.trim() !== '' && (whole(cycles) ?? 0) < 1 ? { cycles: 'Enter a whole number of cycles' } : {}),
    ...(minutes.trim() !== '' && !time.ok ? { minutes: time.reason } : {}),
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
  };
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
        onChange={(event) =>
          change({
            authorisation:
              AUTHORISATIONS.find(({ value }) => value === event.target.value)?.value ?? 'limited',
          })
        }
      />
      {typed.authorisation === 'limited' && (
        <div className="sub-row-fields">
          <WordsField form={form} name="cycles" label="Cycles" mono inputMode="numeric" />
          <WordsField form={form} name="minutes" label="Hours" hint="For example 12000:00" mono />
        </div>
      )}
      <WordsField form={form} name="document" label="Document" />
      <div className="sub-row-fields">
        <WordsField form={form} name="revision" label="Revision" mono />
        <WordsField form={form} name="effectiveOn" label="Effective on" hint="Year-month-day" mono />
      </div>
    </RegisterForm>
  );
}
