import { useInfiniteQuery, useQuery } from '@tanstack/react-query';
import { useNavigate, useSearch } from '@tanstack/react-router';
import { counted } from '../../format/counts.js';
import { useMay } from '../../server/authority.js';
import { airframesQuery } from '../../server/fleet.js';
import type { DueRow } from '../../server/wire.js';
import { ActionLink } from '../../ui/actions/action-link.js';
import { Button } from '../../ui/actions/button.js';
import { SelectField } from '../../ui/fields/select-field.js';
import { Answered } from '../../ui/messages/answered.js';
import { EmptyState } from '../../ui/messages/empty-state.js';
import { ProblemPanel } from '../../ui/messages/problem-panel.js';
import { PageHeading } from '../../ui/page/page-heading.js';
import { DataTable } from '../../ui/table/data-table.js';
import { DUE_COLUMNS } from './due-columns.js';
import { dueQuery } from './due-queries.js';
import './due.css';

const rowKey = ({ id }: DueRow): string => id;

function NothingDue({ ofOne }: { readonly ofOne: boolean }) {
  const may = useMay('keep-records');
  return (
    <EmptyState action={may ? <ActionLink href="/register">Open the register</ActionLink> : undefined}>
      {ofOne
        ? 'No limited part or requirement is recorded on this airframe.'
        : 'No limited part or requirement is recorded.'}{' '}
      What is due is computed from life limits and requirements, engines with their parts, and flights: enter
      them in the register first.
      {!may && ' The records office or an administrator can do this.'}
    </EmptyState>
  );
}

function AirframeFilter({ airframe }: { readonly airframe: string | undefined }) {
  const airframes = useQuery(airframesQuery).data ?? [];
  const navigate = useNavigate({ from: '/due' });
  if (airframes.length < 2) return null;
  return (
    <div className="row no-print">
      <SelectField
        label="Airframe"
        unchosen="All airframes"
        value={airframe ?? ''}
        options={airframes.map(({ id, registration }) => ({ value: id, label: registration }))}
        onChange={({ target }) =>
          void navigate({ search: target.value === '' ? {} : { airframe: target.value } })
        }
      />
    </div>
  );
}

function WhatIsOutside({ airframe }: { readonly airframe: string | undefined }) {
  const chosen = useQuery(airframesQuery).data?.find(({ id }) => id === airframe);
  if (airframe === undefined) return null;
  return (
    <p className="due-chip" role="status">
      Only {chosen === undefined ? 'one airframe' : chosen.registration}. What is over limit elsewhere is not
      shown.
    </p>
  );
}

/** What falls due, the most urgent first. What is over stands on top and cannot be filtered by status. */
export function DuePage() {
  const { airframe } = useSearch({ from: '/signed-in/due' });
  const query = useInfiniteQuery(dueQuery(airframe));
  const pages = query.data?.pages ?? [];
  const rows = pages.flatMap((page) => page.rows);
  return (
    <>
      <PageHeading
        title="Due"
        below={
          <p>
            Life limits and requirements: over the limit and not verified first, then by projected date. A
            projected date is a forecast by the use named beside it, never a limit.
          </p>
        }
        actions={<Button onClick={() => window.print()}>Print</Button>}
      />
      <AirframeFilter airframe={airframe} />
      <WhatIsOutside airframe={airframe} />
      <Answered
        query={{ ...query, error: query.isFetchNextPageError ? null : query.error }}
        doing="Reading what is due"
        lines={10}
      >
        {() =>
          rows.length === 0 ? (
            <NothingDue ofOne={airframe !== undefined} />
          ) : (
            <>
              <div className="print-landscape">
                <DataTable
                  caption="What falls due"
                  captionHidden
                  columns={DUE_COLUMNS}
                  rows={rows}
                  rowKey={rowKey}
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
                  {counted(rows.length, 'row')} shown
                  {query.hasNextPage ? ', and there are more' : ', and these are all'}
                </p>
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
