import { useQuery } from '@tanstack/react-query';
import { useParams } from '@tanstack/react-router';
import { packageQuery } from '../../../server/work.js';
import { ActionLink } from '../../../ui/actions/action-link.js';
import { Button } from '../../../ui/actions/button.js';
import { Loading } from '../../../ui/messages/loading.js';
import { ProblemPanel } from '../../../ui/messages/problem-panel.js';
import { PageHeading } from '../../../ui/page/page-heading.js';
import { Check } from './check.js';
import { releaseCheckQuery } from './release-queries.js';
import '../packages.css';

/** Everything that stands against releasing a package, asked anew each time it is opened. */
export function ReleaseCheckPage() {
  const { packageId } = useParams({ from: '/signed-in/packages/$packageId/release-check' });
  const work = useQuery(packageQuery(packageId)).data;
  const query = useQuery(releaseCheckQuery(packageId));
  const { data, error, isFetching, refetch } = query;
  const back = `/packages/${packageId}`;
  return (
    <>
      <PageHeading
        title="Release check"
        serial={work?.number}
        below={work && <p>{work.title}</p>}
        actions={
          <>
            <Button busy={isFetching} onClick={() => void refetch()}>
              Check again
            </Button>
            <ActionLink href={back}>Back to the package</ActionLink>
          </>
        }
      />
      {/* An answer from before is never shown beside a check under way. */}
      {isFetching ? (
        <Loading label="Checking" lines={8} />
      ) : error !== null ? (
        <ProblemPanel error={error} doing="The release check" onRetry={() => void refetch()} />
      ) : data === undefined ? (
        <section className="panel" role="status">
          <h2>Not checked</h2>
          <p>There is no connection. A release is checked by the server, as soon as there is one.</p>
        </section>
      ) : work?.status === 'withdrawn' ? (
        <section className="panel" role="status">
          <h2>This package is withdrawn</h2>
          <p>It is never released. What was recorded in it stays on record.</p>
          <ActionLink href={back}>See the package</ActionLink>
        </section>
      ) : data.released ? (
        <section className="panel" role="status">
          <h2>This package is released</h2>
          <p>It is frozen, with everything its check looked at.</p>
          <ActionLink href={back}>See the signed release and its certificate</ActionLink>
        </section>
      ) : (
        <Check check={data} work={work} onAgain={() => void refetch()} />
      )}
    </>
  );
}
