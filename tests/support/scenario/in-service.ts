import type { HttpClient } from '../http-client.js';
import { atMinute, logFlights, type RecordedChange, recordChange } from './acts.js';
import { type Fleet, makeFleet } from './fleet.js';
import { done } from './problem.js';
import type { RegisteredAirframe } from './register.js';
import { Register } from './register.js';

/** A day in minutes. */
export const DAY = 1440;

/** The small operator with its first airframe flying: engines 1 and 2 at positions 1 and 2, put on at minute 60. */
export interface InService extends Fleet {
  readonly airframe: RegisteredAirframe;
  readonly packages: readonly RecordedChange[];
}

/** Puts both engines on the first airframe, each as a change of its own, and logs one flight of two hours a day. */
export async function putInService(client: HttpClient, { mark = 'ZZ', days = 3 } = {}): Promise<InService> {
  const fleet = await makeFleet(new Register(client), { mark });
  const [airframe] = fleet.airframes;
  if (airframe === undefined) throw new Error('no airframe');
  const packages: RecordedChange[] = [];
  for (const number of [1, 2])
    packages.push(
      done(
        await recordChange(client, {
          airframeId: airframe.id,
          positionNumber: number,
          slot: 'engine',
          outgoingSerial: null,
          incomingSerial: `${mark}-E${number}`,
          boundary: atMinute(60),
        }),
      ),
    );
  if (days > 0) done(await logFlights(client, airframe.id, daily(days)));
  return { ...fleet, airframe, packages };
}

/** One flight of two hours a day, there and back, so that stations and pages follow one another. */
export function daily(days: number, { from = 0 } = {}) {
  return Array.from({ length: days }, (_, index) => ({
    page: `P${String(1000 + from + index)}`,
    ...((from + index) % 2 === 0 ? { from: 'VDL', to: 'KRN' } : { from: 'KRN', to: 'VDL' }),
    takeOff: (from + index) * DAY + 600,
    landing: (from + index) * DAY + 720,
  }));
}
