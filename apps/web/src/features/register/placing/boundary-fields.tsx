import { useQuery } from '@tanstack/react-query';
import { airframesQuery } from '../../../server/fleet.js';
import type { FieldState } from '../../../ui/fields/act-form.js';
import { MomentField } from '../../../ui/fields/moment-field.js';
import { SelectField } from '../../../ui/fields/select-field.js';
import { TextField } from '../../../ui/fields/text-field.js';
import { BOUNDARY_KINDS, type TypedBoundary } from './typed-boundary.js';

interface BoundaryFieldsProps {
  readonly legend: string;
  /** What an instant is asked for by. */
  readonly instantLabel?: string;
  readonly value: TypedBoundary;
  readonly onChange: (next: TypedBoundary) => void;
  readonly field: (name: string) => FieldState;
  /** Whether the place itself tells whose log pages and days are meant. */
  readonly airframeKnown: boolean;
}

/** When, as exactly as the records say. */
export function BoundaryFields({
  legend,
  instantLabel = 'Date and time',
  value,
  onChange,
  field,
  airframeKnown,
}: BoundaryFieldsProps) {
  const airframes = useQuery(airframesQuery).data ?? [];
  const put = (next: Partial<TypedBoundary>) => onChange({ ...value, ...next });
  const choose = (typed: string) =>
    put({ kind: BOUNDARY_KINDS.find((entry) => entry.value === typed)?.value ?? 'instant' });
  return (
    <fieldset className="sub-row">
      <legend>{legend}</legend>
      <SelectField
        {...field('kind')}
        label="Known as"
        options={BOUNDARY_KINDS}
        value={value.kind}
        onChange={(event) => choose(event.target.value)}
      />
      {value.kind === 'instant' && (
        <MomentField {...field('at')} label={instantLabel} value={value.at} onTyped={(at) => put({ at })} />
      )}
      {value.kind === 'after-page' && (
        <TextField
          {...field('page')}
          label="Log page"
          hint="As written; the boundary follows the page when its flight is corrected"
          mono
          value={value.page}
          onChange={(event) => put({ page: event.target.value })}
        />
      )}
      {(value.kind === 'before-first' || value.kind === 'after-last') && (
        <TextField
          {...field('on')}
          label="Date"
          hint="Year-month-day, in the zone of the airframe’s rule set"
          mono
          value={value.on}
          onChange={(event) => put({ on: event.target.value })}
        />
      )}
      {value.kind !== 'instant' && !airframeKnown && (
        <SelectField
          {...field('airframeId')}
          label="Of airframe"
          unchosen="Choose an airframe"
          options={airframes.map(({ id, registration }) => ({ value: id, label: registration }))}
          value={value.airframeId}
          onChange={(event) => put({ airframeId: event.target.value })}
        />
      )}
    </fieldset>
  );
}
