import type { Mark } from '@strutbook/domain/due/requirement.js';
import { startOfDay } from '@strutbook/domain/units/calendar.js';
import { fraction, ZERO } from '@strutbook/domain/units/fraction.js';
import { countersSince, type Counters as Pair } from '@strutbook/domain/usage/since.js';
import type { Accomplishment, Requirement } from '../../platform/database/generated/client.js';
import { dayToWire, fromInstant } from '../../platform/http/instants.js';
import { dayIn, offsetAtStartOf } from '../stays/day-zone.js';
import type { SubjectCounters } from './subject-counters.js';
import type { Subject } from './subjects.js';

/** The zone whose days a subject's dates follow: a component's begin by UTC, wherever it hangs. Total. */
export function zoneOf(subject: Subject): string {
  return subject.kind === 'component' ? 'UTC' : subject.dayZone;
}

/** The instant at which a day begins in a zone. */
export function dayBegins(on: Date, zone: string): Date {
  const day = dayToWire(on);
  return fromInstant(startOfDay(day, offsetAtStartOf(zone, day)));
}

/** The event before which nothing that was done counts any more. */
export function beginsAt(requirement: Requirement, subject: Subject, counters: SubjectCounters): Date | null {
  if (requirement.countedFrom === 'overhaul') return counters.overhauledAt;
  if (requirement.countedFrom === 'shop-visit') return counters.shopVisitedAt;
  return requirement.countedFrom === 'installation' ? subject.installedAt : null;
}

/** The point the threshold counts from; null when nothing says where it is. Total. */
export function baseOf(requirement: Requirement, subject: Subject, counters: SubjectCounters): Mark | null {
  switch (requirement.countedFrom) {
    case 'overhaul':
      return resetOf(subject, counters, counters.sinceOverhaul, counters.overhauledAt);
    case 'shop-visit':
      return resetOf(subject, counters, counters.sinceShopVisit, counters.shopVisitedAt);
    case 'installation':
      return installationOf(subject, counters);
    case 'date':
    case 'effective':
      return dateOf(startOf(requirement), subject, counters);
    case 'accomplishment':
      // Until it was met once nothing says from where.
      return null;
    default:
      return newOf(subject);
  }
}

function newOf({ manufacturedOn }: Subject): Mark {
  return { minutes: 0, cycles: ZERO, on: manufacturedOn };
}

function resetOf(
  subject: Subject,
  { now, clock }: SubjectCounters,
  since: Pair | null,
  at: Date | null,
): Mark | null {
  if (since === null) return null;
  const on = at === null ? null : dayIn(clock?.dayZone ?? zoneOf(subject), at);
  return { ...countersSince(since, now), on };
}

function installationOf(subject: Subject, { sinceInstalled, at, now, clock }: SubjectCounters): Mark | null {
  const { installedAt } = subject;
  if (installedAt === null) return null;
  const then = sinceInstalled === null ? at(installedAt) : countersSince(sinceInstalled, now);
  return {
    minutes: then.minutes,
    cycles: then.cycles,
    on: dayIn(clock?.dayZone ?? zoneOf(subject), installedAt),
  };
}

/** The day a requirement counts from, where it counts from one: its own, or that on which it became effective. Total. */
export function startOf({ countedFrom, fromOn, effectiveOn }: Requirement): Date | null {
  return countedFrom === 'effective' ? effectiveOn : fromOn;
}

/** The instant after which an event is one to meet it at; null: any. Total. */
export function eventsSince(
  requirement: Requirement,
  subject: Subject,
  counters: SubjectCounters,
): Date | null {
  const day = startOf(requirement);
  return day === null ? beginsAt(requirement, subject, counters) : dayBegins(day, zoneOf(subject));
}

function dateOf(fromOn: Date | null, subject: Subject, { at }: SubjectCounters): Mark | null {
  if (fromOn === null) return null;
  const on = dayToWire(fromOn);
  // What was made after the date counts from new.
  if (subject.manufacturedOn !== null && subject.manufacturedOn > on) return newOf(subject);
  const then = at(dayBegins(fromOn, zoneOf(subject)));
  return { minutes: then.minutes, cycles: then.cycles, on };
}

/** Counters of an accomplishment: as the papers say, else as the records say at its instant. */
export function markOf(row: Accomplishment, counters: SubjectCounters): Mark {
  const then = counters.at(row.at);
  return {
    minutes: row.minutes === null ? then.minutes : Number(row.minutes),
    cycles: row.cycles === null ? then.cycles : fraction(row.cycles, BigInt(row.cycleDenominator)),
    on: dayToWire(row.doneOn),
  };
}
