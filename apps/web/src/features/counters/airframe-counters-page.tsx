import { useQuery } from '@tanstack/react-query';
import { useNavigate, useParams, useSearch } from '@tanstack/react-router';
import { ActionLink } from '../../ui/actions/action-link.js';
import { Button } from '../../ui/actions/button.js';
import { Answered } from '../../ui/messages/answered.js';
import { PageHeading } from '../../ui/page/page-heading.js';
import { ClockTable } from './clock-table.js';
import { airframeCountersQuery } from './counters-data.js';
import { MomentBar } from './moment-bar.js';
import './counters.css';

/** What an airframe and each of its positions has run by a moment, as sums on paper. */
export function AirframeCountersPage() {
  const { airframeId } = useParams({ from: '/signed-in/positions/$airframeId/counters' });
  const asked = useSearch({ from: '/signed-in/positions/$airframeId/counters' });
  const navigate = useNavigate({ from: '/positions/$airframeId/counters' });
  const query = useQuery(airframeCountersQuery(airframeId, asked));
  const { data } = query;
  return (
    <div className="stack counters-page">
      <PageHeading
        title="Counters of airframe"
        serial={data?.registration}
        actions={
          <>
            <ActionLink href={`/positions/${airframeId}`}>Back to the airframe</ActionLink>
            <Button onClick={() => window.print()}>Print</Button>
          </>
        }
      />
      <MomentBar
        key={JSON.stringify(asked)}
        asked={asked}
        told={data?.moment}
        airframeKnown
        onAsk={(next) => void navigate({ search: next })}
      />
      <Answered query={query} doing="Reading the counters" lines={8}>
        {({ positions, registration, ...own }) => (
          <>
            <section className="stack" aria-labelledby="whole">
              <h2 id="whole" className="section-heading">
                Airframe: how we got this
              </h2>
              <ClockTable
                label={`Airframe ${registration}, line by line`}
                clockId={own.id}
                ofPosition={false}
                sum={own}
              />
            </section>
            {positions.map((position) => (
              <section key={position.id} className="stack" aria-labelledby={position.id}>
                <h2 id={position.id} className="section-heading">
                  Position {position.number}: how we got this
                </h2>
                <ClockTable
                  label={`Position ${position.number}, line by line`}
                  clockId={position.id}
                  ofPosition
                  sum={position}
                />
              </section>
            ))}
          </>
        )}
      </Answered>
    </div>
  );
}
