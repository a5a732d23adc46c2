import { useInfiniteQuery } from '@tanstack/react-query';
import type { ReactNode } from 'react';
import { counted } from '../../format/counts.js';
import type { DueRow } from '../../server/wire.js';
import { Button } from '../../ui/actions/button.js';
import { Answered } from '../../ui/messages/answered.js';
import { ProblemPanel } from '../../ui/messages/problem-panel.js';
import type { Order } from '../../ui/table/column.js';
import { DataTable } from '../../ui/table/data-table.js';
import { BasisStated } from './due-basis.js';
import { DUE_COLUMNS } from './due-columns.js';
import { dueQuery } from './due-queries.js';
import { askOf, changed, type DueSearch } from './due-search.js';

const rowKey = ({ id }: DueRow): string => id;

interface DueTableProps {
  readonly caption: string;
  readonly search: DueSearch;
  readonly onSearch: (next: DueSearch) => void;
  readonly empty: ReactNode;
}

/** The rows, with the basis of their dates above, in the order the server gives. */
export function DueTable({ caption, search, onSearch, empty }: DueTableProps) {
  const query = useInfiniteQuery(dueQuery(askOf(search)));
  const pages = query.data?.pages ?? [];
  const rows = pages.flatMap((page) => page.rows);
  const [first] = pages;
  const uses = new Map(pages.flatMap((page) => page.basis.uses).map((use) => [use.airframeId, use]));
  const order: Order = { column: search.sort ?? 'urgency', descending: search.order === 'desc' };
  const onOrder = (next: Order) =>
    onSearch(
      changed(search, {
        sort: next === null || next.column === 'urgency' ? undefined : next.column,
        order: next?.descending === true ? 'desc' : undefined,
      }),
    );
  return (
    <Answered
      query={{ ...query, error: query.isFetchNextPageError ? null : query.error }}
      doing="Reading what is due"
      lines={10}
    >
      {() =>
        rows.length === 0 ? (
          empty
        ) : (
          <>
            {first !== undefined && <BasisStated basis={{ ...first.basis, uses: [...uses.values()] }} />}
            <div className="print-landscape">
              <DataTable
                caption={caption}
                captionHidden
                columns={DUE_COLUMNS}
                rows={rows}
                rowKey={rowKey}
                order={order}
                onOrder={onOrder}
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
  );
}
