import { packageKind } from '../../format/package-words.js';
import { momentText } from '../../format/when.js';
import { hasSteps, type WorkPackage } from '../../server/work.js';
import { RouteLink } from '../../ui/actions/route-link.js';
import { SerialText } from '../../ui/status/serial-text.js';
import { StatusMark } from '../../ui/status/status-mark.js';

/** 'Change' for what changes an engine, since its number says the rest; the kind's own word for others. */
export const packageTitle = (work: WorkPackage | undefined): string =>
  work === undefined || work.kind === 'engine-change' ? 'Change' : packageKind(work.kind);

function Subject({ work: { airframe, component } }: { readonly work: WorkPackage }) {
  if (airframe !== null)
    return (
      <>
        Airframe{' '}
        <RouteLink href={`/positions/${airframe.id}`}>
          <SerialText>{airframe.registration}</SerialText>
        </RouteLink>
        ,{' '}
      </>
    );
  if (component === null) return null;
  return (
    <>
      Component{' '}
      <RouteLink href={`/components/${component.id}`}>
        <SerialText>{component.serialNumber}</SerialText>
      </RouteLink>
      ,{' '}
    </>
  );
}

/** Whether a package is released, withdrawn, or neither yet. */
function PackageStanding({ work: { status, release } }: { readonly work: WorkPackage }) {
  if (status === 'released')
    return <StatusMark status="signed" word={`Released, ${release?.number ?? ''}`} />;
  if (status === 'withdrawn') return <StatusMark status="closed" word="Withdrawn" />;
  return <StatusMark status="open" word="Not released" />;
}

/** The requirements its release records as met. */
function ToMeet({ work: { requirements } }: { readonly work: WorkPackage }) {
  if (requirements.length === 0) return null;
  return (
    <p>
      Closes{' '}
      {requirements.map(({ id, requirementId, code, title, subject }, place) => (
        <span key={id}>
          {place > 0 && '; '}
          <RouteLink href={`/requirements/${requirementId}`}>
            <SerialText>{code}</SerialText>
          </RouteLink>{' '}
          {title}, {subject}
        </span>
      ))}
    </p>
  );
}

/** Below a package's heading: what, on what, since when, from which document, what it closes, and its standing. */
export function PackageBelow({ work }: { readonly work: WorkPackage }) {
  const { title, openedAt, procedure, reference } = work;
  return (
    <>
      <p>{title}</p>
      <p>
        <Subject work={work} />
        {hasSteps(work) ? 'opened' : 'change of'} {momentText(openedAt)}
        {reference !== null && `, reference ${reference}`}
      </p>
      {procedure !== null && (
        <p className="quiet">
          Steps from {procedure.title}, revision {procedure.revision}; {procedure.document}, revision{' '}
          {procedure.documentRevision}
        </p>
      )}
      <ToMeet work={work} />
      <p>
        <PackageStanding work={work} />
        {work.withdrawal !== null && (
          <>
            {' '}
            by {work.withdrawal.person}, {momentText(work.withdrawal.at)}: {work.withdrawal.reason}
          </>
        )}
      </p>
    </>
  );
}
