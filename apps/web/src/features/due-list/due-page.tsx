import { useQuery } from '@tanstack/react-query';
import { useNavigate, useSearch } from '@tanstack/react-router';
import { useMay } from '../../server/authority.js';
import { airframesQuery } from '../../server/fleet.js';
import { ActionLink } from '../../ui/actions/action-link.js';
import { Button } from '../../ui/actions/button.js';
import { RouteLink } from '../../ui/actions/route-link.js';
import { EmptyState } from '../../ui/messages/empty-state.js';
import { PageHeading } from '../../ui/page/page-heading.js';
import { DueBasisChoice } from './due-basis.js';
import { DueFilters } from './due-filters.js';
import { changed, type DueSearch, exportHref, isFiltered, unfiltered } from './due-search.js';
import { DueTable } from './due-table.js';
import { DueTotalsLine } from './due-totals.js';
import './due.css';

function NothingDue({
  search,
  onSearch,
}: {
  readonly search: DueSearch;
  readonly onSearch: (next: DueSearch) => void;
}) {
  const may = useMay('keep-records');
  if (isFiltered(search))
    return (
      <EmptyState action={<Button onClick={() => onSearch(unfiltered(search))}>Clear filters</Button>}>
        Nothing is left by these filters.
      </EmptyState>
    );
  return (
    <EmptyState action={may ? <ActionLink href="/register">Open the register</ActionLink> : undefined}>
      {search.airframe !== undefined || search.component !== undefined
        ? 'No limited part or requirement is recorded here.'
        : 'No limited part or requirement is recorded.'}{' '}
      What is due is computed from life limits and requirements, engines with their parts, and flights: enter
      them in the register first.
      {!may && ' The records office or an administrator can do this.'}
    </EmptyState>
  );
}

/** What the list is of, where it is not the fleet. */
function OfOne({
  search,
  onSearch,
}: {
  readonly search: DueSearch;
  readonly onSearch: (next: DueSearch) => void;
}) {
  const airframes = useQuery(airframesQuery).data;
  const chosen = airframes?.find(({ id }) => id === search.airframe);
  const { component } = search;
  if (component !== undefined)
    return (
      <div className="row no-print">
        <p>
          Only <RouteLink href={`/components/${component}`}>one component</RouteLink> and what is in it.
        </p>
        <Button onClick={() => onSearch(changed(search, { component: undefined }))}>Show the fleet</Button>
      </div>
    );
  if (chosen === undefined) return null;
  return (
    <p className="no-print">
      <RouteLink href={`/positions/${chosen.id}/readiness`}>Readiness of {chosen.registration}</RouteLink> for
      planned flying
    </p>
  );
}

/** What falls due, the most urgent first unless asked otherwise. What filters leave out that is past is told. */
export function DuePage() {
  const search = useSearch({ from: '/signed-in/due' });
  const navigate = useNavigate({ from: '/due' });
  const onSearch = (next: DueSearch) => void navigate({ search: next });
  return (
    <>
      <PageHeading
        title="Due"
        below={
          <p>
            Life limits and requirements: over the limit and not verified first, then by projected date. A
            projected date is a forecast, never a limit.
          </p>
        }
        actions={
          <>
            <a className="button button-secondary" href={exportHref(search, 'csv')} download>
              Save as CSV
            </a>
            <a className="button button-secondary" href={exportHref(search, 'ndjson')} download>
              Save as JSON lines
            </a>
            <Button onClick={() => window.print()}>Print</Button>
          </>
        }
      />
      <DueFilters search={search} onSearch={onSearch} />
      <OfOne search={search} onSearch={onSearch} />
      <DueTotalsLine search={search} onSearch={onSearch} />
      <DueBasisChoice search={search} onSearch={onSearch} />
      <DueTable
        caption="What falls due"
        search={search}
        onSearch={onSearch}
        empty={<NothingDue search={search} onSearch={onSearch} />}
      />
    </>
  );
}
