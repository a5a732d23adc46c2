import { EmptyState } from '../../ui/messages/empty-state.js';
import { PageHeading } from '../../ui/page/page-heading.js';

/** People: not written yet. */
export function PeoplePage() {
  return (
    <>
      <PageHeading title="People" />
      <EmptyState>This page is not ready.</EmptyState>
    </>
  );
}
