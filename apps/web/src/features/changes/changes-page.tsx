import { EmptyState } from '../../ui/messages/empty-state.js';
import { PageHeading } from '../../ui/page/page-heading.js';

/** Changes: not written yet. */
export function ChangesPage() {
  return (
    <>
      <PageHeading title="Changes" />
      <EmptyState>This page is not ready.</EmptyState>
    </>
  );
}
