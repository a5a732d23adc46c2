import { EmptyState } from '../../ui/messages/empty-state.js';
import { PageHeading } from '../../ui/page/page-heading.js';

/** Due: not written yet. */
export function DuePage() {
  return (
    <>
      <PageHeading title="Due" />
      <EmptyState>This page is not ready.</EmptyState>
    </>
  );
}
