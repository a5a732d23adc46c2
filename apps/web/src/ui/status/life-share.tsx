import type { ExactCycles } from '../../format/cycles.js';
import { StatusMark } from './status-mark.js';
import { STATUS_LOOKS, type Status } from './statuses.js';
import './status.css';

interface ShareTrackProps {
  readonly status: Status;
  /** The share of the life that is used, exact; null when no trusted record says. */
  readonly used: ExactCycles | null;
}

const SHOWN = 100;

/** The share as a bar alone; the numbers stand beside it. Past the limit, a line shows where it was. */
export function ShareTrack({ status, used }: ShareTrackProps) {
  // Only for drawing: what counts is exact, and stands in words.
  const share = used === null ? 0 : used.units / used.denominator;
  const full = Math.max(1, share);
  return (
    <svg
      className={`life-track tone-${STATUS_LOOKS[status].tone}`}
      viewBox={`0 0 ${SHOWN} 14`}
      preserveAspectRatio="none"
      aria-hidden="true"
    >
      <rect className="life-track-used" x="0" y="0" width={Math.max(0, (share / full) * SHOWN)} height="14" />
      <rect className="life-track-frame" x="0" y="0" width={SHOWN} height="14" />
      {share > 1 && <path className="life-limit" d={`M${SHOWN / full} -3V17`} />}
    </svg>
  );
}

interface LifeShareProps extends ShareTrackProps {
  /** '81.6 % used of 11,000 cycles' */
  readonly words: string;
  /** '2,019 cycles left' */
  readonly left: string;
}

/** The share of a life used, also over several ratings. The numbers stand as text; the bar repeats them. */
export function LifeShare({ status, used, words, left }: LifeShareProps) {
  return (
    <div className={used === null ? 'life life-unknown' : 'life'}>
      <div className="life-words">
        <span>{words}</span>
        <strong>{left}</strong>
      </div>
      <ShareTrack status={status} used={used} />
      <StatusMark status={status} />
    </div>
  );
}
