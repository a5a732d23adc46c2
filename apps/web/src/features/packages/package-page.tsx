import { useQuery } from '@tanstack/react-query';
import { useParams } from '@tanstack/react-router';
import { momentText } from '../../format/when.js';
import type { PackageView } from '../../server/wire.js';
import { ActionLink } from '../../ui/actions/action-link.js';
import { Button } from '../../ui/actions/button.js';
import { RouteLink } from '../../ui/actions/route-link.js';
import { Answered } from '../../ui/messages/answered.js';
import { PageHeading } from '../../ui/page/page-heading.js';
import { SerialText } from '../../ui/status/serial-text.js';
import { StatusMark } from '../../ui/status/status-mark.js';
import { ChangeRecord } from './change-record.js';
import { packageQuery, releaseNoteQuery } from './package-queries.js';
import { ReleaseNotePart } from './release-note.js';
import './packages.css';

function Below({ work: { title, airframe, status, openedAt, release } }: { readonly work: PackageView }) {
  return (
    <>
      <p>{title}</p>
      <p>
        {airframe !== null && (
          <>
            Airframe{' '}
            <RouteLink href={`/positions/${airframe.id}`}>
              <SerialText>{airframe.registration}</SerialText>
            </RouteLink>
            ,{' '}
          </>
        )}
        change of {momentText(openedAt)}
      </p>
      <p>
        {status === 'released' && release !== null ? (
          <StatusMark status="signed" word={`Released, ${release.number}`} />
        ) : (
          <StatusMark status="open" word="Not released" />
        )}
      </p>
    </>
  );
}

function Released({ releaseId }: { readonly releaseId: string }) {
  const query = useQuery(releaseNoteQuery(releaseId));
  return (
    <Answered query={query} doing="Reading the release" lines={6}>
      {(note) => <ReleaseNotePart note={note} />}
    </Answered>
  );
}

/** One package: what was changed, and its release or the way to it. */
export function PackagePage() {
  const { packageId } = useParams({ from: '/signed-in/changes/$packageId' });
  const query = useQuery(packageQuery(packageId));
  const work = query.data;
  return (
    <>
      <PageHeading
        title={work?.kind === 'pod-swap' ? 'Pod swap' : 'Change'}
        serial={work?.number}
        below={work && <Below work={work} />}
        actions={
          work && (
            <>
              {work.release === null && (
                <ActionLink kind="primary" href={`/changes/${packageId}/release-check`}>
                  Release check
                </ActionLink>
              )}
              <Button onClick={() => window.print()}>Print</Button>
            </>
          )
        }
      />
      <Answered query={query} doing="Reading the package" lines={8}>
        {({ changes, release }) => (
          <>
            {changes.map((change) => (
              <ChangeRecord key={`${change.position.id} ${change.slot}`} change={change} />
            ))}
            {release !== null && <Released releaseId={release.id} />}
          </>
        )}
      </Answered>
    </>
  );
}
