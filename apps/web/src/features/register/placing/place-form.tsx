import { keepPreviousData, useQuery } from '@tanstack/react-query';
import { useState } from 'react';
import { useAct } from '../../../server/act.js';
import { COMPONENTS_KEY, type ComponentKind, componentChoiceQuery } from '../../../server/components.js';
import { FLEET_KEY } from '../../../server/fleet.js';
import { tellBroken } from '../../../ui/consequences/broken-note.js';
import { type Faults, useActForm } from '../../../ui/fields/act-form.js';
import { ComboField } from '../../../ui/fields/combo-field.js';
import { BLANK_FIGURES, checkFigures, figuresOf, type TypedFigures } from '../../../ui/reading/figures.js';
import { FiguresFields } from '../../../ui/reading/figures-fields.js';
import { RegisterForm, WordsField } from '../form-parts.js';
import { filled, missing, under } from '../plain-checks.js';
import { type NewPlacement, place } from '../register-acts.js';
import { BoundaryFields } from './boundary-fields.js';
import { BLANK_BOUNDARY, boundaryWords, faultsOfBoundary, type TypedBoundary } from './typed-boundary.js';

interface PlaceFormProps {
  readonly slotId: string;
  /** What the slot takes. */
  readonly kind: ComponentKind;
  readonly airframeKnown: boolean;
  readonly onPlaced: (serial: string) => void;
}

interface Typed {
  readonly componentId: string | null;
  readonly serial: string;
  readonly boundary: TypedBoundary;
  readonly reason: string;
  readonly figures: TypedFigures;
}

const START: Typed = {
  componentId: null,
  serial: '',
  boundary: BLANK_BOUNDARY,
  reason: '',
  figures: BLANK_FIGURES,
};

const checkFor =
  (kind: ComponentKind) =>
  (typed: Typed): Faults => ({
    ...missing(typed, { componentId: 'Choose a component that is on record' }),
    ...under('boundary', faultsOfBoundary(typed.boundary)),
    ...(kind === 'apu' ? under('counterReading', checkFigures(typed.figures)) : {}),
  });

/** Puts a component into a slot, since an instant, a log page or a date. */
export function PlaceForm({ slotId, kind, airframeKnown, onPlaced }: PlaceFormProps) {
  const [search, setSearch] = useState('');
  const found = useQuery({ ...componentChoiceQuery({ kind, search }), placeholderData: keepPreviousData });
  const rows = found.data?.rows ?? [];
  const placing = useAct({
    perform: place,
    refresh: [COMPONENTS_KEY, FLEET_KEY, ['history']],
    onDone: ({ consequences }, { componentId }) => {
      tellBroken('The installation was recorded', consequences);
      onPlaced(rows.find(({ id }) => id === componentId)?.serialNumber ?? '');
    },
  });
  const form = useActForm({
    start: START,
    check: checkFor(kind),
    words: ({ componentId, boundary, reason, figures }: Typed): NewPlacement => ({
      componentId: componentId ?? '',
      slotId,
      boundary: boundaryWords(boundary),
      ...filled('reason', reason),
      ...(kind === 'apu' ? { counterReading: figuresOf(figures) } : {}),
    }),
    act: placing,
  });
  const { typed, change, field } = form;
  return (
    <RegisterForm form={form} act="Record the installation">
      <ComboField
        {...field('componentId')}
        label="Serial number"
        hint="Type part of a serial or part number. What is not on record is added under Components first."
        mono
        searching={found.isFetching}
        options={rows.map(({ id, serialNumber, partNumber, description, place: where }) => ({
          id,
          label: serialNumber,
          detail: `${description}, ${partNumber}; ${where.label}`,
        }))}
        value={typed.componentId}
        onTyped={setSearch}
        onChoose={(componentId) => change({ componentId })}
      />
      <BoundaryFields
        legend="Installed"
        value={typed.boundary}
        onChange={(boundary) => change({ boundary })}
        field={(name) => field(`boundary.${name}`)}
        airframeKnown={airframeKnown}
      />
      {kind === 'apu' && (
        <FiguresFields
          legend="Its counter showed"
          value={typed.figures}
          onChange={(figures) => change({ figures })}
          field={(name) => field(`counterReading.${name}`)}
        />
      )}
      <WordsField form={form} name="reason" label="Reason" optional />
    </RegisterForm>
  );
}
