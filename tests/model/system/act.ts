/** Instants are minutes since the record began. */
export interface ToldException {
  readonly position: number;
  /** Null: dead for the whole flight. */
  readonly shutDownMinutes: number | null;
}

export interface ToldFlight {
  readonly airframe: string;
  readonly page: string;
  readonly takeOff: number;
  readonly landing: number;
  readonly touchAndGoes: number;
  readonly starts: number;
  readonly abortedTakeOffs: number;
  readonly exceptions: readonly ToldException[];
}

/** A day is counted from the record's first, in the airframe's zone. */
export type ToldBoundary =
  | { readonly kind: 'instant'; readonly at: number }
  | { readonly kind: 'after-page'; readonly airframe: string; readonly page: string }
  | { readonly kind: 'before-first' | 'after-last'; readonly airframe: string; readonly day: number };

/** One thing told to the record. A place that is null is the store. */
export type Act =
  | { readonly kind: 'fly'; readonly flight: ToldFlight }
  | { readonly kind: 'void'; readonly airframe: string; readonly page: string }
  | { readonly kind: 'correct'; readonly page: string; readonly flight: ToldFlight }
  | {
      readonly kind: 'change';
      readonly slot: string;
      readonly off: string | null;
      readonly on: string | null;
      readonly boundary: ToldBoundary;
      readonly rating: string | null;
    }
  | {
      readonly kind: 'place';
      readonly component: string;
      readonly slot: string | null;
      readonly boundary: ToldBoundary;
      readonly until: ToldBoundary | null;
    }
  | { readonly kind: 'rate'; readonly engine: string; readonly rating: string; readonly at: number }
  | { readonly kind: 'void-stay'; readonly stay: number };
