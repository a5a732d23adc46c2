import type { Refusal } from '@strutbook/domain/refusals.js';
import { instantToWire } from '../http/instants.js';
import { COUNTING_PROBLEMS } from './counting-problems.js';
import { aboutField, type ProblemTable } from './problem-row.js';

/** How each rule of the core that says no is told. */
export const DOMAIN_PROBLEMS: ProblemTable<Refusal> = {
  NOT_A_DURATION: ({ text }) =>
    aboutField(422, 'Not a time of running', {
      field: 'minutes',
      reason: `"${text}" is not a number of hours and minutes.`,
      fix: 'Enter hours and minutes, such as 12345:06.',
    }),
  NOT_A_COUNT: ({ field, value }) =>
    aboutField(422, 'Not a count', {
      field,
      reason: `${value} is not a count of events.`,
      fix: 'Enter a whole number, zero or more.',
    }),
  LANDING_NOT_AFTER_TAKE_OFF: ({ takeOffAt, landingAt }) =>
    aboutField(422, 'Landing before take-off', {
      field: 'landingAt',
      reason: `The landing at ${instantToWire(landingAt)} is not after the take-off at ${instantToWire(takeOffAt)}.`,
      fix: 'Enter both in UTC, the landing later than the take-off.',
    }),
  FLIGHT_TOO_LONG: ({ minutes, longest }) =>
    aboutField(422, 'The flight is too long', {
      field: 'landingAt',
      reason: `The flight would last ${minutes} minutes; at most ${longest} are taken for one flight.`,
      fix: 'Check the dates of take-off and landing.',
    }),
  EXCEPTION_BEYOND_FLIGHT: ({ minutes, flightMinutes }) =>
    aboutField(422, 'The exception is longer than the flight', {
      field: 'exceptions',
      reason: `A position cannot have stood still for more than the flight: ${minutes} of ${flightMinutes} minutes.`,
      fix: 'Enter what this position did not run, at most the whole flight.',
    }),
  EXCEPTION_TWICE: () =>
    aboutField(422, 'Two exceptions for one position', {
      field: 'exceptions',
      reason: 'One position is named twice.',
      fix: 'Put what it did not run into one exception.',
    }),
  ...COUNTING_PROBLEMS,
  NO_SUCH_LOG_PAGE: ({ page }) =>
    aboutField(422, 'No flight on this log page', {
      field: 'boundary.page',
      reason: `No flight of this airframe is recorded on log page ${page}.`,
      fix: 'Log that flight first, or give the page of the last flight before the change.',
    }),
  INSIDE_A_FLIGHT: ({ at, page, takeOffAt, landingAt }) =>
    aboutField(422, 'The moment lies inside a flight', {
      field: 'boundary',
      reason:
        `${instantToWire(at)} lies inside the flight ${page === null ? '' : `of log page ${page} `}` +
        `from ${instantToWire(takeOffAt)} to ${instantToWire(landingAt)}.`,
      fix: 'Give a moment not inside it, or the log page it followed.',
    }),
  SAME_PLACE: () =>
    aboutField(409, 'It is there already', {
      field: 'slotId',
      reason: 'The component is in this very place at that moment.',
      fix: 'Choose another place, or leave it as it is.',
    }),
  STAY_OVERLAP: ({ at }) =>
    aboutField(409, 'In two places at once', {
      field: 'boundary',
      reason: `The component is recorded somewhere else at ${instantToWire(at)} or after it.`,
      fix: 'Look at its places; void the wrong one, or give a later moment.',
    }),
  SLOT_OCCUPIED: ({ at }) =>
    aboutField(409, 'The place is taken', {
      field: 'slotId',
      reason: `Another component is recorded in this place at ${instantToWire(at)} or after it.`,
      fix: 'Record its removal first, or name it as the outgoing one.',
    }),
  INSIDE_ITSELF: () =>
    aboutField(422, 'A component cannot be inside itself', {
      field: 'slotId',
      reason: 'The place hangs in the very component that would go into it.',
      fix: 'Choose a place in another component.',
    }),
  ENDS_BEFORE_START: ({ from, at }) =>
    aboutField(422, 'The end lies before the beginning', {
      field: 'boundary',
      reason: `The component came here at ${instantToWire(from)}; it cannot have left at ${instantToWire(at)}.`,
      fix: 'Give a later moment.',
    }),
  NOT_OPEN: ({ to }) =>
    aboutField(409, 'It has left already', {
      field: 'boundary',
      reason: `The component is recorded as gone from here at ${instantToWire(to)}.`,
      fix: 'Look at its places; void the wrong one and enter it again.',
    }),
  BEFORE_OPENING: ({ at, openingAt, source }) =>
    aboutField(422, 'Before the records begin', {
      field: 'boundary',
      reason: `${instantToWire(at)} lies before the opening at ${instantToWire(openingAt)} (${source}), which counts it already.`,
      fix: 'Give a moment after the opening.',
    }),
  BEFORE_MANUFACTURE: ({ at, manufacturedAt }) =>
    aboutField(422, 'Before it was made', {
      field: 'boundary',
      reason: `The component was made on ${instantToWire(manufacturedAt).slice(0, 10)}, after ${instantToWire(at)}.`,
      fix: 'Give a later moment, or correct the date of manufacture first.',
    }),
  AFTER_SCRAP: ({ at, scrappedAt }) =>
    aboutField(422, 'After it was scrapped', {
      field: 'boundary',
      reason: `The component was scrapped at ${instantToWire(scrappedAt)}, before ${instantToWire(at)}.`,
      fix: 'Check the serial number; a scrapped component is never placed again.',
    }),
  NOT_INSTALLED_THERE: ({ expectedSerial, foundSerial, at }) =>
    aboutField(409, 'Not what is installed there', {
      field: 'outgoingSerial',
      reason:
        foundSerial === null
          ? `Nothing is installed there at ${instantToWire(at)}; ${expectedSerial} was expected.`
          : `${foundSerial} is installed there at ${instantToWire(at)}, not ${expectedSerial}.`,
      fix: 'Read the serial number off the data plate again.',
    }),
  ALREADY_INSTALLED: ({ at }) =>
    aboutField(409, 'Installed elsewhere', {
      field: 'incomingSerial',
      reason: `The incoming component is recorded as installed in another place at ${instantToWire(at)}.`,
      fix: 'Check the serial number, or record its removal from there first.',
    }),
  WRONG_KIND: ({ kind, slotKind }) =>
    aboutField(422, 'It does not belong there', {
      field: 'slotId',
      reason: `This place takes a component of kind ${slotKind}, not of kind ${kind}.`,
      fix: 'Check the part number and the place.',
    }),
  NOTHING_TO_CHANGE: () =>
    aboutField(422, 'Nothing to change', {
      field: 'incomingSerial',
      reason: 'Neither an outgoing nor an incoming component is named, or they are the same.',
      fix: 'Name what comes out, what goes in, or both.',
    }),
  INSTALLED_BEFORE_REMOVED: ({ removedAt, installedAt }) =>
    aboutField(422, 'Installed before the other was removed', {
      field: 'boundary',
      reason: `Installation at ${instantToWire(installedAt)} lies before removal at ${instantToWire(removedAt)}.`,
      fix: 'Give the installation a moment at or after the removal.',
    }),
};
