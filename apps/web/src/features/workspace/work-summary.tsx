import { RouteLink } from '../../ui/actions/route-link.js';
import { StatusMark } from '../../ui/status/status-mark.js';
import { groupsOf, signedOf } from './lanes/lane-parts.js';
import { isFrozen } from './work/use-desk.js';
import type { OrderedComponent, Work } from './work/work-shapes.js';

function Ordered({
  term,
  component,
}: {
  readonly term: string;
  readonly component: OrderedComponent | null;
}) {
  return (
    <div>
      <dt>{term}</dt>
      <dd>
        {component === null ? (
          'nothing'
        ) : (
          <RouteLink href={`/components/${component.id}`}>
            <span className="serial">{component.serialNumber}</span>
          </RouteLink>
        )}
      </dd>
    </div>
  );
}

/** What is ordered, and how much is signed. */
export function WorkSummary({ work }: { readonly work: Work }) {
  const { order, package: head } = work;
  const { signed, total } = signedOf(groupsOf(work));
  return (
    <div className="work-summary">
      <dl className="work-order">
        {head.airframe !== null && (
          <div>
            <dt>Airframe</dt>
            <dd className="serial">{head.airframe.registration}</dd>
          </div>
        )}
        {order !== null && order.positionNumber !== null && (
          <div>
            <dt>Position</dt>
            <dd className="work-position">{order.positionNumber}</dd>
          </div>
        )}
        {order !== null && (
          <>
            <Ordered term="Off" component={order.outgoing} />
            <Ordered term="On" component={order.incoming} />
          </>
        )}
        <div>
          <dt>Signed</dt>
          <dd>
            {signed} of {total}
          </dd>
        </div>
      </dl>
      <svg
        className="work-bar"
        viewBox={`0 0 ${Math.max(total, 1)} 1`}
        preserveAspectRatio="none"
        aria-hidden="true"
      >
        <rect className="work-bar-done" width={signed} height="1" />
      </svg>
      {order !== null && (
        <p className="quiet">
          {order.reason}
          {order.ratingCode !== null && ` Rating ${order.ratingCode}.`}
          {order.removedToLocation !== null && ` What comes off goes to ${order.removedToLocation}.`}
          {order.confirmedBy !== null && ` Amended; confirmed by ${order.confirmedBy}.`}
        </p>
      )}
      {isFrozen(work) && (
        <p role="status">
          <StatusMark
            status="closed"
            word={`This package is ${head.status}. Its steps are frozen: they can be read and printed, not changed.`}
          />
        </p>
      )}
    </div>
  );
}
