import { setTimeout as sleep } from 'node:timers/promises';
import { asTyped, file } from '../../support/logbook/flight-file.js';
import { logFlights } from '../../support/scenario/acts.js';
import { done } from '../../support/scenario/problem.js';
import type { Act, ToldFlight } from '../system/act.js';
import { perform } from '../system/perform.js';
import { firstRecord } from '../system/plain-record.js';
import { idOf, type SystemWorld } from '../system/system-world.js';
import type { Story } from './story.js';

/** The acts of a story in the order in which they happened. */
export function inOrder({ flights, moves }: Story): readonly Act[] {
  const acts: readonly Act[] = [...flights.map((flight): Act => ({ kind: 'fly', flight })), ...moves];
  return acts
    .map((act, index) => ({ act, index, at: happenedAt(act) }))
    .sort((a, b) => a.at - b.at || a.index - b.index)
    .map(({ act }) => act);
}

/** The minute in which an act took effect. */
function happenedAt(act: Act): number {
  if (act.kind === 'fly') return act.flight.landing;
  if (act.kind === 'rate') return act.at;
  if ((act.kind === 'change' || act.kind === 'place') && act.boundary.kind === 'instant')
    return act.boundary.at;
  throw new Error(`a story has no ${act.kind}`);
}

/** Tells the acts one by one. Throws at the first that is refused. */
export async function tellAll(world: SystemWorld, acts: readonly Act[]): Promise<void> {
  for (const act of acts) done(await perform(world, firstRecord(), act));
}

/** Logs the flights of an airframe as acts of so many flights each. */
export async function logInBatches(
  world: SystemWorld,
  flights: readonly ToldFlight[],
  size: number,
): Promise<void> {
  for (const airframe of ['A', 'B']) {
    const own = flights.filter((flight) => flight.airframe === airframe);
    for (let from = 0; from < own.length; from += size) {
      const batch = own.slice(from, from + size).map(({ exceptions, ...flight }) => ({
        ...flight,
        exceptions: exceptions.map(({ position, shutDownMinutes }) => ({
          positionNumber: position,
          ...(shutDownMinutes === null
            ? { kind: 'not-running' as const }
            : { kind: 'shut-down' as const, minutes: shutDownMinutes }),
        })),
      }));
      done(await logFlights(world.register.client, idOf(world.airframeIds, airframe), batch));
    }
  }
}

/** Imports flights as one file. They have no exceptions: a file can't tell them. */
export async function importFile(world: SystemWorld, flights: readonly ToldFlight[]): Promise<void> {
  const { client } = world.register;
  const lines = flights.map(({ airframe, page, takeOff, landing, ...events }) =>
    [
      ...[world.registration(airframe), page, 'VDL', 'KRN', asTyped(takeOff), asTyped(landing)],
      ...[events.touchAndGoes, events.starts, events.abortedTakeOffs],
    ].join(','),
  );
  const body = { kind: 'flights', fileName: 'flights.csv', content: file(...lines) };
  const { id } = done(await client.post<{ id: string }>('/api/imports', body));
  const { version } = await settled(world, id, 'checked');
  done(await client.post(`/api/imports/${id}/apply`, {}, { ifMatch: `"v${version}"` }));
  await settled(world, id, 'applied');
}

interface ImportState {
  readonly state: string;
  readonly version: number;
  readonly failed: number;
  readonly job: { readonly state: string } | null;
}

/** Waits for an import's job. Throws unless the import is in that state then, without a failed line. */
async function settled(world: SystemWorld, id: string, state: string): Promise<ImportState> {
  for (;;) {
    const view = done(await world.register.client.get<ImportState>(`/api/imports/${id}`));
    if (view.job === null || ['queued', 'running'].includes(view.job.state)) {
      await sleep(25);
      continue;
    }
    if (view.state !== state || view.failed > 0) throw new Error(`an import is ${JSON.stringify(view)}`);
    return view;
  }
}
