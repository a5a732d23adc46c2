import type { QueryClient } from '@tanstack/react-query';
import { createRootRouteWithContext, createRoute, Outlet, redirect } from '@tanstack/react-router';
import { sessionQuery } from '../../server/session.js';
import { NotFound } from '../not-found.js';
import { Shell } from '../shell.js';

export interface RouterContext {
  readonly queries: QueryClient;
}

/** Above every page. */
export const root = createRootRouteWithContext<RouterContext>()({
  component: Outlet,
  notFoundComponent: NotFound,
});

/** Above every page of a signed-in person. */
export const signedIn = createRoute({
  getParentRoute: () => root,
  id: 'signed-in',
  component: Shell,
  beforeLoad: async ({ context, location }) => {
    const session = await context.queries.ensureQueryData(sessionQuery);
    if (session === null) throw redirect({ to: '/sign-in', search: { to: location.href } });
    if (session.mustChangePassword) throw redirect({ to: '/password' });
  },
});
