import { MomentField } from '../../ui/fields/moment-field.js';
import { SelectField } from '../../ui/fields/select-field.js';
import { TextField } from '../../ui/fields/text-field.js';
import { type BoundaryKind, FIELD_IDS } from './change-draft.js';
import type { FieldsProps } from './where-fields.js';

const KINDS: readonly { readonly value: BoundaryKind; readonly label: string }[] = [
  { value: 'instant', label: 'At a known minute' },
  { value: 'after-page', label: 'After a log page' },
  { value: 'before-first', label: 'On a date, before the first flight' },
  { value: 'after-last', label: 'On a date, after the last flight' },
];

/** When: to the minute, or no more exactly than it is known. */
export function WhenFields({ draft, set, said }: FieldsProps) {
  const { boundaryKind } = draft;
  return (
    <fieldset className="change-part">
      <legend>When</legend>
      <SelectField
        id={FIELD_IDS.boundary}
        label="How the moment is known"
        hint="No more exactly than it is"
        value={boundaryKind}
        options={KINDS}
        onChange={({ target }) => set({ boundaryKind: target.value as BoundaryKind })}
        error={said('boundary') ?? said('boundary.kind')}
      />
      {boundaryKind === 'instant' && (
        <MomentField
          id={FIELD_IDS['boundary.at']}
          label="Changed at"
          value={draft.moment}
          onTyped={(moment) => set({ moment })}
          error={said('boundary.at')}
        />
      )}
      {boundaryKind === 'after-page' && (
        <TextField
          id={FIELD_IDS['boundary.page']}
          className="field-short"
          label="Log page"
          hint="The change came after the flight of this page, for example 0417"
          mono
          value={draft.page}
          onChange={({ target }) => set({ page: target.value })}
          error={said('boundary.page')}
        />
      )}
      {(boundaryKind === 'before-first' || boundaryKind === 'after-last') && (
        <TextField
          id={FIELD_IDS['boundary.on']}
          className="field-short"
          label="Date"
          hint="Year-month-day in the airframe’s own zone, for example 2026-11-03"
          mono
          value={draft.date}
          onChange={({ target }) => set({ date: target.value })}
          error={said('boundary.on')}
        />
      )}
    </fieldset>
  );
}
