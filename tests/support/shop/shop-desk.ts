import type { Answer, HttpClient } from '../http-client.js';
import { instantAt } from '../scenario/instants.js';

/** A component in a build, as far as tests look. */
export interface BuiltAnswer {
  readonly serialNumber: string;
  readonly life: { readonly remainingCycles: number | null } | null;
}

/** A build standard, as far as tests look. */
export interface BuildAnswer {
  readonly ratingCode: string | null;
  readonly sinceNew: PairAnswer;
  readonly sinceOverhaul: PairAnswer | null;
  readonly sinceShopVisit: PairAnswer | null;
  readonly slots: readonly {
    readonly name: string;
    readonly component: (BuiltAnswer & { readonly sinceNew: PairAnswer }) | null;
  }[];
}

/** A pair of counters. */
export interface PairAnswer {
  readonly minutes: number | null;
  readonly cycles: { readonly units: number; readonly denominator: number } | null;
}

/** A visit in full, as far as tests look. */
export interface VisitAnswer {
  readonly id: string;
  readonly status: string;
  readonly build: BuildAnswer;
  readonly returned: {
    readonly build: BuildAnswer;
    readonly changes: readonly { readonly disposition: string | null }[];
    readonly objections: readonly { readonly code: string; readonly subject: { readonly id: string } }[];
  } | null;
  readonly difference: {
    readonly slots: readonly {
      readonly name: string;
      readonly before: BuiltAnswer | null;
      readonly after: BuiltAnswer | null;
    }[];
    readonly counters: readonly { readonly counter: string }[];
    readonly rating: { readonly before: string | null; readonly after: string | null } | null;
    readonly requirements: readonly { readonly code: string }[];
    readonly tightestCycles: { readonly before: number | null; readonly after: number | null };
  } | null;
}

/** Sends a component to the location 'Engine shop'. */
export function send(
  client: HttpClient,
  componentId: string,
  minute: number,
  more: object = {},
): Promise<Answer<VisitAnswer>> {
  return client.post('/api/shop-visits', {
    ...{ componentId, locationName: 'Engine shop', orderReference: 'RO-7', workscope: 'Restore the core' },
    sentAt: instantAt(minute),
    ...more,
  });
}

/** Records the return of a visit to the location 'Store'. */
export function giveBack(
  client: HttpClient,
  visitId: string,
  minute: number,
  more: object = {},
): Promise<Answer<VisitAnswer>> {
  return client.post(`/api/shop-visits/${visitId}/return`, {
    ...{ returnedAt: instantAt(minute), locationName: 'Store', report: 'SR-7', certificate: 'C-7' },
    workDone: 'Core restored, test run passed',
    ...more,
  });
}
