/** A component, as the API tells it: where it is, what is in it, and how long its life is. */
export interface ComponentView {
  readonly id: string;
  readonly place: { readonly kind: string; readonly label: string; readonly parentSerial: string | null };
  readonly ratingCode: string | null;
  readonly verified: boolean;
  readonly counters: {
    readonly sinceNew: { readonly minutes: number | null; readonly cycles: object | null };
  };
  readonly life: { readonly kind: string; readonly remainingCycles: number | null } | null;
  readonly limiter: { readonly serialNumber: string; readonly remainingCycles: number | null } | null;
  readonly slots: readonly {
    readonly name: string;
    readonly component: { readonly serialNumber: string } | null;
  }[];
}
