import { useQuery } from '@tanstack/react-query';
import { parseHours } from '../../../format/hours.js';
import { useAct } from '../../../server/act.js';
import { COMPONENTS_KEY } from '../../../server/components.js';
import { engineModelsQuery, FLEET_KEY } from '../../../server/fleet.js';
import { tellBroken } from '../../../ui/consequences/broken-note.js';
import { type ActForm, type Faults, useActForm } from '../../../ui/fields/act-form.js';
import { SelectField } from '../../../ui/fields/select-field.js';
import { TextField } from '../../../ui/fields/text-field.js';
import { RegisterForm, WordsField } from '../form-parts.js';
import { BoundaryFields } from '../placing/boundary-fields.js';
import {
  BLANK_BOUNDARY,
  boundaryWords,
  faultsOfBoundary,
  type TypedBoundary,
} from '../placing/typed-boundary.js';
import { missing, under, underRows } from '../plain-checks.js';
import { addOpening, type NewOpening } from '../register-acts.js';
import { SubRows } from '../sub-rows.js';
import { readCycles } from './typed-cycles.js';

/** Of what the balance is. */
export type OpeningSubject =
  | { readonly kind: 'airframe'; readonly id: string }
  | { readonly kind: 'component'; readonly id: string; readonly engineModelId: string | null };

interface TypedRow {
  readonly ratingCode: string;
  readonly minutes: string;
  readonly cycles: string;
}

interface Typed {
  readonly boundary: TypedBoundary;
  readonly basis: NewOpening['basis'];
  readonly engineModelId: string;
  readonly rows: readonly TypedRow[];
  readonly source: string;
  readonly trace: NonNullable<NewOpening['trace']>;
  readonly traceNote: string;
}

const BLANK_ROW: TypedRow = { ratingCode: '', minutes: '', cycles: '' };

const BASES = [
  { value: 'new', label: 'Since new' },
  { value: 'overhaul', label: 'Since overhaul' },
  { value: 'shop-visit', label: 'Since shop visit' },
  { value: 'repair', label: 'Since repair' },
] as const;

const TRACES = [
  { value: 'shown', label: 'Shown: an unbroken trace' },
  { value: 'stated', label: 'Stated: a statement alone' },
  { value: 'not-shown', label: 'Not shown: there is a gap' },
] as const;

const TRACE_NOTES = {
  stated: { label: 'Who states it', missing: 'Enter who states it' },
  'not-shown': { label: 'What is missing', missing: 'Enter what is missing' },
} as const;

const checkRow = ({ minutes, cycles }: TypedRow): Faults => {
  const time = parseHours(minutes);
  return {
    ...(minutes.trim() !== '' && !time.ok ? { minutes: time.reason } : {}),
    ...(cycles.trim() !== '' && readCycles(cycles) === null
      ? { cycles: 'Enter whole cycles, or parts as 8226.5 or 8226 1/3' }
      : {}),
  };
};

const check = (typed: Typed): Faults => ({
  ...under('boundary', faultsOfBoundary(typed.boundary)),
  ...underRows('rows', typed.rows, checkRow),
  ...missing(typed, {
    source: 'Enter the records it comes from',
    ...(typed.trace === 'shown' ? {} : { traceNote: TRACE_NOTES[typed.trace].missing }),
  }),
});

/** An amount left empty is not known, which is not nought. */
function rowWords({ ratingCode, minutes, cycles }: TypedRow): NewOpening['rows'][number] {
  const time = parseHours(minutes);
  const counted = readCycles(cycles);
  return {
    ratingCode: ratingCode === '' ? null : ratingCode,
    minutes: time.ok ? time.minutes : null,
    cycles: counted?.units ?? null,
    cycleDenominator: counted?.denominator ?? 1,
  };
}

function wordsFor(subject: OpeningSubject) {
  return (typed: Typed): NewOpening => {
    const own = subject.kind === 'component' && subject.engineModelId === null && typed.engineModelId !== '';
    return {
      ...(subject.kind === 'airframe' ? { airframeId: subject.id } : { componentId: subject.id }),
      boundary: boundaryWords(typed.boundary),
      basis: typed.basis,
      rows: typed.rows.map(rowWords),
      source: typed.source.trim(),
      trace: typed.trace,
      ...(typed.trace === 'shown' ? {} : { traceNote: typed.traceNote.trim() }),
      ...(own ? { engineModelId: typed.engineModelId } : {}),
    };
  };
}

interface OpeningFormProps {
  readonly subject: OpeningSubject;
  readonly onAdded: () => void;
}

interface BalanceRowsProps {
  readonly form: ActForm<Typed>;
  readonly ofAirframe: boolean;
  /** Codes of the ratings that can be named. */
  readonly ratings: readonly string[];
}

