import { useQuery } from '@tanstack/react-query';
import { type ComponentKind, componentChoiceQuery } from '../../../server/components.js';
import { engineModelsQuery, locationsQuery } from '../../../server/fleet.js';
import { RouteLink } from '../../../ui/actions/route-link.js';
import { CheckField } from '../../../ui/fields/check-field.js';
import { SelectField } from '../../../ui/fields/select-field.js';
import { TextAreaField } from '../../../ui/fields/text-area-field.js';
import { SerialText } from '../../../ui/status/serial-text.js';
import { IncomingField } from './incoming-field.js';
import { ORDER_IDS, type OrderDraft, type OrderField, type OrderOn } from './order-draft.js';
import { type OrderPlace, useOrderPlaces } from './places-there.js';

export interface OrderFieldsProps {
  readonly draft: OrderDraft;
  readonly set: (change: Partial<OrderDraft>) => void;
  readonly on: OrderOn;
  readonly said: (field: OrderField) => string | null;
  /** An order on record stays at its place. */
  readonly placeFixed?: boolean;
}

// Another place holds another thing.
const ANEW = { incomingSerial: '', ratingCode: '' } as const;

function PlaceField({ draft, set, on, said, places }: OrderFieldsProps & { places: readonly OrderPlace[] }) {
  const options = places.map(({ value, label }) => ({ value, label }));
  return on.kind === 'airframe' ? (
    <SelectField
      id={ORDER_IDS['order.positionNumber']}
      label="Position"
      hint="With what stands there now"
      unchosen="Choose the position"
      value={draft.positionNumber}
      options={options}
      onChange={({ target }) => set({ ...ANEW, positionNumber: target.value })}
      error={said('order.positionNumber') ?? said('order.slot')}
    />
  ) : (
    <SelectField
      id={ORDER_IDS['order.slotId']}
      label="Place inside the component"
      hint="With what stands there now"
      unchosen="Choose the place"
      value={draft.slotId}
      options={options}
      onChange={({ target }) => set({ ...ANEW, slotId: target.value })}
      error={said('order.slotId')}
    />
  );
}

function Off({ draft, set, said, chosen }: OrderFieldsProps & { chosen: OrderPlace | null }) {
  const locations = useQuery(locationsQuery).data ?? [];
  if (chosen === null) return <p className="quiet">Choose the place first.</p>;
  if (chosen.there === null)
    return <p className="order-there">Nothing: the place is empty on record, so only something goes on.</p>;
  const { id, serialNumber, description } = chosen.there;
  return (
    <>
      <p className="order-there">
        <RouteLink href={`/components/${id}`} target="_blank">
          <SerialText strong>{serialNumber}</SerialText>
        </RouteLink>
        <span>{description}. On record there now.</span>
      </p>
      <SelectField
        id={ORDER_IDS['order.removedToLocation']}
        label="Where it goes"
        unchosen={
          locations.length === 0 ? 'No location is in the register: enter one first' : 'Choose a location'
        }
        value={draft.removedTo}
        options={locations.map(({ name, kind }) => ({
          value: name,
          label: `${name} (${kind.replaceAll('-', ' ')})`,
        }))}
        onChange={({ target }) => set({ removedTo: target.value })}
        error={said('order.removedToLocation') ?? said('order.outgoingSerial')}
      />
    </>
  );
}

/** The rating the incoming engine runs at from then on. */
function RatingField({ draft, set, said }: OrderFieldsProps) {
  const { incomingSerial } = draft;
  const found = useQuery({
    ...componentChoiceQuery({ kind: 'engine', search: incomingSerial }),
    enabled: incomingSerial !== '',
  });
  const modelId = found.data?.rows.find(({ serialNumber }) => serialNumber === incomingSerial)?.engineModelId;
  const models = useQuery(engineModelsQuery).data ?? [];
  const model = models.find(({ id }) => id === modelId);
  const codes = (model?.ratings ?? []).map(({ code }) => code);
  if (codes.length === 0) return null;
  return (
    <SelectField
      id={ORDER_IDS['order.ratingCode']}
      label="Rating from then on"
      unchosen="As recorded for this engine"
      value={draft.ratingCode}
      options={codes.map((code) => ({ value: code, label: code }))}
      onChange={({ target }) => set({ ratingCode: target.value })}
      error={said('order.ratingCode')}
    />
  );
}

/** The order: where, what comes off and where it goes, what goes on, and why. */
export function OrderFields(props: OrderFieldsProps) {
  const { draft, set, on, said, placeFixed = false } = props;
  const { all, chosen } = useOrderPlaces(on, draft);
  const kind = (chosen?.kind ?? draft.slot) as ComponentKind;
  return (
    <>
      {placeFixed ? (
        <p className="order-there">
          <strong>{chosen?.label ?? 'Reading the place'}</strong>
        </p>
      ) : (
        <PlaceField {...props} places={all} />
      )}
      <div className="order-sides">
        <fieldset className="package-part">
          <legend>Comes off</legend>
          <Off {...props} chosen={chosen} />
        </fieldset>
        <fieldset className="package-part">
          <legend>Goes on</legend>
          <CheckField
            label="Nothing goes on: the place stays empty"
            checked={!draft.putsOn}
            onChange={({ target }) => set({ putsOn: !target.checked })}
          />
          {draft.putsOn && (
            <IncomingField
              key={kind}
              kind={kind}
              serial={draft.incomingSerial}
              likePart={chosen?.there?.partNumber ?? null}
              onSerial={(incomingSerial) => set({ incomingSerial })}
              error={said('order.incomingSerial')}
            />
          )}
          {draft.putsOn && kind === 'engine' && <RatingField {...props} />}
        </fieldset>
      </div>
      <TextAreaField
        id={ORDER_IDS['order.reason']}
        label="Why it is changed"
        hint="As the work order has it"
        maxLength={200}
        value={draft.reason}
        onChange={({ target }) => set({ reason: target.value })}
        error={said('order.reason')}
      />
    </>
  );
}
