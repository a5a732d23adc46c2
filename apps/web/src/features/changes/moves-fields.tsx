import { useQuery } from '@tanstack/react-query';
import { useDeferredValue } from 'react';
import { slotWords } from '../../format/place-words.js';
import { type ComponentRow, componentChoiceQuery } from '../../server/components.js';
import { engineModelsQuery, locationsQuery } from '../../server/fleet.js';
import { Button } from '../../ui/actions/button.js';
import { CheckField } from '../../ui/fields/check-field.js';
import { ComboField } from '../../ui/fields/combo-field.js';
import { SelectField } from '../../ui/fields/select-field.js';
import { TextField } from '../../ui/fields/text-field.js';
import { FiguresFields } from '../../ui/reading/figures-fields.js';
import { SerialText } from '../../ui/status/serial-text.js';
import { StatusMark } from '../../ui/status/status-mark.js';
import { FIELD_IDS } from './change-draft.js';
import type { FieldsProps } from './where-fields.js';

const placeText = ({ kind, label }: ComponentRow['place']): string =>
  kind === 'slot' ? slotWords(label) : label;

interface OffProps extends FieldsProps {
  /** The serial on record there now; null when the place is empty. */
  readonly there: string | null;
}

/** What comes off: its serial confirmed, and where it goes. */
export function OffFields({ draft, set, said, there }: OffProps) {
  const locations = useQuery(locationsQuery).data ?? [];
  const typed = draft.outgoingSerial.trim();
  const differs = there !== null && typed !== '' && typed !== there;
  return (
    <fieldset className="change-part">
      <legend>What comes off</legend>
      <CheckField
        label="Nothing comes off: the place was empty"
        checked={draft.comesOff === false}
        onChange={({ target }) => set({ comesOff: !target.checked })}
      />
      {draft.comesOff !== false && (
        <>
          <TextField
            id={FIELD_IDS.outgoingSerial}
            label="Serial that comes off"
            hint="As on its data plate"
            mono
            spellCheck={false}
            value={draft.outgoingSerial}
            onChange={({ target }) => set({ outgoingSerial: target.value })}
            error={said('outgoingSerial')}
          />
          {there !== null && (
            <p className="change-there">
              On record there now: <SerialText strong>{there}</SerialText>
              {typed === '' && (
                <Button kind="quiet" onClick={() => set({ outgoingSerial: there })}>
                  It is this one
                </Button>
              )}
            </p>
          )}
          {differs && (
            <p role="status">
              <StatusMark
                status="soon"
                word="This differs from the serial on record there now. If the change is of now: stop, and ask."
              />
            </p>
          )}
          <SelectField
            id={FIELD_IDS.removedToLocation}
            label="Where it goes"
            unchosen={
              locations.length === 0 ? 'No location is in the register: enter one first' : 'Choose a location'
            }
            value={draft.removedToLocation}
            options={locations.map(({ name, kind }) => ({
              value: name,
              label: `${name} (${kind.replaceAll('-', ' ')})`,
            }))}
            onChange={({ target }) => set({ removedToLocation: target.value })}
            error={said('removedToLocation')}
          />
          {draft.slot === 'apu' && (
            <FiguresFields
              legend="Its counter showed"
              value={draft.offFigures}
              onChange={(offFigures) => set({ offFigures })}
              field={(name) => ({
                id: FIELD_IDS[`outgoingReading.${name}`],
                error:
                  said(`outgoingReading.${name}`) ?? (name === 'minutes' ? said('outgoingReading') : null),
              })}
            />
          )}
        </>
      )}
    </fieldset>
  );
}

/** What goes on: found by its serial. */
export function OnFields({ draft, set, said }: FieldsProps) {
  const wanted = useDeferredValue(draft.incomingSerial);
  const found = useQuery({
    ...componentChoiceQuery({ kind: draft.slot, search: wanted }),
    placeholderData: (before) => before,
  });
  const rows = found.data?.rows ?? [];
  const chosen = rows.find(({ serialNumber }) => serialNumber === draft.incomingSerial.trim()) ?? null;
  const models = useQuery(engineModelsQuery).data ?? [];
  const ratings = models.find(({ id }) => id === chosen?.engineModelId)?.ratings ?? [];
  return (
    <fieldset className="change-part">
      <legend>What goes on</legend>
      <CheckField
        label="Nothing goes on: the place stays empty"
        checked={!draft.goesOn}
        onChange={({ target }) => set({ goesOn: !target.checked })}
      />
      {draft.goesOn && (
        <>
          <ComboField
            // Another kind of thing is another search.
            key={draft.slot}
            id={FIELD_IDS.incomingSerial}
            label="Serial that goes on"
            hint="Type its beginning, then choose"
            mono
            options={rows.map(({ id, serialNumber, partNumber, place }) => ({
              id,
              label: serialNumber,
              detail: `${partNumber}, ${placeText(place)}`,
            }))}
            value={chosen?.id ?? null}
            searching={found.isFetching}
            onTyped={(incomingSerial) => set({ incomingSerial, ratingCode: '' })}
            onChoose={(id) => {
              const serial = rows.find((row) => row.id === id)?.serialNumber;
              if (serial !== undefined) set({ incomingSerial: serial, ratingCode: '' });
            }}
            error={said('incomingSerial')}
          />
          {chosen !== null && (
            <p>
              {chosen.description}, part number <SerialText>{chosen.partNumber}</SerialText>, on record:{' '}
              {placeText(chosen.place)}
            </p>
          )}
          {draft.slot === 'engine' && ratings.length > 0 && (
            <SelectField
              id={FIELD_IDS.ratingCode}
              label="Rating from then on"
              unchosen="As recorded for this engine"
              value={draft.ratingCode}
              options={ratings.map(({ code }) => ({ value: code, label: code }))}
              onChange={({ target }) => set({ ratingCode: target.value })}
              error={said('ratingCode')}
            />
          )}
          {draft.slot === 'apu' && (
            <FiguresFields
              legend="Its counter showed"
              value={draft.onFigures}
              onChange={(onFigures) => set({ onFigures })}
              field={(name) => ({
                id: FIELD_IDS[`incomingReading.${name}`],
                error:
                  said(`incomingReading.${name}`) ?? (name === 'minutes' ? said('incomingReading') : null),
              })}
            />
          )}
        </>
      )}
    </fieldset>
  );
}
