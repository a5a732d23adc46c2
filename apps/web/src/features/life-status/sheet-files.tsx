import { useOfflineSince } from '../../server/connection.js';
import { useDocument } from '../../server/jobs.js';
import { Button } from '../../ui/actions/button.js';
import { announce } from '../../ui/messages/announcements.js';
import { OFF_WHILE_OFFLINE } from '../../ui/messages/offline-bar.js';
import { ProblemPanel } from '../../ui/messages/problem-panel.js';
import { JobProgress } from '../../ui/progress/job-progress.js';
import { csvAddress } from './life-status-data.js';

interface SheetFilesProps {
  readonly componentId: string;
  /** As at; undefined is now. */
  readonly at: string | undefined;
  readonly label: string;
}

/** The sheet as files: prepared as a document with its hash, and as text for a spreadsheet. */
export function SheetFiles({ componentId, at, label }: SheetFilesProps) {
  const offline = useOfflineSince() !== null;
  const { jobId, preparing, stopping, job, state, documentId, working } = useDocument(componentId, () =>
    announce(`The status sheet of ${label} is ready.`),
  );
  return (
    <section className="stack no-print" aria-label="The sheet as a file">
      <div className="row">
        <Button
          busy={preparing.isPending || working}
          offBecause={offline ? OFF_WHILE_OFFLINE : null}
          onClick={() =>
            preparing.mutate({
              kind: 'life-status',
              subjectKind: 'component',
              subjectId: componentId,
              ...(at === undefined ? {} : { at }),
            })
          }
        >
          Prepare the sheet (PDF)
        </Button>
        {documentId !== undefined && (
          <a className="button button-primary" href={`/api/documents/${documentId}`} download>
            Open the sheet (PDF)
          </a>
        )}
        <a className="button button-secondary" href={csvAddress(componentId, at)} download>
          Save for a spreadsheet (CSV)
        </a>
        <Button onClick={() => window.print()}>Print</Button>
      </div>
      {preparing.error !== null && <ProblemPanel error={preparing.error} doing="Preparing the sheet" />}
      {job.error !== null && (
        <ProblemPanel
          error={job.error}
          doing="Asking how far the sheet is"
          onRetry={() => void job.refetch()}
        />
      )}
      {working && job.error === null && (
        <JobProgress
          what="Preparing the sheet"
          done={job.data?.done ?? 0}
          total={job.data?.total ?? null}
          unit="lines"
          cancelling={stopping.isPending}
          onCancel={() => jobId !== null && stopping.mutate(jobId)}
        />
      )}
      {state === 'failed' && (
        <p role="alert">
          The sheet could not be prepared: {job.data?.failure ?? 'no reason was told'}. The records are safe.
        </p>
      )}
      {state === 'cancelled' && <p role="status">The sheet was not prepared: it was stopped.</p>}
    </section>
  );
}
