import { keepPreviousData, useQuery } from '@tanstack/react-query';
import { useState } from 'react';
import { parseMoment } from '../../format/utc-moment.js';
import { wireMinute } from '../../format/when.js';
import { useAct } from '../../server/act.js';
import { COMPONENTS_KEY, componentChoiceQuery } from '../../server/components.js';
import { locationsQuery } from '../../server/fleet.js';
import { type NewShopVisit, SHOPS_KEY, type ShopVisit, sendToShop } from '../../server/shops/shop-records.js';
import { type Faults, useActForm } from '../../ui/fields/act-form.js';
import { ComboField } from '../../ui/fields/combo-field.js';
import { MomentField } from '../../ui/fields/moment-field.js';
import { SelectField } from '../../ui/fields/select-field.js';
import { TextAreaField } from '../../ui/fields/text-area-field.js';
import { TextField } from '../../ui/fields/text-field.js';
import { ActFrame } from './act-frame.js';

interface Typed {
  readonly componentId: string | null;
  readonly locationName: string;
  readonly orderReference: string;
  readonly workscope: string;
  readonly sentAt: string;
}

const START: Typed = { componentId: null, locationName: '', orderReference: '', workscope: '', sentAt: '' };

function check(typed: Typed): Faults {
  const moment = parseMoment(typed.sentAt);
  return {
    ...(typed.componentId === null ? { componentId: 'Choose a component that is on record' } : {}),
    ...(typed.locationName === '' ? { locationName: 'Choose the shop' } : {}),
    ...(typed.orderReference.trim() === '' ? { orderReference: 'Enter the order it is sent under' } : {}),
    ...(typed.workscope.trim() === '' ? { workscope: 'Enter what the shop is asked to do' } : {}),
    ...(moment.ok ? {} : { sentAt: moment.reason }),
  };
}

const words = (typed: Typed): NewShopVisit => {
  const moment = parseMoment(typed.sentAt);
  return {
    componentId: typed.componentId ?? '',
    locationName: typed.locationName,
    orderReference: typed.orderReference.trim(),
    workscope: typed.workscope.trim(),
    sentAt: moment.ok ? wireMinute(moment.instant) : '',
  };
};

/** Sends an engine, a module, a part or a pod to a shop with what is asked of it. */
export function SendForm({ onSent }: { readonly onSent: (visit: ShopVisit) => void }) {
  const [search, setSearch] = useState('');
  const found = useQuery({ ...componentChoiceQuery({ search }), placeholderData: keepPreviousData });
  const shops = (useQuery(locationsQuery).data ?? []).filter(({ kind }) => kind === 'shop');
  const sending = useAct({
    perform: sendToShop,
    refresh: [SHOPS_KEY, COMPONENTS_KEY, ['history'], ['due']],
    onDone: onSent,
  });
  const form = useActForm({ start: START, check, words, act: sending });
  const { typed, change, field } = form;
  return (
    <ActFrame form={form} act="Send it to the shop">
      <ComboField
        {...field('componentId')}
        label="Serial number"
        hint="What hangs on an airframe is removed first."
        mono
        searching={found.isFetching}
        options={(found.data?.rows ?? []).map(({ id, serialNumber, partNumber, description, place }) => ({
          id,
          label: serialNumber,
          detail: `${description}, ${partNumber}; ${place.label}`,
        }))}
        value={typed.componentId}
        onTyped={setSearch}
        onChoose={(componentId) => change({ componentId })}
      />
      <SelectField
        {...field('locationName')}
        label="Shop"
        hint={
          shops.length === 0 ? 'No location of kind shop is on record: add one in the register.' : undefined
        }
        unchosen="Choose the shop"
        options={shops.map(({ name }) => ({ value: name, label: name }))}
        value={typed.locationName}
        onChange={({ target }) => change({ locationName: target.value })}
      />
      <TextField
        {...field('orderReference')}
        label="Order"
        mono
        value={typed.orderReference}
        onChange={({ target }) => change({ orderReference: target.value })}
      />
      <TextAreaField
        {...field('workscope')}
        label="Workscope"
        value={typed.workscope}
        onChange={({ target }) => change({ workscope: target.value })}
      />
      <MomentField
        {...field('sentAt')}
        label="Sent"
        value={typed.sentAt}
        onTyped={(sentAt) => change({ sentAt })}
      />
    </ActFrame>
  );
}
