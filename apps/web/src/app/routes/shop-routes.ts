import { createRoute, lazyRouteComponent } from '@tanstack/react-router';
import { signedIn } from './frame-routes.js';
import { optionalWord } from './search-params.js';

interface SparesSearch {
  readonly kind?: string;
  readonly location?: string;
  readonly fit?: string;
  readonly find?: string;
  readonly slot?: string;
  readonly sort?: string;
}

const spares = createRoute({
  getParentRoute: () => signedIn,
  path: '/spares',
  validateSearch: (search): SparesSearch => ({
    ...optionalWord(search, 'kind'),
    ...optionalWord(search, 'location'),
    ...optionalWord(search, 'fit'),
    ...optionalWord(search, 'find'),
    ...optionalWord(search, 'slot'),
    ...optionalWord(search, 'sort'),
  }),
  component: lazyRouteComponent(() => import('../../features/spares/spares-page.js'), 'SparesPage'),
});

const shopVisits = createRoute({
  getParentRoute: () => signedIn,
  path: '/shop-visits',
  validateSearch: ({ status }): { status?: 'in-shop' | 'returned' } =>
    status === 'in-shop' || status === 'returned' ? { status } : {},
  component: lazyRouteComponent(
    () => import('../../features/shop-visits/shop-visits-page.js'),
    'ShopVisitsPage',
  ),
});

const shopVisit = createRoute({
  getParentRoute: () => signedIn,
  path: '/shop-visits/$visitId',
  component: lazyRouteComponent(
    () => import('../../features/shop-visits/shop-visit-page.js'),
    'ShopVisitPage',
  ),
});

const shopReturn = createRoute({
  getParentRoute: () => signedIn,
  path: '/shop-visits/$visitId/return',
  component: lazyRouteComponent(() => import('../../features/shop-visits/return-page.js'), 'ReturnPage'),
});

/** What lies there, and what is in a shop. */
export const shopRoutes = [spares, shopVisits, shopVisit, shopReturn] as const;
