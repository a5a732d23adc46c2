import { type GapNote, gapsInLog, type LogGap, noteOf } from '@strutbook/domain/release/log-gaps.js';
import type { Tx } from '../../platform/database/database.js';
import type { GapNote as GapNoteRow } from '../../platform/database/generated/client.js';
import { toInstant } from '../../platform/http/instants.js';
import type { FlightRow } from './flight.mapper.js';
import type { FlightGapDto, GapNoteDto } from './gap-note.dto.js';

/** What of a flight tells whether the log jumps before it. */
export type LegRow = Pick<
  FlightRow,
  'id' | 'airframeId' | 'logPage' | 'fromStation' | 'toStation' | 'takeOffAt' | 'landingAt' | 'voidedSeq'
>;

/** A note as the wire has it. Total. */
export function gapNoteToWire(row: GapNoteRow): GapNoteDto {
  const { id, flightId, before, after, note, voidedSeq, voidReason } = row;
  return {
    ...{ id, flightId, kind: row.kind as GapNote['kind'], before, after, note },
    voided: voidedSeq !== null,
    voidReason,
  };
}

/** The gaps before each of some successive flights of one airframe. Voided ones have none, and hide none. */
export async function gapsBefore(
  tx: Tx,
  operatorId: number,
  rows: readonly LegRow[],
): Promise<readonly LogGap[]> {
  const counted = rows
    .filter((row) => row.voidedSeq === null)
    .sort((a, b) => a.landingAt.getTime() - b.landingAt.getTime());
  const [first] = counted;
  if (first === undefined) return [];
  const before = await tx.flight.findFirst({
    where: { operatorId, airframeId: first.airframeId, voidedSeq: null, landingAt: { lt: first.landingAt } },
    orderBy: { landingAt: 'desc' },
  });
  const found = gapsInLog([...(before === null ? [] : [before]), ...counted].map(legOf));
  return before === null ? found : found.filter((gap) => gap.flightId !== before.id);
}

/** The gaps before one flight with the notes that explain them. Total. */
export function gapsToWire(gaps: readonly LogGap[], notes: readonly GapNoteDto[]): FlightGapDto[] {
  return gaps.map((gap) => ({
    ...{ kind: gap.kind, before: gap.before, after: gap.after },
    noteId: noteOf(gap, notes)?.id ?? null,
  }));
}

function legOf(row: LegRow) {
  return {
    flightId: row.id,
    page: row.logPage,
    from: row.fromStation,
    to: row.toStation,
    takeOffAt: toInstant(row.takeOffAt),
    landingAt: toInstant(row.landingAt),
  };
}
