import { thousands } from '../../format/hours.js';
import { StatusMark } from './status-mark.js';
import { STATUS_LOOKS, type Status } from './statuses.js';
import './status.css';

interface LifeBarProps {
  readonly status: Status;
  /** Whole units; null when no trusted record says. */
  readonly used: number | null;
  readonly limit: number;
  /** The noun for the numbers, in the plural: 'cycles'. */
  readonly unit: string;
}

const SHOWN = 100;

function words(
  used: number | null,
  limit: number,
  unit: string,
): { readonly run: string; readonly left: string } {
  if (used === null) return { run: `Limit ${thousands(limit)} ${unit}`, left: 'Life used is not known' };
  const left = limit - used;
  return {
    run: `${thousands(used)} of ${thousands(limit)} ${unit}`,
    left: left < 0 ? `${thousands(-left)} past` : `${thousands(left)} left`,
  };
}

/** Life used against a limit. The numbers stand as text; the bar repeats them. */
export function LifeBar({ status, used, limit, unit }: LifeBarProps) {
  const { run, left } = words(used, limit, unit);
  // Past the limit the bar shows the limit as a line inside it, so that the overrun can be seen.
  const full = Math.max(limit, used ?? 0);
  const filled = used === null || full === 0 ? 0 : (used / full) * SHOWN;
  const over = used !== null && used > limit;
  return (
    <div className={used === null ? 'life life-unknown' : 'life'}>
      <div className="life-words">
        <span>{run}</span>
        <strong>{left}</strong>
      </div>
      <svg
        className={`life-track tone-${STATUS_LOOKS[status].tone}`}
        viewBox={`0 0 ${SHOWN} 14`}
        preserveAspectRatio="none"
        aria-hidden="true"
      >
        <rect className="life-track-used" x="0" y="0" width={filled} height="14" />
        <rect className="life-track-frame" x="0" y="0" width={SHOWN} height="14" />
        {over && <path className="life-limit" d={`M${(limit / full) * SHOWN} -3V17`} />}
      </svg>
      <StatusMark status={status} />
    </div>
  );
}
