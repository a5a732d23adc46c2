import { useQuery } from '@tanstack/react-query';
import { useNavigate, useParams, useSearch } from '@tanstack/react-router';
import { exactCycles } from '../../format/cycles.js';
import { hoursMinutes } from '../../format/hours.js';
import { momentText } from '../../format/when.js';
import { useMay } from '../../server/authority.js';
import type { AirframePositions } from '../../server/wire.js';
import { ActionLink } from '../../ui/actions/action-link.js';
import { Button } from '../../ui/actions/button.js';
import { PositionBoard } from '../../ui/aircraft/position-board.js';
import { AsOfBar } from '../../ui/asof/as-of-bar.js';
import { Answered } from '../../ui/messages/answered.js';
import { EmptyState } from '../../ui/messages/empty-state.js';
import { PageHeading } from '../../ui/page/page-heading.js';
import { cardOf } from './card-of.js';
import { inReadingOrder } from './position-words.js';
import { positionsAtQuery } from './positions-queries.js';
import './positions.css';

function Totals({ airframe }: { readonly airframe: AirframePositions['airframe'] }) {
  const { counters, lastLandingAt, lastLogPage, type, serialNumber } = airframe;
  return (
    <>
      <p>
        {type}, serial <span className="serial">{serialNumber}</span>
      </p>
      <p>
        {counters.minutes === null ? 'Hours not known' : `${hoursMinutes(counters.minutes)} hours`},{' '}
        {counters.cycles === null ? 'flights not known' : `${exactCycles(counters.cycles)} flights`}
        {lastLandingAt === null
          ? '. No flight is logged.'
          : ` after the flight that landed ${momentText(lastLandingAt)}${lastLogPage === null ? '' : `, log page ${lastLogPage}`}`}
      </p>
    </>
  );
}

/** One airframe from above, with what stands at each position, now or at an instant. */
export function AirframePage() {
  const { airframeId } = useParams({ from: '/signed-in/positions/$airframeId' });
  const { at } = useSearch({ from: '/signed-in/positions/$airframeId' });
  const navigate = useNavigate({ from: '/positions/$airframeId' });
  const query = useQuery(positionsAtQuery(airframeId, at));
  const mayLog = useMay('log-a-change');
  const mayOpen = useMay('open-a-package');
  const mayCheck = useMay('check-records');
  const airframe = query.data?.airframe;
  const startHref = mayOpen && at === undefined ? packageHref(airframeId) : null;
  const fillHref = startHref ?? (mayLog && at === undefined ? changeHref(airframeId) : null);
  return (
    <div className="stack airframe-page">
      <PageHeading
        title="Airframe"
        serial={airframe?.registration}
        below={airframe && <Totals airframe={airframe} />}
        actions={
          airframe && (
            <>
              {mayLog && (
                <ActionLink href={`/changes/new?airframe=${airframeId}`}>Log a past change</ActionLink>
              )}
              <ActionLink href={`/positions/${airframeId}/counters${at === undefined ? '' : `?at=${at}`}`}>
                Counters
              </ActionLink>
              <ActionLink href={`/work?airframe=${airframeId}`}>Work</ActionLink>
              <ActionLink href={`/flights?airframe=${airframeId}`}>Flights</ActionLink>
              <ActionLink href={`/positions/${airframeId}/readiness`}>Readiness</ActionLink>
              <ActionLink href={`/history/airframes/${airframeId}`}>History</ActionLink>
              {mayCheck && (
                <ActionLink href={`/trial-balance?airframe=${airframeId}`}>Trial balance</ActionLink>
              )}
              <Button onClick={() => window.print()}>Print</Button>
            </>
          )
        }
      />
      <AsOfBar
        key={at ?? 'now'}
        at={at}
        onAt={(next) => void navigate({ search: next === undefined ? {} : { at: next } })}
      />
      <Answered query={query} doing="Reading the positions" lines={8}>
        {({ airframe: { registration }, positions }) =>
          positions.length === 0 ? (
            <EmptyState>The type of {registration} has no positions.</EmptyState>
          ) : (
            <>
              <h2 className="visually-hidden">Positions</h2>
              <PositionBoard
                registration={registration}
                positions={inReadingOrder(positions).map((position) =>
                  cardOf(position, { at, fillHref, startHref }),
                )}
              />
            </>
          )
        }
      </Answered>
    </div>
  );
}

type Mounted = { readonly number: number; readonly kind: 'engine' | 'apu' };

const packageHref =
  (airframeId: string) =>
  ({ number, kind }: Mounted): string =>
    kind === 'apu'
      ? `/packages/new?kind=component-change&airframe=${airframeId}&position=${number}&slot=apu`
      : `/packages/new?kind=engine-change&airframe=${airframeId}&position=${number}`;

const changeHref =
  (airframeId: string) =>
  ({ number, kind }: Mounted): string =>
    `/changes/new?airframe=${airframeId}&position=${number}&slot=${kind === 'apu' ? 'apu' : 'engine'}`;
