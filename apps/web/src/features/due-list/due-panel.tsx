import { useQuery } from '@tanstack/react-query';
import type { DueRow } from '../../server/wire.js';
import { ActionLink } from '../../ui/actions/action-link.js';
import { Answered } from '../../ui/messages/answered.js';
import { EmptyState } from '../../ui/messages/empty-state.js';
import { DataTable } from '../../ui/table/data-table.js';
import { BasisStated } from './due-basis.js';
import { DUE_COLUMNS } from './due-columns.js';
import { firstDueQuery } from './due-queries.js';
import { askOf } from './due-search.js';
import './due.css';

const ROWS = 10;
const rowKey = ({ id }: DueRow): string => id;
// Here the order is always by urgency: the whole list sorts otherwise.
const COLUMNS = DUE_COLUMNS.map(({ sortBy: _sortBy, ...column }) => column);

interface DuePanelProps {
  readonly on: { readonly kind: 'airframe' | 'component'; readonly id: string };
}

/** What is due first on an airframe, or of a component and all in it. */
export function DuePanel({ on }: DuePanelProps) {
  const query = useQuery(firstDueQuery({ ...askOf({ [on.kind]: on.id }), limit: ROWS }));
  return (
    <section className="stack" aria-labelledby="due-here">
      <div className="row">
        <h2 id="due-here" className="section-heading">
          Due first
        </h2>
        <ActionLink href={`/due?${on.kind}=${on.id}`}>Its whole due list</ActionLink>
      </div>
      <Answered query={query} doing="Reading what is due" lines={4}>
        {({ rows, basis, next }) =>
          rows.length === 0 ? (
            <EmptyState>No limited part or requirement is recorded here.</EmptyState>
          ) : (
            <>
              <BasisStated basis={{ ...basis, uses: [] }} />
              <DataTable
                caption="What is due first"
                captionHidden
                columns={COLUMNS}
                rows={rows}
                rowKey={rowKey}
              />
              {next !== null && <p className="quiet">The first {rows.length} are shown.</p>}
            </>
          )
        }
      </Answered>
    </section>
  );
}
