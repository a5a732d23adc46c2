import { CyclesDto } from '../../../platform/http/counters.dto.js';

/** Why a life can't be told. */
export class LifeReasonDto {
  code!: string;
  text!: string;
}

/** A calendar life, whether flown or in store. */
export class CalendarLifeDto {
  span!: number;
  unit!: 'days' | 'months';
  countedFrom!: 'new' | 'first-installation' | 'overhaul';
  monthRule!: 'same-day' | 'month-end';
  /** The day it counts from. */
  countedOn!: string | null;
}

/** A document a limit is from. */
export class LifeSourceDto {
  basis!: 'manual' | 'directive';
  document!: string;
  revision!: string;
  effectiveOn!: string;
  /** In what it governs; nothing where another document's is lower. */
  governs!: ('cycles' | 'minutes' | 'days' | 'authorisation')[];
}

/** A recorded acceptance of a worst case. */
export class AcceptedByDto {
  by!: string;
  reference!: string;
}

/** The life of a limited part. */
export class LifeDto {
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
  /** The share of the life that is used, exact; 1 is all of it. */
  used!: CyclesDto | null;
  cyclesUsed!: CyclesDto | null;
  minutesUsed!: number | null;
  cycleLimit!: number | null;
  /** Whole cycles left, rounded down; 0 is the last, below 0 is an overrun. */
  remainingCycles!: number | null;
  minuteLimit!: number | null;
  remainingMinutes!: number | null;
  /** The calendar life that ends first. */
  calendar!: CalendarLifeDto | null;
  /** The last day it is good through. */
  goodThrough!: string | null;
  /** Days until then: 0 on the last day, below 0 past it. */
  remainingDays!: number | null;
  /** The worst case stands for something unknown, under a recorded acceptance. */
  flagged!: boolean;
  /** Who accepted the worst case, by which reference. */
  acceptedBy!: AcceptedByDto[];
  reasons!: LifeReasonDto[];
  ratingCode!: string | null;
  /** The document that governs. */
  document!: string | null;
  revision!: string | null;
  /** The manual, and each directive that lowers its limit. */
  sources!: LifeSourceDto[];
  /** The day on which nothing is left; a forecast where use drives it, never a limit. */
  projectedOn!: string | null;
  projectedBy!: 'cycles' | 'minutes' | 'days' | null;
  /** What the projection rests on, or why there is none. */
  basis!: string;
}

/** The part that limits an engine. */
export class LimiterDto {
  componentId!: string;
  description!: string;
  partNumber!: string;
  serialNumber!: string;
  status!:
    | 'over'
    | 'in-tolerance'
    | 'soon'
    | 'planned'
    | 'later'
    | 'not-verified'
    | 'not-applicable'
    | 'closed';
  remainingCycles!: number | null;
  remainingMinutes!: number | null;
  remainingDays!: number | null;
  goodThrough!: string | null;
  /** The worst case stands for something unknown, under a recorded acceptance. */
  flagged!: boolean;
  projectedOn!: string | null;
  projectedBy!: 'cycles' | 'minutes' | 'days' | null;
  basis!: string;
  /** Why nothing remains to be told; null when a number stands. */
  reason!: string | null;
}
