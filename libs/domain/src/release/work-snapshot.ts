import type { CalendarDate } from '../units/calendar.js';
import type { AccountableItem } from '../work/step.js';
import type { StepFacts } from '../work/step-standing.js';

/** A tool as an entry used it: the day of use, and the calibrations that stand now. */
export interface ToolUse {
  readonly entryId: string;
  readonly toolId: string;
  readonly serial: string;
  readonly on: CalendarDate;
  readonly calibrations: readonly { readonly calibratedOn: CalendarDate; readonly dueOn: CalendarDate }[];
}

/** A component named by its serial number. */
export interface NamedComponent {
  readonly id: string;
  readonly serial: string;
}

/** What the order says is changed at a slot, what was changed there, and what is there now. */
export interface OrderSnapshot {
  readonly id: string;
  /** In words: 'engine at position 2'. */
  readonly place: string;
  readonly positionNumber: number | null;
  readonly slotId: string;
  readonly outgoing: NamedComponent | null;
  readonly incoming: NamedComponent | null;
  /** The last change of the package at this slot; null when there was none. */
  readonly made: { readonly outgoingId: string | null; readonly incomingId: string | null } | null;
  readonly installedNow: NamedComponent | null;
}

/** Who signed a step, and whether an authorisation that stands covers the day of signing. */
export interface SignerSnapshot {
  readonly signatureId: string;
  readonly personId: string;
  readonly name: string;
  readonly scope: 'work' | 'inspection';
  readonly on: CalendarDate;
  readonly authorised: boolean;
}

/** The work of a package by steps. */
export interface WorkSnapshot {
  readonly steps: readonly StepFacts[];
  readonly items: readonly AccountableItem[];
  readonly toolUses: readonly ToolUse[];
  readonly orders: readonly OrderSnapshot[];
  /** Of every signature that is not undone. */
  readonly signers: readonly SignerSnapshot[];
}

/** A package without steps and without an order: a change logged as one act. */
export const NO_WORK: WorkSnapshot = { steps: [], items: [], toolUses: [], orders: [], signers: [] };

/** A requirement of what is released, where it stands now. */
export interface RequirementSnapshot {
  readonly id: string;
  /** In words: its reference and title. */
  readonly name: string;
  /** What it is on: 'engine KT-442 at position 1'. */
  readonly on: string;
  readonly positionNumber: number | null;
  readonly verdict: 'in-order' | 'in-tolerance' | 'over' | 'not-verified';
  /** By how much it is over or past its due, or what is not known, in words. */
  readonly why: string;
  /** Whether the package that is released accomplishes it. */
  readonly closedHere: boolean;
}

/** Who asks for the check and may sign the release. */
export interface ReleaserSnapshot {
  readonly personId: string;
  readonly name: string;
  readonly licence: string | null;
  /** Whether an authorisation to release this type is in force today. */
  readonly authorised: boolean;
}
