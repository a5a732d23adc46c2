import { ProblemPanel } from '../messages/problem-panel.js';
import { JobProgress } from './job-progress.js';

interface DocumentProgressProps {
  /** 'report', 'sheet': what is prepared. */
  readonly what: string;
  /** Why it could not be begun. */
  readonly preparingError: Error | null;
  readonly job: {
    readonly data?:
      | { readonly done: number; readonly total: number | null; readonly failure: string | null }
      | undefined;
    readonly error: Error | null;
    readonly refetch: () => unknown;
  };
  readonly state: string | undefined;
  readonly working: boolean;
  readonly cancelling: boolean;
  readonly onCancel: () => void;
}

/** How far a document is on its way from the wish to the file, and how it ended where there is none. */
export function DocumentProgress(props: DocumentProgressProps) {
  const { what, preparingError, job, state, working, cancelling, onCancel } = props;
  return (
    <>
      {preparingError !== null && <ProblemPanel error={preparingError} doing={`Preparing the ${what}`} />}
      {job.error !== null && (
        <ProblemPanel
          error={job.error}
          doing={`Asking how far the ${what} is`}
          onRetry={() => void job.refetch()}
        />
      )}
      {working && job.error === null && (
        <JobProgress
          what={`Preparing the ${what}`}
          done={job.data?.done ?? 0}
          total={job.data?.total ?? null}
          unit="lines"
          cancelling={cancelling}
          onCancel={onCancel}
        />
      )}
      {state === 'failed' && (
        <p role="alert">
          The {what} could not be prepared: {job.data?.failure ?? 'no reason was told'}. The records are safe.
        </p>
      )}
      {state === 'cancelled' && <p role="status">The {what} was not prepared: it was stopped.</p>}
    </>
  );
}
