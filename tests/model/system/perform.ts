import type { Answer } from '../../support/http-client.js';
import {
  atMinute,
  type LoggedFlights,
  onTheWire,
  recordChange,
  type WireBoundary,
} from '../../support/scenario/acts.js';
import { dateAt, instantAt } from '../../support/scenario/instants.js';
import { done } from '../../support/scenario/problem.js';
import type { Act, ToldBoundary, ToldFlight } from './act.js';
import type { PlainRecord, PlainStay } from './plain-record.js';
import { codeOf, idOf, type SystemWorld } from './system-world.js';
import { SLOTS } from './world.js';

interface PlaceRow {
  readonly id: string;
  readonly slotId: string | null;
  readonly from: string;
  readonly voided: boolean;
}

/** Tells an act to the running system. Answers what it said. */
export async function perform(world: SystemWorld, record: PlainRecord, act: Act): Promise<Answer> {
  const { client } = world.register;
  switch (act.kind) {
    case 'fly': {
      const { airframe } = act.flight;
      const answer = await client.post<LoggedFlights>(
        `/api/airframes/${idOf(world.airframeIds, airframe)}/flights`,
        { flights: [wireFlight(act.flight)] },
      );
      return keepFlight(world, act.flight, answer);
    }
    case 'void':
      return client.post(`/api/flights/${flightId(world, act)}/void`, { reason: 'Never flown' });
    case 'correct': {
      const id = flightId(world, { airframe: act.flight.airframe, page: act.page });
      const answer = await client.post<LoggedFlights>(`/api/flights/${id}/correct`, {
        reason: 'Misread',
        flight: wireFlight(act.flight),
      });
      return keepFlight(world, act.flight, answer);
    }
    case 'change':
      return change(world, act);
    case 'place':
      return client.post('/api/placements', {
        componentId: idOf(world.componentIds, act.component),
        ...(act.slot === null ? { locationName: 'Store' } : { slotId: idOf(world.slotIds, act.slot) }),
        boundary: wireBoundary(world, act.boundary),
        ...(act.until === null ? {} : { until: wireBoundary(world, act.until) }),
      });
    case 'rate':
      return client.post('/api/rating-changes', {
        componentId: idOf(world.componentIds, act.engine),
        at: instantAt(act.at),
        ratingCode: codeOf(act.rating),
        source: 'Plate',
      });
    case 'void-stay':
      return client.post(`/api/placements/${await stayId(world, record, act.stay)}/void`, {
        reason: 'Never was there',
      });
  }
}

const flightKey = ({ airframe, page }: { readonly airframe: string; readonly page: string }) =>
  `${airframe} ${page}`;
const flightId = ({ flightIds }: SystemWorld, flight: { readonly airframe: string; readonly page: string }) =>
  idOf(flightIds, flightKey(flight));

function keepFlight(world: SystemWorld, flight: ToldFlight, answer: Answer<LoggedFlights>): Answer {
  const [logged] = answer.status < 300 ? answer.body.flights : [];
  if (logged !== undefined) world.flightIds.set(flightKey(flight), logged.id);
  return answer;
}

function wireFlight({ exceptions, ...flight }: ToldFlight) {
  return onTheWire({
    ...flight,
    exceptions: exceptions.map(({ position, shutDownMinutes }) => ({
      positionNumber: position,
      ...(shutDownMinutes === null
        ? { kind: 'not-running' as const }
        : { kind: 'shut-down' as const, minutes: shutDownMinutes }),
    })),
  });
}

function wireBoundary(world: SystemWorld, boundary: ToldBoundary): WireBoundary {
  if (boundary.kind === 'instant') return atMinute(boundary.at);
  const airframeId = idOf(world.airframeIds, boundary.airframe);
  if (boundary.kind === 'after-page') return { kind: 'after-page', page: boundary.page, airframeId };
  return { kind: boundary.kind, on: dateAt(boundary.day), airframeId };
}

function change(world: SystemWorld, act: Extract<Act, { kind: 'change' }>): Promise<Answer> {
  const slot = SLOTS.find(({ name }) => name === act.slot);
  if (slot?.airframe == null || slot.position === null) throw new Error(`no position has ${act.slot}`);
  return recordChange(world.register.client, {
    airframeId: idOf(world.airframeIds, slot.airframe),
    positionNumber: slot.position,
    slot: slot.kind === 'pod' ? 'pod' : 'engine',
    outgoingSerial: act.off === null ? null : world.serial(act.off),
    incomingSerial: act.on === null ? null : world.serial(act.on),
    boundary: wireBoundary(world, act.boundary),
    ...(act.rating === null ? {} : { ratingCode: codeOf(act.rating) }),
  });
}

/** The system's id of a stay: of what is not voided, the one that begins then. */
async function stayId(world: SystemWorld, { stays }: PlainRecord, number: number): Promise<string> {
  const stay = stays.find((each) => each.number === number);
  if (stay === undefined) throw new Error(`no stay ${number}`);
  const rows = done(
    await world.register.client.get<PlaceRow[] | { rows: PlaceRow[] }>(
      `/api/components/${idOf(world.componentIds, stay.component)}/places`,
    ),
  );
  const found = ('rows' in rows ? rows.rows : rows).find((row) => isSame(world, row, stay));
  if (found === undefined)
    throw new Error(`the system has no stay of ${stay.component} from ${stay.from}: ${JSON.stringify(rows)}`);
  return found.id;
}

function isSame(world: SystemWorld, row: PlaceRow, { slot, from }: PlainStay): boolean {
  return (
    !row.voided &&
    row.from === instantAt(from) &&
    row.slotId === (slot === null ? null : idOf(world.slotIds, slot))
  );
}
