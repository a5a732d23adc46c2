import type { HttpClient } from '../http-client.js';
import { instantAt } from '../scenario/instants.js';
import { done } from '../scenario/problem.js';
import type { FullRegister } from './full-register.js';
import { get, type NamingRequest, post } from './naming-request.js';

type Ids = FullRegister['ids'];
type WithId = { readonly id: string };

const reason = { reason: 'Test' };
const TAG = { status: 'unserviceable', tagNumber: 'T-1', reason: 'Found worn', at: instantAt(50) };
const PRESERVED = { at: instantAt(50), method: 'Bagged', goodUntil: '2026-01-01', document: 'Manual' };
const RETURN = {
  returnedAt: instantAt(90),
  locationName: 'Store',
  report: 'SR-1',
  certificate: 'C-1',
  workDone: 'Inspected',
};

/** A component in a shop, tagged and preserved. */
export async function inShop(client: HttpClient, componentId: string) {
  done(await client.post('/api/locations', { name: 'Shop', kind: 'shop' }));
  const idOf = async (path: string, body: object) =>
    done(await client.post<WithId>(path, { componentId, ...body })).id;
  return {
    shopVisit: await idOf('/api/shop-visits', {
      ...{ locationName: 'Shop', orderReference: 'RO-1', workscope: 'Inspect' },
      sentAt: instantAt(60),
    }),
    tag: await idOf('/api/serviceability-tags', TAG),
    preservation: await idOf('/api/preservations', PRESERVED),
  };
}

/** Requests that name shop visits, tags and preservations, and what they are of. */
export function aboutShops(theirs: Ids): NamingRequest[] {
  const visit = { locationName: 'Shop', orderReference: 'RO-2', workscope: 'W', sentAt: instantAt(70) };
  return [
    get('/api/shop-visits/{id}', theirs.shopVisit),
    get('/api/components/{id}/serviceability', theirs.component),
    post('/api/shop-visits', { ...visit, componentId: theirs.component }),
    post('/api/shop-visits/{id}/return', RETURN, theirs.shopVisit),
    post('/api/shop-visits/{id}/void', reason, theirs.shopVisit),
    post('/api/shop-visits/{id}/return/void', reason, theirs.shopVisit),
    post('/api/serviceability-tags', { ...TAG, componentId: theirs.component }),
    post('/api/serviceability-tags/{id}/void', reason, theirs.tag),
    post('/api/preservations', { ...PRESERVED, componentId: theirs.component }),
    post('/api/preservations/{id}/void', reason, theirs.preservation),
  ];
}
