import { EmptyState } from '../../ui/messages/empty-state.js';
import { PageHeading } from '../../ui/page/page-heading.js';

/** History: not written yet. */
export function HistoryPage() {
  return (
    <>
      <PageHeading title="History" />
      <EmptyState>This page is not ready.</EmptyState>
    </>
  );
}
