import { setTimeout as sleep } from 'node:timers/promises';
import type { Answer } from '../http-client.js';
import { done } from '../scenario/problem.js';
import { airframeDesk } from './airframe-desk.js';
import { flightLine } from './flight-file.js';

/** An import, as the API tells it. */
export interface ImportView {
  readonly id: string;
  readonly state: string;
  readonly rows: number;
  readonly ready: number;
  readonly failed: number;
  readonly already: number;
  readonly errors: readonly {
    readonly line: number;
    readonly column: string | null;
    readonly value: string;
    readonly reason: string;
  }[];
  readonly effect: readonly {
    readonly registration: string;
    readonly flights: number;
    readonly minutes: number;
  }[];
  readonly newlyOver: readonly object[];
  readonly sameAs: { readonly id: string } | null;
  readonly root: string | null;
  readonly version: number;
  readonly job: { readonly state: string; readonly done: number; readonly total: number } | null;
}

interface Flown {
  readonly minutes: number;
  readonly flights: number;
  readonly lastLandingAt: string;
}

/**
 * Opens an office with an airframe of its own for each test of the calling file, and gives the acts of an
 * import of flights: check, apply, and what the airframe has flown then.
 */
export function importDesk() {
  const desk = airframeDesk('I');

  const read = async (id: string) =>
    done(await desk.office.administrator.get<ImportView>(`/api/imports/${id}`));

  /** Waits until nothing is under way any more. */
  async function settled(id: string): Promise<ImportView> {
    for (;;) {
      const view = await read(id);
      if (view.job !== null && !['queued', 'running'].includes(view.job.state)) return view;
      await sleep(25);
    }
  }

  async function check(content: string, fileName = 'flights.csv'): Promise<ImportView> {
    const body = { kind: 'flights', fileName, content };
    const { id } = done(await desk.office.administrator.post<{ id: string }>('/api/imports', body));
    return settled(id);
  }

  const apply = ({ id, version }: ImportView): Promise<Answer> =>
    desk.office.administrator.post(`/api/imports/${id}/apply`, {}, { ifMatch: `"v${version}"` });

  async function applied(content: string): Promise<ImportView> {
    const checked = await check(content);
    done(await apply(checked));
    return settled(checked.id);
  }

  /** What an airframe has flown; that of the test that runs, unless another is given. */
  const flown = async ({ id }: { readonly id: string } = desk.airframe) =>
    done(await desk.office.administrator.get<Flown>(`/api/airframes/${id}`));

  /** A line of a file, for the airframe of the test that runs unless another is named. */
  const line = (page: string, takeOff: number, landing: number, registration = desk.airframe.registration) =>
    flightLine(registration, page, takeOff, landing);

  return { desk, line, read, settled, check, apply, applied, flown };
}
