import { useQuery } from '@tanstack/react-query';
import { airframesQuery } from '../../server/fleet.js';
import type { AirframePositions, ChangeSlot, PositionView } from '../../server/wire.js';
import { SelectField } from '../../ui/fields/select-field.js';
import { type ChangeDraft, FIELD_IDS, type FieldName } from './change-draft.js';

export interface FieldsProps {
  readonly draft: ChangeDraft;
  readonly set: (change: Partial<ChangeDraft>) => void;
  readonly said: (field: FieldName) => string | null;
}

// Another place holds another thing: what was said of the first is not said of the second.
const NOBODY_SAID = { comesOff: null, outgoingSerial: '', incomingSerial: '', ratingCode: '' } as const;

const label = ({ kind, number, engine }: PositionView): string => {
  const where = kind === 'apu' ? 'APU' : `Position ${number}`;
  return `${where}: ${engine === null ? 'empty' : engine.serialNumber}`;
};

/** As on the board: the positions by number, the auxiliary power unit last. */
const inOrder = (all: readonly PositionView[]): readonly PositionView[] => [
  ...all.filter(({ kind }) => kind !== 'apu'),
  ...all.filter(({ kind }) => kind === 'apu'),
];

const SLOTS: readonly { readonly value: ChangeSlot; readonly label: string }[] = [
  { value: 'engine', label: 'The engine' },
  { value: 'pod', label: 'The pod' },
];

const APU_SLOT: typeof SLOTS = [{ value: 'apu', label: 'The APU' }];

/** The position chosen, as it stands now. */
export const chosenPosition = (
  positions: AirframePositions | undefined,
  { positionNumber }: ChangeDraft,
): PositionView | null =>
  positions?.positions.find(({ number }) => positionNumber !== '' && number === Number(positionNumber)) ??
  null;

/** The serial that stands there now, of what is changed. */
export function serialThere(position: PositionView | null, slot: ChangeSlot): string | null {
  if (position === null) return null;
  return slot === 'pod' ? (position.pod?.serialNumber ?? null) : (position.engine?.serialNumber ?? null);
}

interface WhereProps extends FieldsProps {
  readonly positions: AirframePositions | undefined;
}

/** Airframe, position, and what is changed there. */
export function WhereFields({ draft, set, said, positions }: WhereProps) {
  const airframes = useQuery(airframesQuery).data ?? [];
  const position = chosenPosition(positions, draft);
  return (
    <fieldset className="change-part">
      <legend>Where</legend>
      <SelectField
        id={FIELD_IDS.airframeId}
        label="Airframe"
        unchosen="Choose the airframe"
        value={draft.airframeId}
        options={airframes.map(({ id, registration }) => ({ value: id, label: registration }))}
        onChange={({ target }) =>
          set({ ...NOBODY_SAID, airframeId: target.value, positionNumber: '', slot: 'engine' })
        }
        error={said('airframeId')}
      />
      <SelectField
        id={FIELD_IDS.positionNumber}
        label="Position"
        hint="With what stands there now"
        unchosen={draft.airframeId === '' ? 'Choose the airframe first' : 'Choose the position'}
        value={draft.positionNumber}
        options={inOrder(positions?.positions ?? []).map((entry) => ({
          value: String(entry.number),
          label: label(entry),
        }))}
        onChange={({ target }) => {
          const apu =
            positions?.positions.find(({ number }) => String(number) === target.value)?.kind === 'apu';
          set({ ...NOBODY_SAID, positionNumber: target.value, slot: apu ? 'apu' : 'engine' });
        }}
        error={said('positionNumber')}
      />
      <SelectField
        id={FIELD_IDS.slot}
        label="What is changed"
        value={draft.slot}
        options={position?.kind === 'apu' ? APU_SLOT : SLOTS}
        onChange={({ target }) => set({ ...NOBODY_SAID, slot: target.value as ChangeSlot })}
        error={said('slot')}
      />
    </fieldset>
  );
}
