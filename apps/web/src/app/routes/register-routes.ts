import { createRoute, lazyRouteComponent } from '@tanstack/react-router';
import { signedIn } from './frame-routes.js';
import { optionalWord } from './search-params.js';

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

const registerRevision = createRoute({
  getParentRoute: () => signedIn,
  path: '/register/life-limits/revision',
  component: lazyRouteComponent(
    () => import('../../features/register/models/revision-page.js'),
    'RevisionPage',
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
  validateSearch: (search): { ask?: string } => optionalWord(search, 'ask'),
  component: lazyRouteComponent(
    () => import('../../features/register/components/component-page.js'),
    'RegisterComponentPage',
  ),
});

const tools = createRoute({
  getParentRoute: () => signedIn,
  path: '/tools',
  validateSearch: (search): { find?: string; status?: string } => ({
    ...optionalWord(search, 'find'),
    ...optionalWord(search, 'status'),
  }),
  component: lazyRouteComponent(() => import('../../features/register/tools/tools-page.js'), 'ToolsPage'),
});

const tool = createRoute({
  getParentRoute: () => signedIn,
  path: '/tools/$toolId',
  component: lazyRouteComponent(() => import('../../features/register/tools/tool-page.js'), 'ToolPage'),
});

const procedures = createRoute({
  getParentRoute: () => signedIn,
  path: '/procedures',
  validateSearch: (search): { all?: true } => (search['all'] === true ? { all: true } : {}),
  component: lazyRouteComponent(
    () => import('../../features/register/procedures/procedures-page.js'),
    'ProceduresPage',
  ),
});

const procedure = createRoute({
  getParentRoute: () => signedIn,
  path: '/procedures/$procedureId',
  component: lazyRouteComponent(
    () => import('../../features/register/procedures/procedure-page.js'),
    'ProcedurePage',
  ),
});

const requirements = createRoute({
  getParentRoute: () => signedIn,
  path: '/requirements',
  validateSearch: (search): { find?: string; all?: true } => ({
    ...optionalWord(search, 'find'),
    ...(search['all'] === true ? { all: true } : {}),
  }),
  component: lazyRouteComponent(
    () => import('../../features/register/requirements/requirements-page.js'),
    'RequirementsPage',
  ),
});

const requirement = createRoute({
  getParentRoute: () => signedIn,
  path: '/requirements/$requirementId',
  component: lazyRouteComponent(
    () => import('../../features/register/requirements/requirement-page.js'),
    'RequirementPage',
  ),
});

const directives = createRoute({
  getParentRoute: () => signedIn,
  path: '/directives',
  validateSearch: (search): { airframe?: string; component?: string } => ({
    ...optionalWord(search, 'airframe'),
    ...optionalWord(search, 'component'),
  }),
  component: lazyRouteComponent(
    () => import('../../features/register/requirements/sheet/directives-page.js'),
    'DirectivesPage',
  ),
});

/** What the records rest on: fleet, models, components, tools, procedures and requirements. */
export const registerRoutes = [
  register,
  registerAirframeTypes,
  registerAirframes,
  registerAirframe,
  registerEngineModels,
  registerLifeLimits,
  registerRevision,
  registerLocations,
  registerComponents,
  registerComponent,
  tools,
  tool,
  procedures,
  procedure,
  requirements,
  requirement,
  directives,
] as const;
