// What comes after the register: flights typed by hand, and everything that happened, in order.

import { engines } from './fleet.mjs';
import { minuteOf, RECORD_BEGINS, wire } from './instants.mjs';
import { moves, ratingChanges, shopVisits } from './story.mjs';
import { changes, flights } from './timeline.mjs';

/** A landing typed twenty minutes late, and a page typed twice with a wrong number on a wrong day. */
const CORRECTED = { registration: 'ZZ-731', index: 640, late: 20 };
const TWICE = { registration: 'ZZ-739', standsOn: '2025-12-10', index: 700 };

/** The pages that are typed, not imported: those with exceptions, and the one that was typed wrong. */
export function isByHand(registration, flight, index) {
  return (
    flight.exceptions.length > 0 || (registration === CORRECTED.registration && index === CORRECTED.index)
  );
}

export function flightsByHand() {
  const entries = Object.entries(flights).flatMap(([registration, log]) =>
    log
      .filter((flight, index) => isByHand(registration, flight, index))
      .map((flight) => entryOf(registration, flight)),
  );
  return [...entries, duplicate()];
}

function entryOf(registration, flight) {
  const { page, from, to, touchAndGoes, starts, abortedTakeOffs, exceptions } = flight;
  const typed = (landingAt) => ({
    logPage: page,
    fromStation: from,
    toStation: to,
    takeOffAt: wire(flight.takeOffAt),
    landingAt: wire(landingAt),
    touchAndGoes,
    starts,
    abortedTakeOffs,
    ...(exceptions.length === 0 ? {} : { exceptions }),
  });
  if (exceptions.length > 0) return { registration, flight: typed(flight.landingAt) };
  const reason = `Landing of page ${page} read ${CORRECTED.late} minutes late; corrected from the original page.`;
  return {
    registration,
    flight: typed(flight.landingAt + CORRECTED.late),
    correct: { reason, flight: typed(flight.landingAt) },
  };
}

function duplicate() {
  const { page, from, to, takeOffAt, landingAt } = flights[TWICE.registration][TWICE.index];
  const start = minuteOf(`${TWICE.standsOn}T08:00Z`);
  const logPage = `${page[0]}${page[2]}${page[1]}${page.slice(3)}`;
  return {
    registration: TWICE.registration,
    flight: {
      logPage,
      fromStation: from,
      toStation: to,
      takeOffAt: wire(start),
      landingAt: wire(start + landingAt - takeOffAt),
      touchAndGoes: 0,
      starts: 1,
      abortedTakeOffs: 0,
    },
    void: {
      reason: `Page ${page} typed a second time, as ${logPage} and on a day the airframe stood in the hangar.`,
    },
  };
}

/** The ratings at which the engines run as the record begins. */
export function firstRatings() {
  return engines.map(({ serial, rating }) => ({
    serial_number: serial,
    at: wire(RECORD_BEGINS),
    rating,
    source: `Engine log card ${serial}`,
  }));
}

/** What happened, in order; `logged` tells whether it is typed before the flights are imported or after them. */
export function events() {
  const early = new Set(
    changes.filter(({ logged }) => logged === 'before').flatMap(({ incoming }) => incoming),
  );
  const told = [
    ...changes.map(
      ({
        at,
        registration,
        position,
        slot,
        outgoing,
        incoming,
        boundary,
        reason,
        ratingCode,
        toLocation,
        releasedBy,
        logged,
      }) => ({
        at,
        logged,
        kind: 'change',
        registration,
        positionNumber: position,
        slot,
        outgoingSerial: outgoing,
        incomingSerial: incoming,
        boundary,
        reason,
        ...(ratingCode === undefined ? {} : { ratingCode }),
        removedToLocation: toLocation,
        releasedBy,
      }),
    ),
    ...moves.map(([serialNumber, location, at]) => ({
      at: minuteOf(at),
      logged: early.has(serialNumber) ? 'before' : 'after',
      kind: 'move',
      serialNumber,
      location,
    })),
    ...shopVisits.map(([serialNumber, at, evidence]) => ({
      at: minuteOf(at),
      logged: 'after',
      kind: 'shop-visit',
      serialNumber,
      evidence,
    })),
    ...ratingChanges.map(([serialNumber, at, ratingCode, source]) => ({
      at: minuteOf(at),
      logged: 'after',
      kind: 'rating',
      serialNumber,
      ratingCode,
      source,
    })),
  ];
  return told.sort((a, b) => a.at - b.at).map(({ at, ...event }) => ({ at: wire(at), ...event }));
}
