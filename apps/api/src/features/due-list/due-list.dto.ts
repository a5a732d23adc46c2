/** A requirement that a row is of. */
export class DueRequirementDto {
  id!: string;
  code!: string;
  title!: string;
  kind!:
    | 'inspection'
    | 'overhaul'
    | 'directive'
    | 'bulletin'
    | 'discard'
    | 'check'
    | 'airworthiness-limitation';
  /** Whether the dimension that comes first governs, or the one that comes last. */
  combine!: 'first' | 'last';
}

/** One dimension in which something falls due. */
export class DueDimensionDto {
  dimension!: 'minutes' | 'cycles' | 'days' | 'months';
  /** What is granted: minutes, cycles, days or months; null where no document says. */
  interval!: number | null;
  /** Whole minutes, cycles or days left; below zero they are past. */
  remaining!: number;
  /** The same until the end of what the requirement grants past it: its window, or an approved variation. */
  untilLatest!: number;
  /** Whether it is of an outer bound, which governs as soon as it comes. */
  isBound!: boolean;
  /** The last day it is good through; null for minutes and cycles. */
  dueOn!: string | null;
  /** The day on which nothing is left by the basis; a forecast in minutes and cycles, never a limit. */
  projectedOn!: string | null;
}

/** A life or a requirement of one thing: what falls due, or that it can't be told. */
export class DueRowDto {
  id!: string;
  kind!: 'life-limit' | 'counters' | 'requirement';
  /** The requirement it is of; null for a limit. */
  requirement!: DueRequirementDto | null;
  /** Null for a requirement of an airframe or a position, as are its description and numbers. */
  componentId!: string | null;
  description!: string | null;
  partNumber!: string | null;
  serialNumber!: string | null;
  engineId!: string | null;
  engineSerial!: string | null;
  airframeId!: string | null;
  /** The registration; null for what is on no airframe. */
  airframe!: string | null;
  positionNumber!: number | null;
  status!:
    | 'over'
    | 'in-tolerance'
    | 'soon'
    | 'planned'
    | 'later'
    | 'not-verified'
    | 'not-applicable'
    | 'closed';
  /** What governs: cycles, minutes or the calendar, or none where nothing can be told. */
  dimension!: 'cycles' | 'minutes' | 'days' | 'months' | 'none';
  /** Whole cycles left, rounded down; below zero they are past. */
  remainingCycles!: number | null;
  /** Whole minutes left. */
  remainingMinutes!: number | null;
  /** Days left; a calendar limit is good through its day. */
  remainingDays!: number | null;
  /** The last day it is good through; null where hours or cycles govern. */
  dueOn!: string | null;
  /** All its dimensions that can be told. */
  dues!: DueDimensionDto[];
  /** The limit, or what the requirement grants: in whole cycles or minutes, days or months. */
  limit!: number | null;
  /** Document the limit or requirement is from. */
  document!: string | null;
  revision!: string | null;
  /** The day on which nothing is left at the use named by `basis`; a forecast, never a limit. */
  projectedOn!: string | null;
  /** What the projection rests on, or why there is none. */
  basis!: string;
  /** Why it is not verified or not authorised. */
  reason!: string | null;
  /** A worst case stands for what is unknown, under a recorded acceptance. */
  flagged!: boolean;
}

/** What an airframe uses in so many days, by the basis. */
export class DueUseDto {
  airframeId!: string;
  registration!: string;
  /** Whole minutes in those days. */
  minutes!: number;
  flights!: number;
  days!: number;
}

/** By what the dates of a page are projected. */
export class DueBasisDto {
  kind!: 'average' | 'rate' | 'flights';
  /** Days that an average is of; null for what is planned. */
  days!: number | null;
  /** The basis in words. */
  statement!: string;
  /** Its numbers, for each airframe of the page. */
  uses!: DueUseDto[];
}

/** A page of the due list, the most urgent first unless asked otherwise. */
export class DuePageDto {
  rows!: DueRowDto[];
  /** Send it as `after` for the next page; null after the last. */
  next!: string | null;
  basis!: DueBasisDto;
}

/** How many rows there are of each status. */
export class DueCountsDto {
  over!: number;
  inTolerance!: number;
  soon!: number;
  planned!: number;
  later!: number;
  notVerified!: number;
  total!: number;
}

/** Totals of the due list: what is shown, and what filters leave out. */
export class DueTotalsDto {
  /** Of the whole fleet. */
  whole!: DueCountsDto;
  /** Of the airframe, position or component asked for; of the whole fleet where none is. */
  scope!: DueCountsDto;
  /** Of what the filters show. */
  shown!: DueCountsDto;
}
