import { useInfiniteQuery, useQuery } from '@tanstack/react-query';
import { useNavigate, useSearch } from '@tanstack/react-router';
import { counted } from '../../format/counts.js';
import { dayText } from '../../format/when.js';
import { holderWords, useMay } from '../../server/authority.js';
import { airframesQuery } from '../../server/fleet.js';
import { useReadOnly } from '../../server/session.js';
import type { PackageRow } from '../../server/wire.js';
import { ActionLink } from '../../ui/actions/action-link.js';
import { Button } from '../../ui/actions/button.js';
import { RouteLink } from '../../ui/actions/route-link.js';
import { SelectField } from '../../ui/fields/select-field.js';
import { Answered } from '../../ui/messages/answered.js';
import { EmptyState } from '../../ui/messages/empty-state.js';
import { PageHeading } from '../../ui/page/page-heading.js';
import { SerialText } from '../../ui/status/serial-text.js';
import { StatusMark } from '../../ui/status/status-mark.js';
import type { Column } from '../../ui/table/column.js';
import { DataTable } from '../../ui/table/data-table.js';
import { packagesQuery } from './changes-queries.js';
import './changes.css';

const KINDS: Readonly<Record<string, string>> = { 'engine-change': 'Engine change', 'pod-swap': 'Pod swap' };

const COLUMNS: readonly Column<PackageRow>[] = [
  {
    id: 'number',
    header: 'Number',
    namesRow: true,
    cell: ({ id, number }) => (
      <RouteLink href={`/changes/${id}`}>
        <SerialText>{number}</SerialText>
      </RouteLink>
    ),
  },
  {
    id: 'title',
    header: 'What was changed',
    cell: ({ title, kind }) => (
      <>
        {title}
        <span className="small quiet change-kind">{KINDS[kind] ?? kind}</span>
      </>
    ),
  },
  { id: 'opened', header: 'When', cell: ({ openedAt }) => dayText(openedAt) },
  {
    id: 'airframe',
    header: 'Airframe',
    cell: ({ airframe }) =>
      airframe === null ? (
        'None'
      ) : (
        <RouteLink href={`/positions/${airframe.id}`}>
          <SerialText>{airframe.registration}</SerialText>
        </RouteLink>
      ),
  },
  {
    id: 'status',
    header: 'Release',
    cell: ({ status, releaseNumber }) =>
      status === 'released' ? (
        <StatusMark status="signed" word={`Released ${releaseNumber ?? ''}`.trim()} />
      ) : (
        <StatusMark status="open" word="Not released" />
      ),
  },
];

const STATUSES = [
  { value: 'open', label: 'Not released' },
  { value: 'released', label: 'Released' },
];

function Filters() {
  const { airframe, status } = useSearch({ from: '/signed-in/changes' });
  const navigate = useNavigate({ from: '/changes' });
  const airframes = useQuery(airframesQuery).data ?? [];
  const pick = (next: { readonly airframe?: string | undefined; readonly status?: string | undefined }) => {
    const { airframe: a, status: s } = { airframe, status, ...next };
    void navigate({
      search: { ...(a ? { airframe: a } : {}), ...(s === 'open' || s === 'released' ? { status: s } : {}) },
    });
  };
  return (
    <div className="row no-print">
      <SelectField
        label="Airframe"
        unchosen="All airframes"
        value={airframe ?? ''}
        options={airframes.map(({ id, registration }) => ({ value: id, label: registration }))}
        onChange={({ target }) => pick({ airframe: target.value })}
      />
      <SelectField
        label="Release"
        unchosen="Released or not"
        value={status ?? ''}
        options={STATUSES}
        onChange={({ target }) => pick({ status: target.value })}
      />
    </div>
  );
}

function Nothing({ filtered }: { readonly filtered: boolean }) {
  const may = useMay('log-a-change');
  if (filtered) return <EmptyState>No change matches this choice of airframe and release.</EmptyState>;
  return (
    <EmptyState action={may ? <ActionLink href="/changes/new">Log a change</ActionLink> : undefined}>
      No engine change or pod swap is recorded. The airframes and their engines must be in the register first;
      then log the first change here.
      {!may && ` ${holderWords('log-a-change')} can do this.`}
    </EmptyState>
  );
}

/** Engine changes and pod swaps, the newest first. */
export function ChangesPage() {
  const { airframe, status } = useSearch({ from: '/signed-in/changes' });
  const query = useInfiniteQuery(packagesQuery({ airframeId: airframe, status }));
  const may = useMay('log-a-change');
  const readOnly = useReadOnly();
  const rows = query.data?.pages.flatMap((page) => page.rows) ?? [];
  const filtered = airframe !== undefined || status !== undefined;
  return (
    <>
      <PageHeading
        title="Changes"
        below={<p>Engine changes and pod swaps, the newest first</p>}
        actions={
          may ? (
            <ActionLink kind="primary" href="/changes/new">
              Log a change
            </ActionLink>
          ) : readOnly ? undefined : (
            <Button offBecause={`Logging a change needs the authority of: ${holderWords('log-a-change')}`}>
              Log a change
            </Button>
          )
        }
      />
      <Filters />
      <Answered query={query} doing="Reading the changes" lines={8}>
        {() =>
          rows.length === 0 ? (
            <Nothing filtered={filtered} />
          ) : (
            <>
              <DataTable
                caption="Changes"
                captionHidden
                columns={COLUMNS}
                rows={rows}
                rowKey={({ id }) => id}
              />
              <div className="row">
                <p role="status">{counted(rows.length, 'change')} shown</p>
                {query.hasNextPage && (
                  <Button busy={query.isFetchingNextPage} onClick={() => void query.fetchNextPage()}>
                    {query.isFetchingNextPage ? 'Reading' : 'Show more'}
                  </Button>
                )}
              </div>
            </>
          )
        }
      </Answered>
    </>
  );
}
