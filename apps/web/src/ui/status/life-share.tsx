import type { ExactCycles } from '../../format/cycles.js';
import { StatusMark } from './status-mark.js';
import { STATUS_LOOKS, type Status } from './statuses.js';
import './status.css';

interface LifeShareProps {
  readonly status: Status;
  /** The share of the life that is used, exact; null when no trusted record says. */
  readonly used: ExactCycles | null;
  /** '81.6 % used of 11,000 cycles' */
  readonly words: string;
  /** '2,019 cycles left' */
  readonly left: string;
}

const SHOWN = 100;

/** The share of a life used, also over several ratings. The numbers stand as text; the bar repeats them. */
export function LifeShare({ status, used, words, left }: LifeShareProps) {
  // Only for drawing: what counts is exact, and stands in words.
  const share = used === null ? null : used.units / used.denominator;
  const full = Math.max(1, share ?? 0);
  return (
    <div className={share === null ? 'life life-unknown' : 'life'}>
      <div className="life-words">
        <span>{words}</span>
        <strong>{left}</strong>
      </div>
      <svg
        className={`life-track tone-${STATUS_LOOKS[status].tone}`}
        viewBox={`0 0 ${SHOWN} 14`}
        preserveAspectRatio="none"
        aria-hidden="true"
      >
        <rect
          className="life-track-used"
          x="0"
          y="0"
          width={Math.max(0, ((share ?? 0) / full) * SHOWN)}
          height="14"
        />
        <rect className="life-track-frame" x="0" y="0" width={SHOWN} height="14" />
        {share !== null && share > 1 && <path className="life-limit" d={`M${SHOWN / full} -3V17`} />}
      </svg>
      <StatusMark status={status} />
    </div>
  );
}
