import { useQuery } from '@tanstack/react-query';
import { countersText } from '../../../format/counters-text.js';
import { counted } from '../../../format/counts.js';
import { remainingCycles, remainingMinutes } from '../../../format/remaining.js';
import { componentQuery } from '../../../server/components.js';
import type { ComponentView } from '../../../server/wire.js';
import { RouteLink } from '../../../ui/actions/route-link.js';
import { Answered } from '../../../ui/messages/answered.js';
import { type Fact, FactList } from '../../../ui/page/fact-list.js';
import { SerialText } from '../../../ui/status/serial-text.js';
import { StatusMark } from '../../../ui/status/status-mark.js';

function tightest({ limiter }: ComponentView): string {
  if (limiter === null) return 'No life-limited part recorded in it';
  const { remainingCycles: cycles, remainingMinutes: minutes, description, serialNumber, reason } = limiter;
  const left =
    cycles !== null ? remainingCycles(cycles) : minutes !== null ? remainingMinutes(minutes) : 'Not verified';
  return `${left}, ${description} ${serialNumber}${reason === null ? '' : `. ${reason}`}`;
}

const factsOf = (found: ComponentView): readonly Fact[] => [
  [
    'What',
    <>
      {found.description}, <SerialText>{found.partNumber}</SerialText>
    </>,
  ],
  ['Where', found.place.label],
  ['Since new', countersText(found.counters.sinceNew)],
  ...(found.kind === 'engine' ? [['Rating', found.ratingCode ?? 'Not recorded'] as const] : []),
  ['Tightest part', tightest(found)],
];

/** What is on record of a component that is to be fitted: it is compared with its plate and papers later. */
export function RegisterSays({ componentId }: { readonly componentId: string }) {
  const query = useQuery(componentQuery(componentId));
  return (
    <Answered query={query} doing="Reading the register" lines={4}>
      {(found) => (
        <section className="register-says" aria-label={`What the register says of ${found.serialNumber}`}>
          <h3>
            The register says of{' '}
            <RouteLink href={`/components/${found.id}`} target="_blank">
              <SerialText>{found.serialNumber}</SerialText>
            </RouteLink>
          </h3>
          <FactList className="package-facts" facts={factsOf(found)} />
          {!found.verified && (
            <StatusMark
              status="not-verified"
              word={`Its records are not complete${found.gaps.length > 0 ? `: ${counted(found.gaps.length, 'gap')}` : ''}. Fitting it will be refused until they are.`}
            />
          )}
        </section>
      )}
    </Answered>
  );
}
