import { Button } from '../../../ui/actions/button.js';
import { StatusMark } from '../../../ui/status/status-mark.js';
import type { FlightGap, GapNote, LoggedFlight } from '../flights-data.js';
import { gapMark, gapText } from './gap-words.js';

export interface GapActs {
  readonly onExplain: (flight: LoggedFlight, gap: FlightGap) => void;
  readonly onVoidNote: (flight: LoggedFlight, note: GapNote) => void;
}

interface GapsProps {
  readonly flight: LoggedFlight;
  /** Null for those who may not. */
  readonly acts: GapActs | null;
}

const NOTE_WORDS = { pages: 'the page', stations: 'the station' } as const;

function Note({ flight, note, acts }: GapsProps & { readonly note: GapNote }) {
  return (
    <>
      <span className="gap-note">“{note.note}”</span>
      {acts !== null && (
        <Button
          kind="quiet"
          aria-label={`Void the note on ${NOTE_WORDS[note.kind]} before log page ${flight.logPage}`}
          onClick={() => acts.onVoidNote(flight, note)}
        >
          Void this note
        </Button>
      )}
    </>
  );
}

function Gap({ flight, gap, acts }: GapsProps & { readonly gap: FlightGap }) {
  const note = flight.gapNotes.find(({ id }) => id === gap.noteId);
  const other = flight.gapNotes.some(({ kind, voided }) => kind === gap.kind && !voided);
  return (
    <li>
      {note === undefined ? (
        <StatusMark status="blocked" word={gapMark(gap)} />
      ) : (
        <StatusMark status="finding" word="Gap explained" />
      )}
      <span>{gapText(gap)}.</span>
      {note !== undefined && <Note {...{ flight, note, acts }} />}
      {/* A note on another gap in its place is voided first. */}
      {note === undefined && !other && acts !== null && (
        <Button aria-label={`Explain this gap: ${gapText(gap)}`} onClick={() => acts.onExplain(flight, gap)}>
          Explain this gap
        </Button>
      )}
    </li>
  );
}

/** What is missing in the log before a flight, and what was noted of it. Nothing where the log goes on without a jump. */
export function FlightGaps({ flight, acts }: GapsProps) {
  const { gaps, gapNotes, voided } = flight;
  const explaining = new Set(gaps.map(({ noteId }) => noteId));
  const others = gapNotes.filter(({ id }) => !explaining.has(id));
  if (gaps.length === 0 && others.length === 0) return null;
  return (
    <ul className="flight-gaps">
      {gaps.map((gap) => (
        <Gap key={gap.kind} {...{ flight, gap, acts }} />
      ))}
      {others.map((note) => (
        <li key={note.id} className="quiet">
          {note.voided ? (
            <span>
              Note voided: <s>“{note.note}”</s> “{note.voidReason ?? 'no reason recorded'}”
            </span>
          ) : (
            <>
              <span>Noted of a gap that is no longer there: {gapText(note)}.</span>
              <Note {...{ flight, note }} acts={voided ? null : acts} />
            </>
          )}
        </li>
      ))}
    </ul>
  );
}
