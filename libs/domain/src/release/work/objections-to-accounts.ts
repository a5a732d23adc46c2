import { countsOf, openItems } from '../../work/accounts.js';
import type { Objection } from '../objection.js';
import type { WorkSnapshot } from '../work-snapshot.js';
import { heldAgainstStep } from './held-against-step.js';

/** What was opened, parted or put out of safety and is not closed by a step that is signed. Total. */
export function objectionsToItems({ items, steps }: WorkSnapshot): readonly Objection[] {
  return openItems(items, steps).map(({ item, openedBy }) =>
    heldAgainstStep(openedBy, 'ITEM_OPEN', {
      detail: { item: item.name, kind: item.kind, side: item.side },
    }),
  );
}

/** Tags, blanks or tools of which not as many came back as went out. Total. */
export function objectionsToCounts({ steps }: WorkSnapshot, packageId: string): readonly Objection[] {
  return countsOf(steps)
    .filter((count) => count.out !== count.in)
    .map((count) => ({
      code: 'COUNTS_DIFFER',
      severity: 'blocking',
      positionNumber: null,
      record: { kind: 'package', id: packageId },
      detail: { what: count.what, out: count.out, in: count.in },
    }));
}
