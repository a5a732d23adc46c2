import { EmptyState } from '../../ui/messages/empty-state.js';
import { PageHeading } from '../../ui/page/page-heading.js';

/** Imports: not written yet. */
export function ImportsPage() {
  return (
    <>
      <PageHeading title="Imports" />
      <EmptyState>This page is not ready.</EmptyState>
    </>
  );
}
