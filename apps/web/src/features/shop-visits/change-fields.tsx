import { keepPreviousData, useQuery } from '@tanstack/react-query';
import { useState } from 'react';
import { componentChoiceQuery } from '../../server/components.js';
import type { ShopVisit } from '../../server/shops/shop-records.js';
import { Button } from '../../ui/actions/button.js';
import type { FieldState } from '../../ui/fields/act-form.js';
import { CheckField } from '../../ui/fields/check-field.js';
import { ComboField } from '../../ui/fields/combo-field.js';
import { MomentField } from '../../ui/fields/moment-field.js';
import { SelectField } from '../../ui/fields/select-field.js';
import { TextField } from '../../ui/fields/text-field.js';
import { DISPOSITIONS } from './build-words.js';
import type { TypedChange } from './return-draft.js';

interface ChangeFieldsProps {
  readonly place: number;
  readonly change: TypedChange;
  readonly slots: ShopVisit['build']['slots'];
  readonly locations: readonly string[];
  readonly field: (name: string) => FieldState;
  readonly onChange: (next: Partial<TypedChange>) => void;
  readonly onRemove: () => void;
}

/** One place: what came off and where it went, what went on, when and why. */
export function ChangeFields(props: ChangeFieldsProps) {
  const { place, change, slots, locations, field, onChange, onRemove } = props;
  const [search, setSearch] = useState('');
  const slot = slots.find(({ slotId }) => slotId === change.slotId);
  const there = slot?.component ?? null;
  const kind = there?.kind === 'module' ? 'module' : 'part';
  const found = useQuery({
    ...componentChoiceQuery({ search, kind: there === null ? undefined : kind }),
    placeholderData: keepPreviousData,
  });
  const off = there !== null && change.comesOff;
  return (
    <fieldset className="visit-part">
      <legend>Change {place + 1}</legend>
      <SelectField
        {...field('slotId')}
        label="Place"
        unchosen="Choose the place"
        options={slots.map(({ slotId, name, parentSerial, component }) => ({
          value: slotId,
          label: `${name} in ${parentSerial}: ${component?.serialNumber ?? 'empty'}`,
        }))}
        value={change.slotId}
        onChange={({ target }) => onChange({ slotId: target.value })}
      />
      {there !== null && (
        <CheckField
          label={`${there.serialNumber} came off`}
          checked={change.comesOff}
          onChange={({ target }) => onChange({ comesOff: target.checked })}
        />
      )}
      <div className="visit-pairs">
        {off && (
          <SelectField
            {...field('removedToLocation')}
            label="It went to"
            unchosen="Choose a location"
            options={locations.map((name) => ({ value: name, label: name }))}
            value={change.removedToLocation}
            onChange={({ target }) => onChange({ removedToLocation: target.value })}
          />
        )}
        {off && there.lifeLimited && (
          <>
            <SelectField
              {...field('disposition')}
              label="Controlled"
              hint="Needed unless it goes back to the same engine with no time run."
              unchosen="Not told"
              options={DISPOSITIONS}
              value={change.disposition}
              onChange={({ target }) => onChange({ disposition: target.value })}
            />
            <TextField
              {...field('dispositionText')}
              label="Tag, mark or place"
              value={change.dispositionText}
              onChange={({ target }) => onChange({ dispositionText: target.value })}
            />
          </>
        )}
        <ComboField
          {...field('incomingId')}
          label="What went on"
          hint="Leave it empty when the place stayed empty."
          mono
          searching={found.isFetching}
          options={(found.data?.rows ?? []).map(
            ({ id, serialNumber, partNumber, description, place: at }) => ({
              id,
              label: serialNumber,
              detail: `${description}, ${partNumber}; ${at.label}`,
            }),
          )}
          value={change.incomingId}
          onTyped={setSearch}
          onChoose={(incomingId) => onChange({ incomingId })}
        />
        <TextField
          {...field('certificate')}
          label="Its release certificate"
          optional
          mono
          value={change.certificate}
          onChange={({ target }) => onChange({ certificate: target.value })}
        />
        <MomentField
          {...field('at')}
          label="When"
          optional
          value={change.at}
          onTyped={(at) => onChange({ at })}
        />
        <TextField
          {...field('reason')}
          label="Reason"
          value={change.reason}
          onChange={({ target }) => onChange({ reason: target.value })}
        />
      </div>
      <div>
        <Button onClick={onRemove}>Take this change out</Button>
      </div>
    </fieldset>
  );
}
