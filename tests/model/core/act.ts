/** A flight as told to both sides. Instants are minutes from the beginning of the record. */
export interface ToldFlight {
  readonly id: string;
  readonly airframe: string;
  readonly takeOff: number;
  readonly landing: number;
  readonly touchAndGoes: number;
  readonly starts: number;
  readonly abortedTakeOffs: number;
  readonly exceptions: readonly ToldException[];
}

/** A position shut down for some minutes of a flight, or (null) not running at all. */
export interface ToldException {
  readonly position: string;
  readonly shutDownMinutes: number | null;
}

/** One thing recorded. `place` null is the store. */
export type Act =
  | { readonly kind: 'fly'; readonly flight: ToldFlight }
  | { readonly kind: 'void'; readonly id: string }
  | { readonly kind: 'correct'; readonly id: string; readonly flight: ToldFlight }
  | {
      readonly kind: 'change';
      readonly slot: string;
      readonly off: string | null;
      readonly on: string | null;
      readonly at: number;
    }
  | { readonly kind: 'move'; readonly component: string; readonly place: string | null; readonly at: number }
  | { readonly kind: 'rate'; readonly engine: string; readonly rating: string | null; readonly at: number }
  | {
      readonly kind: 'shift';
      readonly component: string;
      /** Which of its stays begins at another instant. */
      readonly stay: number;
      readonly at: number;
    };
