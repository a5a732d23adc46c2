import { momentText } from '../../format/when.js';
import { useAct } from '../../server/act.js';
import { COMPONENTS_KEY } from '../../server/components.js';
import { FLEET_KEY } from '../../server/fleet.js';
import { ConflictPanel } from '../../ui/messages/conflict-panel.js';
import { ProblemPanel } from '../../ui/messages/problem-panel.js';
import { flightWords, type TypedFlight } from './entry/typed-flight.js';
import { FLIGHTS_KEY, type FlightsAnswer, type LoggedFlight, logFlights } from './flights-data.js';

interface CorrectionConflictProps {
  readonly yours: TypedFlight;
  readonly now: LoggedFlight;
  readonly onDiscardMine: () => void;
  readonly onDone: (answer: FlightsAnswer) => void;
}

/** Somebody else voided or corrected the flight meanwhile. Mine may still be entered as a flight of its own. */
export function CorrectionConflict({ yours, now, onDiscardMine, onDone }: CorrectionConflictProps) {
  const further = useAct({
    perform: logFlights,
    refresh: [FLIGHTS_KEY, FLEET_KEY, COMPONENTS_KEY, ['history']],
    onDone,
  });
  const mine = flightWords(yours);
  const line = (term: string, own: string, theirs: string) => ({
    term,
    yours: own,
    onRecord: theirs,
    differs: own !== theirs,
  });
  const enter = () => {
    if (mine !== null && !further.isPending) further.mutate({ airframeId: now.airframeId, flights: [mine] });
  };
  return (
    <>
      <ConflictPanel
        recordedBy="Read again just now"
        lines={[
          line('Entry', 'Correct it', `Voided: ${now.voidReason ?? 'no reason recorded'}`),
          line('Log page', yours.logPage, now.logPage),
          line('From', mine?.fromStation ?? yours.fromStation, now.fromStation),
          line('To', mine?.toStation ?? yours.toStation, now.toStation),
          line(
            'Take-off',
            mine === null ? yours.takeOffAt : momentText(mine.takeOffAt),
            momentText(now.takeOffAt),
          ),
          line(
            'Landing',
            mine === null ? yours.landingAt : momentText(mine.landingAt),
            momentText(now.landingAt),
          ),
        ]}
        onDiscardMine={onDiscardMine}
        {...(mine === null
          ? {}
          : { onRecordMine: enter, recordMineWord: 'Enter mine as a flight of its own' })}
      />
      {further.error !== null && <ProblemPanel error={further.error} doing="Entering the flight" />}
    </>
  );
}
