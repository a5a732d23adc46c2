import { useQuery } from '@tanstack/react-query';
import { useParams } from '@tanstack/react-router';
import { counted } from '../../format/counts.js';
import { momentText } from '../../format/when.js';
import type { Objection, PackageView, ReleaseCheck } from '../../server/wire.js';
import { ActionLink } from '../../ui/actions/action-link.js';
import { Button } from '../../ui/actions/button.js';
import { Loading } from '../../ui/messages/loading.js';
import { ObjectionList } from '../../ui/messages/objection-list.js';
import { ProblemPanel } from '../../ui/messages/problem-panel.js';
import { PageHeading } from '../../ui/page/page-heading.js';
import { StatusMark } from '../../ui/status/status-mark.js';
import { packageQuery, releaseCheckQuery } from './package-queries.js';
import { PassedList } from './release-note.js';
import { SignPanel } from './sign-panel.js';
import './packages.css';

const blocking = (objections: readonly Objection[]): readonly Objection[] =>
  objections.filter(({ severity }) => severity === 'blocking');

function verdict(objections: readonly Objection[]): string {
  const count = blocking(objections).length;
  return count === 0 ? 'Ready: nothing blocks the release' : `Not ready: ${counted(count, 'point')} open`;
}

interface CheckProps {
  readonly check: ReleaseCheck;
  readonly work: PackageView | undefined;
  readonly onAgain: () => void;
}

function Check({ check, work, onAgain }: CheckProps) {
  const { objections, passed, statement, ruleSet, summary, asOf } = check;
  const airframeId = work?.airframe?.id ?? null;
  return (
    <>
      <p className="verdict" role="status">
        <StatusMark
          status={blocking(objections).length === 0 ? 'open' : 'blocked'}
          word={verdict(objections)}
        />
      </p>
      <p>
        {summary} <span className="quiet">Checked on the records as of {momentText(asOf)}.</span>
      </p>
      {objections.length > 0 && <ObjectionList objections={objections} airframeId={airframeId} />}
      <section className="stack" aria-labelledby="passed">
        <h2 id="passed" className="section-heading">
          Looked at
        </h2>
        {passed.length === 0 ? <p>Nothing passed.</p> : <PassedList passed={passed} />}
      </section>
      <section className="stack" aria-labelledby="statement">
        <h2 id="statement" className="section-heading">
          Statement
        </h2>
        <blockquote className="statement">{statement}</blockquote>
        <p className="quiet">
          {ruleSet.name}. Source: {ruleSet.source}. Approved data, the authority and licensed staff govern;
          this record does not replace them.
        </p>
      </section>
      <SignPanel check={check} blocking={blocking(objections)} onAgain={onAgain} />
    </>
  );
}

/** Everything that stands against releasing a package, asked anew each time it is opened. */
export function ReleaseCheckPage() {
  const { packageId } = useParams({ from: '/signed-in/changes/$packageId/release-check' });
  const work = useQuery(packageQuery(packageId)).data;
  const query = useQuery(releaseCheckQuery(packageId));
  const { data, error, isFetching, refetch } = query;
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
            <ActionLink href={`/changes/${packageId}`}>Back to the package</ActionLink>
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
      ) : data.released ? (
        <section className="panel" role="status">
          <h2>This package is released</h2>
          <ActionLink href={`/changes/${packageId}`}>See the signed release</ActionLink>
        </section>
      ) : (
        <Check check={data} work={work} onAgain={() => void refetch()} />
      )}
    </>
  );
}
