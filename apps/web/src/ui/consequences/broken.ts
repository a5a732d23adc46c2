/** What something is called that is limited; null where it is an airframe or a position, named by its serial. */
interface Limited {
  readonly componentId: string | null;
  readonly serialNumber: string;
  readonly description: string;
  /** Code and title of a requirement; null for a life limit. */
  readonly requirement: string | null;
}

/** A limit or requirement that an act has newly reached or passed. */
export interface Reached extends Limited {
  readonly engineSerial: string | null;
  readonly dimension: 'cycles' | 'minutes' | 'days';
  readonly remaining: number;
}

/** Something of which an act has left it untold what remains. */
export interface Unknown extends Limited {
  readonly kind: 'not-verified' | 'not-authorised';
  readonly engineSerial: string | null;
  readonly reason: string | null;
}

/** A flight at an end of an overrun. */
export interface FlightAtEnd {
  readonly airframeId: string;
  readonly registration: string;
  readonly logPage: string;
  readonly landingAt: string;
}

/** A span over which something was flown beyond a limit or a requirement that stood then. */
export interface Overrun extends Limited {
  readonly document: string;
  readonly revision: string;
  readonly dimension: 'cycles' | 'minutes' | 'days';
  readonly limit: number | null;
  readonly dueOn: string | null;
  readonly by: number;
  readonly isOpen: boolean;
  readonly first: FlightAtEnd;
  readonly last: FlightAtEnd;
  readonly flights: number;
}

/** What an act on flights, places or balances newly breaks. */
export interface Broken {
  readonly newlyOver: readonly Reached[];
  readonly newlyUnknown: readonly Unknown[];
  readonly overruns: readonly Overrun[];
}

/** Whether an act broke nothing at all. */
export const isNothing = ({ newlyOver, newlyUnknown, overruns }: Broken): boolean =>
  newlyOver.length + newlyUnknown.length + overruns.length === 0;
