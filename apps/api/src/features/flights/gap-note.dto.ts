import { IsIn, MaxLength } from 'class-validator';
import { IsText } from '../../platform/http/field-forms.js';

/** Why a gap before a flight hides no flight. */
export class NewGapNoteDto {
  @IsIn(['pages', 'stations'])
  kind!: 'pages' | 'stations';

  @MaxLength(500)
  @IsText({ lines: true })
  note!: string;
}

/** Why a note no longer stands. */
export class VoidGapNoteDto {
  @MaxLength(500)
  @IsText({ lines: true })
  reason!: string;
}

/** A note on a gap of the log. It stands for the pages or stations it names, and for no other gap in their place. */
export class GapNoteDto {
  id!: string;
  /** The flight after the gap. */
  flightId!: string;
  kind!: 'pages' | 'stations';
  /** The page, or the station of arrival, of the flight before. */
  before!: string;
  /** The page, or the station of departure, of the flight after. */
  after!: string;
  note!: string;
  voided!: boolean;
  voidReason!: string | null;
}

/** A gap in the log before a flight: a page or a station that does not follow. */
export class FlightGapDto {
  kind!: 'pages' | 'stations';
  before!: string;
  after!: string;
  /** The note that explains it; without one it blocks a release. */
  noteId!: string | null;
}
