import { type UseQueryResult, useQuery } from '@tanstack/react-query';
import { useParams } from '@tanstack/react-router';
import type { ReleaseCheck } from '../../../server/wire.js';
import { packageQuery, type WorkPackage } from '../../../server/work.js';
import { ActionLink } from '../../../ui/actions/action-link.js';
import { Button } from '../../../ui/actions/button.js';
import { Loading } from '../../../ui/messages/loading.js';
import { ProblemPanel } from '../../../ui/messages/problem-panel.js';
import { PageHeading } from '../../../ui/page/page-heading.js';
import { Check } from './check.js';
import { releaseCheckQuery } from './release-queries.js';
import '../packages.css';

interface AnswerProps {
  readonly query: UseQueryResult<ReleaseCheck>;
  readonly work: WorkPackage | undefined;
  readonly back: string;
}

/** The check, or why there is none. An answer from before is never shown beside a check under way. */
function Answer({ query: { data, error, isFetching, refetch }, work, back }: AnswerProps) {
  const again = () => void refetch();
  if (isFetching) return <Loading label="Checking" lines={8} />;
  if (error !== null) return <ProblemPanel error={error} doing="The release check" onRetry={again} />;
  if (data === undefined)
    return (
      <section className="panel" role="status">
        <h2>Not checked</h2>
        <p>There is no connection. A release is checked by the server, as soon as there is one.</p>
      </section>
    );
  if (work?.status === 'withdrawn')
    return (
      <section className="panel" role="status">
        <h2>This package is withdrawn</h2>
        <p>It is never released. What was recorded in it stays on record.</p>
        <ActionLink href={back}>See the package</ActionLink>
      </section>
    );
  if (data.released)
    return (
      <section className="panel" role="status">
        <h2>This package is released</h2>
        <p>It is frozen, with everything its check looked at.</p>
        <ActionLink href={back}>See the signed release and its certificate</ActionLink>
      </section>
    );
  return <Check check={data} work={work} onAgain={again} />;
}

/** Everything that stands against releasing a package, asked anew each time it is opened. */
export function ReleaseCheckPage() {
  const { packageId } = useParams({ from: '/signed-in/packages/$packageId/release-check' });
  const work = useQuery(packageQuery(packageId)).data;
  const query = useQuery(releaseCheckQuery(packageId));
  const back = `/packages/${packageId}`;
  return (
    <>
      <PageHeading
        title="Release check"
        serial={work?.number}
        below={work && <p>{work.title}</p>}
        actions={
          <>
            <Button busy={query.isFetching} onClick={() => void query.refetch()}>
              Check again
            </Button>
            <ActionLink href={back}>Back to the package</ActionLink>
          </>
        }
      />
      <Answer query={query} work={work} back={back} />
    </>
  );
}
