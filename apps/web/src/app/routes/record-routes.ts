import { createRoute, lazyRouteComponent } from '@tanstack/react-router';
import { signedIn } from './frame-routes.js';
import { optionalWord } from './search-params.js';

const flights = createRoute({
  getParentRoute: () => signedIn,
  path: '/flights',
  validateSearch: (search): { airframe?: string; flight?: string; voided?: false } => ({
    ...optionalWord(search, 'airframe'),
    ...optionalWord(search, 'flight'),
    ...(search['voided'] === false ? { voided: false } : {}),
  }),
  component: lazyRouteComponent(() => import('../../features/flights/flights-page.js'), 'FlightsPage'),
});

const flightsEnter = createRoute({
  getParentRoute: () => signedIn,
  path: '/flights/enter',
  validateSearch: (search): { airframe?: string } => optionalWord(search, 'airframe'),
  component: lazyRouteComponent(() => import('../../features/flights/entry/enter-page.js'), 'EnterPage'),
});

const groundRuns = createRoute({
  getParentRoute: () => signedIn,
  path: '/flights/runs',
  validateSearch: (search): { airframe?: string } => optionalWord(search, 'airframe'),
  component: lazyRouteComponent(
    () => import('../../features/counting/runs/ground-runs-page.js'),
    'GroundRunsPage',
  ),
});

const testCells = createRoute({
  getParentRoute: () => signedIn,
  path: '/flights/test-cells',
  component: lazyRouteComponent(
    () => import('../../features/counting/runs/test-cells-page.js'),
    'TestCellsPage',
  ),
});

const history = createRoute({
  getParentRoute: () => signedIn,
  path: '/history',
  component: lazyRouteComponent(() => import('../../features/history/history-page.js'), 'HistoryPage'),
});

interface HistorySearch {
  readonly kind?: string;
  readonly year?: string;
  readonly find?: string;
  readonly order?: 'oldest';
}

const historySearch = (search: Record<string, unknown>): HistorySearch => ({
  ...optionalWord(search, 'kind'),
  ...optionalWord(search, 'year'),
  ...optionalWord(search, 'find'),
  ...(search['order'] === 'oldest' ? { order: 'oldest' } : {}),
});

const airframeHistory = createRoute({
  getParentRoute: () => signedIn,
  path: '/history/airframes/$airframeId',
  validateSearch: historySearch,
  component: lazyRouteComponent(
    () => import('../../features/history/airframe-history-page.js'),
    'AirframeHistoryPage',
  ),
});

const componentHistory = createRoute({
  getParentRoute: () => signedIn,
  path: '/history/components/$componentId',
  validateSearch: historySearch,
  component: lazyRouteComponent(
    () => import('../../features/history/component-history-page.js'),
    'ComponentHistoryPage',
  ),
});

const trialBalance = createRoute({
  getParentRoute: () => signedIn,
  path: '/trial-balance',
  validateSearch: (search): { airframe?: string; upTo?: string } => ({
    ...optionalWord(search, 'airframe'),
    ...optionalWord(search, 'upTo'),
  }),
  component: lazyRouteComponent(
    () => import('../../features/trial-balance/trial-balance-page.js'),
    'TrialBalancePage',
  ),
});

const imports = createRoute({
  getParentRoute: () => signedIn,
  path: '/imports',
  component: lazyRouteComponent(() => import('../../features/imports/imports-page.js'), 'ImportsPage'),
});

const importFile = createRoute({
  getParentRoute: () => signedIn,
  path: '/imports/$importId',
  component: lazyRouteComponent(() => import('../../features/imports/import-page.js'), 'ImportPage'),
});

const people = createRoute({
  getParentRoute: () => signedIn,
  path: '/people',
  component: lazyRouteComponent(() => import('../../features/people/people-page.js'), 'PeoplePage'),
});

const myAuthority = createRoute({
  getParentRoute: () => signedIn,
  path: '/my-authority',
  component: lazyRouteComponent(
    () => import('../../features/people/authorisations/my-authority-page.js'),
    'MyAuthorityPage',
  ),
});

/** Flights, histories, the trial balance, imports and people. */
export const recordRoutes = [
  flights,
  flightsEnter,
  groundRuns,
  testCells,
  history,
  airframeHistory,
  componentHistory,
  trialBalance,
  imports,
  importFile,
  people,
  myAuthority,
] as const;
