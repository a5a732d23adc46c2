import { EmptyState } from '../../ui/messages/empty-state.js';
import { PageHeading } from '../../ui/page/page-heading.js';

/** Register: not written yet. */
export function RegisterPage() {
  return (
    <>
      <PageHeading title="Register" />
      <EmptyState>This page is not ready.</EmptyState>
    </>
  );
}
