import { useInfiniteQuery, useQuery } from '@tanstack/react-query';
import { useNavigate, useSearch } from '@tanstack/react-router';
import { counted } from '../../format/counts.js';
import { locationsQuery } from '../../server/fleet.js';
import { type Spare, type SpareSort, sparesQuery } from '../../server/shops/shop-records.js';
import { ActionLink } from '../../ui/actions/action-link.js';
import { Button } from '../../ui/actions/button.js';
import { SelectField } from '../../ui/fields/select-field.js';
import { TextField } from '../../ui/fields/text-field.js';
import { Answered } from '../../ui/messages/answered.js';
import { EmptyState } from '../../ui/messages/empty-state.js';
import { ProblemPanel } from '../../ui/messages/problem-panel.js';
import { PageHeading } from '../../ui/page/page-heading.js';
import type { Order } from '../../ui/table/column.js';
import { DataTable } from '../../ui/table/data-table.js';
import { SPARE_COLUMNS } from './spare-columns.js';
import './spares.css';

const KINDS = [
  { value: 'engine', label: 'Engines' },
  { value: 'module', label: 'Modules' },
  { value: 'part', label: 'Parts' },
  { value: 'pod', label: 'Pods' },
  { value: 'apu', label: 'APUs' },
] as const;

const SORTS: Readonly<Record<string, SpareSort>> = {
  serial: 'serial',
  cycles: 'cycles',
  since: 'since',
  preservation: 'preservation',
};

function Filters() {
  const search = useSearch({ from: '/signed-in/spares' });
  const navigate = useNavigate({ from: '/spares' });
  const locations = useQuery(locationsQuery).data ?? [];
  const put = (name: 'kind' | 'location' | 'fit' | 'find', value: string) =>
    void navigate({
      search: ({ [name]: _, ...rest }) => (value === '' ? rest : { ...rest, [name]: value }),
      replace: true,
    });
  return (
    <div className="row no-print">
      <SelectField
        label="Kind"
        unchosen="All kinds"
        value={search.kind ?? ''}
        options={KINDS}
        onChange={({ target }) => put('kind', target.value)}
      />
      <SelectField
        label="Fit to install"
        unchosen="All"
        value={search.fit ?? ''}
        options={[
          { value: 'yes', label: 'Fit alone' },
          { value: 'no', label: 'Not fit alone' },
        ]}
        onChange={({ target }) => put('fit', target.value)}
      />
      <SelectField
        label="Location"
        unchosen="All locations"
        value={search.location ?? ''}
        options={locations.map(({ id, name }) => ({ value: id, label: name }))}
        onChange={({ target }) => put('location', target.value)}
      />
      <TextField
        label="Serial or part number"
        type="search"
        mono
        value={search.find ?? ''}
        onChange={({ target }) => put('find', target.value)}
      />
    </div>
  );
}

const rowKey = ({ componentId }: Spare): string => componentId;

/** What is installed nowhere: fit to install, or why not, and what is left in it. */
export function SparesPage() {
  const { kind, location, fit, find, slot, sort } = useSearch({ from: '/signed-in/spares' });
  const navigate = useNavigate({ from: '/spares' });
  const query = useInfiniteQuery(
    sparesQuery({
      kind: KINDS.find(({ value }) => value === kind)?.value,
      ...{ location, slot, search: find },
      fit: fit === undefined ? undefined : fit === 'yes',
      sort: sort === undefined ? undefined : SORTS[sort],
    }),
  );
  const pages = query.data?.pages ?? [];
  const rows = pages.flatMap((page) => page.rows);
  const order: Order = { column: sort ?? 'serial', descending: false };
  return (
    <>
      <PageHeading
        title="Spares"
        below={<p>Engines, modules, parts, pods and APUs that are installed nowhere.</p>}
        actions={
          <>
            <ActionLink href="/shop-visits">Shop visits</ActionLink>
            <Button onClick={() => window.print()}>Print</Button>
          </>
        }
      />
      <Filters />
      {slot !== undefined && (
        <p className="row" role="status">
          Only what would fit in one place, by kind, model and part number.
          <ActionLink href="/spares">Show all</ActionLink>
        </p>
      )}
      <Answered
        query={{ ...query, error: query.isFetchNextPageError ? null : query.error }}
        doing="Reading the spares"
        lines={10}
      >
        {() => (
          <>
            <div className="print-landscape">
              <DataTable
                caption="Spares"
                captionHidden
                columns={SPARE_COLUMNS}
                rows={rows}
                rowKey={rowKey}
                order={order}
                onOrder={(next) =>
                  void navigate({
                    search: ({ sort: _, ...rest }) =>
                      next === null || next.column === 'serial' ? rest : { ...rest, sort: next.column },
                    replace: true,
                    resetScroll: false,
                  })
                }
                empty={<EmptyState>Nothing that fits these filters lies anywhere uninstalled.</EmptyState>}
              />
            </div>
            {query.isFetchNextPageError && (
              <ProblemPanel
                error={query.error}
                doing="Reading the next rows"
                safe="The rows above are as they were read."
                onRetry={() => void query.fetchNextPage()}
              />
            )}
            <div className="row">
              <p role="status">
                {rows.length} of {counted(pages[0]?.total ?? 0, 'spare')} shown
              </p>
              {query.hasNextPage && (
                <Button busy={query.isFetchingNextPage} onClick={() => void query.fetchNextPage()}>
                  {query.isFetchingNextPage ? 'Reading' : 'Show more'}
                </Button>
              )}
            </div>
          </>
        )}
      </Answered>
    </>
  );
}
