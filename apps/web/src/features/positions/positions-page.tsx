import { EmptyState } from '../../ui/messages/empty-state.js';
import { PageHeading } from '../../ui/page/page-heading.js';

/** Positions: not written yet. */
export function PositionsPage() {
  return (
    <>
      <PageHeading title="Positions" />
      <EmptyState>This page is not ready.</EmptyState>
    </>
  );
}
