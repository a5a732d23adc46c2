import { countersText } from '../../format/counters-text.js';
import { sinceText } from '../../format/when.js';
import type { ChangedComponent, ChangePreview } from '../../server/wire.js';
import { type ConflictLine, ConflictPanel } from '../../ui/messages/conflict-panel.js';

const counters = (component: ChangedComponent | null): string =>
  component === null ? 'Nothing' : `${component.serialNumber}, ${countersText(component.sinceNew)}`;

const held = ({ objections }: ChangePreview): string =>
  objections.length === 0
    ? 'Nothing'
    : objections.map(({ reason, subject }) => `${subject.label}: ${reason}`).join(' ');

function line(
  term: string,
  tell: (preview: ChangePreview) => string,
  mine: ChangePreview,
  now: ChangePreview,
): ConflictLine {
  const [yours, onRecord] = [tell(mine), tell(now)];
  return { term, yours, onRecord, differs: yours !== onRecord };
}

interface ChangeConflictProps {
  /** What was confirmed. */
  readonly mine: ChangePreview;
  /** The same change on the records as they stand now. */
  readonly now: ChangePreview;
  readonly onRecord: () => void;
  readonly onDiscard: () => void;
}

/** The records moved between the look and the confirmation: both are shown, and nothing was saved. */
export function ChangeConflict({ mine, now, onRecord, onDiscard }: ChangeConflictProps) {
  const lines = [
    line('Instant', ({ at, precision }) => sinceText(at, precision), mine, now),
    line('Comes off', ({ outgoing }) => counters(outgoing), mine, now),
    line('Goes on', ({ incoming }) => counters(incoming), mine, now),
    line('Held against it', held, mine, now),
  ];
  return (
    <ConflictPanel
      lines={lines}
      recordedBy="As the records stand now"
      onRecordMine={onRecord}
      recordMineWord="Record the change on these numbers"
      onDiscardMine={onDiscard}
    />
  );
}
