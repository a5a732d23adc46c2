import type { HistoryEvent, HistoryLine } from '@strutbook/domain/history/history.js';
import { instantToWire } from '../../platform/http/instants.js';
import type { Tellable } from './tellable.js';
import type { ToldLine } from './told-line.js';

/** A line of the history as it is told. Total. */
export function tell(
  { title, detail, placed, hash, work }: Tellable,
  { fact, totals }: HistoryLine,
): ToldLine {
  const { voided } = fact;
  return {
    at: instantToWire(fact.at),
    placed,
    title,
    detail,
    struck:
      voided === null
        ? null
        : { recordedAt: instantToWire(voided.recordedAt), by: voided.by, reason: voided.reason },
    adds: addedBy(fact.event),
    totals: { minutes: totals.minutes, cycles: totals.cycles },
    work,
    entry: { number: fact.journalNumber, recordedAt: instantToWire(fact.recordedAt), by: fact.by, hash },
  };
}

function addedBy(event: HistoryEvent): ToldLine['adds'] {
  if (event.kind === 'flight')
    return {
      minutes: event.minutes,
      cycles:
        event.cycleUnits === null ? null : { units: event.cycleUnits, denominator: event.cycleDenominator },
    };
  if (event.kind !== 'opening') return null;
  return {
    minutes: event.minutes,
    cycles: event.cycles === null ? null : { units: event.cycles, denominator: event.cycleDenominator ?? 1 },
  };
}
