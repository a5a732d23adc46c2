import { useQuery } from '@tanstack/react-query';
import { counted } from '../../format/counts.js';
import { momentText } from '../../format/when.js';
import { useOfflineSince } from '../../server/connection.js';
import { documentsQuery, useDocument } from '../../server/jobs.js';
import { Button } from '../../ui/actions/button.js';
import { announce } from '../../ui/messages/announcements.js';
import { OFF_WHILE_OFFLINE } from '../../ui/messages/offline-bar.js';
import { ProblemPanel } from '../../ui/messages/problem-panel.js';
import { JobProgress } from '../../ui/progress/job-progress.js';
import { dataAddress, type Subject } from './history-data.js';

interface PrintReportProps {
  readonly subject: Subject;
  readonly label: string;
}

function Prepared({ subject }: Pick<PrintReportProps, 'subject'>) {
  const documents = useQuery(documentsQuery(subject.id)).data ?? [];
  if (documents.length === 0) return null;
  return (
    <details open>
      <summary>{counted(documents.length, 'report')} prepared</summary>
      <ul>
        {documents.map(({ id, fileName, pages, createdAt, by }) => (
          <li key={id}>
            {/* The server's own file, not a page. */}
            <a href={`/api/documents/${id}`} download={fileName}>
              {fileName}
            </a>
            , {counted(pages, 'page')}, {momentText(createdAt)}, by {by}
          </li>
        ))}
      </ul>
    </details>
  );
}

/** Has the history prepared as a printable document, and leads to it. */
export function PrintReport({ subject, label }: PrintReportProps) {
  const offline = useOfflineSince() !== null;
  const { jobId, preparing, stopping, job, state, documentId, working } = useDocument(subject.id, () =>
    announce(`The report of ${label} is ready.`),
  );
  return (
    <section className="stack no-print" aria-label="Printed report">
      <div className="row">
        <Button
          busy={preparing.isPending || working}
          offBecause={offline ? OFF_WHILE_OFFLINE : null}
          onClick={() =>
            preparing.mutate({ kind: 'history', subjectKind: subject.kind, subjectId: subject.id })
          }
        >
          Print report
        </Button>
        {documentId !== undefined && (
          <a className="button button-primary" href={`/api/documents/${documentId}`} download>
            Open the report (PDF)
          </a>
        )}
        <a href={dataAddress(subject)} target="_blank" rel="noreferrer">
          As data (JSON, in a new window)
        </a>
      </div>
      {preparing.error !== null && <ProblemPanel error={preparing.error} doing="Preparing the report" />}
      {job.error !== null && (
        <ProblemPanel
          error={job.error}
          doing="Asking how far the report is"
          onRetry={() => void job.refetch()}
        />
      )}
      {working && job.error === null && (
        <JobProgress
          what="Preparing the report"
          done={job.data?.done ?? 0}
          total={job.data?.total ?? null}
          unit="lines"
          cancelling={stopping.isPending}
          onCancel={() => jobId !== null && stopping.mutate(jobId)}
        />
      )}
      {state === 'failed' && (
        <p role="alert">
          The report could not be prepared: {job.data?.failure ?? 'no reason was told'}. The records are safe.
        </p>
      )}
      {state === 'cancelled' && <p role="status">The report was not prepared: it was stopped.</p>}
      <Prepared subject={subject} />
    </section>
  );
}
