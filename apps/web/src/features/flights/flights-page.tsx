import { useInfiniteQuery, useQuery } from '@tanstack/react-query';
import { useNavigate, useSearch } from '@tanstack/react-router';
import { useState } from 'react';
import { counted } from '../../format/counts.js';
import { hoursMinutes } from '../../format/hours.js';
import { holderWords, useMay } from '../../server/authority.js';
import { useOfflineSince } from '../../server/connection.js';
import { type Airframe, airframeQuery, airframesQuery, positionsQuery } from '../../server/fleet.js';
import { ActionLink } from '../../ui/actions/action-link.js';
import { Button } from '../../ui/actions/button.js';
import { CheckField } from '../../ui/fields/check-field.js';
import { announce } from '../../ui/messages/announcements.js';
import { Answered } from '../../ui/messages/answered.js';
import { AuthorityNote } from '../../ui/messages/authority-note.js';
import { EmptyState } from '../../ui/messages/empty-state.js';
import { OFF_WHILE_OFFLINE } from '../../ui/messages/offline-bar.js';
import { PageHeading } from '../../ui/page/page-heading.js';
import { DataTable } from '../../ui/table/data-table.js';
import { readState } from '../../ui/table/read-state.js';
import { AirframeChoice, chosenAirframe } from './airframe-choice.js';
import { CorrectDialog } from './correct-dialog.js';
import { flightColumns } from './flight-columns.js';
import { type FlightsAnswer, flightsQuery, type LoggedFlight } from './flights-data.js';
import { SavedFlights } from './saved-flights.js';
import { VoidDialog } from './void-dialog.js';
import './flights.css';

interface ListProps {
  readonly airframe: Airframe;
  readonly voided: boolean;
}

type Asked = { readonly act: 'void' | 'correct'; readonly flight: LoggedFlight };

function FlightList({ airframe, voided }: ListProps) {
  const may = useMay('keep-records');
  const off = useOfflineSince() === null ? null : OFF_WHILE_OFFLINE;
  const flights = useInfiniteQuery(flightsQuery(airframe.id, voided));
  const installed = useQuery(positionsQuery(airframe.id)).data?.positions ?? [];
  const [asked, setAsked] = useState<Asked | null>(null);
  const [done, setDone] = useState<{ readonly what: string; readonly answer: FlightsAnswer } | null>(null);
  const rows = flights.data?.pages.flatMap((page) => page.rows) ?? [];
  const replaced = new Set(rows.flatMap(({ replacesId }) => (replacesId === null ? [] : [replacesId])));
  const acts = {
    onCorrect: (flight: LoggedFlight) => setAsked({ act: 'correct', flight }),
    onVoid: (flight: LoggedFlight) => setAsked({ act: 'void', flight }),
  };
  const finish = (what: string) => (answer: FlightsAnswer) => {
    announce(`${what}.`);
    setDone({ what, answer });
    setAsked(null);
  };
  const dialog = asked !== null && {
    flight: asked.flight,
    now: rows.find(({ id }) => id === asked.flight.id) ?? asked.flight,
    offBecause: off,
    onClose: () => setAsked(null),
  };
  return (
    <>
      {done !== null && <SavedFlights key={done.what} {...done} onClose={() => setDone(null)} />}
      <DataTable
        caption={`Flights of ${airframe.registration}, newest first. All times are UTC.`}
        columns={flightColumns(may ? acts : null, replaced)}
        rows={rows}
        rowKey={({ id }) => id}
        struck={(flight) => flight.voided}
        state={readState(flights)}
        empty={
          <EmptyState
            action={
              may && <ActionLink href={`/flights/enter?airframe=${airframe.id}`}>Enter flights</ActionLink>
            }
          >
            No flights of {airframe.registration} are on record.
          </EmptyState>
        }
      />
      {flights.isFetchNextPageError && (
        <p role="alert">Older flights could not be read. Those above stay. Try again.</p>
      )}
      {flights.hasNextPage && (
        <div>
          <Button busy={flights.isFetchingNextPage} onClick={() => void flights.fetchNextPage()}>
            Show older flights
          </Button>
        </div>
      )}
      {dialog && asked?.act === 'void' && (
        <VoidDialog
          {...dialog}
          onDone={finish(`The flight of log page ${asked.flight.logPage} was voided`)}
        />
      )}
      {dialog && asked?.act === 'correct' && (
        <CorrectDialog
          {...dialog}
          positions={airframe.positions
            .filter(({ kind }) => kind === 'engine')
            .map(({ number, label }) => ({
              number,
              label,
              serial: installed.find((place) => place.number === number)?.engine?.serialNumber ?? null,
            }))}
          onDone={finish(`The flight of log page ${asked.flight.logPage} was corrected`)}
        />
      )}
    </>
  );
}

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
  const { airframe: asked, voided } = useSearch({ from: '/signed-in/flights' });
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
          may && airframe !== undefined ? (
            <ActionLink kind="primary" href={`/flights/enter?airframe=${airframe.id}`}>
              Enter flights
            </ActionLink>
          ) : undefined
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
              <FlightList key={airframe.id} airframe={airframe} voided={voided ?? true} />
            </div>
          )
        }
      </Answered>
    </>
  );
}
