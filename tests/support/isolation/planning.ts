import type { HttpClient } from '../http-client.js';
import { done } from '../scenario/problem.js';
import type { FullRegister } from './full-register.js';
import { get, type NamingRequest, post } from './naming-request.js';

type Ids = FullRegister['ids'];

const RATE = { fromOn: '2025-01-01', days: 7, minutes: 600, flights: 7, source: 'S' };
const FLIGHT = { takeOffAt: '2099-01-01T10:00Z', landingAt: '2099-01-01T11:00Z' };
const LATER = { takeOffAt: '2099-01-02T10:00Z', landingAt: '2099-01-02T11:00Z' };
const reason = { reason: 'Test' };

/** A rate and a flight that an airframe is planned to fly. */
export async function plannedFlying(
  client: HttpClient,
  airframeId: string,
): Promise<{ readonly plannedRate: string; readonly plannedFlight: string }> {
  const of = `/api/airframes/${airframeId}`;
  const rate = done(await client.post<{ readonly id: string }>(`${of}/planned-rates`, RATE));
  done(await client.post(`${of}/planned-flights`, { flights: [FLIGHT], replace: false }));
  const { flights } = done(
    await client.get<{ readonly flights: readonly { readonly id: string }[] }>(`${of}/planned-flights`),
  );
  return { plannedRate: rate.id, plannedFlight: flights[0]?.id ?? '' };
}

/** Requests that name what is planned to be flown, and the airframe it is planned for. */
export function aboutPlanning({ airframe, plannedFlight, plannedRate }: Ids): NamingRequest[] {
  return [
    get('/api/airframes/{id}/planned-flights', airframe),
    get('/api/airframes/{id}/planned-rates', airframe),
    post('/api/airframes/{id}/planned-flights', { flights: [LATER], replace: false }, airframe),
    post('/api/airframes/{id}/planned-rates', { ...RATE, fromOn: '2025-02-01' }, airframe),
    post('/api/airframes/{id}/readiness', {}, airframe),
    post('/api/planned-flights/{id}/void', reason, plannedFlight),
    post('/api/planned-rates/{id}/void', reason, plannedRate),
  ];
}
