import { dataOrThrow } from '@strutbook/api-client/index.js';
import type { components } from '@strutbook/api-client/schema.gen.js';
import { infiniteQueryOptions } from '@tanstack/react-query';
import type { ActHeaders } from '../../server/act.js';
import { api } from '../../server/api.js';

type Shapes = components['schemas'];
export type LoggedFlight = Shapes['LoggedFlightDto'];
export type FlightGap = Shapes['FlightGapDto'];
export type GapNote = Shapes['GapNoteDto'];
export type NewFlight = Shapes['NewFlightDto'];
export type NewException = Shapes['NewFlightExceptionDto'];
export type FlightsAnswer = Shapes['FlightsAnswerDto'];

export const FLIGHTS_KEY = ['flights'] as const;

/** Flights of an airframe, newest first, a page at a time. */
export const flightsQuery = (airframeId: string, voided: boolean) =>
  infiniteQueryOptions({
    queryKey: [...FLIGHTS_KEY, airframeId, voided],
    enabled: airframeId !== '',
    initialPageParam: null as string | null,
    queryFn: async ({ signal, pageParam }) =>
      dataOrThrow(
        await api.GET('/api/airframes/{id}/flights', {
          params: {
            path: { id: airframeId },
            query: { voided: voided ? 'true' : 'false', ...(pageParam === null ? {} : { after: pageParam }) },
          },
          signal,
        }),
      ),
    getNextPageParam: (page) => page.next,
  });

/** Saves flights of an airframe, all or none. Throws: ProblemError. */
export async function logFlights(
  { airframeId, flights }: { readonly airframeId: string; readonly flights: readonly NewFlight[] },
  headers: ActHeaders,
): Promise<FlightsAnswer> {
  return dataOrThrow(
    await api.POST('/api/airframes/{id}/flights', {
      params: { path: { id: airframeId } },
      body: { flights: [...flights] },
      headers,
    }),
  );
}

/** Voids a flight with a reason; it stays, struck. Throws: ProblemError. */
export async function voidFlight(
  { id, reason }: { readonly id: string; readonly reason: string },
  headers: ActHeaders,
) {
  return dataOrThrow(
    await api.POST('/api/flights/{id}/void', { params: { path: { id } }, body: { reason }, headers }),
  );
}

/** Voids a flight and enters it as it was. Throws: ProblemError. */
export async function correctFlight(
  { id, reason, flight }: { readonly id: string; readonly reason: string; readonly flight: NewFlight },
  headers: ActHeaders,
) {
  return dataOrThrow(
    await api.POST('/api/flights/{id}/correct', {
      params: { path: { id } },
      body: { reason, flight },
      headers,
    }),
  );
}

/** Records why a gap before a flight hides none. Throws: ProblemError. */
export async function explainGap(
  { flightId, ...body }: Shapes['NewGapNoteDto'] & { readonly flightId: string },
  headers: ActHeaders,
) {
  return dataOrThrow(
    await api.POST('/api/flights/{id}/gap-notes', { params: { path: { id: flightId } }, body, headers }),
  );
}

/** Voids such a note; the gap blocks again. Throws: ProblemError. */
export async function voidGapNote(
  { id, reason }: { readonly id: string; readonly reason: string },
  headers: ActHeaders,
) {
  return dataOrThrow(
    await api.POST('/api/gap-notes/{id}/void', { params: { path: { id } }, body: { reason }, headers }),
  );
}
