import { createRoute, lazyRouteComponent, redirect } from '@tanstack/react-router';
import { isPackageKind } from '../../format/package-words.js';
import type { PackageKind, PackageStatus } from '../../server/work.js';
import { signedIn } from './frame-routes.js';
import { optionalWord } from './search-params.js';

type Slot = 'engine' | 'pod' | 'apu';

const slotIn = ({ slot }: Record<string, unknown>): { slot?: Slot } =>
  slot === 'engine' || slot === 'pod' || slot === 'apu' ? { slot } : {};

interface WorkSearch {
  readonly airframe?: string;
  readonly kind?: PackageKind;
  readonly status?: PackageStatus;
}

const kindIn = ({ kind }: Record<string, unknown>): { kind?: PackageKind } =>
  isPackageKind(kind) ? { kind } : {};

const statusIn = ({ status }: Record<string, unknown>): { status?: PackageStatus } =>
  status === 'open' || status === 'released' || status === 'withdrawn' ? { status } : {};

const work = createRoute({
  getParentRoute: () => signedIn,
  path: '/work',
  validateSearch: (search): WorkSearch => ({
    ...optionalWord(search, 'airframe'),
    ...kindIn(search),
    ...statusIn(search),
  }),
  component: lazyRouteComponent(() => import('../../features/work/work-page.js'), 'WorkPage'),
});

interface NewPackageSearch {
  readonly kind?: PackageKind;
  readonly airframe?: string;
  readonly component?: string;
  readonly position?: string;
  readonly slot?: Slot;
  /** A requirement it is to close. */
  readonly requirement?: string;
}

const newPackage = createRoute({
  getParentRoute: () => signedIn,
  path: '/packages/new',
  validateSearch: (search): NewPackageSearch => ({
    ...kindIn(search),
    ...optionalWord(search, 'airframe'),
    ...optionalWord(search, 'component'),
    ...optionalWord(search, 'position'),
    ...optionalWord(search, 'requirement'),
    ...slotIn(search),
  }),
  component: lazyRouteComponent(
    () => import('../../features/packages/opening/new-package-page.js'),
    'NewPackagePage',
  ),
});

const workPackage = createRoute({
  getParentRoute: () => signedIn,
  path: '/packages/$packageId',
  validateSearch: (search): { step?: string } => optionalWord(search, 'step'),
  component: lazyRouteComponent(() => import('./package-route.js'), 'PackageRoute'),
});

const releaseCheck = createRoute({
  getParentRoute: () => signedIn,
  path: '/packages/$packageId/release-check',
  component: lazyRouteComponent(
    () => import('../../features/packages/release/release-check-page.js'),
    'ReleaseCheckPage',
  ),
});

interface NewChangeSearch {
  readonly airframe?: string;
  readonly position?: string;
  readonly slot?: Slot;
  /** The serial that comes off. */
  readonly off?: string;
}

const newChange = createRoute({
  getParentRoute: () => signedIn,
  path: '/changes/new',
  validateSearch: (search): NewChangeSearch => ({
    ...optionalWord(search, 'airframe'),
    ...optionalWord(search, 'position'),
    ...optionalWord(search, 'off'),
    ...slotIn(search),
  }),
  component: lazyRouteComponent(() => import('../../features/changes/new-change-page.js'), 'NewChangePage'),
});

// Addresses of before, kept for links in letters and bookmarks.
const oldChanges = createRoute({
  getParentRoute: () => signedIn,
  path: '/changes',
  validateSearch: (search): WorkSearch => ({
    ...optionalWord(search, 'airframe'),
    ...statusIn(search),
  }),
  beforeLoad: ({ search }) => {
    throw redirect({ to: '/work', search, replace: true });
  },
});

const oldChange = createRoute({
  getParentRoute: () => signedIn,
  path: '/changes/$packageId',
  beforeLoad: ({ params }) => {
    throw redirect({ to: '/packages/$packageId', params, replace: true });
  },
});

const oldReleaseCheck = createRoute({
  getParentRoute: () => signedIn,
  path: '/changes/$packageId/release-check',
  beforeLoad: ({ params }) => {
    throw redirect({ to: '/packages/$packageId/release-check', params, replace: true });
  },
});

/** Work: what waits, packages and their release, changes logged afterwards. */
export const workRoutes = [
  work,
  newPackage,
  workPackage,
  releaseCheck,
  newChange,
  oldChanges,
  oldChange,
  oldReleaseCheck,
] as const;
