import type { Life } from '../life/life.js';
import type { UnfitComponent } from '../serviceability/unfit.js';
import type { Instant } from '../units/minutes.js';
import type { GapNote } from './log-gaps.js';
import {
  NO_WORK,
  type ReleaserSnapshot,
  type RequirementSnapshot,
  type WorkSnapshot,
} from './work-snapshot.js';

/** A place in an engine where a limited part is expected, and what is there. */
export interface LimitedPartSlot {
  readonly slotId: string;
  readonly slotName: string;
  readonly part: {
    readonly componentId: string;
    readonly partNumber: string;
    readonly serial: string;
    readonly serviceable: boolean | null;
    readonly life: Life;
  } | null;
}

/** A component that is fitted though the records say it is not fit for it. */
export interface UnfitPart extends UnfitComponent {
  readonly componentId: string;
  readonly serial: string;
  readonly partNumber: string;
}

/** An engine as the release check sees it; time in minutes, cycles used rounded up; null where not known. */
export interface EngineSnapshot {
  readonly componentId: string;
  readonly serial: string;
  readonly modelId: string;
  readonly modelName: string;
  /** Whether the model is authorised at this position; null when no list is recorded. */
  readonly authorised: boolean | null;
  readonly serviceable: boolean | null;
  readonly ratingId: string | null;
  readonly ratingName: string | null;
  readonly totals: { readonly minutes: number | null; readonly cycles: number | null };
  readonly limitedParts: readonly LimitedPartSlot[];
  /** What the records say is not fit to be fitted: itself, or anything in it. */
  readonly unfit?: readonly UnfitPart[];
}

/** A position of the airframe, and what is there. */
export interface PositionSnapshot {
  readonly positionId: string;
  readonly number: number;
  readonly engine: EngineSnapshot | null;
}

/** One of the last flights of the log, in order of take-off. */
export interface LoggedLeg {
  readonly flightId: string;
  readonly page: string | null;
  readonly from: string | null;
  readonly to: string | null;
  readonly takeOffAt: Instant;
  readonly landingAt: Instant;
  /** What was noted of gaps before it. */
  readonly notes: readonly GapNote[];
}

/** A component that is released by itself, with what is beneath it. */
export interface ComponentSnapshot {
  readonly kind: 'engine' | 'apu' | 'module' | 'part' | 'pod';
  readonly as: EngineSnapshot;
}

/** A life or a requirement that the flights planned would make over. */
export interface PlannedReach {
  /** The requirement; of a life, what it is of. */
  readonly record: { readonly kind: 'requirement' | 'component'; readonly id: string };
  readonly name: string;
  /** What it is of. */
  readonly on: string;
  readonly positionNumber: number | null;
  /** Take-off of the first planned flight that must not be made. */
  readonly takeOffAt: Instant;
}

/** Everything one release is judged on, as of one instant. */
export interface ReleaseSnapshot {
  readonly package: {
    readonly id: string;
    readonly kind: string;
    /** The airframe that is released; null for a component that hangs on none. */
    readonly airframeId: string | null;
    readonly registration: string | null;
    readonly ruleSet: string;
  };
  readonly at: Instant;
  readonly positions: readonly PositionSnapshot[];
  /** The component of a package on no airframe. */
  readonly component: ComponentSnapshot | null;
  /** What is not fit and hangs there outside the engines: pods, auxiliary power units. */
  readonly unfit?: readonly UnfitPart[];
  readonly flights: readonly LoggedLeg[];
  readonly work: WorkSnapshot;
  readonly requirements: readonly RequirementSnapshot[];
  /** What the flights planned would make over and the package does not accomplish; none where nothing is planned. Releases signed before have none. */
  readonly planned?: readonly PlannedReach[];
  /** Who asks, where they are certifying staff; null for everyone else, to whom the check is advice. */
  readonly releaser: ReleaserSnapshot | null;
  /** Cycles the part shall last from here; null when nobody planned it. */
  readonly plannedStayCycles: number | null;
}

/** The rest of a snapshot in which components alone are looked at. */
export const NOTHING_ELSE = {
  component: null,
  flights: [],
  work: NO_WORK,
  requirements: [],
  releaser: null,
  plannedStayCycles: null,
} as const satisfies Partial<ReleaseSnapshot>;