function BalanceRows({ form, ofAirframe, ratings }: BalanceRowsProps) {
  const { typed, change, field } = form;
  return (
    <SubRows
      legend={ofAirframe ? 'Balance' : 'Balance by rating'}
      noun="row"
      least={1}
      hint="Leave an amount empty when no trusted record says it. Not known is not zero."
      rows={typed.rows}
      blank={BLANK_ROW}
      error={field('rows').error}
      onRows={(rows) => change({ rows })}
    >
      {(row, put, place) => (
        <div className="sub-row-fields">
          {!ofAirframe && (
            <SelectField
              {...field(`rows.${place}.ratingCode`)}
              label="At rating"
              unchosen="Not known or any"
              options={ratings.map((code) => ({ value: code, label: code }))}
              value={row.ratingCode}
              onChange={(event) => put({ ratingCode: event.target.value })}
            />
          )}
          <TextField
            {...field(`rows.${place}.minutes`)}
            label="Hours"
            hint="For example 14845:00"
            mono
            value={row.minutes}
            onChange={(event) => put({ minutes: event.target.value })}
          />
          <TextField
            {...field(`rows.${place}.cycles`)}
            label={ofAirframe ? 'Flights' : 'Cycles'}
            hint="For example 8226"
            mono
            value={row.cycles}
            onChange={(event) => put({ cycles: event.target.value })}
          />
        </div>
      )}
    </SubRows>
  );
}

/** How well the records behind it show the balance. */
function TraceFields({ form }: { readonly form: ActForm<Typed> }) {
  const { typed, change, field } = form;
  return (
    <>
      <SelectField
        {...field('trace')}
        label="How well the records show it"
        hint="Not shown: the lives that rest on it are not verified until the worst case is accepted"
        options={TRACES}
        value={typed.trace}
        onChange={({ target }) =>
          change({ trace: TRACES.find(({ value }) => value === target.value)?.value ?? 'shown' })
        }
      />
      {typed.trace !== 'shown' && (
        <WordsField form={form} name="traceNote" label={TRACE_NOTES[typed.trace].label} />
      )}
    </>
  );
}

/** What had been used when the record began, by rating, with its source. */
export function OpeningForm({ subject, onAdded }: OpeningFormProps) {
  const models = useQuery(engineModelsQuery).data ?? [];
  const ofAirframe = subject.kind === 'airframe';
  const act = useAct({
    perform: addOpening,
    onDone: ({ consequences }) => {
      tellBroken('The opening balance was recorded', consequences);
      onAdded();
    },
    refresh: [COMPONENTS_KEY, FLEET_KEY, ['openings'], ['history']],
  });
  const start: Typed = {
    ...{ boundary: BLANK_BOUNDARY, basis: 'new', engineModelId: '', rows: [BLANK_ROW], source: '' },
    ...{ trace: 'shown', traceNote: '' },
  };
  const form = useActForm({ start, check, words: wordsFor(subject), act });
  const { typed, change, field } = form;
  const modelId = ofAirframe ? null : (subject.engineModelId ?? typed.engineModelId);
  const ratings = models.find(({ id }) => id === modelId)?.ratings ?? [];
  return (
    <RegisterForm form={form} act="Record the opening balance">
      <BoundaryFields
        legend="When it holds; everything before is in it"
        instantLabel="Holds at"
        value={typed.boundary}
        onChange={(boundary) => change({ boundary })}
        field={(name) => {
          const own = field(`boundary.${name}`);
          // The server names the moment itself by one word.
          return name === 'at' ? { ...own, error: own.error ?? field('at').error } : own;
        }}
        airframeKnown={ofAirframe}
      />
      {!ofAirframe && (
        <SelectField
          {...field('basis')}
          label="Counted"
          options={BASES}
          value={typed.basis}
          onChange={(event) =>
            change({ basis: BASES.find(({ value }) => value === event.target.value)?.value ?? 'new' })
          }
        />
      )}
      {!ofAirframe && subject.engineModelId === null && (
        <SelectField
          {...field('engineModelId')}
          label="Model whose ratings are meant"
          unchosen="None"
          options={models.map(({ id, maker, designation }) => ({
            value: id,
            label: `${maker} ${designation}`,
          }))}
          value={typed.engineModelId}
          onChange={(event) => change({ engineModelId: event.target.value })}
        />
      )}
      <BalanceRows form={form} ofAirframe={ofAirframe} ratings={ratings.map(({ code }) => code)} />
      <WordsField form={form} name="source" label="Source" hint="The records it comes from" />
      {!ofAirframe && <TraceFields form={form} />}
    </RegisterForm>
  );
}
