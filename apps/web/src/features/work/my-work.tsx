import { useQuery } from '@tanstack/react-query';
import { counted } from '../../format/counts.js';
import { packageKind } from '../../format/package-words.js';
import { ActionLink } from '../../ui/actions/action-link.js';
import { RouteLink } from '../../ui/actions/route-link.js';
import { Answered } from '../../ui/messages/answered.js';
import { EmptyState } from '../../ui/messages/empty-state.js';
import { SerialText } from '../../ui/status/serial-text.js';
import { StatusMark } from '../../ui/status/status-mark.js';
import type { Status } from '../../ui/status/statuses.js';
import { myWorkQuery, type WaitingPackage, type WaitingStep, type Why } from './my-work-query.js';

const MARKS: Readonly<Record<Why, readonly [Status, string]>> = {
  rejected: ['over-limit', 'Rejected'],
  'to-inspect': ['to-inspect', 'To inspect'],
  'to-do': ['open', 'To do'],
};

const ORDER: readonly Why[] = ['rejected', 'to-inspect', 'to-do'];

/** What is to do is shown for its first steps; what was rejected or waits for an inspector, in full. */
const TO_DO_SHOWN = 4;

const inOrder = (steps: readonly WaitingStep[]): readonly WaitingStep[] =>
  [...steps].sort((a, b) => ORDER.indexOf(a.why) - ORDER.indexOf(b.why) || a.number - b.number);

const stepHref = (packageId: string, stepId: string): string => `/packages/${packageId}?step=${stepId}`;

function shown(steps: readonly WaitingStep[]): readonly WaitingStep[] {
  const toDo = steps.filter(({ why }) => why === 'to-do').slice(0, TO_DO_SHOWN);
  return steps.filter((step) => step.why !== 'to-do' || toDo.includes(step));
}

function tally(steps: readonly WaitingStep[]): string {
  return ORDER.flatMap((why) => {
    const count = steps.filter((step) => step.why === why).length;
    return count === 0 ? [] : [`${count} ${MARKS[why][1].toLowerCase()}`];
  }).join(', ');
}

function Waiting({ work }: { readonly work: WaitingPackage }) {
  const steps = inOrder(work.steps);
  const rows = shown(steps);
  const [first] = steps;
  const more = steps.length - rows.length;
  return (
    <li className="waiting">
      <div className="waiting-head">
        <div>
          <h3>
            <RouteLink href={`/packages/${work.id}`}>
              <SerialText>{work.number}</SerialText>
            </RouteLink>{' '}
            {work.title}
          </h3>
          <p className="quiet">
            {packageKind(work.kind)}: {tally(steps)}
          </p>
        </div>
        {first !== undefined && (
          <ActionLink
            kind="primary"
            href={stepHref(work.id, first.id)}
            aria-label={`Continue ${work.number} at step ${first.number}`}
          >
            Continue
          </ActionLink>
        )}
      </div>
      <ul className="plain-list waiting-steps">
        {rows.map(({ id, number, title, why }) => (
          <li key={id}>
            <StatusMark status={MARKS[why][0]} word={MARKS[why][1]} />
            <RouteLink href={stepHref(work.id, id)}>
              {number} {title}
            </RouteLink>
          </li>
        ))}
      </ul>
      {more > 0 && <p className="quiet">And {counted(more, 'more step')} to do.</p>}
    </li>
  );
}

/** Steps that wait for whoever is signed in: rejected ones first, then inspections, then what is to do. */
export function MyWork() {
  const query = useQuery(myWorkQuery);
  return (
    <section className="stack" aria-labelledby="my-work">
      <h2 id="my-work" className="section-heading">
        My work
      </h2>
      <Answered query={query} doing="Reading your work" lines={4}>
        {({ packages }) =>
          packages.length === 0 ? (
            <EmptyState>No step waits for you. What others must do first stands in its package.</EmptyState>
          ) : (
            <ul className="plain-list waiting-list">
              {packages.map((work) => (
                <Waiting key={work.id} work={work} />
              ))}
            </ul>
          )
        }
      </Answered>
    </section>
  );
}
