import { type Instant, instant } from '@strutbook/domain/units/minutes.js';
import type { Posting } from '@strutbook/domain/usage/clock.js';
import {
  addCounts,
  type Counts,
  negateCounts,
  subtractCounts,
  zeroCounts,
} from '@strutbook/domain/usage/counts.js';
import type { ExposureSpan, RatingChange, Stay } from '@strutbook/domain/usage/flatten-exposures.js';
import type { Flight } from '@strutbook/domain/usage/flight.js';
import type { ToldFlight } from './act.js';
import type { Core } from './core-under-test.js';
import { firstRatings, firstStays, modelOf, rulesInForce, slotPlaces } from './driven-world.js';
import { AIRFRAMES, COMPONENTS } from './world.js';

/** An exposure as the system keeps it: a closed one with its amounts, an open one with its base. */
export interface Kept extends ExposureSpan {
  readonly id: string;
  kept: Counts;
}

const airframeOf = new Map(
  AIRFRAMES.flatMap(({ id, positions }) => [id, ...positions].map((carrier) => [carrier, id] as const)),
);

/**
 * The record as the system keeps it: facts, heads of clocks, and exposures moved by what each act adds, never
 * summed again. All rules come from the core it is given.
 */
export class KeptWorld {
  readonly flights = new Map<string, { readonly airframe: string; readonly flight: Flight }>();
  readonly stays: Stay[] = firstStays();
  readonly ratings: RatingChange[] = firstRatings();
  readonly exposures = new Map<string, Kept[]>();
  private readonly heads = new Map<string, Counts>();
  private readonly postings = new Map<string, Posting[]>();
  private readings = new Map<string, Counts>();

  constructor(readonly core: Core) {
    for (const { id } of COMPONENTS) this.flatten(id);
  }

  /** Logs a flight; false when the core refuses it. */
  logFlight(told: ToldFlight): boolean {
    const planned = this.core.planFlight({
      id: told.id,
      takeOffAt: instant(told.takeOff),
      landingAt: instant(told.landing),
      touchAndGoes: told.touchAndGoes,
      starts: told.starts,
      abortedTakeOffs: told.abortedTakeOffs,
      exceptions: told.exceptions.map(({ position, shutDownMinutes }) =>
        shutDownMinutes === null
          ? { positionCarrierId: position, kind: 'not-running' as const }
          : { positionCarrierId: position, kind: 'shut-down' as const, minutes: shutDownMinutes },
      ),
    });
    if (!planned.ok) return false;
    this.flights.set(told.id, { airframe: told.airframe, flight: planned.value });
    for (const posting of this.core.flightPostings(planned.value, told.airframe)) this.post(posting);
    return true;
  }

  voidFlight(id: string): void {
    const found = this.flights.get(id);
    if (found === undefined) throw new Error(`no flight ${id}`);
    this.flights.delete(id);
    for (const posting of this.core.flightPostings(found.flight, found.airframe))
      this.post({ ...posting, counts: negateCounts(posting.counts) });
  }

  private post(posting: Posting): void {
    const own = this.postings.get(posting.carrierId) ?? [];
    this.postings.set(posting.carrierId, own);
    own.push(posting);
    this.heads.set(posting.carrierId, addCounts(this.head(posting.carrierId), posting.counts));
    this.readings.clear();
    const airframe = AIRFRAMES.find(({ id }) => id === posting.carrierId);
    const readBy = new Set([posting.carrierId, ...(airframe?.positions ?? [])]);
    for (const exposures of this.exposures.values()) {
      for (const { exposureId, add } of this.core.adjustExposures(posting, { readBy, exposures })) {
        const exposure = exposures.find((each) => each.id === exposureId);
        if (exposure !== undefined) exposure.kept = addCounts(exposure.kept, add);
      }
    }
  }

  private head(carrier: string): Counts {
    return this.heads.get(carrier) ?? zeroCounts;
  }

  /** The reading of a carrier's clock now: of a position, its airframe's with its own. */
  readingNow(carrier: string): Counts {
    const airframe = airframeOf.get(carrier) ?? carrier;
    return airframe === carrier
      ? this.head(carrier)
      : this.core.positionClock(this.head(airframe), this.head(carrier));
  }

  /** The reading of a carrier's clock at an instant, from what was posted. */
  readingAt(carrier: string, at: Instant): Counts {
    const key = `${carrier} ${at}`;
    const known = this.readings.get(key);
    if (known !== undefined) return known;
    const own = this.core.readClock(this.postings.get(carrier) ?? [], at);
    const airframe = airframeOf.get(carrier) ?? carrier;
    const reading = airframe === carrier ? own : this.core.positionClock(this.readingAt(airframe, at), own);
    this.readings.set(key, reading);
    return reading;
  }

  /** What a position itself was posted: what it did not run, as negative counts. */
  ownHead(position: string): Counts {
    return this.head(position);
  }

  private flatten(componentId: string): void {
    const spans = this.core.flattenExposures({
      componentId,
      stays: this.stays,
      slots: slotPlaces,
      ratingChanges: this.ratings,
      cycleRules: rulesInForce,
      modelOf,
    });
    this.exposures.set(
      componentId,
      spans.map((span, index) => ({ ...span, id: `${index}`, kept: this.measured(span) })),
    );
  }

  private measured({ carrierId, from, to }: ExposureSpan): Counts {
    const start = this.readingAt(carrierId, from);
    return to === null ? start : subtractCounts(this.readingAt(carrierId, to), start);
  }

  /** Flattens again a component and what hung beneath it during the span that changed. */
  flattenAgain(componentId: string, span: { readonly from: Instant; readonly to: Instant | null }): void {
    const beneath = this.core.hangingBeneath({ componentId, span, stays: this.stays, slots: slotPlaces });
    for (const id of [componentId, ...beneath]) this.flatten(id);
  }

  /** What an exposure saw until now: a closed one its amounts, an open one its clock less its base. */
  seen(exposure: Kept): Counts {
    return exposure.to === null
      ? subtractCounts(this.readingNow(exposure.carrierId), exposure.kept)
      : exposure.kept;
  }

  /** What an exposure saw until an instant; null when it began later. */
  seenUntil({ carrierId, from, to }: ExposureSpan, at: Instant): Counts | null {
    if (from > at) return null;
    const end = to === null || at < to ? at : to;
    return subtractCounts(this.readingAt(carrierId, end), this.readingAt(carrierId, from));
  }
}
