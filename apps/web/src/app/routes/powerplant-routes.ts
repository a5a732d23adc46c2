import { createRoute, lazyRouteComponent } from '@tanstack/react-router';
import { signedIn } from './frame-routes.js';
import { optionalWord } from './search-params.js';

const positions = createRoute({
  getParentRoute: () => signedIn,
  path: '/positions',
  validateSearch: (search): { find?: string } => optionalWord(search, 'find'),
  component: lazyRouteComponent(() => import('../../features/positions/positions-page.js'), 'PositionsPage'),
});

const airframe = createRoute({
  getParentRoute: () => signedIn,
  path: '/positions/$airframeId',
  validateSearch: (search): { at?: string } => optionalWord(search, 'at'),
  component: lazyRouteComponent(() => import('../../features/positions/airframe-page.js'), 'AirframePage'),
});

const component = createRoute({
  getParentRoute: () => signedIn,
  path: '/components/$componentId',
  validateSearch: (search): { at?: string; tab?: string } => ({
    ...optionalWord(search, 'at'),
    ...optionalWord(search, 'tab'),
  }),
  component: lazyRouteComponent(() => import('../../features/component/component-page.js'), 'ComponentPage'),
});

const changes = createRoute({
  getParentRoute: () => signedIn,
  path: '/changes',
  validateSearch: (search): { airframe?: string; status?: 'open' | 'released' } => {
    const { status } = search;
    return {
      ...optionalWord(search, 'airframe'),
      ...(status === 'open' || status === 'released' ? { status } : {}),
    };
  },
  component: lazyRouteComponent(() => import('../../features/changes/changes-page.js'), 'ChangesPage'),
});

interface NewChangeSearch {
  readonly airframe?: string;
  readonly position?: string;
  readonly slot?: 'engine' | 'pod' | 'apu';
  /** The serial that comes off. */
  readonly off?: string;
}

const newChange = createRoute({
  getParentRoute: () => signedIn,
  path: '/changes/new',
  validateSearch: (search): NewChangeSearch => {
    const { slot } = search;
    return {
      ...optionalWord(search, 'airframe'),
      ...optionalWord(search, 'position'),
      ...optionalWord(search, 'off'),
      ...(slot === 'engine' || slot === 'pod' || slot === 'apu' ? { slot } : {}),
    };
  },
  component: lazyRouteComponent(() => import('../../features/changes/new-change-page.js'), 'NewChangePage'),
});

const workPackage = createRoute({
  getParentRoute: () => signedIn,
  path: '/changes/$packageId',
  component: lazyRouteComponent(() => import('../../features/packages/package-page.js'), 'PackagePage'),
});

const releaseCheck = createRoute({
  getParentRoute: () => signedIn,
  path: '/changes/$packageId/release-check',
  component: lazyRouteComponent(
    () => import('../../features/packages/release-check-page.js'),
    'ReleaseCheckPage',
  ),
});

const due = createRoute({
  getParentRoute: () => signedIn,
  path: '/due',
  validateSearch: (search): { airframe?: string } => optionalWord(search, 'airframe'),
  component: lazyRouteComponent(() => import('../../features/due-list/due-page.js'), 'DuePage'),
});

/** What stands where, what was changed, what falls due. */
export const powerplantRoutes = [
  positions,
  airframe,
  component,
  changes,
  newChange,
  workPackage,
  releaseCheck,
  due,
] as const;
