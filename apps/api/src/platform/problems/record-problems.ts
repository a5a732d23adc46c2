import type { ApiRefusal } from './api-refusals.js';
import { aboutField, type ProblemTable } from './problem-row.js';
import type { RequestRefusal } from './request-problems.js';
import type { SigningRefusal } from './signing-problems.js';

export type RecordRefusal = Exclude<ApiRefusal, RequestRefusal | SigningRefusal>;

const upper = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);
const from = (moment: string | undefined): string => (moment === undefined ? '' : ` (take-off ${moment})`);

/** What is recorded already, what the database holds true, and what is ours to answer for. */
export const RECORD_PROBLEMS: ProblemTable<RecordRefusal> = {
  NOT_FOUND: ({ what, field }) => {
    const reason = `There is no such ${what} in your records.`;
    const fix = 'Check what was entered, or add it first.';
    return field === undefined
      ? { status: 404, title: 'Not found', detail: reason }
      : aboutField(404, 'Not found', { field, reason, fix });
  },
  ALREADY_EXISTS: ({ what, field, value }) => {
    const reason = `There is already ${what}${value === undefined ? '' : ` "${value}"`}.`;
    const fix = 'Use the one that is there, or enter another.';
    return field === undefined
      ? { status: 409, title: 'Already recorded', detail: `${reason} ${fix}` }
      : aboutField(409, 'Already recorded', { field, reason, fix });
  },
  ALREADY_VOIDED: ({ what }) => ({
    status: 409,
    title: 'Already voided',
    detail: `${upper(what)} was voided before and is not counted. Nothing is left to undo.`,
  }),
  REFUSED_BY_FACTS: ({ reason, fix, field }) =>
    field === undefined
      ? { status: 422, title: 'This cannot have been so', detail: `${reason} ${fix}` }
      : aboutField(422, 'This cannot have been so', { field, reason, fix }),
  BUSY: ({ retryAfterSeconds }) => ({
    status: 409,
    title: 'Someone else is changing the same records',
    detail: 'Nothing was changed. Repeat with the same key in a moment.',
    retryAfterSeconds,
  }),
  FLIGHTS_OVERLAP: ({ field, logPage, takeOffAt, landingAt }) =>
    aboutField(409, 'Two flights at once', {
      field: field ?? 'takeOffAt',
      reason:
        logPage === undefined
          ? 'The airframe was on another flight during this time.'
          : `The airframe was on the flight of log page ${logPage}, ${takeOffAt} to ${landingAt}, during this time.`,
      fix: 'Correct the times, or void the other flight if it is the wrong one.',
    }),
  LOG_PAGE_USED: ({ field, logPage, takeOffAt }) =>
    aboutField(409, 'The log page is used', {
      field: field ?? 'logPage',
      reason: `Log page ${logPage} of this airframe has a flight already${from(takeOffAt)}.`,
      fix: 'Enter the number of this flight’s own page, or correct the other flight.',
    }),
  IN_THE_FUTURE: ({ field, at }) =>
    aboutField(422, 'This has not happened yet', {
      field,
      reason: `${at} is in the future.`,
      fix: 'Enter when it happened, in UTC.',
    }),
  FLIGHT_CONTAINS_BOUNDARY: ({ at, serialNumber }) => {
    const what =
      serialNumber === undefined ? 'a component' : `the component with serial number ${serialNumber}`;
    return aboutField(409, 'A change lies inside this flight', {
      field: 'takeOffAt',
      reason: `${upper(what)} was put on or taken off this airframe at ${at}, in the middle of this flight.`,
      fix: 'Correct the times of the flight, or the moment of the change.',
    });
  },
  COMPONENT_PLACED_TWICE: ({ field }) =>
    aboutField(409, 'In two places at once', {
      field: field ?? 'at',
      reason: 'The component is recorded somewhere else during this time.',
      fix: 'Look at its places, then give a moment after it left there.',
    }),
  SLOT_TAKEN: ({ field }) =>
    aboutField(409, 'Two components in one place', {
      field: field ?? 'at',
      reason: 'Another component is recorded in this place during this time.',
      fix: 'Record its removal first, or give a moment after it.',
    }),
  ALREADY_SIGNED: ({ by, at }) => ({
    status: 409,
    title: 'Already signed',
    detail: `${by === undefined ? 'Somebody' : by} signed this very content${at === undefined ? '' : ` at ${at}`}. Nothing is left to sign.`,
    ...(by === undefined ? {} : { extra: { by, at } }),
  }),
  SAME_PERSON: () => ({
    status: 422,
    title: 'Another person must look',
    detail:
      'Who did the work does not inspect it. Another person with the authority signs, or give the reason for a re-inspection where the rule set allows one.',
  }),
  RELEASE_BLOCKED: ({ objections }) => ({
    status: 422,
    title: 'The release is blocked',
    detail: `${objections.length} blocking ${objections.length === 1 ? 'objection stands' : 'objections stand'} against it. Clear each, then check again.`,
    extra: { objections },
  }),
  CHECK_CHANGED: ({ what, seen, now }) => ({
    status: 409,
    title: 'Not what you saw',
    detail: `${upper(what)} has changed since it was shown to you. Look at it again, then confirm.`,
    ...(seen === undefined ? {} : { extra: { seenDigest: seen, presentDigest: now } }),
  }),
  ALREADY_RELEASED: ({ number }) => ({
    status: 409,
    title: 'Already released',
    detail: `Release ${number} covers this package. A released package is never changed.`,
  }),
  WRONG_STATE: ({ what, state, needed }) => ({
    status: 409,
    title: 'Not now',
    detail: `${upper(what)} is ${state}; this needs it to be ${needed}.`,
  }),
  UNAVAILABLE: ({ retryAfterSeconds }) => ({
    status: 503,
    title: 'The records cannot be reached',
    detail:
      'It is not known whether the last act was recorded. Repeat it with the same key: it is recorded once.',
    retryAfterSeconds,
  }),
  INTERNAL: () => ({
    status: 500,
    title: 'Our fault',
    detail: 'The server failed. Nothing was changed. Give the request id below when you report it.',
  }),
};
