import { useQuery } from '@tanstack/react-query';
import { useDeferredValue, useState } from 'react';
import { PACKAGE_KINDS } from '../../../format/package-words.js';
import { slotWords } from '../../../format/place-words.js';
import { componentChoiceQuery, componentQuery } from '../../../server/components.js';
import { airframesQuery, ruleSetsQuery } from '../../../server/fleet.js';
import type { PackageKind } from '../../../server/work.js';
import { ComboField } from '../../../ui/fields/combo-field.js';
import { SelectField } from '../../../ui/fields/select-field.js';
import { TextField } from '../../../ui/fields/text-field.js';
import { EMPTY_ORDER } from '../order/order-draft.js';
import { isOfAirframe, type OpeningDraft } from './opening-draft.js';
import { openingId } from './opening-ids.js';
import type { Opening } from './use-opening.js';

export interface SectionProps {
  readonly opening: Opening;
}

/** Another subject has other places, spares and requirements. */
const ANEW = { order: EMPTY_ORDER, duties: [] } as const;

function ComponentField({ opening: { draft, set, said } }: SectionProps) {
  const known = useQuery(componentQuery(draft.componentId)).data;
  const [typed, setTyped] = useState('');
  const found = useQuery({
    ...componentChoiceQuery({ search: useDeferredValue(typed) }),
    placeholderData: (before) => before,
  });
  // A component named by the address is shown once its serial is read.
  if (draft.componentId !== '' && known === undefined) return <p className="quiet">Reading the component</p>;
  const rows = found.data?.rows ?? [];
  const options = rows.map(({ id, serialNumber, description, place }) => ({
    id,
    label: serialNumber,
    detail: `${description}, ${place.kind === 'slot' ? slotWords(place.label) : place.label}`,
  }));
  const shown = options.some(({ id }) => id === draft.componentId) || known === undefined;
  return (
    <ComboField
      id={openingId('componentId')}
      label="Component"
      hint="Type the beginning of its serial, then choose"
      mono
      options={shown ? options : [{ id: known.id, label: known.serialNumber }, ...options]}
      value={draft.componentId === '' ? null : draft.componentId}
      searching={found.isFetching}
      onTyped={setTyped}
      onChoose={(id) => (id ?? '') !== draft.componentId && set({ ...ANEW, componentId: id ?? '' })}
      error={said('componentId')}
    />
  );
}

function RuleField({ opening: { draft, set, said } }: SectionProps) {
  const rules = useQuery(ruleSetsQuery).data ?? [];
  return (
    <SelectField
      id={openingId('ruleSet')}
      label="Rules it is released under"
      optional
      hint="For a component on no airframe; one on an airframe has the airframe’s rules"
      unchosen="As its airframe has them"
      value={draft.ruleSet}
      options={rules.map(({ code, name }) => ({ value: code, label: name }))}
      onChange={({ target }) => set({ ruleSet: target.value })}
      error={said('ruleSet')}
    />
  );
}

const SUBJECTS = [
  { value: 'airframe', label: 'An airframe' },
  { value: 'component', label: 'A component, such as an engine or a module' },
];

const slotFor = (kind: string) =>
  kind === 'pod-swap' ? 'pod' : kind === 'component-change' ? 'apu' : 'engine';

/** The kind of work, what it is on, and its reference. */
export function WorkSection({ opening }: SectionProps) {
  const { draft, set, said } = opening;
  const airframes = useQuery(airframesQuery).data ?? [];
  const pickKind = (kind: PackageKind | '') => {
    const next: OpeningDraft = { ...draft, kind };
    set({
      kind,
      subject: isOfAirframe(next) ? 'airframe' : draft.subject,
      procedureId: '',
      order: {
        ...draft.order,
        slot: slotFor(kind),
        ...(slotFor(kind) === draft.order.slot ? {} : { positionNumber: '', incomingSerial: '' }),
      },
    });
  };
  return (
    <>
      <SelectField
        id={openingId('kind')}
        label="Kind of work"
        unchosen="Choose the kind"
        value={draft.kind}
        options={PACKAGE_KINDS}
        onChange={({ target }) => pickKind(target.value as PackageKind | '')}
        error={said('kind')}
      />
      {!isOfAirframe(draft) && (
        <SelectField
          label="On"
          value={draft.subject}
          options={SUBJECTS}
          onChange={({ target }) =>
            set({ ...ANEW, subject: target.value === 'component' ? 'component' : 'airframe' })
          }
        />
      )}
      {draft.subject === 'airframe' ? (
        <SelectField
          id={openingId('airframeId')}
          label="Airframe"
          hint={draft.kind === 'component-change' ? 'Its auxiliary power unit can be changed' : undefined}
          unchosen="Choose the airframe"
          value={draft.airframeId}
          options={airframes.map(({ id, registration, type }) => ({
            value: id,
            label: `${registration}, ${type}`,
          }))}
          onChange={({ target }) =>
            set({ airframeId: target.value, duties: [], order: { ...EMPTY_ORDER, slot: draft.order.slot } })
          }
          error={said('airframeId')}
        />
      ) : (
        <>
          <ComponentField opening={opening} />
          <RuleField opening={opening} />
        </>
      )}
      <TextField
        id={openingId('reference')}
        label="Reference"
        optional
        hint="The number of the work order it belongs to"
        className="field-short"
        mono
        maxLength={80}
        value={draft.reference}
        onChange={({ target }) => set({ reference: target.value })}
        error={said('reference')}
      />
    </>
  );
}
