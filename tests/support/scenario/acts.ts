import type { Answer, HttpClient, RequestOptions } from '../http-client.js';
import { instantAt } from './instants.js';

/** A flight in minutes since 2025-01-01; whatever is left out is nothing. */
export interface FlightToLog {
  readonly page: string;
  /** Stations; from VDL to KRN unless told. */
  readonly from?: string;
  readonly to?: string;
  readonly takeOff: number;
  readonly landing: number;
  readonly touchAndGoes?: number;
  readonly starts?: number;
  readonly abortedTakeOffs?: number;
  readonly exceptions?: readonly {
    readonly positionNumber: number;
    readonly kind: 'shut-down' | 'not-running';
    readonly minutes?: number;
  }[];
}

export interface LoggedFlights {
  readonly flights: readonly { readonly id: string; readonly logPage: string; readonly minutes: number }[];
  readonly airframe: { readonly minutes: number | null; readonly flights: number | null };
  readonly late: boolean;
}

/** A flight as the API takes it. */
export function onTheWire({
  page,
  from = 'VDL',
  to = 'KRN',
  takeOff,
  landing,
  touchAndGoes = 0,
  starts = 0,
  abortedTakeOffs = 0,
  exceptions = [],
}: FlightToLog) {
  return {
    logPage: page,
    fromStation: from,
    toStation: to,
    takeOffAt: instantAt(takeOff),
    landingAt: instantAt(landing),
    touchAndGoes,
    starts,
    abortedTakeOffs,
    exceptions,
  };
}

/** Logs flights of one airframe, all or none. */
export function logFlights(
  client: HttpClient,
  airframeId: string,
  flights: readonly FlightToLog[],
  options?: RequestOptions,
): Promise<Answer<LoggedFlights>> {
  return client.post(`/api/airframes/${airframeId}/flights`, { flights: flights.map(onTheWire) }, options);
}

/** When a change was made, as the API takes it. */
export type WireBoundary =
  | { readonly kind: 'instant'; readonly at: string }
  | { readonly kind: 'after-page'; readonly page: string; readonly airframeId?: string }
  | { readonly kind: 'before-first' | 'after-last'; readonly on: string; readonly airframeId?: string };

/** A change at a position. */
export interface ChangeToRecord {
  readonly airframeId: string;
  readonly positionNumber: number;
  readonly slot: 'engine' | 'pod';
  readonly outgoingSerial: string | null;
  readonly incomingSerial: string | null;
  readonly boundary: WireBoundary;
  readonly ratingCode?: string;
}

export interface RecordedChange {
  readonly id: string;
  readonly number: string;
  readonly version: number;
  readonly at: string;
}

/** A change with the reason and the place that every request needs. */
export function asRequest(change: ChangeToRecord) {
  return { ...change, reason: 'Test', removedToLocation: 'Store' };
}

/** What the change would record. */
export function previewChange(
  client: HttpClient,
  change: ChangeToRecord,
): Promise<Answer<{ readonly digest: string }>> {
  return client.post('/api/changes/preview', asRequest(change));
}

/** Previews a change and confirms what was shown. Answers the refusal of either. */
export async function recordChange(
  client: HttpClient,
  change: ChangeToRecord,
  options?: RequestOptions,
): Promise<Answer<RecordedChange>> {
  const preview = await previewChange(client, change);
  if (preview.status >= 300) return preview as unknown as Answer<RecordedChange>;
  return client.post('/api/changes', { ...asRequest(change), confirmDigest: preview.body.digest }, options);
}

/** The boundary at so many minutes since 2025-01-01. */
export function atMinute(minutes: number): WireBoundary {
  return { kind: 'instant', at: instantAt(minutes) };
}
