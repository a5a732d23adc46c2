import { useQuery } from '@tanstack/react-query';
import { useParams, useSearch } from '@tanstack/react-router';
import { PackageActions } from '../../features/packages/package-actions.js';
import { PackageBelow, packageTitle } from '../../features/packages/package-head.js';
import { PackagePage } from '../../features/packages/package-page.js';
import { ReleasedPart } from '../../features/packages/release/released-part.js';
import { Workspace } from '../../features/workspace/workspace.js';
import { hasSteps, packageQuery, type WorkPackage } from '../../server/work.js';
import { Button } from '../../ui/actions/button.js';
import { PageHeading } from '../../ui/page/page-heading.js';

/** A package worked by steps: what it is, its workspace, and its release once it has one. */
function SteppedPackage({ work, step }: { readonly work: WorkPackage; readonly step: string | undefined }) {
  return (
    <>
      <div className="no-print">
        <PageHeading
          title={packageTitle(work)}
          serial={work.number}
          below={<PackageBelow work={work} />}
          actions={
            <>
              <PackageActions work={work} />
              <Button onClick={() => window.print()}>Print</Button>
            </>
          }
        />
      </div>
      <Workspace packageId={work.id} step={step} />
      {work.release !== null && <ReleasedPart releaseId={work.release.id} />}
    </>
  );
}

/** A package: its workspace when it is worked by steps, else the change it records. */
export function PackageRoute() {
  const { packageId } = useParams({ from: '/signed-in/packages/$packageId' });
  const { step } = useSearch({ from: '/signed-in/packages/$packageId' });
  const work = useQuery(packageQuery(packageId)).data;
  return work !== undefined && hasSteps(work) ? (
    <SteppedPackage work={work} step={step} />
  ) : (
    <PackagePage packageId={packageId} />
  );
}
