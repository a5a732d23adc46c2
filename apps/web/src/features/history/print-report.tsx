import { useQuery } from '@tanstack/react-query';
import { counted } from '../../format/counts.js';
import { momentText } from '../../format/when.js';
import { useOfflineSince } from '../../server/connection.js';
import { documentsQuery, useDocument } from '../../server/jobs.js';
import { Button } from '../../ui/actions/button.js';
import { announce } from '../../ui/messages/announcements.js';
import { OFF_WHILE_OFFLINE } from '../../ui/messages/offline-bar.js';
import { DocumentProgress } from '../../ui/progress/document-progress.js';
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
      <DocumentProgress
        what="report"
        preparingError={preparing.error}
        job={job}
        state={state}
        working={working}
        cancelling={stopping.isPending}
        onCancel={() => jobId !== null && stopping.mutate(jobId)}
      />
      <Prepared subject={subject} />
    </section>
  );
}
