import { type KeyboardEvent, type ReactNode, useEffect, useRef, useState } from 'react';
import { flushSync } from 'react-dom';
import { type Branch, idsOfOpenable, moveFrom, type TreeRow, visibleRows } from './tree-rows.js';
import './record-tree.css';

export type { Branch } from './tree-rows.js';

interface RecordTreeProps {
  readonly label: string;
  readonly branches: readonly Branch[];
  /** The row's content; the tree adds the indent and the opener. */
  readonly row: (branch: Branch) => ReactNode;
  /** Enter on a row. */
  readonly onOpen: (branch: Branch) => void;
}

const TYPED_TOGETHER_MS = 700;

/** What is typed in quick succession counts as one word. */
function useTyping(): (letter: string) => string {
  const typed = useRef({ word: '', at: 0 });
  return (letter) => {
    const now = Date.now();
    const word = now - typed.current.at > TYPED_TOGETHER_MS ? letter : typed.current.word + letter;
    typed.current = { word, at: now };
    return word;
  };
}

interface RowProps extends Pick<RecordTreeProps, 'row'> {
  readonly shown: TreeRow;
  readonly inHand: boolean;
  readonly keep: (element: HTMLDivElement | null) => void;
  readonly onToggle: () => void;
  readonly onFocus: () => void;
}

function Row({ shown, inHand, keep, onToggle, onFocus, row }: RowProps) {
  const { branch, level, place, of, open } = shown;
  return (
    <div
      ref={keep}
      role="treeitem"
      aria-level={level}
      aria-posinset={place}
      aria-setsize={of}
      aria-expanded={open ?? undefined}
      tabIndex={inHand ? 0 : -1}
      className={`tree-row tree-level-${Math.min(level, 5)}`}
      onFocus={onFocus}
    >
      {open === null ? (
        <span className="tree-opener" aria-hidden="true" />
      ) : (
        // The arrow keys do the same; this is for the finger and the mouse.
        <span className="tree-opener tree-opener-on" aria-hidden="true" onClick={onToggle}>
          <svg width="12" height="12" viewBox="0 0 12 12" aria-hidden="true">
            <path d={open ? 'M1 3h10L6 10z' : 'M3 1l7 5-7 5z'} fill="currentColor" />
          </svg>
        </span>
      )}
      {row(branch)}
    </div>
  );
}

/**
 * What hangs in what. Keys: up and down, right opens, left closes or goes to the parent, Home and End,
 * letters go to the row that begins so, * opens all beside. Source: WAI-ARIA authoring practices, tree view.
 */
export function RecordTree({ label, branches, row, onOpen }: RecordTreeProps) {
  const [closed, setClosed] = useState<ReadonlySet<string>>(new Set());
  const [hand, setHand] = useState<string | null>(null);
  const elements = useRef(new Map<string, HTMLDivElement>());
  const typing = useTyping();
  const rows = visibleRows(branches, closed);
  const inHand = rows.find(({ branch }) => branch.id === hand) ?? rows[0];

  useEffect(() => {
    // On paper everything is open.
    const openAll = () => flushSync(() => setClosed(new Set()));
    window.addEventListener('beforeprint', openAll);
    return () => window.removeEventListener('beforeprint', openAll);
  }, []);

  const set = (ids: readonly string[], open: boolean) => {
    const next = new Set(closed);
    for (const id of ids) open ? next.delete(id) : next.add(id);
    setClosed(next);
  };
  const press = (event: KeyboardEvent) => {
    if (inHand === undefined || event.ctrlKey || event.metaKey || event.altKey) return;
    const move = moveFrom({ rows, from: inHand, key: event.key, typing });
    if (move === null) return;
    event.preventDefault();
    if (move.kind === 'go') elements.current.get(move.id)?.focus();
    else if (move.kind === 'enter') onOpen(inHand.branch);
    else set(move.ids, move.kind === 'open');
  };
  return (
    <div className="tree-frame">
      <div className="row no-print">
        <button type="button" className="button button-quiet" onClick={() => setClosed(new Set())}>
          Open all
        </button>
        <button
          type="button"
          className="button button-quiet"
          onClick={() => setClosed(new Set(idsOfOpenable(branches)))}
        >
          Close all
        </button>
      </div>
      <div className="tree" role="tree" aria-label={label} onKeyDown={press}>
        {rows.map((shown) => (
          <Row
            key={shown.branch.id}
            shown={shown}
            inHand={shown.branch.id === inHand?.branch.id}
            keep={(element) => {
              if (element === null) elements.current.delete(shown.branch.id);
              else elements.current.set(shown.branch.id, element);
            }}
            onToggle={() => set([shown.branch.id], shown.open === false)}
            onFocus={() => setHand(shown.branch.id)}
            row={row}
          />
        ))}
      </div>
    </div>
  );
}
