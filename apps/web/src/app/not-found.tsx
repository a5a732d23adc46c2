import { ActionLink } from '../ui/actions/action-link.js';
import { PageHeading } from '../ui/page/page-heading.js';

/** An address that leads nowhere. */
export function NotFound() {
  return (
    <main className="page">
      <PageHeading title="There is no such page" />
      <p>
        The address <code>{window.location.pathname}</code> leads nowhere. It may be mistyped, or what stood
        there was never recorded.
      </p>
      <div>
        <ActionLink href="/positions">Go to Positions</ActionLink>
      </div>
    </main>
  );
}
