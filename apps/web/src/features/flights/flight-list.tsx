import { useInfiniteQuery, useQuery } from '@tanstack/react-query';
import { useEffect, useState } from 'react';
import { useMay } from '../../server/authority.js';
import { useOfflineSince } from '../../server/connection.js';
import { type Airframe, positionsQuery } from '../../server/fleet.js';
import { ActionLink } from '../../ui/actions/action-link.js';
import { Button } from '../../ui/actions/button.js';
import { announce } from '../../ui/messages/announcements.js';
import { EmptyState } from '../../ui/messages/empty-state.js';
import { OFF_WHILE_OFFLINE } from '../../ui/messages/offline-bar.js';
import { DataTable } from '../../ui/table/data-table.js';
import { readState } from '../../ui/table/read-state.js';
import { CorrectDialog } from './correct-dialog.js';
import { flightColumns, flightPlace } from './flight-columns.js';
import {
  type FlightGap,
  type FlightsAnswer,
  flightsQuery,
  type GapNote,
  type LoggedFlight,
} from './flights-data.js';
import { ExplainGapDialog } from './gaps/explain-gap-dialog.js';
import { NoteRecorded } from './gaps/note-recorded.js';
import { VoidNoteDialog } from './gaps/void-note-dialog.js';
import { SavedFlights } from './saved-flights.js';
import { VoidDialog } from './void-dialog.js';

interface ListProps {
  readonly airframe: Airframe;
  readonly voided: boolean;
  /** The flight to show first, from wherever something is held against it. */
  readonly askedFlight: string | undefined;
}

type Asked = { readonly flight: LoggedFlight } & (
  | { readonly act: 'void' | 'correct' }
  | { readonly act: 'explain'; readonly gap: FlightGap }
  | { readonly act: 'void-note'; readonly note: GapNote }
);

/** `answer`: the totals, when the act changed them. */
interface Done {
  readonly what: string;
  readonly answer: FlightsAnswer | null;
}

type Flights = ReturnType<typeof useFlights>;

const useFlights = (airframeId: string, voided: boolean) =>
  useInfiniteQuery(flightsQuery(airframeId, voided));

/** Reads on until the flight asked for is among the rows, and goes there once. */
function useAskedFlight(asked: string | undefined, rows: readonly LoggedFlight[], flights: Flights): void {
  const [gone, setGone] = useState<string | null>(null);
  const found = rows.some(({ id }) => id === asked);
  const { hasNextPage, isFetchingNextPage, isFetchNextPageError, fetchNextPage } = flights;
  useEffect(() => {
    if (asked === undefined || gone === asked) return;
    if (found) {
      const place = document.getElementById(flightPlace(asked));
      place?.scrollIntoView({ block: 'center' });
      place?.focus({ preventScroll: true });
      setGone(asked);
    } else if (hasNextPage && !isFetchingNextPage && !isFetchNextPageError) void fetchNextPage();
  }, [asked, gone, found, hasNextPage, isFetchingNextPage, isFetchNextPageError, fetchNextPage]);
}

/** The flights of one airframe, with what may be done to each. */
export function FlightList({ airframe, voided, askedFlight }: ListProps) {
  const may = useMay('keep-records');
  const mayExplain = useMay('explain-gaps');
  const flights = useFlights(airframe.id, voided);
  const [asked, setAsked] = useState<Asked | null>(null);
  const [done, setDone] = useState<Done | null>(null);
  const rows = flights.data?.pages.flatMap((page) => page.rows) ?? [];
  useAskedFlight(askedFlight, rows, flights);
  const replaced = new Set(rows.flatMap(({ replacesId }) => (replacesId === null ? [] : [replacesId])));
  const acts = {
    onCorrect: (flight: LoggedFlight) => setAsked({ act: 'correct', flight }),
    onVoid: (flight: LoggedFlight) => setAsked({ act: 'void', flight }),
  };
  const gapActs = {
    onExplain: (flight: LoggedFlight, gap: FlightGap) => setAsked({ act: 'explain', flight, gap }),
    onVoidNote: (flight: LoggedFlight, note: GapNote) => setAsked({ act: 'void-note', flight, note }),
  };
  return (
    <>
      {done !== null && <DoneMessage key={done.what} {...done} onClose={() => setDone(null)} />}
      <DataTable
        caption={`Flights of ${airframe.registration}, newest first. All times are UTC.`}
        columns={flightColumns({
          acts: may ? acts : null,
          gapActs: mayExplain ? gapActs : null,
          replaced,
          asked: askedFlight,
        })}
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
      {asked !== null && (
        <ActDialog
          {...{ asked, rows, airframe }}
          onClose={() => setAsked(null)}
          onDone={(what, answer) => {
            announce(`${what}.`);
            setDone({ what, answer: answer ?? null });
            setAsked(null);
          }}
        />
      )}
    </>
  );
}

function DoneMessage({ what, answer, onClose }: Done & { readonly onClose: () => void }) {
  return answer === null ? (
    <NoteRecorded {...{ what, onClose }} />
  ) : (
    <SavedFlights {...{ what, answer, onClose }} />
  );
}

interface ActDialogProps {
  readonly asked: Asked;
  readonly rows: readonly LoggedFlight[];
  readonly airframe: Airframe;
  readonly onClose: () => void;
  /** `answer`: the totals, when the act changed them. */
  readonly onDone: (what: string, answer?: FlightsAnswer) => void;
}

function ActDialog({ asked, rows, airframe, onClose, onDone }: ActDialogProps) {
  const installed = useQuery(positionsQuery(airframe.id)).data?.positions ?? [];
  const off = useOfflineSince() === null ? null : OFF_WHILE_OFFLINE;
  const { flight } = asked;
  const dialog = {
    flight,
    now: rows.find(({ id }) => id === flight.id) ?? flight,
    offBecause: off,
    onClose,
  };
  const page = `log page ${flight.logPage}`;
  switch (asked.act) {
    case 'explain':
      return (
        <ExplainGapDialog
          {...{ ...dialog, gap: asked.gap }}
          onDone={() => onDone(`The gap before ${page} is explained`)}
        />
      );
    case 'void-note':
      return (
        <VoidNoteDialog
          {...{ ...dialog, note: asked.note }}
          onDone={() => onDone(`The note before ${page} was voided`)}
        />
      );
    case 'void':
      return (
        <VoidDialog {...dialog} onDone={(answer) => onDone(`The flight of ${page} was voided`, answer)} />
      );
    case 'correct':
      return (
        <CorrectDialog
          {...dialog}
          positions={airframe.positions
            .filter(({ kind }) => kind === 'engine')
            .map(({ number, label }) => ({
              number,
              label,
              serial: installed.find((place) => place.number === number)?.engine?.serialNumber ?? null,
            }))}
          onDone={(answer) => onDone(`The flight of ${page} was corrected`, answer)}
        />
      );
  }
}
