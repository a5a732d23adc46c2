/** A node of a tree, and what hangs in it. */
export interface Branch {
  readonly id: string;
  /** What typing letters is held against, each alone: a serial, a name. */
  readonly words: readonly string[];
  readonly branches: readonly Branch[];
}

/** A row in sight. */
export interface TreeRow {
  readonly branch: Branch;
  readonly parentId: string | null;
  readonly level: number;
  readonly place: number;
  readonly of: number;
  /** Null when nothing hangs in it. */
  readonly open: boolean | null;
}

/** The rows in sight, from the top. */
export function visibleRows(
  branches: readonly Branch[],
  closed: ReadonlySet<string>,
  level = 1,
  parentId: string | null = null,
): readonly TreeRow[] {
  return branches.flatMap((branch, index) => {
    const openable = branch.branches.length > 0;
    const open = openable ? !closed.has(branch.id) : null;
    const own: TreeRow = { branch, parentId, level, place: index + 1, of: branches.length, open };
    return open === true ? [own, ...visibleRows(branch.branches, closed, level + 1, branch.id)] : [own];
  });
}

/** All that can be opened. */
export function idsOfOpenable(branches: readonly Branch[]): readonly string[] {
  return branches.flatMap((branch) =>
    branch.branches.length === 0 ? [] : [branch.id, ...idsOfOpenable(branch.branches)],
  );
}

export type TreeMove =
  | { readonly kind: 'go'; readonly id: string }
  | { readonly kind: 'open' | 'close'; readonly ids: readonly string[] }
  | { readonly kind: 'enter' };

interface From {
  readonly rows: readonly TreeRow[];
  readonly from: TreeRow;
  readonly key: string;
  /** Adds a letter to what was just typed, and answers the word. */
  readonly typing: (letter: string) => string;
}

const go = (row: TreeRow | undefined): TreeMove | null =>
  row === undefined ? null : { kind: 'go', id: row.branch.id };

function toTyped({ rows, from, key, typing }: From): TreeMove | null {
  const word = typing(key.toLowerCase());
  const at = rows.indexOf(from);
  // A first letter goes on to the next; the second refines where one stands.
  const start = word.length === 1 ? at + 1 : at;
  const inTurn = [...rows.slice(start), ...rows.slice(0, start)];
  return go(inTurn.find(({ branch }) => branch.words.some((said) => said.toLowerCase().startsWith(word))));
}

/** What a key does from a row; null when it does nothing here. */
export function moveFrom(asked: From): TreeMove | null {
  const { rows, from, key } = asked;
  const at = rows.indexOf(from);
  switch (key) {
    case 'ArrowDown':
      return go(rows[at + 1]);
    case 'ArrowUp':
      return go(rows[at - 1]);
    case 'Home':
      return go(rows[0]);
    case 'End':
      return go(rows.at(-1));
    case 'ArrowRight':
      if (from.open === false) return { kind: 'open', ids: [from.branch.id] };
      return from.open === true ? go(rows[at + 1]) : null;
    case 'ArrowLeft':
      if (from.open === true) return { kind: 'close', ids: [from.branch.id] };
      return go(rows.find(({ branch }) => branch.id === from.parentId));
    case 'Enter':
      return { kind: 'enter' };
    case '*':
      return {
        kind: 'open',
        ids: rows
          .filter(({ parentId, open }) => parentId === from.parentId && open !== null)
          .map(({ branch }) => branch.id),
      };
    default:
      return key.length === 1 && key !== ' ' ? toTyped(asked) : null;
  }
}
