import type { Capture } from './capture.js';

/** Where on the powerplant a group of steps is, as the pictures show it. */
export const POD_PLACES = [
  'cockpit',
  'ground',
  'inlet',
  'fan-cowls',
  'reverser',
  'core-left',
  'core-right',
  'gearbox',
  'forward-mount',
  'aft-mount',
  'strut',
  'exhaust',
  'stand',
] as const;

export type PodPlace = (typeof POD_PLACES)[number];

/** A group of steps: its letter, its name, its lane and where on the pod it is. */
export interface StepGroup {
  readonly key: string;
  readonly letter: string;
  readonly title: string;
  /** Which side of a change it belongs to: taking out, putting in, or neither. */
  readonly lane: 'out' | 'in' | 'both';
  readonly place: PodPlace;
}

/** A thing that is opened or parted in the work and must be closed or joined in it. */
export interface AccountableItem {
  readonly key: string;
  readonly kind: 'connection' | 'cowl' | 'panel' | 'safety';
  readonly name: string;
  readonly side: 'left' | 'right' | null;
}

/** One thing to do, as the approved data has it. */
export interface StepDefinition {
  /** Unique in its procedure: 'part-fuel-supply'. */
  readonly key: string;
  /** Its place in the order, from 1. */
  readonly number: number;
  readonly group: string;
  /** One action, verb first. */
  readonly title: string;
  /** How, in plain words; null where the title says it all. */
  readonly text: string | null;
  /** Shown before the action. */
  readonly cautions: readonly string[];
  /** The document and revision behind its numbers; null where it has none. */
  readonly source: { readonly document: string; readonly revision: string } | null;
  /** Keys of steps that must be signed, and inspected where they ask for it, before this one. */
  readonly waitsFor: readonly string[];
  /** Whether another person must look at it. */
  readonly inspection: 'none' | 'independent';
  readonly captures: readonly Capture[];
  /** Keys of things it opens or parts, and of things it closes or joins. */
  readonly opens: readonly string[];
  readonly closes: readonly string[];
  /** Signing it moves the component of the order. */
  readonly moves: 'removal' | 'installation' | null;
}

/** The content of a procedure, or of the steps of a package. */
export interface ProcedureContent {
  readonly groups: readonly StepGroup[];
  readonly items: readonly AccountableItem[];
  readonly steps: readonly StepDefinition[];
}
