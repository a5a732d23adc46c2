import { createRoute, lazyRouteComponent } from '@tanstack/react-router';
import { signedIn } from './frame-routes.js';
import { optionalWord } from './search-params.js';

const flights = createRoute({
  getParentRoute: () => signedIn,
  path: '/flights',
  validateSearch: (search): { airframe?: string; voided?: false } => ({
    ...optionalWord(search, 'airframe'),
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

const register = createRoute({
  getParentRoute: () => signedIn,
  path: '/register',
  component: lazyRouteComponent(() => import('../../features/register/register-page.js'), 'RegisterPage'),
});

const registerAirframeTypes = createRoute({
  getParentRoute: () => signedIn,
  path: '/register/airframe-types',
  component: lazyRouteComponent(
    () => import('../../features/register/fleet/airframe-types-page.js'),
    'AirframeTypesPage',
  ),
});

const registerAirframes = createRoute({
  getParentRoute: () => signedIn,
  path: '/register/airframes',
  component: lazyRouteComponent(
    () => import('../../features/register/fleet/airframes-page.js'),
    'AirframesPage',
  ),
});

const registerAirframe = createRoute({
  getParentRoute: () => signedIn,
  path: '/register/airframes/$airframeId',
  component: lazyRouteComponent(
    () => import('../../features/register/fleet/airframe-page.js'),
    'AirframePage',
  ),
});

const registerEngineModels = createRoute({
  getParentRoute: () => signedIn,
  path: '/register/engine-models',
  component: lazyRouteComponent(
    () => import('../../features/register/models/engine-models-page.js'),
    'EngineModelsPage',
  ),
});

const registerLifeLimits = createRoute({
  getParentRoute: () => signedIn,
  path: '/register/life-limits',
  validateSearch: (search): { find?: string } => optionalWord(search, 'find'),
  component: lazyRouteComponent(
    () => import('../../features/register/models/life-limits-page.js'),
    'LifeLimitsPage',
  ),
});

const registerLocations = createRoute({
  getParentRoute: () => signedIn,
  path: '/register/locations',
  component: lazyRouteComponent(
    () => import('../../features/register/fleet/locations-page.js'),
    'LocationsPage',
  ),
});

const registerComponents = createRoute({
  getParentRoute: () => signedIn,
  path: '/register/components',
  validateSearch: (search): { kind?: string; find?: string } => ({
    ...optionalWord(search, 'kind'),
    ...optionalWord(search, 'find'),
  }),
  component: lazyRouteComponent(
    () => import('../../features/register/components/components-page.js'),
    'ComponentsPage',
  ),
});

const registerComponent = createRoute({
  getParentRoute: () => signedIn,
  path: '/register/components/$componentId',
  component: lazyRouteComponent(
    () => import('../../features/register/components/component-page.js'),
    'RegisterComponentPage',
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

/** Flights, the register, histories, imports and people. */
export const recordRoutes = [
  flights,
  flightsEnter,
  register,
  registerAirframeTypes,
  registerAirframes,
  registerAirframe,
  registerEngineModels,
  registerLifeLimits,
  registerLocations,
  registerComponents,
  registerComponent,
  history,
  airframeHistory,
  componentHistory,
  imports,
  importFile,
  people,
] as const;
