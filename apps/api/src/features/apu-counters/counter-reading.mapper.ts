import type { CounterReading as Row } from '../../platform/database/generated/client.js';
import { toInstant, toWire } from '../../platform/http/instants.js';
import { addedBy } from '../../records/counting/counter-readings.js';
import type { CounterReadingDto, CounterReadingsDto } from './counter-reading.dto.js';

/** Readings as on the wire, the newest first; the rows come in order of time. Total. */
export function readingsToWire(
  component: { readonly id: string; readonly serialNumber: string },
  rows: readonly Row[],
): CounterReadingsDto {
  const counted = { minutes: 0, starts: 0 };
  const before: Parameters<typeof addedBy>[0][number][] = [];
  const readings = rows.map((row): CounterReadingDto => {
    const reading = {
      id: row.id,
      at: toInstant(row.at),
      minutes: Number(row.minutes),
      starts: Number(row.starts),
      fresh:
        row.freshMinutes === null || row.freshStarts === null
          ? null
          : { minutes: Number(row.freshMinutes), starts: Number(row.freshStarts) },
    };
    const voided = row.voidedSeq !== null;
    const ran = voided || before.length === 0 ? null : addedBy(before, reading.at, reading);
    if (!voided) {
      counted.minutes += ran?.minutes ?? 0;
      counted.starts += ran?.starts ?? 0;
      before.push(reading);
    }
    const { id, minutes, starts, fresh } = reading;
    return {
      ...{ id, minutes, starts, ran, voided, source: row.source, voidReason: row.voidReason },
      at: toWire(row.at),
      kind: row.kind as CounterReadingDto['kind'],
      first: fresh,
    };
  });
  const last = rows.findLast((row) => row.voidedSeq === null);
  return {
    componentId: component.id,
    serialNumber: component.serialNumber,
    readings: readings.reverse(),
    counted,
    readAt: last === undefined ? null : toWire(last.at),
  };
}
