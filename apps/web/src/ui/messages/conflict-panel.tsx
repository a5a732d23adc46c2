import type { ReactNode } from 'react';
import { Button } from '../actions/button.js';
import './messages.css';

export interface ConflictLine {
  readonly term: string;
  readonly yours: ReactNode;
  readonly onRecord: ReactNode;
  readonly differs: boolean;
}

interface ConflictPanelProps {
  readonly lines: readonly ConflictLine[];
  /** Who wrote what is on record now, and when: 'R. Kay, 11 Nov 2026 14:05Z'. */
  readonly recordedBy: string;
  readonly onRecordMine?: (() => void) | undefined;
  readonly recordMineWord?: string;
  readonly onDiscardMine: () => void;
}

interface SideProps {
  readonly title: string;
  readonly lines: readonly ConflictLine[];
  readonly side: 'yours' | 'onRecord';
  readonly note?: string;
}

function Side({ title, lines, side, note }: SideProps) {
  return (
    <div className="conflict-side">
      <h3>{title}</h3>
      {note !== undefined && <p className="quiet small">{note}</p>}
      <dl>
        {lines.map((line) => (
          <div key={line.term} className={line.differs ? 'conflict-differs' : ''}>
            <dt>{line.term}</dt>
            <dd>{line[side]}</dd>
          </div>
        ))}
      </dl>
    </div>
  );
}

/** Two people wrote about one thing. Both versions are shown; nothing is merged in silence. */
export function ConflictPanel({
  lines,
  recordedBy,
  onRecordMine,
  recordMineWord,
  onDiscardMine,
}: ConflictPanelProps) {
  return (
    <section className="conflict stack" role="alert">
      <h2>This was changed while you worked</h2>
      <div className="conflict-sides">
        <Side title="Yours" lines={lines} side="yours" note="Not saved" />
        <Side title="On record now" lines={lines} side="onRecord" note={recordedBy} />
      </div>
      <div className="row">
        {onRecordMine !== undefined && (
          <Button onClick={onRecordMine}>{recordMineWord ?? 'Record mine as a further entry'}</Button>
        )}
        <Button onClick={onDiscardMine}>Discard mine</Button>
      </div>
    </section>
  );
}
