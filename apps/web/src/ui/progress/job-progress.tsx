import { thousands } from '../../format/hours.js';
import { Button } from '../actions/button.js';
import './job-progress.css';

interface JobProgressProps {
  /** What runs: 'Checking the file'. */
  readonly what: string;
  readonly done: number;
  /** Null while the whole is not known yet. */
  readonly total: number | null;
  /** The noun of what is counted, in the plural: 'rows'. */
  readonly unit: string;
  readonly onCancel?: (() => void) | undefined;
  readonly cancelling?: boolean;
}

/** Work on the server that takes a while: how much is done, how much is left, and Cancel. */
export function JobProgress({ what, done, total, unit, onCancel, cancelling = false }: JobProgressProps) {
  const known = total !== null && total > 0;
  const left = Math.max(0, (total ?? 0) - done);
  return (
    <section className="job panel" aria-label={what}>
      <h2>{what}</h2>
      <progress className="job-bar" aria-label={what} {...(known ? { value: done, max: total } : {})} />
      <p role="status">
        {known
          ? `${thousands(done)} of ${thousands(total)} ${unit}, ${thousands(left)} left`
          : 'Waiting to begin'}
      </p>
      {onCancel !== undefined && (
        <Button onClick={onCancel} busy={cancelling}>
          {cancelling ? 'Stopping' : 'Cancel'}
        </Button>
      )}
    </section>
  );
}
