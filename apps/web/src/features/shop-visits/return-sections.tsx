import { useQuery } from '@tanstack/react-query';
import type { ReactNode } from 'react';
import { engineModelsQuery, locationsQuery } from '../../server/fleet.js';
import type { ShopVisit } from '../../server/shops/shop-records.js';
import { Button } from '../../ui/actions/button.js';
import type { ActForm } from '../../ui/fields/act-form.js';
import { CheckField } from '../../ui/fields/check-field.js';
import { MomentField } from '../../ui/fields/moment-field.js';
import { SelectField } from '../../ui/fields/select-field.js';
import { TextAreaField } from '../../ui/fields/text-area-field.js';
import { TextField } from '../../ui/fields/text-field.js';
import { ChangeFields } from './change-fields.js';
import { BLANK_CHANGE, type TypedReturn } from './return-draft.js';

export interface SectionProps {
  readonly visit: ShopVisit;
  readonly form: ActForm<TypedReturn>;
}

function Section({ step, title, children }: { step: number; title: string; children: ReactNode }) {
  return (
    <section className="stack" aria-labelledby={`step-${step}`}>
      <h2 id={`step-${step}`} className="section-heading">
        {step}. {title}
      </h2>
      {children}
    </section>
  );
}

const useLocations = (): readonly string[] => (useQuery(locationsQuery).data ?? []).map(({ name }) => name);

type Words = 'report' | 'certificate' | 'method' | 'document' | 'tagNumber';

/** The field of the server that a typed one is told by. */
const PATHS: Readonly<Record<string, string>> = {
  tagNumber: 'tag.tagNumber',
  method: 'preservation.method',
  document: 'preservation.document',
};

function Words({
  form,
  name,
  label,
  optional = false,
}: Pick<SectionProps, 'form'> & { name: Words; label: string; optional?: boolean }) {
  const own = form.field(name);
  const told = form.field(PATHS[name] ?? name);
  return (
    <TextField
      {...own}
      error={own.error ?? told.error}
      label={label}
      optional={optional}
      value={form.typed[name]}
      onChange={({ target }) => form.change({ [name]: target.value } as Partial<TypedReturn>)}
    />
  );
}

/** When and where it came back, with which papers, and what was done. */
export function ReturnSection({ form }: SectionProps) {
  const { typed, change, field } = form;
  const locations = useLocations();
  return (
    <Section step={1} title="The return">
      <div className="visit-pairs">
        <MomentField
          {...field('returnedAt')}
          label="Returned"
          value={typed.returnedAt}
          onTyped={(returnedAt) => change({ returnedAt })}
        />
        <SelectField
          {...field('locationName')}
          label="It came back to"
          unchosen="Choose a location"
          options={locations.map((name) => ({ value: name, label: name }))}
          value={typed.locationName}
          onChange={({ target }) => change({ locationName: target.value })}
        />
        <Words form={form} name="report" label="Shop report" />
        <Words form={form} name="certificate" label="Release certificate" optional />
      </div>
      <TextAreaField
        {...field('workDone')}
        label="Work done"
        value={typed.workDone}
        onChange={({ target }) => change({ workDone: target.value })}
      />
    </Section>
  );
}

/** Modules and parts off and on, one by one. */
export function PartsSection({ visit, form }: SectionProps) {
  const { typed, change, field } = form;
  const locations = useLocations();
  const put = (place: number, next: Partial<(typeof typed.changes)[number]>) =>
    change({ changes: typed.changes.map((row, at) => (at === place ? { ...row, ...next } : row)) });
  return (
    <Section step={2} title="Modules and parts off and on">
      {typed.changes.length === 0 && <p className="quiet">Nothing was taken off or put on.</p>}
      {typed.changes.map((row, place) => (
        <ChangeFields
          // biome-ignore lint/suspicious/noArrayIndexKey: a change has no name of its own until it is recorded
          key={place}
          place={place}
          change={row}
          slots={visit.build.slots}
          locations={locations}
          field={(name) => field(`changes.${place}.${name}`)}
          onChange={(next) => put(place, next)}
          onRemove={() => change({ changes: typed.changes.filter((_, at) => at !== place) })}
        />
      ))}
      <div>
        <Button onClick={() => change({ changes: [...typed.changes, BLANK_CHANGE] })}>
          Add a module or part
        </Button>
      </div>
    </Section>
  );
}

const RESETS = [
  ['overhaul', 'Since overhaul'],
  ['shop-visit', 'Since shop visit'],
  ['repair', 'Since repair'],
] as const;

