import type { Role } from '../access/roles.js';

/** One field that was refused: which, why, and what to enter instead. */
export interface FieldRefusal {
  readonly field: string;
  readonly reason: string;
  readonly fix: string;
}

/** A step that must be signed or inspected before another. */
export interface Blocking {
  readonly code: string;
  readonly stepId: string;
  readonly number: number;
  readonly title: string;
}

/** Something a step asks for that is not entered, or not accepted. */
export interface Lacking {
  readonly code: string;
  readonly capture: string;
  readonly point: string | null;
  readonly label: string;
}

/** An objection in words, of which the reason and the fix are told. */
export interface Held {
  readonly code: string;
  readonly reason: string;
  readonly fix: string;
}

/**
 * Every refusal that is not a rule of the core: who asks, how it is asked, and what the database holds.
 * Instants are written as on the wire. Each code has its row in the table of problems.
 */
export type ApiRefusal =
  // Who asks
  | { readonly code: 'NOT_SIGNED_IN' }
  | { readonly code: 'SIGN_IN_FAILED' }
  | { readonly code: 'TOO_MANY_ATTEMPTS'; readonly retryAfterSeconds: number }
  | { readonly code: 'PASSWORD_CHANGE_NEEDED' }
  | { readonly code: 'CSRF_TOKEN_WRONG' }
  | { readonly code: 'OTHER_SITE' }
  | { readonly code: 'NOT_ALLOWED'; readonly holders: readonly Role[]; readonly names?: readonly string[] }
  | { readonly code: 'WRONG_PASSWORD'; readonly field: string }
  | {
      readonly code: 'PASSWORD_TOO_WEAK';
      readonly field: string;
      readonly reason: string;
      readonly fix: string;
    }
  | { readonly code: 'WRONG_PIN'; readonly field: string }
  | { readonly code: 'SIGNER_NOT_PROVEN'; readonly field: string; readonly method: 'password' | 'pin' }
  | { readonly code: 'LICENCE_MISSING' }
  | {
      readonly code: 'NOT_AUTHORISED_TODAY';
      readonly name: string;
      readonly scope: 'work' | 'inspection' | 'release';
      /** The type of airframe; null for work on a component off every airframe. */
      readonly type: string | null;
      readonly on: string;
    }
  | { readonly code: 'LAST_ADMINISTRATOR' }
  // How it is asked
  | { readonly code: 'NO_SUCH_ROUTE' }
  | { readonly code: 'MALFORMED'; readonly reason: string; readonly fix: string }
  | { readonly code: 'INVALID_FIELDS'; readonly fields: readonly FieldRefusal[] }
  | { readonly code: 'BODY_TOO_LARGE' }
  | { readonly code: 'UNSUPPORTED_MEDIA_TYPE'; readonly accepted: readonly string[] }
  | { readonly code: 'MISSING_KEY' }
  | { readonly code: 'KEY_MALFORMED' }
  | { readonly code: 'KEY_REUSED' }
  | { readonly code: 'MISSING_IF_MATCH' }
  | { readonly code: 'IF_MATCH_MALFORMED' }
  | { readonly code: 'STALE'; readonly what?: string }
  // What is there
  | { readonly code: 'NOT_FOUND'; readonly what: string; readonly field?: string }
  | {
      readonly code: 'ALREADY_EXISTS';
      readonly what: string;
      readonly field?: string;
      readonly value?: string;
    }
  | { readonly code: 'ALREADY_VOIDED'; readonly what: string }
  | {
      readonly code: 'REFUSED_BY_FACTS';
      readonly reason: string;
      readonly fix: string;
      readonly field?: string;
    }
  | { readonly code: 'BUSY'; readonly retryAfterSeconds: number }
  // Flights and stays, as the database tells them
  | {
      readonly code: 'FLIGHTS_OVERLAP';
      readonly field?: string;
      readonly logPage?: string;
      readonly takeOffAt?: string;
      readonly landingAt?: string;
    }
  | {
      readonly code: 'LOG_PAGE_USED';
      readonly field?: string;
      readonly logPage: string;
      readonly takeOffAt?: string;
    }
  | { readonly code: 'IN_THE_FUTURE'; readonly field: string; readonly at: string }
  | { readonly code: 'FLIGHT_CONTAINS_BOUNDARY'; readonly at: string; readonly serialNumber?: string }
  | { readonly code: 'COMPONENT_PLACED_TWICE'; readonly field?: string }
  | { readonly code: 'SLOT_TAKEN'; readonly field?: string }
  // Work by steps
  | { readonly code: 'ALREADY_SIGNED'; readonly by?: string; readonly at?: string }
  | { readonly code: 'SAME_PERSON' }
  | { readonly code: 'STEP_BLOCKED'; readonly blockers: readonly Blocking[] }
  | { readonly code: 'CAPTURES_MISSING'; readonly missing: readonly Lacking[] }
  | { readonly code: 'INSTALLATION_REFUSED'; readonly objections: readonly Held[] }
  | { readonly code: 'MOVE_RECORDED'; readonly what: string; readonly at: string; readonly asked: string }
  // Release
  | { readonly code: 'RELEASE_BLOCKED'; readonly objections: readonly unknown[] }
  | { readonly code: 'CHECK_CHANGED'; readonly what: string; readonly seen?: string; readonly now?: string }
  | { readonly code: 'ALREADY_RELEASED'; readonly number: string }
  // Work in the background
  | { readonly code: 'WRONG_STATE'; readonly what: string; readonly state: string; readonly needed: string }
  // Ours
  | { readonly code: 'UNAVAILABLE'; readonly retryAfterSeconds: number }
  | { readonly code: 'INTERNAL' };

export type ApiRefusalCode = ApiRefusal['code'];
