import type { Act, ToldFlight } from './act.js';
import { AIRFRAMES, COMPONENTS, FIRST_RATING, RULES, SLOTS, TWELFTHS } from './world.js';

/** Where a component is from an instant on, until its next entry; null is the store. */
export interface Entry {
  readonly slot: string | null;
  readonly from: number;
}

interface Rated {
  readonly engine: string;
  readonly at: number;
  readonly rating: string | null;
}

/** What a component used at one rating: minutes, and cycles in twelfths (null: not known). */
export interface Used {
  minutes: number | null;
  twelfths: number | null;
}

/** Where a component ran: `[from, to)` on a carrier. */
export interface Ran {
  readonly carrier: string;
  readonly from: number;
  readonly to: number | null;
  readonly rating: string | null;
  readonly rule: string | null;
}

const slotById = new Map(SLOTS.map((slot) => [slot.id, slot]));
const componentById = new Map(COMPONENTS.map((component) => [component.id, component]));
const airframeOfPosition = new Map(
  AIRFRAMES.flatMap((airframe) => airframe.positions.map((at) => [at, airframe] as const)),
);

/**
 * The record as plain lists. Every question is answered from the lists alone, flight by flight, from the
 * beginning; nothing is kept, and nothing of the core is used.
 */
export class PlainModel {
  readonly flights: ToldFlight[] = [];
  readonly entries = new Map<string, Entry[]>(
    COMPONENTS.map(({ id, startsIn }) => [id, [{ slot: startsIn, from: 0 }]]),
  );
  readonly ratings: Rated[] = Object.entries(FIRST_RATING).map(([engine, rating]) => ({
    engine,
    at: 0,
    rating,
  }));

  entriesOf(component: string): Entry[] {
    return this.entries.get(component) ?? [];
  }

  slotAt(component: string, at: number): string | null {
    let found: string | null = null;
    for (const entry of this.entriesOf(component)) if (entry.from <= at) found = entry.slot;
    return found;
  }

  /** The position that carries a slot at an instant, and the component that sits at it. */
  carriedBy(slotId: string | null, occupant: string, at: number): { position: string; top: string } | null {
    let slot = slotId === null ? undefined : slotById.get(slotId);
    let top = occupant;
    while (slot !== undefined && slot.parent !== null) {
      top = slot.parent;
      const next = this.slotAt(top, at);
      slot = next === null ? undefined : slotById.get(next);
    }
    return slot === undefined || slot.position === null ? null : { position: slot.position, top };
  }

  placeOf(component: string, at: number) {
    return this.carriedBy(this.slotAt(component, at), component, at);
  }

  ratingAt(engine: string, at: number): string | null {
    let best: Rated | undefined;
    for (const rated of this.ratings) {
      if (rated.engine === engine && rated.at <= at && (best === undefined || rated.at >= best.at))
        best = rated;
    }
    return best?.rating ?? null;
  }

  ruleAt(engine: string, airframeType: string, at: number) {
    const model = componentById.get(engine)?.model;
    const rules = RULES.filter(
      (rule) => rule.model === model && rule.type === airframeType && (rule.from ?? 0) <= at,
    );
    return rules.sort((a, b) => (b.from ?? 0) - (a.from ?? 0))[0] ?? null;
  }

  apply(act: Act): void {
    if (act.kind === 'fly') this.flights.push(act.flight);
    if (act.kind === 'void') this.drop(act.id);
    if (act.kind === 'correct') {
      this.drop(act.id);
      this.flights.push(act.flight);
    }
    if (act.kind === 'change') {
      if (act.off !== null) this.entriesOf(act.off).push({ slot: null, from: act.at });
      if (act.on !== null) this.entriesOf(act.on).push({ slot: act.slot, from: act.at });
    }
    if (act.kind === 'move') this.entriesOf(act.component).push({ slot: act.place, from: act.at });
    if (act.kind === 'rate') this.ratings.push(act);
    if (act.kind === 'shift') {
      const entries = this.entriesOf(act.component);
      const entry = entries[act.stay];
      if (entry !== undefined) entries[act.stay] = { ...entry, from: act.at };
    }
  }

