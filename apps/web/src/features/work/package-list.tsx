import { useInfiniteQuery, useQuery } from '@tanstack/react-query';
import { useNavigate, useSearch } from '@tanstack/react-router';
import { counted } from '../../format/counts.js';
import { PACKAGE_KINDS } from '../../format/package-words.js';
import { holderWords, useMay } from '../../server/authority.js';
import { airframesQuery } from '../../server/fleet.js';
import { packagesQuery } from '../../server/work.js';
import { ActionLink } from '../../ui/actions/action-link.js';
import { Button } from '../../ui/actions/button.js';
import { SelectField } from '../../ui/fields/select-field.js';
import { Answered } from '../../ui/messages/answered.js';
import { EmptyState } from '../../ui/messages/empty-state.js';
import { DataTable } from '../../ui/table/data-table.js';
import { PACKAGE_COLUMNS } from './package-columns.js';

const STATUSES = [
  { value: 'open', label: 'Not released' },
  { value: 'released', label: 'Released' },
  { value: 'withdrawn', label: 'Withdrawn' },
];

type Part = 'airframe' | 'kind' | 'status';

function Filters() {
  const search = useSearch({ from: '/signed-in/work' });
  const navigate = useNavigate({ from: '/work' });
  const airframes = useQuery(airframesQuery).data ?? [];
  const pick = (part: Part, value: string) => {
    const { [part]: _, ...rest } = search;
    void navigate({ search: value === '' ? rest : { ...rest, [part]: value }, resetScroll: false });
  };
  const wiring = (part: Part) => ({
    className: 'field-short',
    value: search[part] ?? '',
    onChange: ({ target }: { readonly target: { readonly value: string } }) => pick(part, target.value),
  });
  return (
    <search className="work-filters no-print">
      <SelectField label="Release" unchosen="Any" options={STATUSES} {...wiring('status')} />
      <SelectField label="Kind" unchosen="All kinds" options={PACKAGE_KINDS} {...wiring('kind')} />
      <SelectField
        label="Airframe"
        unchosen="All airframes"
        options={airframes.map(({ id, registration }) => ({ value: id, label: registration }))}
        {...wiring('airframe')}
      />
    </search>
  );
}

function Nothing({ filtered }: { readonly filtered: boolean }) {
  const may = useMay('open-a-package');
  const navigate = useNavigate({ from: '/work' });
  if (filtered)
    return (
      <EmptyState action={<Button onClick={() => void navigate({ search: {} })}>Show all packages</Button>}>
        No package matches this choice.
      </EmptyState>
    );
  return (
    <EmptyState action={may ? <ActionLink href="/packages/new">Open a package</ActionLink> : undefined}>
      No package is recorded. The airframes and their engines must be in the register first; then open the
      first package here, or log a change that was made before.
      {!may && ` ${holderWords('open-a-package')} can open one.`}
    </EmptyState>
  );
}

/** Every package, the newest first, by what is asked for in the address. */
export function PackageList() {
  const search = useSearch({ from: '/signed-in/work' });
  const query = useInfiniteQuery(packagesQuery(search));
  const rows = query.data?.pages.flatMap((page) => page.rows) ?? [];
  return (
    <section className="stack" aria-labelledby="packages">
      <h2 id="packages" className="section-heading">
        Packages
      </h2>
      <Filters />
      <Answered query={query} doing="Reading the packages" lines={8}>
        {() =>
          rows.length === 0 ? (
            <Nothing filtered={Object.keys(search).length > 0} />
          ) : (
            <>
              <DataTable
                caption="Packages, the newest first"
                captionHidden
                columns={PACKAGE_COLUMNS}
                rows={rows}
                rowKey={({ id }) => id}
                struck={({ status }) => status === 'withdrawn'}
              />
              <div className="row no-print">
                <span className="quiet small">{counted(rows.length, 'package')} shown</span>
                {query.hasNextPage && (
                  <Button busy={query.isFetchingNextPage} onClick={() => void query.fetchNextPage()}>
                    Show more
                  </Button>
                )}
              </div>
            </>
          )
        }
      </Answered>
    </section>
  );
}
