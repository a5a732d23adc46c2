import { useInfiniteQuery } from '@tanstack/react-query';
import { useNavigate, useSearch } from '@tanstack/react-router';
import { useState } from 'react';
import { counted } from '../../format/counts.js';
import { holderWords, useMay } from '../../server/authority.js';
import { useOfflineSince } from '../../server/connection.js';
import { type ShopVisitRow, shopVisitsQuery } from '../../server/shops/shop-records.js';
import { ActionLink } from '../../ui/actions/action-link.js';
import { Button } from '../../ui/actions/button.js';
import { SelectField } from '../../ui/fields/select-field.js';
import { announce } from '../../ui/messages/announcements.js';
import { Answered } from '../../ui/messages/answered.js';
import { AuthorityNote } from '../../ui/messages/authority-note.js';
import { EmptyState } from '../../ui/messages/empty-state.js';
import { OFF_WHILE_OFFLINE } from '../../ui/messages/offline-bar.js';
import { SheetDialog } from '../../ui/overlay/sheet-dialog.js';
import { PageHeading } from '../../ui/page/page-heading.js';
import { DataTable } from '../../ui/table/data-table.js';
import { SendForm } from './send-form.js';
import { VISIT_COLUMNS } from './visit-columns.js';
import './shop-visits.css';

const rowKey = ({ id }: ShopVisitRow): string => id;

/** What was sent to shops, and what came back. */
export function ShopVisitsPage() {
  const { status } = useSearch({ from: '/signed-in/shop-visits' });
  const navigate = useNavigate({ from: '/shop-visits' });
  const query = useInfiniteQuery(shopVisitsQuery(status));
  const rows = (query.data?.pages ?? []).flatMap((page) => page.rows);
  const may = useMay('keep-records');
  const offline = useOfflineSince() !== null;
  const [sending, setSending] = useState(false);
  return (
    <>
      <PageHeading
        title="Shop visits"
        below={
          may ? undefined : <AuthorityNote act="Shop visits are recorded" by={holderWords('keep-records')} />
        }
        actions={
          <>
            {may && (
              <Button
                kind="primary"
                offBecause={offline ? OFF_WHILE_OFFLINE : null}
                onClick={() => setSending(true)}
              >
                Send to a shop
              </Button>
            )}
            <ActionLink href="/spares">Spares</ActionLink>
          </>
        }
      />
      <div className="row no-print">
        <SelectField
          label="Show"
          unchosen="All visits"
          value={status ?? ''}
          options={[
            { value: 'in-shop', label: 'In a shop now' },
            { value: 'returned', label: 'Returned' },
          ]}
          onChange={({ target }) =>
            void navigate({
              search:
                target.value === 'in-shop' || target.value === 'returned' ? { status: target.value } : {},
            })
          }
        />
      </div>
      <Answered query={query} doing="Reading the shop visits" lines={6}>
        {() => (
          <>
            <DataTable
              caption="Shop visits"
              captionHidden
              columns={VISIT_COLUMNS}
              rows={rows}
              rowKey={rowKey}
              empty={<EmptyState>No shop visit is recorded.</EmptyState>}
            />
            <div className="row">
              <p role="status">{counted(rows.length, 'visit')} shown</p>
              {query.hasNextPage && (
                <Button busy={query.isFetchingNextPage} onClick={() => void query.fetchNextPage()}>
                  {query.isFetchingNextPage ? 'Reading' : 'Show more'}
                </Button>
              )}
            </div>
          </>
        )}
      </Answered>
      <SheetDialog title="Send to a shop" shape="sheet" open={sending} onClose={() => setSending(false)}>
        <SendForm
          onSent={({ id, component }) => {
            announce(`${component.serialNumber} is sent to the shop.`);
            setSending(false);
            void navigate({ to: '/shop-visits/$visitId', params: { visitId: id } });
          }}
        />
      </SheetDialog>
    </>
  );
}
