import { useQuery, useQueryClient } from '@tanstack/react-query';
import { useParams } from '@tanstack/react-router';
import { useEffect, useRef } from 'react';
import { momentText } from '../../format/when.js';
import { holderWords, useMay } from '../../server/authority.js';
import { COMPONENTS_KEY } from '../../server/components.js';
import { useOfflineSince } from '../../server/connection.js';
import { FLEET_KEY } from '../../server/fleet.js';
import { ActionLink } from '../../ui/actions/action-link.js';
import { RouteLink } from '../../ui/actions/route-link.js';
import { announce } from '../../ui/messages/announcements.js';
import { Answered } from '../../ui/messages/answered.js';
import { AuthorityNote } from '../../ui/messages/authority-note.js';
import { PageHeading } from '../../ui/page/page-heading.js';
import { ImportActs } from './import-acts.js';
import { ImportCounts, ImportEffect, ImportErrors, ImportReached } from './import-report.js';
import { type ImportFile, importQuery } from './imports-data.js';
import { StateMark } from './state-mark.js';
import './imports.css';

/** What is special about this file, in a sentence; null when nothing is. */
function Standing({ file }: { readonly file: ImportFile }) {
  if (file.sameAs !== null)
    return (
      <p>
        This very file was applied before, as{' '}
        <RouteLink href={`/imports/${file.sameAs.id}`}>{file.sameAs.fileName}</RouteLink>. Applying it again
        adds nothing.
      </p>
    );
  if (file.state === 'cancelled') return <p>The work was stopped. Nothing of this file is on record.</p>;
  if (file.job?.state === 'failed')
    return (
      <p role="alert">
        The work failed: {file.job.failure ?? 'no reason was told'}. Nothing of it is on record.
      </p>
    );
  return null;
}

/** What was read elsewhere is old once the file's flights are on record. */
function useRefreshOnceApplied({ state }: ImportFile): void {
  const queries = useQueryClient();
  const before = useRef(state);
  useEffect(() => {
    if (before.current !== 'applied' && state === 'applied') {
      for (const queryKey of [FLEET_KEY, COMPONENTS_KEY, ['flights'], ['history']])
        void queries.invalidateQueries({ queryKey });
      announce('The file was applied.');
    }
    before.current = state;
  }, [state, queries]);
}

function Report({ file }: { readonly file: ImportFile }) {
  const may = useMay('keep-records');
  const offline = useOfflineSince() !== null;
  useRefreshOnceApplied(file);
  return (
    <div className="stack">
      <div className="row">
        <StateMark {...file} />
      </div>
      <Standing file={file} />
      {file.state !== 'checking' && <ImportCounts file={file} />}
      <ImportActs file={file} may={may} offline={offline} />
      <ImportReached file={file} />
      <ImportErrors file={file} />
      <ImportEffect file={file} />
      {!may && <AuthorityNote act="Files are checked and applied" by={holderWords('keep-records')} />}
      <p className="quiet small">
        SHA-256 of the file <code className="import-headings">{file.sha256}</code>
      </p>
      {file.root !== null && (
        <p className="quiet small">
          Root over the rows as recorded, in the journal <code className="import-headings">{file.root}</code>
        </p>
      )}
    </div>
  );
}

/** One file: its check, its errors, what it adds, and applying it. */
export function ImportPage() {
  const { importId } = useParams({ from: '/signed-in/imports/$importId' });
  const file = useQuery(importQuery(importId));
  return (
    <>
      <PageHeading
        title="Import"
        serial={file.data?.fileName}
        below={
          file.data !== undefined && (
            <p>
              Brought by {file.data.createdBy}, {momentText(file.data.createdAt)}
            </p>
          )
        }
        actions={<ActionLink href="/imports">All files</ActionLink>}
      />
      <Answered query={file} doing="Reading the file">
        {(data) => <Report file={data} />}
      </Answered>
    </>
  );
}
