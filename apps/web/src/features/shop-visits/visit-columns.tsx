import { momentText } from '../../format/when.js';
import type { ShopVisitRow } from '../../server/shops/shop-records.js';
import { RouteLink } from '../../ui/actions/route-link.js';
import { SerialText } from '../../ui/status/serial-text.js';
import { StatusMark } from '../../ui/status/status-mark.js';
import type { Column } from '../../ui/table/column.js';

/** A visit by its state. */
export function VisitMark({ status }: { readonly status: ShopVisitRow['status'] }) {
  if (status === 'in-shop') return <StatusMark status="open" word="In the shop" />;
  if (status === 'returned') return <StatusMark status="closed" word="Returned" />;
  return <StatusMark status="rejected" word="Voided" />;
}

/** Visits, the last sent first: not sorted otherwise. */
export const VISIT_COLUMNS: readonly Column<ShopVisitRow>[] = [
  { id: 'status', header: 'Status', cell: ({ status }) => <VisitMark status={status} /> },
  {
    id: 'component',
    header: 'Component',
    namesRow: true,
    cell: ({ id, component }) => (
      <>
        <RouteLink href={`/shop-visits/${id}`}>
          <SerialText>{component.serialNumber}</SerialText>
        </RouteLink>
        <span className="visit-line small">
          {component.description}, <SerialText>{component.partNumber}</SerialText>
        </span>
      </>
    ),
  },
  {
    id: 'shop',
    header: 'Shop and order',
    cell: ({ shop, orderReference }) => (
      <>
        {shop}
        <span className="visit-line small">{orderReference}</span>
      </>
    ),
  },
  { id: 'workscope', header: 'Workscope', cell: ({ workscope }) => workscope },
  { id: 'sent', header: 'Sent', cell: ({ sentAt }) => momentText(sentAt) },
  {
    id: 'returned',
    header: 'Returned',
    cell: ({ returnedAt, report, certificate }) =>
      returnedAt === null ? (
        <span className="quiet">Not yet</span>
      ) : (
        <>
          {momentText(returnedAt)}
          <span className="visit-line small">
            {report}
            {certificate !== null && `, ${certificate}`}
          </span>
        </>
      ),
  },
];
