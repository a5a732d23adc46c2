import { CyclesDto } from '../../platform/http/counters.dto.js';
import { LifeLimitDto } from './life-limit.dto.js';

/** A life by limits before or after. */
export class LimitSideDto {
  kind!: 'limited' | 'unsubstantiated' | 'not-authorised' | 'not-limited';
  status!:
    | 'over'
    | 'in-tolerance'
    | 'soon'
    | 'planned'
    | 'later'
    | 'not-verified'
    | 'not-applicable'
    | 'closed';
  /** The share of the life that is used, exact. */
  used!: CyclesDto | null;
  cycleLimit!: number | null;
  remainingCycles!: number | null;
  minuteLimit!: number | null;
  remainingMinutes!: number | null;
  goodThrough!: string | null;
  remainingDays!: number | null;
  flagged!: boolean;
  /** The document that governs. */
  basis!: 'manual' | 'directive' | null;
  document!: string | null;
  revision!: string | null;
  /** Why no number stands. */
  reason!: string | null;
}

/** A serial whose life a revision changes. */
export class LimitChangeDto {
  componentId!: string;
  partNumber!: string;
  serialNumber!: string;
  description!: string;
  engineId!: string | null;
  engineSerial!: string | null;
  airframe!: string | null;
  positionNumber!: number | null;
  ratingCode!: string | null;
  cyclesUsed!: CyclesDto | null;
  minutesUsed!: number | null;
  before!: LimitSideDto;
  after!: LimitSideDto;
  /**
   * What it does: puts it over, forbids it, brings it within the alert window, leaves it less or more, makes it not
   * verified or tells it, or changes the document alone.
   */
  effect!: 'over' | 'not-authorised' | 'not-verified' | 'short' | 'less' | 'more' | 'document';
}

/** What a revision would change, nothing stored. */
export class LimitPreviewDto {
  /** Of what was looked at; accepted with it, unless something changed meanwhile. */
  digest!: string;
  effectiveOn!: string;
  /** Whether it is effective on a later day: then lives are judged by it from that day on. */
  later!: boolean;
  /** How many serials were looked at. */
  looked!: number;
  /** Part numbers of the revision that no component has. */
  partNumbersNotHeld!: string[];
  /** What it puts over, forbids or makes short first. */
  changes!: LimitChangeDto[];
}

/** A revision that was accepted. */
export class AcceptedLimitsDto {
  limits!: LifeLimitDto[];
  changes!: LimitChangeDto[];
}
