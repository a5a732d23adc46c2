import { useQuery } from '@tanstack/react-query';
import { useMay } from '../../../server/authority.js';
import { type Location, locationsQuery } from '../../../server/fleet.js';
import { announce } from '../../../ui/messages/announcements.js';
import { EmptyState } from '../../../ui/messages/empty-state.js';
import type { Column } from '../../../ui/table/column.js';
import { DataTable } from '../../../ui/table/data-table.js';
import { readState } from '../../../ui/table/read-state.js';
import { RegisterFrame } from '../register-frame.js';
import { LOCATION_KINDS, LocationForm } from './location-form.js';

const kindWord = ({ kind }: Location): string =>
  LOCATION_KINDS.find(({ value }) => value === kind)?.label ?? kind;

const COLUMNS: readonly Column<Location>[] = [
  { id: 'name', header: 'Name', cell: ({ name }) => name, sortBy: ({ name }) => name, namesRow: true },
  { id: 'kind', header: 'Kind', cell: kindWord, sortBy: kindWord },
];

/** Where components are when they are not installed. */
export function LocationsPage() {
  const locations = useQuery(locationsQuery);
  const may = useMay('keep-records');
  return (
    <RegisterFrame
      title="Locations"
      add={{
        word: 'Add a location',
        form: (close) => (
          <LocationForm
            onAdded={({ name }) => {
              announce(`${name} was added.`);
              close();
            }}
          />
        ),
      }}
    >
      <DataTable
        caption="Locations"
        captionHidden
        columns={COLUMNS}
        rows={locations.data ?? []}
        rowKey={({ id }) => id}
        order={{ column: 'name', descending: false }}
        state={readState(locations)}
        empty={
          <EmptyState>
            No location is recorded. Stores, shops and quarantine are where components are when they are not
            installed{may ? '. Add one above.' : '.'}
          </EmptyState>
        }
      />
    </RegisterFrame>
  );
}
