import type { Instant } from './units/minutes.js';

/**
 * Every reason for which a rule of the core says no, with the facts it rests on.
 *
 * No sentence and no status here: who answers the user has a table of both, and a new code without
 * its row there does not compile. Instants in UTC minutes, amounts in whole minutes or events.
 */
export type Refusal =
  // What was typed
  | { readonly code: 'NOT_A_DURATION'; readonly text: string }
  | { readonly code: 'NOT_A_COUNT'; readonly field: string; readonly value: number }
  | { readonly code: 'LANDING_NOT_AFTER_TAKE_OFF'; readonly takeOffAt: Instant; readonly landingAt: Instant }
  | { readonly code: 'FLIGHT_TOO_LONG'; readonly minutes: number; readonly longest: number }
  | {
      readonly code: 'EXCEPTION_BEYOND_FLIGHT';
      readonly positionCarrierId: string;
      readonly minutes: number;
      readonly flightMinutes: number;
    }
  | { readonly code: 'EXCEPTION_TWICE'; readonly positionCarrierId: string }
  | { readonly code: 'RUN_NOT_AFTER_START'; readonly startedAt: Instant; readonly endedAt: Instant }
  | { readonly code: 'RUN_TOO_LONG'; readonly minutes: number; readonly longest: number }
  | { readonly code: 'RUN_BEYOND_SPAN'; readonly minutes: number; readonly span: number }
  | { readonly code: 'COUNTED_BEYOND_RUN'; readonly minutes: number; readonly runMinutes: number }
  // Counters of auxiliary power units
  | { readonly code: 'READING_MISSING'; readonly serial: string; readonly direction: 'on' | 'off' }
  | { readonly code: 'READING_NOT_ASKED'; readonly serial: string }
  | {
      readonly code: 'COUNTER_RUNS_BACK';
      readonly field: 'minutes' | 'starts';
      readonly value: number;
      readonly beside: number;
      readonly at: Instant;
      readonly besideAt: Instant;
    }
  | {
      readonly code: 'COUNTER_BEYOND_TIME';
      readonly minutes: number;
      readonly passed: number;
      readonly from: Instant;
      readonly to: Instant;
    }
  // Boundaries
  | { readonly code: 'NO_SUCH_LOG_PAGE'; readonly page: string }
  | {
      readonly code: 'INSIDE_A_FLIGHT';
      readonly at: Instant;
      readonly flightId: string;
      readonly page: string | null;
      readonly takeOffAt: Instant;
      readonly landingAt: Instant;
    }
  // Stays
  | { readonly code: 'SAME_PLACE'; readonly componentId: string; readonly stayId: string }
  | {
      readonly code: 'STAY_OVERLAP';
      readonly componentId: string;
      readonly stayId: string;
      readonly at: Instant;
    }
  | {
      readonly code: 'SLOT_OCCUPIED';
      readonly slotId: string;
      readonly stayId: string;
      readonly componentId: string;
      readonly at: Instant;
    }
  | { readonly code: 'INSIDE_ITSELF'; readonly componentId: string; readonly slotId: string }
  | {
      readonly code: 'ENDS_BEFORE_START';
      readonly stayId: string;
      readonly from: Instant;
      readonly at: Instant;
    }
  | { readonly code: 'NOT_OPEN'; readonly stayId: string; readonly to: Instant }
  | {
      readonly code: 'BEFORE_OPENING';
      readonly componentId: string;
      readonly at: Instant;
      readonly openingAt: Instant;
      readonly source: string;
    }
  | {
      readonly code: 'BEFORE_MANUFACTURE';
      readonly componentId: string;
      readonly at: Instant;
      readonly manufacturedAt: Instant;
    }
  | {
      readonly code: 'AFTER_SCRAP';
      readonly componentId: string;
      readonly at: Instant;
      readonly scrappedAt: Instant;
    }
  // Changes
  | {
      readonly code: 'NOT_INSTALLED_THERE';
      readonly slotId: string;
      readonly expectedSerial: string;
      readonly foundSerial: string | null;
      readonly at: Instant;
    }
  | {
      readonly code: 'ALREADY_INSTALLED';
      readonly componentId: string;
      readonly stayId: string;
      readonly slotId: string;
      readonly at: Instant;
    }
  | {
      readonly code: 'WRONG_KIND';
      readonly componentId: string;
      readonly kind: string;
      readonly slotId: string;
      readonly slotKind: string;
    }
  | { readonly code: 'NOTHING_TO_CHANGE'; readonly slotId: string }
  | { readonly code: 'INSTALLED_BEFORE_REMOVED'; readonly removedAt: Instant; readonly installedAt: Instant };

/** The codes alone, for tables that must name each of them. */
export type RefusalCode = Refusal['code'];
