import { keepPreviousData, useInfiniteQuery, useQuery } from '@tanstack/react-query';
import { useNavigate, useSearch } from '@tanstack/react-router';
import { useDeferredValue, useState } from 'react';
import { useMay } from '../../../server/authority.js';
import { type ComponentRow, componentsQuery } from '../../../server/components.js';
import { engineModelsQuery } from '../../../server/fleet.js';
import { ActionLink } from '../../../ui/actions/action-link.js';
import { Button } from '../../../ui/actions/button.js';
import { RouteLink } from '../../../ui/actions/route-link.js';
import { SelectField } from '../../../ui/fields/select-field.js';
import { TextField } from '../../../ui/fields/text-field.js';
import { announce } from '../../../ui/messages/announcements.js';
import { EmptyState } from '../../../ui/messages/empty-state.js';
import { Checking } from '../../../ui/messages/loading.js';
import type { Column } from '../../../ui/table/column.js';
import { DataTable } from '../../../ui/table/data-table.js';
import { readState } from '../../../ui/table/read-state.js';
import { RegisterFrame } from '../register-frame.js';
import { ComponentForm } from './component-form.js';
import { COMPONENT_KINDS, kindOf, kindWord } from './component-kinds.js';

const COLUMNS: readonly Column<ComponentRow>[] = [
  {
    id: 'serial',
    header: 'Serial number',
    cell: ({ id, serialNumber }) => (
      <RouteLink href={`/register/components/${id}`}>
        <span className="serial">{serialNumber}</span>
      </RouteLink>
    ),
    namesRow: true,
  },
  {
    id: 'part',
    header: 'Part number',
    cell: ({ partNumber }) => <span className="serial">{partNumber}</span>,
  },
  { id: 'description', header: 'Description', cell: ({ description }) => description },
  { id: 'kind', header: 'Kind', cell: ({ kind }) => kindWord(kind) },
  { id: 'maker', header: 'Maker', cell: ({ maker }) => maker },
  { id: 'place', header: 'Where', cell: ({ place }) => place.label },
];

interface EmptyProps {
  readonly searched: boolean;
  readonly noModel: boolean;
  readonly may: boolean;
}

function Empty({ searched, noModel, may }: EmptyProps) {
  if (searched) return <EmptyState>No component matches what is asked for.</EmptyState>;
  if (noModel)
    return (
      <EmptyState action={<ActionLink href="/register/engine-models">Go to Engine models</ActionLink>}>
        No component is recorded. An engine has a model: enter an engine model first.
      </EmptyState>
    );
  return <EmptyState>No component is recorded{may ? '. Add one above.' : '.'}</EmptyState>;
}

/** Engines, modules, parts and pods by serial number. */
export function ComponentsPage() {
  const asked = useSearch({ from: '/signed-in/register/components' });
  const kind = kindOf(asked.kind);
  const [typed, setTyped] = useState(asked.find ?? '');
  const search = useDeferredValue(typed);
  const components = useInfiniteQuery({
    ...componentsQuery({ kind, search }),
    placeholderData: keepPreviousData,
  });
  const models = useQuery(engineModelsQuery);
  const may = useMay('keep-records');
  const navigate = useNavigate();
  const rows = components.data?.pages.flatMap((page) => page.rows) ?? [];
  const look = (nextKind: string, find: string) => {
    setTyped(find);
    void navigate({
      to: '/register/components',
      search: { ...(nextKind === '' ? {} : { kind: nextKind }), ...(find === '' ? {} : { find }) },
      replace: true,
    });
  };
  return (
    <RegisterFrame
      title="Components"
      add={{
        word: 'Add a component',
        form: (close) => (
          <ComponentForm
            onAdded={({ id, serialNumber }) => {
              announce(`${serialNumber} was added.`);
              close();
              void navigate({ to: '/register/components/$componentId', params: { componentId: id } });
            }}
          />
        ),
      }}
    >
      <search className="row">
        <TextField
          label="Find"
          hint="Part of a serial or part number"
          type="search"
          mono
          value={typed}
          onChange={(event) => look(kind ?? '', event.target.value)}
        />
        <SelectField
          label="Kind"
          hint="Of component"
          unchosen="All kinds"
          options={COMPONENT_KINDS}
          value={kind ?? ''}
          onChange={(event) => look(event.target.value, typed)}
        />
        {components.isPlaceholderData && <Checking />}
      </search>
      <DataTable
        caption="Components, by serial number"
        columns={COLUMNS}
        rows={rows}
        rowKey={({ id }) => id}
        state={readState(components)}
        empty={
          <Empty
            searched={typed !== '' || kind !== undefined}
            noModel={models.data?.length === 0}
            may={may}
          />
        }
      />
      {components.hasNextPage && (
        <div>
          <Button busy={components.isFetchingNextPage} onClick={() => void components.fetchNextPage()}>
            Show more components
          </Button>
        </div>
      )}
    </RegisterFrame>
  );
}
