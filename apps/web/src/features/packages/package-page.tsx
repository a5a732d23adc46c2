import { useQuery } from '@tanstack/react-query';
import { packageQuery } from '../../server/work.js';
import { Button } from '../../ui/actions/button.js';
import { Answered } from '../../ui/messages/answered.js';
import { EmptyState } from '../../ui/messages/empty-state.js';
import { PageHeading } from '../../ui/page/page-heading.js';
import { ChangeRecord } from './change-record.js';
import { OrderPart } from './order/ordered.js';
import { PackageActions } from './package-actions.js';
import { PackageBelow, packageTitle } from './package-head.js';
import { ReleasedPart } from './release/released-part.js';
import './packages.css';

/** A package without steps: what was changed, and its release or the way to it. */
export function PackagePage({ packageId }: { readonly packageId: string }) {
  const query = useQuery(packageQuery(packageId));
  const work = query.data;
  return (
    <>
      <PageHeading
        title={packageTitle(work)}
        serial={work?.number}
        below={work && <PackageBelow work={work} />}
        actions={
          work && (
            <>
              <PackageActions work={work} releaseFirst />
              <Button onClick={() => window.print()}>Print</Button>
            </>
          )
        }
      />
      <Answered query={query} doing="Reading the package" lines={8}>
        {({ changes, release, order }) => (
          <>
            {changes.length === 0 && order !== null && <OrderPart order={order} />}
            {changes.length === 0 && order === null && (
              <EmptyState>Nothing was changed in this package, and it has no steps.</EmptyState>
            )}
            {changes.map((change) => (
              <ChangeRecord key={`${change.position?.id ?? ''} ${change.slot}`} change={change} />
            ))}
            {release !== null && <ReleasedPart releaseId={release.id} />}
          </>
        )}
      </Answered>
    </>
  );
}
