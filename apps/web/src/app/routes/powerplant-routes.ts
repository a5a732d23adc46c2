import { createRoute, lazyRouteComponent } from '@tanstack/react-router';
import { DUE_SEARCH, type DueSearch } from '../../features/due-list/due-search.js';
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
  component: lazyRouteComponent(() => import('./airframe-route.js'), 'AirframeRoute'),
});

const readiness = createRoute({
  getParentRoute: () => signedIn,
  path: '/positions/$airframeId/readiness',
  component: lazyRouteComponent(
    () => import('../../features/planned-flying/readiness-page.js'),
    'ReadinessPage',
  ),
});

const component = createRoute({
  getParentRoute: () => signedIn,
  path: '/components/$componentId',
  validateSearch: (search): { at?: string; tab?: string } => ({
    ...optionalWord(search, 'at'),
    ...optionalWord(search, 'tab'),
  }),
  component: lazyRouteComponent(() => import('./component-route.js'), 'ComponentRoute'),
});

const lifeStatus = createRoute({
  getParentRoute: () => signedIn,
  path: '/components/$componentId/life-status',
  validateSearch: (search): { at?: string } => optionalWord(search, 'at'),
  component: lazyRouteComponent(
    () => import('../../features/life-status/life-status-page.js'),
    'LifeStatusPage',
  ),
});

type Moment = { at?: string; page?: string; beforeFirst?: string; afterLast?: string; airframeId?: string };

const momentIn = (search: Readonly<Record<string, unknown>>): Moment => ({
  ...optionalWord(search, 'at'),
  ...optionalWord(search, 'page'),
  ...optionalWord(search, 'beforeFirst'),
  ...optionalWord(search, 'afterLast'),
  ...optionalWord(search, 'airframeId'),
});

const counters = createRoute({
  getParentRoute: () => signedIn,
  path: '/components/$componentId/counters',
  validateSearch: (search): Moment & { basis?: string } => ({
    ...momentIn(search),
    ...optionalWord(search, 'basis'),
  }),
  component: lazyRouteComponent(() => import('../../features/counters/counters-page.js'), 'CountersPage'),
});

const airframeCounters = createRoute({
  getParentRoute: () => signedIn,
  path: '/positions/$airframeId/counters',
  validateSearch: momentIn,
  component: lazyRouteComponent(
    () => import('../../features/counters/airframe-counters-page.js'),
    'AirframeCountersPage',
  ),
});

const due = createRoute({
  getParentRoute: () => signedIn,
  path: '/due',
  validateSearch: (search): DueSearch =>
    Object.assign({}, ...DUE_SEARCH.map((name) => optionalWord(search, name))) as DueSearch,
  component: lazyRouteComponent(() => import('../../features/due-list/due-page.js'), 'DuePage'),
});

/** What stands where, and what falls due. */
export const powerplantRoutes = [
  positions,
  airframe,
  readiness,
  airframeCounters,
  component,
  counters,
  lifeStatus,
  due,
] as const;
