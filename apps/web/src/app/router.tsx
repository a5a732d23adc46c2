import type { QueryClient } from '@tanstack/react-query';
import {
  createRootRouteWithContext,
  createRoute,
  createRouter,
  lazyRouteComponent,
  Outlet,
  redirect,
} from '@tanstack/react-router';
import { sessionQuery } from '../server/session.js';
import { NotFound } from './not-found.js';
import { PageError } from './page-error.js';
import { Shell } from './shell.js';

export interface RouterContext {
  readonly queries: QueryClient;
}

interface SignInSearch {
  /** Where to go afterwards: an address inside Strutbook. */
  readonly to?: string;
}

/** Only an address of this origin: '//other.example' would leave it. */
const ownAddress = (value: unknown): string | undefined =>
  typeof value === 'string' && /^\/(?![/\\])/.test(value) ? value : undefined;

const root = createRootRouteWithContext<RouterContext>()({ component: Outlet, notFoundComponent: NotFound });

const signIn = createRoute({
  getParentRoute: () => root,
  path: '/sign-in',
  validateSearch: (search: Record<string, unknown>): SignInSearch => {
    const to = ownAddress(search['to']);
    return to === undefined ? {} : { to };
  },
  component: lazyRouteComponent(() => import('../features/session/sign-in-page.js'), 'SignInPage'),
});

const password = createRoute({
  getParentRoute: () => root,
  path: '/password',
  beforeLoad: async ({ context, location }) => {
    const session = await context.queries.ensureQueryData(sessionQuery);
    if (session === null) throw redirect({ to: '/sign-in', search: { to: location.href } });
  },
  component: lazyRouteComponent(() => import('../features/session/password-page.js'), 'PasswordPage'),
});

const signedIn = createRoute({
  getParentRoute: () => root,
  id: 'signed-in',
  component: Shell,
  beforeLoad: async ({ context, location }) => {
    const session = await context.queries.ensureQueryData(sessionQuery);
    if (session === null) throw redirect({ to: '/sign-in', search: { to: location.href } });
    if (session.mustChangePassword) throw redirect({ to: '/password' });
  },
});

const home = createRoute({
  getParentRoute: () => signedIn,
  path: '/',
  beforeLoad: () => {
    throw redirect({ to: '/positions', replace: true });
  },
});

const positions = createRoute({
  getParentRoute: () => signedIn,
  path: '/positions',
  component: lazyRouteComponent(() => import('../features/positions/positions-page.js'), 'PositionsPage'),
});

const flights = createRoute({
  getParentRoute: () => signedIn,
  path: '/flights',
  component: lazyRouteComponent(() => import('../features/flights/flights-page.js'), 'FlightsPage'),
});

const changes = createRoute({
  getParentRoute: () => signedIn,
  path: '/changes',
  component: lazyRouteComponent(() => import('../features/changes/changes-page.js'), 'ChangesPage'),
});

const due = createRoute({
  getParentRoute: () => signedIn,
  path: '/due',
  component: lazyRouteComponent(() => import('../features/due-list/due-page.js'), 'DuePage'),
});

const register = createRoute({
  getParentRoute: () => signedIn,
  path: '/register',
  component: lazyRouteComponent(() => import('../features/register/register-page.js'), 'RegisterPage'),
});

const history = createRoute({
  getParentRoute: () => signedIn,
  path: '/history',
  component: lazyRouteComponent(() => import('../features/history/history-page.js'), 'HistoryPage'),
});

const imports = createRoute({
  getParentRoute: () => signedIn,
  path: '/imports',
  component: lazyRouteComponent(() => import('../features/imports/imports-page.js'), 'ImportsPage'),
});

const people = createRoute({
  getParentRoute: () => signedIn,
  path: '/people',
  component: lazyRouteComponent(() => import('../features/people/people-page.js'), 'PeoplePage'),
});

const gallery = createRoute({
  getParentRoute: () => root,
  path: '/gallery',
  component: __GALLERY__
    ? lazyRouteComponent(() => import('../gallery/gallery-page.js'), 'GalleryPage')
    : NotFound,
});

const tree = root.addChildren([
  signIn,
  password,
  gallery,
  signedIn.addChildren([home, positions, flights, changes, due, register, history, imports, people]),
]);

/** The pages by their addresses. Each is fetched when first opened. */
export function createPages(queries: QueryClient) {
  return createRouter({
    routeTree: tree,
    context: { queries },
    defaultErrorComponent: PageError,
    defaultNotFoundComponent: NotFound,
    defaultPreload: 'intent',
    // What was read is kept by the query store alone.
    defaultPreloadStaleTime: 0,
    scrollRestoration: true,
  });
}

declare module '@tanstack/react-router' {
  interface Register {
    router: ReturnType<typeof createPages>;
  }
}
