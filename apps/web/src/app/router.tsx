import type { QueryClient } from '@tanstack/react-query';
import { createRoute, createRouter, lazyRouteComponent, redirect } from '@tanstack/react-router';
import { sessionQuery } from '../server/session.js';
import { NotFound } from './not-found.js';
import { PageError } from './page-error.js';
import { root, signedIn } from './routes/frame-routes.js';
import { powerplantRoutes } from './routes/powerplant-routes.js';
import { recordRoutes } from './routes/record-routes.js';
import { registerRoutes } from './routes/register-routes.js';
import { shopRoutes } from './routes/shop-routes.js';
import { workRoutes } from './routes/work-routes.js';

interface SignInSearch {
  /** Where to go afterwards: an address inside Strutbook. */
  readonly to?: string;
}

/** Only an address of this origin: '//other.example' would leave it. */
const ownAddress = (value: unknown): string | undefined =>
  typeof value === 'string' && /^\/(?![/\\])/.test(value) ? value : undefined;

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

const pin = createRoute({
  getParentRoute: () => root,
  path: '/pin',
  beforeLoad: async ({ context, location }) => {
    const session = await context.queries.ensureQueryData(sessionQuery);
    if (session === null) throw redirect({ to: '/sign-in', search: { to: location.href } });
    if (session.mustChangePassword) throw redirect({ to: '/password' });
  },
  component: lazyRouteComponent(() => import('../features/session/pin-page.js'), 'PinPage'),
});

const home = createRoute({
  getParentRoute: () => signedIn,
  path: '/',
  beforeLoad: () => {
    throw redirect({ to: '/positions', replace: true });
  },
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
  pin,
  gallery,
  signedIn.addChildren([
    home,
    ...powerplantRoutes,
    ...workRoutes,
    ...registerRoutes,
    ...recordRoutes,
    ...shopRoutes,
  ]),
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
