import { useQuery } from '@tanstack/react-query';
import { useMay } from '../../../server/authority.js';
import { type AirframeType, airframeTypesQuery } from '../../../server/fleet.js';
import { announce } from '../../../ui/messages/announcements.js';
import { EmptyState } from '../../../ui/messages/empty-state.js';
import type { Column } from '../../../ui/table/column.js';
import { DataTable } from '../../../ui/table/data-table.js';
import { readState } from '../../../ui/table/read-state.js';
import { RegisterFrame } from '../register-frame.js';
import { AirframeTypeForm, MOUNTS } from './airframe-type-form.js';

const mountWord = (mount: string): string =>
  (MOUNTS.find(({ value }) => value === mount)?.label ?? mount).toLowerCase();

const COLUMNS: readonly Column<AirframeType>[] = [
  {
    id: 'type',
    header: 'Type',
    cell: (type) => (
      <>
        {type.maker} <span className="serial">{type.designation}</span>
      </>
    ),
    sortBy: (type) => `${type.maker} ${type.designation}`,
    namesRow: true,
  },
  {
    id: 'engines',
    header: 'Engines',
    align: 'figures',
    cell: (type) => type.positions.filter(({ kind }) => kind === 'engine').length,
  },
  {
    id: 'positions',
    header: 'Positions',
    cell: (type) =>
      type.positions.map(({ number, label, mount }) => `${number} ${label}, ${mountWord(mount)}`).join('; '),
  },
];

/** The types of airframes. */
export function AirframeTypesPage() {
  const types = useQuery(airframeTypesQuery);
  const may = useMay('keep-records');
  return (
    <RegisterFrame
      title="Airframe types"
      add={{
        word: 'Add an airframe type',
        form: (close) => (
          <AirframeTypeForm
            onAdded={({ maker, designation }) => {
              announce(`${maker} ${designation} was added.`);
              close();
            }}
          />
        ),
      }}
    >
      <DataTable
        caption="Airframe types"
        captionHidden
        columns={COLUMNS}
        rows={types.data ?? []}
        rowKey={({ id }) => id}
        state={readState(types)}
        empty={
          <EmptyState>
            No airframe type is recorded. It comes first: it says how many positions an airframe has
            {may ? '. Add one above.' : '.'}
          </EmptyState>
        }
      />
    </RegisterFrame>
  );
}
