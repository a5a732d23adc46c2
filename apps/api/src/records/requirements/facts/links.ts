import type { Tx } from '../../../platform/database/database.js';
import type { Requirement } from '../../../platform/database/generated/client.js';

/** One requirement as another names it. */
export interface Linked {
  readonly id: string;
  readonly code: string;
}

/** What requirements in force do to others, by the codes of those. */
export interface Links {
  /** The requirement in force that takes the place of one with this code. */
  readonly supersededBy: ReadonlyMap<string, Linked>;
  /** The requirements in force that close one with this code where they are accomplished. */
  readonly terminatedBy: ReadonlyMap<string, readonly Linked[]>;
  /** The code of a requirement by its id, of those that others name. */
  readonly codeOf: ReadonlyMap<string, string>;
}

/** The links of the requirements in force. */
export async function loadLinks(tx: Tx, operatorId: number, inForce: readonly Requirement[]): Promise<Links> {
  const ids = inForce.flatMap(({ supersedesId, terminatesId }) =>
    [supersedesId, terminatesId].filter((id) => id !== null),
  );
  const rows =
    ids.length === 0
      ? []
      : await tx.requirement.findMany({
          where: { operatorId, id: { in: ids } },
          select: { id: true, code: true },
        });
  const codeOf = new Map(rows.map((row) => [row.id, row.code]));
  const supersededBy = new Map<string, Linked>();
  const terminatedBy = new Map<string, Linked[]>();
  for (const { id, code, supersedesId, terminatesId } of inForce) {
    const [older, ended] = [supersedesId, terminatesId].map((of) =>
      of === null ? undefined : codeOf.get(of),
    );
    if (older !== undefined && older !== code) supersededBy.set(older, { id, code });
    if (ended !== undefined && ended !== code)
      terminatedBy.set(ended, [...(terminatedBy.get(ended) ?? []), { id, code }]);
  }
  return { supersededBy, terminatedBy, codeOf };
}
