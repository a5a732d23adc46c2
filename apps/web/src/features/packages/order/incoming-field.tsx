import { useQuery } from '@tanstack/react-query';
import { useDeferredValue, useState } from 'react';
import { type ComponentKind, componentChoiceQuery } from '../../../server/components.js';
import { locationsQuery } from '../../../server/fleet.js';
import { ComboField } from '../../../ui/fields/combo-field.js';
import { Loading } from '../../../ui/messages/loading.js';
import { ProblemPanel } from '../../../ui/messages/problem-panel.js';
import { StatusMark } from '../../../ui/status/status-mark.js';
import { ORDER_IDS } from './order-draft.js';
import { RegisterSays } from './register-says.js';

/** From where a spare is taken; what is in quarantine, scrapped or given away is not one. */
const SPARE_PLACES: ReadonlySet<string> = new Set(['store', 'shop']);

interface IncomingFieldProps {
  readonly kind: ComponentKind;
  readonly serial: string;
  /** Of what comes off: spares of it stand first. Null when nothing does. */
  readonly likePart: string | null;
  readonly onSerial: (serial: string) => void;
  readonly error: string | null;
}

/** What goes on: one of the spares, with what the register says of it. */
export function IncomingField({ kind, serial, likePart, onSerial, error }: IncomingFieldProps) {
  const [typed, setTyped] = useState(serial);
  const locations = useQuery(locationsQuery).data ?? [];
  const found = useQuery({
    ...componentChoiceQuery({ kind, search: useDeferredValue(typed), limit: 200 }),
    placeholderData: (before) => before,
  });
  const isSpare = (label: string): boolean =>
    SPARE_PLACES.has(locations.find(({ name }) => name === label)?.kind ?? '');
  const spares = (found.data?.rows ?? []).filter(
    ({ place, serialNumber }) =>
      serialNumber === serial || (place.kind === 'location' && isSpare(place.label)),
  );
  const isUnlike = (partNumber: string): boolean => likePart !== null && partNumber !== likePart;
  spares.sort((a, b) => Number(isUnlike(a.partNumber)) - Number(isUnlike(b.partNumber)));
  const chosen = spares.find(({ serialNumber }) => serialNumber === serial) ?? null;
  // The field shows what is chosen already only when its choices are there from the start.
  if (found.data === undefined)
    return found.error === null ? (
      <Loading label="Reading the spares" lines={2} />
    ) : (
      <ProblemPanel error={found.error} doing="Reading the spares" onRetry={() => void found.refetch()} />
    );
  return (
    <>
      <ComboField
        id={ORDER_IDS['order.incomingSerial']}
        label="Serial that goes on"
        hint="Only spares in a store or a shop are offered. Type the beginning, then choose."
        mono
        options={spares.map(({ id, serialNumber, partNumber, description, place }) => ({
          id,
          label: serialNumber,
          detail: `${description}, ${partNumber}, ${place.label}`,
        }))}
        value={chosen?.id ?? null}
        searching={found.isFetching}
        nothing="No spare in a store or a shop"
        onTyped={setTyped}
        onChoose={(id) => onSerial(spares.find((row) => row.id === id)?.serialNumber ?? '')}
        error={error}
      />
      {typed === '' && spares.length === 0 && (
        <p className="quiet">
          No spare of this kind is in a store or a shop. Record it and where it is in the register first.
        </p>
      )}
      {chosen !== null && isUnlike(chosen.partNumber) && (
        <p role="status">
          <StatusMark
            status="soon"
            word={`Its part number is ${chosen.partNumber}, what comes off is ${likePart}. A similar model is not the same: compare it with the airframe and the position first.`}
          />
        </p>
      )}
      {chosen !== null && <RegisterSays componentId={chosen.id} />}
    </>
  );
}
