import { EmptyState } from '../../ui/messages/empty-state.js';
import { PageHeading } from '../../ui/page/page-heading.js';

/** Flights: not written yet. */
export function FlightsPage() {
  return (
    <>
      <PageHeading title="Flights" />
      <EmptyState>This page is not ready.</EmptyState>
    </>
  );
}