const toggled = (held: readonly string[], key: string): readonly string[] =>
  held.includes(key) ? held.filter((each) => each !== key) : [...held, key];

/** Counters that begin again: of the component and of its modules. Since new never does. */
export function CountersSection({ visit, form }: SectionProps) {
  const { typed, change, field } = form;
  const of = [
    { id: visit.component.id, name: `${visit.component.description} ${visit.component.serialNumber}` },
    ...visit.build.slots.flatMap(({ component }) =>
      component === null || component.kind !== 'module'
        ? []
        : [{ id: component.componentId, name: `${component.description} ${component.serialNumber}` }],
    ),
  ];
  const wrong = typed.resets
    .map((_, place) => field(`resets.${place}.componentId`).error)
    .find((error) => error !== null);
  return (
    <Section step={3} title="Counters that begin again">
      <p className="quiet">
        Tick what the shop report says begins again at zero. Hours and cycles since new never do, nor does the
        life of a limited part.
      </p>
      {wrong !== undefined && <p className="field-error">{wrong}</p>}
      {of.map(({ id, name }) => (
        <fieldset key={id}>
          <legend>{name}</legend>
          <div className="row">
            {RESETS.map(([kind, word]) => (
              <CheckField
                key={kind}
                label={word}
                checked={typed.resets.includes(`${id} ${kind}`)}
                onChange={() => change({ resets: toggled(typed.resets, `${id} ${kind}`) })}
              />
            ))}
          </div>
        </fieldset>
      ))}
    </Section>
  );
}

/** Bulletins and directives embodied, and other requirements met. */
export function RequirementsSection({ visit, form }: SectionProps) {
  const { typed, change } = form;
  const open = visit.build.requirements.filter(
    ({ status, componentId }) => componentId !== null && status !== 'closed' && status !== 'not-applicable',
  );
  return (
    <Section step={4} title="Bulletins and directives embodied, requirements met">
      {open.length === 0 && (
        <p className="quiet">
          No requirement stood open on it in the records of that day. One recorded since is met on its own
          page.
        </p>
      )}
      {open.map(({ requirementId, componentId, code, title, subject }) => (
        <CheckField
          key={`${requirementId} ${componentId}`}
          label={`${code} ${title}, on ${subject}`}
          checked={typed.met.includes(`${requirementId} ${componentId}`)}
          onChange={() => change({ met: toggled(typed.met, `${requirementId} ${componentId}`) })}
        />
      ))}
    </Section>
  );
}

function Rating({ visit, form }: SectionProps) {
  const { typed, change, field } = form;
  const { engineModelId, kind } = visit.component;
  const ratings =
    (useQuery(engineModelsQuery).data ?? []).find(({ id }) => id === engineModelId)?.ratings ?? [];
  if (kind !== 'engine') return null;
  return (
    <SelectField
      {...field('ratingCode')}
      label="Rating it came back at"
      unchosen={`As it was${visit.build.ratingCode === null ? '' : ` (${visit.build.ratingCode})`}`}
      options={ratings.map(({ code }) => ({ value: code, label: code }))}
      value={typed.ratingCode}
      onChange={({ target }) => change({ ratingCode: target.value })}
    />
  );
}

/** Rating, preservation and the tag it came back with. */
export function KeepingSection({ visit, form }: SectionProps) {
  const { typed, change, field } = form;
  return (
    <Section step={5} title="Rating, preservation and tag">
      <Rating visit={visit} form={form} />
      <div className="visit-pairs">
        <Words form={form} name="method" label="Preserved by" optional />
        <TextField
          {...field('preservation.goodUntil')}
          label="Good until"
          optional
          hint="The last day it holds, as 2026-11-30"
          mono
          value={typed.goodUntil}
          onChange={({ target }) => change({ goodUntil: target.value })}
        />
        <Words form={form} name="document" label="Document of the preservation" optional />
      </div>
      <div className="visit-pairs">
        <SelectField
          label="Tag"
          unchosen="No tag"
          options={[
            { value: 'serviceable', label: 'Serviceable' },
            { value: 'unserviceable', label: 'Unserviceable' },
            { value: 'quarantine', label: 'Quarantine' },
          ]}
          value={typed.tagStatus}
          onChange={({ target }) => change({ tagStatus: target.value })}
        />
        {typed.tagStatus !== '' && (
          <>
            <Words form={form} name="tagNumber" label="Tag number" />
            <TextField
              {...field('tagReason')}
              label="Why"
              value={typed.tagReason}
              onChange={({ target }) => change({ tagReason: target.value })}
            />
          </>
        )}
      </div>
    </Section>
  );
}
