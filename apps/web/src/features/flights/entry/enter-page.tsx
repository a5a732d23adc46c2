import { useQuery } from '@tanstack/react-query';
import { useNavigate, useSearch } from '@tanstack/react-router';
import { Fragment } from 'react';
import { momentText } from '../../../format/when.js';
import { holderWords, useMay } from '../../../server/authority.js';
import { type Airframe, airframesQuery, positionsQuery } from '../../../server/fleet.js';
import { ActionLink } from '../../../ui/actions/action-link.js';
import { Answered } from '../../../ui/messages/answered.js';
import { EmptyState } from '../../../ui/messages/empty-state.js';
import { PageHeading } from '../../../ui/page/page-heading.js';
import { AirframeChoice, chosenAirframe } from '../airframe-choice.js';
import { EntryForm } from './entry-form.js';
import '../flights.css';

function AddsTo({ airframe }: { readonly airframe: Airframe }) {
  const answer = useQuery(positionsQuery(airframe.id)).data;
  const serials = (answer?.positions ?? []).flatMap(({ kind, engine }) =>
    kind === 'apu' || engine === null ? [] : [engine.serialNumber],
  );
  const last = answer?.airframe;
  return (
    <>
      {serials.length > 0 && (
        <p>
          Adds to{' '}
          {serials.map((serial, place) => (
            <Fragment key={serial}>
              {place > 0 && ', '}
              <span className="serial">{serial}</span>
            </Fragment>
          ))}
          , each for the time it was installed.
        </p>
      )}
      {last !== undefined && last.lastLandingAt !== null && (
        <p>
          Last flight on record: log page <span className="serial">{last.lastLogPage ?? 'not told'}</span>,
          landed {momentText(last.lastLandingAt)}.
        </p>
      )}
    </>
  );
}

function Entry({ airframe }: { readonly airframe: Airframe }) {
  const answer = useQuery(positionsQuery(airframe.id)).data;
  const installed = new Map(
    (answer?.positions ?? []).map(({ number, engine }) => [number, engine?.serialNumber ?? null]),
  );
  const positions = airframe.positions
    .filter(({ kind }) => kind === 'engine')
    .map(({ number }) => ({ number, serial: installed.get(number) ?? null }));
  return <EntryForm key={airframe.id} airframe={airframe} positions={positions} />;
}

function Help() {
  return (
    <details>
      <summary>Keys and pasting</summary>
      <ul>
        <li>Enter goes to the row below, and adds one at the end; the arrows go up and down, Tab goes on.</li>
        <li>
          <kbd>Ctrl</kbd> <kbd>D</kbd> takes the cell above, <kbd>Ctrl</kbd> <kbd>S</kbd> saves.
        </li>
        <li>
          <kbd>Ctrl</kbd> <kbd>V</kbd> pastes a block from a spreadsheet. With headings, columns go where
          their headings say; without, from the cell in hand to the right. Dates are year-month-day and are
          never guessed.
        </li>
        <li>A landing on the next day is entered with +1, for example 00:35+1.</li>
      </ul>
    </details>
  );
}

/** Entering flights from the log pages of one airframe. */
export function EnterPage() {
  const airframes = useQuery(airframesQuery);
  const { airframe: asked } = useSearch({ from: '/signed-in/flights/enter' });
  const navigate = useNavigate();
  const may = useMay('keep-records');
  const airframe = chosenAirframe(airframes.data ?? [], asked);
  const back = airframe === undefined ? '/flights' : `/flights?airframe=${airframe.id}`;
  return (
    <>
      <PageHeading
        title="Enter flights"
        serial={airframe?.registration}
        below={airframe !== undefined && may ? <AddsTo airframe={airframe} /> : undefined}
        actions={<ActionLink href={back}>Flights on record</ActionLink>}
      />
      {may ? (
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
                    onChoose={(id) => void navigate({ to: '/flights/enter', search: { airframe: id } })}
                  />
                </div>
                <Entry airframe={airframe} />
                <Help />
              </div>
            )
          }
        </Answered>
      ) : (
        <EmptyState>Flights are entered by: {holderWords('keep-records')}.</EmptyState>
      )}
    </>
  );
}
