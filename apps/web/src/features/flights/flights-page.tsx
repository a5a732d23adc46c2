import { useQuery } from '@tanstack/react-query';
import { useNavigate, useSearch } from '@tanstack/react-router';
import { counted } from '../../format/counts.js';
import { hoursMinutes } from '../../format/hours.js';
import { holderWords, useMay } from '../../server/authority.js';
import { type Airframe, airframeQuery, airframesQuery } from '../../server/fleet.js';
import { ActionLink } from '../../ui/actions/action-link.js';
import { CheckField } from '../../ui/fields/check-field.js';
import { Answered } from '../../ui/messages/answered.js';
import { AuthorityNote } from '../../ui/messages/authority-note.js';
import { EmptyState } from '../../ui/messages/empty-state.js';
import { PageHeading } from '../../ui/page/page-heading.js';
import { AirframeChoice, chosenAirframe } from './airframe-choice.js';
import { FlightList } from './flight-list.js';
import './flights.css';

function Totals({ airframe }: { readonly airframe: Airframe }) {
  const { minutes, flights } = useQuery(airframeQuery(airframe.id)).data ?? airframe;
  if (minutes === null || flights === null)
    return <p>Total not verified: the opening balance is not complete.</p>;
  return (
    <p>
      {hoursMinutes(minutes)} hours, {counted(flights, 'flight')}
    </p>
  );
}

/** Flights of an airframe, newest first; voided ones stay, struck, with their reason. */
export function FlightsPage() {
  const airframes = useQuery(airframesQuery);
  const { airframe: asked, flight, voided } = useSearch({ from: '/signed-in/flights' });
  const navigate = useNavigate();
  const may = useMay('keep-records');
  const airframe = chosenAirframe(airframes.data ?? [], asked);
  const show = (id: string, withVoided: boolean) =>
    void navigate({ to: '/flights', search: { airframe: id, ...(withVoided ? {} : { voided: false }) } });
  return (
    <>
      <PageHeading
        title="Flights"
        serial={airframe?.registration}
        below={
          <>
            {airframe !== undefined && <Totals airframe={airframe} />}
            {!may && (
              <AuthorityNote
                act="Flights are entered, corrected and voided"
                by={holderWords('keep-records')}
              />
            )}
          </>
        }
        actions={
          airframe !== undefined && (
            <>
              {may && (
                <ActionLink kind="primary" href={`/flights/enter?airframe=${airframe.id}`}>
                  Enter flights
                </ActionLink>
              )}
              <ActionLink href={`/flights/runs?airframe=${airframe.id}`}>Ground runs</ActionLink>
            </>
          )
        }
      />
      <Answered query={airframes} doing="Reading the airframes">
        {(all) =>
          airframe === undefined ? (
            <EmptyState action={<ActionLink href="/register">Go to Register</ActionLink>}>
              Flights belong to an airframe, and none is recorded. Enter an airframe first.
            </EmptyState>
          ) : (
            <div className="stack">
              <div className="row">
                <AirframeChoice
                  airframes={all}
                  value={airframe.id}
                  onChoose={(id) => show(id, voided ?? true)}
                />
                <CheckField
                  label="Show voided flights"
                  checked={voided ?? true}
                  onChange={(event) => show(airframe.id, event.target.checked)}
                />
              </div>
              <FlightList
                key={airframe.id}
                airframe={airframe}
                voided={voided ?? true}
                askedFlight={flight}
              />
            </div>
          )
        }
      </Answered>
    </>
  );
}
