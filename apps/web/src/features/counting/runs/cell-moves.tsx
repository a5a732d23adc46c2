import { dataOrThrow } from '@strutbook/api-client/index.js';
import type { components } from '@strutbook/api-client/schema.gen.js';
import { keepPreviousData, useQuery } from '@tanstack/react-query';
import { useState } from 'react';
import { parseMoment } from '../../../format/utc-moment.js';
import { wireMinute } from '../../../format/when.js';
import { type ActHeaders, useAct } from '../../../server/act.js';
import { api } from '../../../server/api.js';
import { componentChoiceQuery } from '../../../server/components.js';
import { useOfflineSince } from '../../../server/connection.js';
import { locationsQuery } from '../../../server/fleet.js';
import { Button } from '../../../ui/actions/button.js';
import { type Faults, useActForm } from '../../../ui/fields/act-form.js';
import { ComboField } from '../../../ui/fields/combo-field.js';
import { MomentField } from '../../../ui/fields/moment-field.js';
import { SelectField } from '../../../ui/fields/select-field.js';
import { ErrorSummary } from '../../../ui/messages/error-summary.js';
import { OFF_WHILE_OFFLINE } from '../../../ui/messages/offline-bar.js';
import { COUNTED } from '../void-dialog.js';

type Placement = components['schemas']['PlacementDto'];

const place = async (body: Placement, headers: ActHeaders) =>
  dataOrThrow(await api.POST('/api/placements', { body, headers }));

const momentFaults = (at: string): Faults => {
  const moment = parseMoment(at);
  return moment.ok ? {} : { 'boundary.at': moment.reason };
};

const boundaryOf = (at: string): Placement['boundary'] => {
  const moment = parseMoment(at);
  return { kind: 'instant', at: moment.ok ? wireMinute(moment.instant) : at };
};

function Submit({ busy, word }: { readonly busy: boolean; readonly word: string }) {
  const offline = useOfflineSince() !== null;
  return (
    <div>
      <Button type="submit" kind="primary" busy={busy} offBecause={offline ? OFF_WHILE_OFFLINE : null}>
        {busy ? 'Saving' : word}
      </Button>
    </div>
  );
}

/** An engine from a store or a shop into a test cell. */
export function MoveIn({ slotId, onDone }: { readonly slotId: string; readonly onDone: () => void }) {
  const [search, setSearch] = useState('');
  const found = useQuery({
    ...componentChoiceQuery({ kind: 'engine', search }),
    placeholderData: keepPreviousData,
  });
  const act = useAct({ perform: place, refresh: COUNTED, onDone });
  const form = useActForm({
    start: { componentId: null as string | null, at: '' },
    check: ({ componentId, at }) => ({
      ...(componentId === null ? { componentId: 'Choose an engine that is on record' } : {}),
      ...momentFaults(at),
    }),
    words: ({ componentId, at }): Placement => ({
      ...{ componentId: componentId ?? '', slotId },
      ...{ boundary: boundaryOf(at), reason: 'Into the test cell' },
    }),
    act,
  });
  return (
    <form className="stack" noValidate onSubmit={form.submit}>
      <ErrorSummary messages={form.messages} attempt={form.attempt} />
      <ComboField
        {...form.field('componentId')}
        label="Serial number of the engine"
        hint="Type its beginning, then choose"
        mono
        searching={found.isFetching}
        options={(found.data?.rows ?? []).map(({ id, serialNumber, partNumber, place: where }) => ({
          id,
          label: serialNumber,
          detail: `${partNumber}; ${where.label}`,
        }))}
        value={form.typed.componentId}
        onTyped={setSearch}
        onChoose={(componentId) => form.change({ componentId })}
      />
      <MomentField
        {...form.field('boundary.at')}
        label="There since"
        value={form.typed.at}
        onTyped={(at) => form.change({ at })}
      />
      <Submit busy={form.busy} word="Put it in" />
    </form>
  );
}

/** The engine out of a test cell, to a location. */
export function MoveOut({
  componentId,
  onDone,
}: {
  readonly componentId: string;
  readonly onDone: () => void;
}) {
  const locations = useQuery(locationsQuery).data ?? [];
  const act = useAct({ perform: place, refresh: COUNTED, onDone });
  const form = useActForm({
    start: { locationName: '', at: '' },
    check: ({ locationName, at }) => ({
      ...(locationName === '' ? { locationName: 'Choose where it goes' } : {}),
      ...momentFaults(at),
    }),
    words: ({ locationName, at }): Placement => ({
      ...{ componentId, locationName },
      ...{ boundary: boundaryOf(at), reason: 'Out of the test cell' },
    }),
    act,
  });
  return (
    <form className="stack" noValidate onSubmit={form.submit}>
      <ErrorSummary messages={form.messages} attempt={form.attempt} />
      <SelectField
        {...form.field('locationName')}
        label="Where it goes"
        unchosen="Choose a location"
        options={locations.map(({ name, kind }) => ({
          value: name,
          label: `${name} (${kind.replaceAll('-', ' ')})`,
        }))}
        value={form.typed.locationName}
        onChange={({ target }) => form.change({ locationName: target.value })}
      />
      <MomentField
        {...form.field('boundary.at')}
        label="Out since"
        value={form.typed.at}
        onTyped={(at) => form.change({ at })}
      />
      <Submit busy={form.busy} word="Take it out" />
    </form>
  );
}
