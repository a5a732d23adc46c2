import { useOfflineSince } from '../../server/connection.js';
import { useDocument } from '../../server/jobs.js';
import { Button } from '../../ui/actions/button.js';
import { announce } from '../../ui/messages/announcements.js';
import { OFF_WHILE_OFFLINE } from '../../ui/messages/offline-bar.js';
import { DocumentProgress } from '../../ui/progress/document-progress.js';
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
      <DocumentProgress
        what="sheet"
        preparingError={preparing.error}
        job={job}
        state={state}
        working={working}
        cancelling={stopping.isPending}
        onCancel={() => jobId !== null && stopping.mutate(jobId)}
      />
    </section>
  );
}
