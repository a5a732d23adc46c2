import { remainingCycles, remainingMinutes } from '../../format/remaining.js';
import { RouteLink } from '../../ui/actions/route-link.js';
import { StatusMark } from '../../ui/status/status-mark.js';
import type { ReachedLimit } from './flights-data.js';

function amount({ dimension, remaining }: ReachedLimit): string {
  return dimension === 'cycles' ? remainingCycles(remaining) : remainingMinutes(remaining);
}

/** The limits that the flights have newly used up or passed. */
export function ReachedLimits({ limits }: { readonly limits: readonly ReachedLimit[] }) {
  if (limits.length === 0) return <p>No limit was newly reached or passed.</p>;
  return (
    <>
      <h3>Limits newly reached or passed</h3>
      <ul className="reached">
        {limits.map((limit) => (
          <li key={`${limit.requirement} ${limit.serialNumber} ${limit.dimension}`}>
            <StatusMark status="over-limit" word={limit.remaining < 0 ? 'Over limit' : 'Limit reached'} />{' '}
            {limit.requirement !== null && `${limit.requirement}, `}
            {limit.componentId === null ? (
              <span className="serial">{limit.serialNumber}</span>
            ) : (
              <RouteLink href={`/components/${limit.componentId}`}>
                {limit.description} <span className="serial">{limit.serialNumber}</span>
              </RouteLink>
            )}
            {limit.engineSerial !== null && (
              <>
                {' '}
                in <span className="serial">{limit.engineSerial}</span>
              </>
            )}
            : {amount(limit)}
          </li>
        ))}
      </ul>
    </>
  );
}
