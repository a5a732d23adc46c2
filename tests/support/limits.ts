/** A life as the API tells it. */
export interface ToldLife {
  readonly kind: string;
  readonly status: string;
  readonly cycleLimit: number | null;
  readonly remainingCycles: number | null;
  readonly remainingMinutes: number | null;
  readonly goodThrough: string | null;
  readonly remainingDays: number | null;
  readonly calendar: { readonly span: number; readonly countedOn: string | null } | null;
  readonly flagged: boolean;
  readonly reasons: readonly { readonly code: string; readonly text: string }[];
  readonly document: string | null;
  readonly sources: readonly {
    readonly basis: string;
    readonly document: string;
    readonly governs: readonly string[];
  }[];
  readonly projectedOn: string | null;
  readonly projectedBy: string | null;
  readonly basis: string;
}

/** A side of a previewed change. */
interface Side {
  readonly kind: string;
  readonly status: string;
  readonly cycleLimit: number | null;
  readonly remainingCycles: number | null;
  readonly remainingDays: number | null;
  readonly goodThrough: string | null;
  readonly document: string | null;
  readonly basis: string | null;
}

/** What a revision would change. */
export interface Preview {
  readonly digest: string;
  readonly later: boolean;
  readonly looked: number;
  readonly partNumbersNotHeld: readonly string[];
  readonly changes: readonly {
    readonly componentId: string;
    readonly serialNumber: string;
    readonly engineSerial: string | null;
    readonly airframe: string | null;
    readonly positionNumber: number | null;
    readonly before: Side;
    readonly after: Side;
    readonly effect: string;
  }[];
}

/** A day so many days from today, in UTC. */
export const dayFromNow = (days: number): string =>
  new Date(Date.now() + days * 86_400_000).toISOString().slice(0, 10);

/** A row of a revision: so many cycles for a part number at any rating, unless told otherwise. */
export const limitRow = (
  partNumber: string,
  engineModelId: string,
  more: Readonly<Record<string, unknown>>,
): Readonly<Record<string, unknown>> => ({ partNumber, engineModelId, authorisation: 'limited', ...more });

/** A revision with its rows. */
export const revisionOf = (
  rows: readonly Readonly<Record<string, unknown>>[],
  more: Readonly<Record<string, unknown>> = {},
) => ({
  basis: 'manual',
  document: 'Manual, chapter 05',
  revision: '2',
  effectiveOn: '2024-01-01',
  rows,
  ...more,
});
