/** A limit or requirement that an act has newly reached or passed. */
export class NewlyOverDto {
  /** Null for a requirement of an airframe or a position, which `serialNumber` names then. */
  componentId!: string | null;
  serialNumber!: string;
  partNumber!: string;
  description!: string;
  /** The engine it is in; null when it is in none. */
  engineSerial!: string | null;
  /** Code and title of the requirement; null for a life limit. */
  requirement!: string | null;
  dimension!: 'cycles' | 'minutes' | 'days';
  /** Whole cycles, minutes or days left: 0 is the last one used, below 0 is an overrun. */
  remaining!: number;
}

/** Something of which an act has left it untold what remains, or which is not authorised where it is by it. */
export class NewlyUnknownDto {
  kind!: 'not-verified' | 'not-authorised';
  /** Null for a requirement of an airframe or a position, which `serialNumber` names then. */
  componentId!: string | null;
  serialNumber!: string;
  description!: string;
  engineSerial!: string | null;
  /** Code and title of the requirement; null for a life limit or the counters themselves. */
  requirement!: string | null;
  /** Why, in words. */
  reason!: string | null;
}

/** A flight at an end of an overrun. */
export class FlightAtEndDto {
  id!: string;
  airframeId!: string;
  registration!: string;
  logPage!: string;
  takeOffAt!: string;
  landingAt!: string;
}

/** A span over which something was flown beyond a limit or a requirement that stood then. */
export class OverrunDto {
  /** What was flown: exactly one of the three. */
  componentId!: string | null;
  airframeId!: string | null;
  positionId!: string | null;
  /** What it is called: a serial number, a registration, or a position. */
  serialNumber!: string;
  partNumber!: string;
  description!: string;
  kind!: 'life-limit' | 'requirement';
  /** Code and title of the requirement; null for a life limit. */
  requirement!: string | null;
  requirementId!: string | null;
  document!: string;
  revision!: string;
  dimension!: 'cycles' | 'minutes' | 'days';
  /** The limit in cycles or minutes, or the counter since new at which the duty was due; null for a day. */
  limit!: number | null;
  /** The last day it was good through; null for counters. */
  dueOn!: string | null;
  /** Whole cycles, minutes or days beyond it at the worst, rounded up. */
  by!: number;
  /** Whether it goes on: it is due still, or the part may fly on as it is. */
  isOpen!: boolean;
  first!: FlightAtEndDto;
  last!: FlightAtEndDto;
  /** How many flights were flown beyond it. */
  flights!: number;
}

/** What an act on flights, places or balances did to what is limited. */
export class ConsequencesDto {
  /** Limits and requirements that are reached or passed now and were not before. */
  newlyOver!: NewlyOverDto[];
  newlyUnknown!: NewlyUnknownDto[];
  /** Spans flown over a limit that show by it, or are longer by it; also of what was removed or done since. */
  overruns!: OverrunDto[];
}
