import { momentText } from '../../format/when.js';
import { ConflictPanel } from '../../ui/messages/conflict-panel.js';
import type { TypedFlight } from './entry/typed-flight.js';
import type { LoggedFlight } from './flights-data.js';

interface CorrectionConflictProps {
  readonly yours: TypedFlight;
  readonly now: LoggedFlight;
  readonly onDiscardMine: () => void;
}

/** Somebody else voided or corrected the flight meanwhile. */
export function CorrectionConflict({ yours, now, onDiscardMine }: CorrectionConflictProps) {
  const line = (term: string, mine: string, theirs: string) => ({
    term,
    yours: mine,
    onRecord: theirs,
    differs: mine !== theirs,
  });
  return (
    <ConflictPanel
      recordedBy="Read again just now"
      lines={[
        line('Entry', 'Correct it', `Voided: ${now.voidReason ?? 'no reason recorded'}`),
        line('Log page', yours.logPage, now.logPage),
        line(
          'From, to',
          `${yours.fromStation} to ${yours.toStation}`,
          `${now.fromStation} to ${now.toStation}`,
        ),
        line('Take-off', `${yours.date} ${yours.takeOffAt}`, momentText(now.takeOffAt)),
        line('Landing', `${yours.date} ${yours.landingAt}`, momentText(now.landingAt)),
      ]}
      onDiscardMine={onDiscardMine}
    />
  );
}
