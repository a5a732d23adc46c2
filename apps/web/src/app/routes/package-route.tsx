import { useQuery } from '@tanstack/react-query';
import { useParams } from '@tanstack/react-router';
import { PackagePage } from '../../features/packages/package-page.js';
import { packageQuery } from '../../server/work.js';

/** A package: its workspace when it is worked by steps, else the change it records. */
export function PackageRoute() {
  const { packageId } = useParams({ from: '/signed-in/packages/$packageId' });
  useQuery(packageQuery(packageId));
  return <PackagePage packageId={packageId} />;
}
