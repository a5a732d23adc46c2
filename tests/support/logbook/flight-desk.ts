import { type FlightToLog, logFlights } from '../scenario/acts.js';
import { type BuiltEngine, buildEngine, slotOf } from '../scenario/fleet.js';
import { done, problemOf } from '../scenario/problem.js';
import { airframeDesk } from './airframe-desk.js';

interface Flight {
  readonly id: string;
  readonly logPage: string;
  readonly minutes: number;
  readonly voided: boolean;
  readonly replacesId: string | null;
}

/** What logging, voiding or correcting flights is answered with. */
export interface FlightAnswer {
  readonly flights: readonly Flight[];
  readonly airframe: { readonly minutes: number; readonly flights: number };
  readonly late: boolean;
  readonly newlyOver: readonly {
    readonly serialNumber: string;
    readonly engineSerial: string;
    readonly dimension: string;
    readonly remaining: number;
  }[];
}

interface FlightPage {
  readonly rows: readonly Flight[];
  readonly next: string | null;
}

interface Counted {
  readonly counters: { readonly sinceNew: object; readonly sinceInstalled: object };
}

/**
 * Opens an office with an airframe of its own for each test of the calling file, and gives the acts of its
 * flight log: all of them are on the airframe of the test that runs.
 */
export function flightDesk() {
  const desk = airframeDesk('F');
  const sent = (flights: readonly FlightToLog[]) =>
    logFlights(desk.office.administrator, desk.airframe.id, flights);

  return {
    desk,
    log: async (...flights: FlightToLog[]) => done(await sent(flights)) as unknown as FlightAnswer,
    refusalOf: async (...flights: FlightToLog[]) => problemOf(await sent(flights)),
    flightsOf: async (query = '') =>
      done(
        await desk.office.administrator.get<FlightPage>(`/api/airframes/${desk.airframe.id}/flights${query}`),
      ),
    componentOf: async (id: string) =>
      done(await desk.office.administrator.get<Counted>(`/api/components/${id}`)),
    /** Builds an engine up and installs it at position 1, at that minute. */
    onWing: async (at = 50): Promise<BuiltEngine> => {
      const engine = await buildEngine(desk.register, desk.fleet.modelId, `ZZ-FE${desk.marks}-${at}`);
      await desk.register.place(engine.id, { slotId: slotOf(desk.airframe, 1, 'engine') }, at);
      return engine;
    },
  };
}