  private drop(id: string): void {
    this.flights.splice(
      this.flights.findIndex((flight) => flight.id === id),
      1,
    );
  }

  /** What a component used until an instant, by rating: its opening, and each flight that had landed by then. */
  used(component: string, at: number): Map<string | null, Used> {
    const used = new Map<string | null, Used>();
    const opening = componentById.get(component)?.opening ?? null;
    if (opening === null) used.set(null, { minutes: null, twelfths: null });
    else
      used.set('low', {
        minutes: opening.minutes,
        twelfths: opening.cycles === null ? null : opening.cycles * TWELFTHS,
      });
    for (const flight of this.flights) if (flight.landing <= at) this.addFlight(used, component, flight);
    return used;
  }

  private addFlight(used: Map<string | null, Used>, component: string, flight: ToldFlight): void {
    const place = this.placeOf(component, flight.takeOff);
    if (place === null || airframeOfPosition.get(place.position)?.id !== flight.airframe) return;
    const airframe = airframeOfPosition.get(place.position);
    const podOfAirframe = componentById.get(place.top)?.kind === 'pod' && airframe?.podRunsOn === 'airframe';
    const exception = podOfAirframe
      ? undefined
      : flight.exceptions.find((each) => each.position === place.position);
    const rating = this.ratingAt(place.top, flight.takeOff);
    const sum = used.get(rating) ?? { minutes: 0, twelfths: 0 };
    used.set(rating, sum);
    if (exception?.shutDownMinutes === null) return;
    const minutes = flight.landing - flight.takeOff - (exception?.shutDownMinutes ?? 0);
    const rule = this.ruleAt(place.top, airframe?.type ?? '', flight.landing - 1);
    if (sum.minutes !== null) sum.minutes += minutes;
    if (rule === null) sum.twelfths = null;
    else if (sum.twelfths !== null) {
      const units =
        rule.perFlight +
        rule.perLanding * (1 + flight.touchAndGoes) +
        rule.perTouchAndGo * flight.touchAndGoes +
        rule.perStart * flight.starts +
        rule.perAbortedTakeOff * flight.abortedTakeOffs;
      sum.twelfths += units * (TWELFTHS / rule.denominator);
    }
  }

  /** Where a component ran, found minute by minute at every instant at which anything changes. */
  ran(component: string): Ran[] {
    const instants = new Set<number>([0]);
    for (const entries of this.entries.values()) for (const entry of entries) instants.add(entry.from);
    for (const rated of this.ratings) instants.add(rated.at);
    for (const rule of RULES) instants.add(rule.from ?? 0);
    const sorted = [...instants].sort((a, b) => a - b);
    const result: Ran[] = [];
    sorted.forEach((from, index) => {
      const place = this.placeOf(component, from);
      const airframe = place === null ? undefined : airframeOfPosition.get(place.position);
      if (place === null || airframe === undefined) return;
      const podOfAirframe = componentById.get(place.top)?.kind === 'pod' && airframe.podRunsOn === 'airframe';
      const carrier = podOfAirframe ? airframe.id : place.position;
      const rating = this.ratingAt(place.top, from);
      const rule = this.ruleAt(place.top, airframe.type, from)?.id ?? null;
      const to = sorted[index + 1] ?? null;
      const last = result.at(-1);
      if (last?.to === from && last.carrier === carrier && last.rating === rating && last.rule === rule)
        result[result.length - 1] = { ...last, to };
      else result.push({ carrier, from, to, rating, rule });
    });
    return result;
  }

  /** The reading of a position in one rule's units, from all flights. */
  reading(position: string, ruleId: string): number {
    const airframe = airframeOfPosition.get(position);
    const rule = RULES.find((each) => each.id === ruleId);
    let units = 0;
    for (const flight of this.flights) {
      const exception = flight.exceptions.find((each) => each.position === position);
      if (rule === undefined || flight.airframe !== airframe?.id || exception?.shutDownMinutes === null)
        continue;
      units +=
        rule.perFlight +
        rule.perLanding * (1 + flight.touchAndGoes) +
        rule.perTouchAndGo * flight.touchAndGoes +
        rule.perStart * flight.starts +
        rule.perAbortedTakeOff * flight.abortedTakeOffs;
    }
    return units;
  }
}
