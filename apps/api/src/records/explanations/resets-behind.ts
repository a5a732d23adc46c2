import type { Tx } from '../../platform/database/database.js';
import { wordsOfPlaces } from '../stays/place-words.js';
import type { CounterBasis, ResetBehind } from './explained.js';

/** An opening balance, one row a rating. */
export interface OpeningRow {
  readonly id: string;
  readonly at: Date;
  readonly atKind: string;
  readonly atText: string | null;
  readonly basis: string;
  readonly ratingId: string | null;
  readonly minutes: bigint | null;
  readonly cycles: bigint | null;
  readonly cycleDenominator: number;
  readonly source: string;
  readonly trace: string;
  readonly traceNote: string | null;
}

/** The kinds of reset that begin each counter; the first also names the opening balance it may have come with. */
export const RESETS_OF = {
  overhaul: ['overhaul'],
  'shop-visit': ['shop-visit', 'overhaul'],
  repair: ['repair'],
} as const satisfies Partial<Record<CounterBasis, readonly string[]>>;

/** What set each counter of a component to nothing by an instant; a basis without such an event is left out. */
export async function resetsBehind(
  tx: Tx,
  operatorId: number,
  { componentId, at, openings }: { componentId: string; at: Date | null; openings: readonly OpeningRow[] },
): Promise<ReadonlyMap<CounterBasis, ResetBehind>> {
  const until = at === null ? {} : { lte: at };
  const resets = await tx.reset.findMany({
    where: { operatorId, componentId, voidedSeq: null, ...(at === null ? {} : { at: until }) },
    orderBy: { at: 'asc' },
  });
  const found = new Map<CounterBasis, ResetBehind>();
  for (const [basis, kinds] of Object.entries(RESETS_OF) as [keyof typeof RESETS_OF, readonly string[]][]) {
    const reset = resets.findLast((row) => kinds.includes(row.kind));
    const opening = openings.find((row) => row.basis === basis);
    if (reset !== undefined)
      found.set(basis, {
        ...{ id: reset.id, at: reset.at, kind: reset.atKind, text: reset.atText, evidence: reset.evidence },
        kindOfReset: reset.kind as ResetBehind['kindOfReset'],
      });
    else if (opening !== undefined)
      found.set(basis, {
        ...{ id: opening.id, at: opening.at, kind: opening.atKind, text: opening.atText },
        evidence: opening.source,
        kindOfReset: 'opening',
      });
  }
  const installed = await installation(tx, operatorId, componentId, at);
  if (installed !== null) found.set('installation', installed);
  return found;
}

async function installation(
  tx: Tx,
  operatorId: number,
  componentId: string,
  at: Date | null,
): Promise<ResetBehind | null> {
  const stay = await tx.stay.findFirst({
    where: {
      ...{ operatorId, componentId, voidedSeq: null, slotId: { not: null } },
      ...(at === null ? { toAt: null } : { fromAt: { lte: at }, OR: [{ toAt: null }, { toAt: { gt: at } }] }),
    },
  });
  if (stay?.slotId == null) return null;
  const words = await wordsOfPlaces(tx, operatorId, { slotIds: [stay.slotId], locationIds: [] });
  return {
    ...{ id: stay.id, at: stay.fromAt, kind: stay.fromKind, text: stay.fromText },
    evidence: words.get(stay.slotId)?.label ?? '',
    kindOfReset: 'installation',
  };
}
