import { instantAt } from '../../support/scenario/instants.js';
import { done } from '../../support/scenario/problem.js';
import type { PlainRecord } from './plain-record.js';
import { engineOf, type PlainTotal, remainingOf, ruleOf, since, sinceNew } from './plain-use.js';
import { idOf, inTurns, type SystemWorld } from './system-world.js';
import { AIRFRAMES, COMPONENTS, TWELFTHS } from './world.js';

interface WireCounters {
  readonly minutes: number | null;
  readonly cycles: { readonly units: number; readonly denominator: number } | null;
}

interface WireComponent {
  readonly place: {
    readonly kind: string;
    readonly slotName: string | null;
    readonly parentSerial: string | null;
    readonly airframeId: string | null;
    readonly positionNumber: number | null;
  };
  readonly counters: { readonly sinceNew: WireCounters; readonly sinceInstalled: WireCounters | null };
  readonly life: { readonly kind: string; readonly remainingCycles: number | null } | null;
}

interface WireCard {
  readonly number: number;
  readonly engine: { readonly serialNumber: string; readonly sinceInstalled: WireCounters } | null;
  readonly pod: { readonly serialNumber: string } | null;
}

const NOW = Number.POSITIVE_INFINITY;

/** Minutes and exact cycles as one text, so that a difference can be read. */
function written({ minutes, twelfths }: PlainTotal): string {
  return `${minutes ?? '?'} min ${twelfths === null ? '?' : twelfths / TWELFTHS} cycles`;
}

function wireWritten({ minutes, cycles }: WireCounters): string {
  return `${minutes ?? '?'} min ${cycles === null ? '?' : cycles.units / cycles.denominator} cycles`;
}

/** Everything by which the system differs from the plain lists, in words; empty when it agrees. */
export async function differences(
  world: SystemWorld,
  record: PlainRecord,
  pastMinute: number,
): Promise<string[]> {
  const found: string[] = [];
  const expect = (what: string, system: unknown, lists: unknown) => {
    if (system !== lists)
      found.push(`${what}: the system says ${String(system)}, the lists ${String(lists)}`);
  };
  await inTurns(COMPONENTS, 4, async ({ name, kind }) => {
    const path = `/api/components/${idOf(world.componentIds, name)}`;
    const { place, counters, life } = done(await world.register.client.get<WireComponent>(path));
    const stay = record.stays.find((each) => each.component === name && each.to === null);
    expect(`${name} is`, placeWritten(world, place), stay === undefined ? 'nowhere' : (stay.slot ?? 'Store'));
    expect(`${name} since new`, wireWritten(counters.sinceNew), written(sinceNew(record, name, NOW)));
    if (stay?.slot != null && counters.sinceInstalled !== null)
      expect(
        `${name} since installed`,
        wireWritten(counters.sinceInstalled),
        written(since(record, name, stay.from)),
      );
    else expect(`${name} since installed`, counters.sinceInstalled === null, stay?.slot == null);
    if (kind === 'part')
      expect(`${name} remaining`, life?.remainingCycles ?? null, remainingOf(record, name));
    const then = done(await world.register.client.get<WireComponent>(`${path}?at=${instantAt(pastMinute)}`));
    expect(
      `${name} since new at ${pastMinute}`,
      wireWritten(then.counters.sinceNew),
      written(sinceNew(record, name, pastMinute)),
    );
  });
  await compareAirframes(world, record, expect);
  await compareDue(world, record, expect);
  return found;
}

type Expect = (what: string, system: unknown, lists: unknown) => void;

function placeWritten(
  world: SystemWorld,
  { kind, slotName, airframeId, positionNumber }: WireComponent['place'],
): string {
  if (kind === 'none') return 'nowhere';
  if (kind === 'location') return 'Store';
  const airframe = [...world.airframeIds].find(([, id]) => id === airframeId)?.[0];
  // A slot of a component is named in full; one of a position by its kind.
  return positionNumber === null || slotName?.includes('/') === true
    ? (slotName ?? '?')
    : `${airframe}${positionNumber}/${slotName?.toLowerCase()}`;
}

async function compareAirframes(world: SystemWorld, record: PlainRecord, expect: Expect): Promise<void> {
  const { client } = world.register;
  const board = done(
    await client.get<
      | { airframe: { id: string; minutes: number | null; flights: number | null }; positions: WireCard[] }[]
      | { rows: never[] }
    >('/api/board'),
  );
  const rows = Array.isArray(board) ? board : board.rows;
  for (const { name, opening, positions } of AIRFRAMES) {
    const flights = record.flights.filter((flight) => flight.airframe === name);
    const row = rows.find(({ airframe }) => airframe.id === idOf(world.airframeIds, name));
    const minutes = flights.reduce((sum, { takeOff, landing }) => sum + landing - takeOff, opening.minutes);
    expect(`${name} on the board, minutes`, row?.airframe.minutes, minutes);
    expect(`${name} on the board, flights`, row?.airframe.flights, opening.flights + flights.length);
    for (let number = 1; number <= positions; number += 1) {
      const card = row?.positions.find((each) => each.number === number);
      for (const kind of ['engine', 'pod'] as const) {
        const there = record.stays.find(
          (stay) => stay.slot === `${name}${number}/${kind}` && stay.to === null,
        )?.component;
        expect(
          `${kind} at ${name}${number} on the board`,
          card?.[kind]?.serialNumber,
          there === undefined ? undefined : world.serial(there),
        );
      }
    }
  }
}

interface WireDue {
  readonly rows: readonly {
    readonly serialNumber: string;
    readonly dimension: string;
    readonly status: string;
    readonly remainingCycles: number | null;
  }[];
}

/** Each limited part on an airframe is on its due list once, with what remains, the most urgent first. */
async function compareDue(world: SystemWorld, record: PlainRecord, expect: Expect): Promise<void> {
  for (const { name } of AIRFRAMES) {
    const { rows } = done(
      await world.register.client.get<WireDue>(
        `/api/due-points?limit=200&airframeId=${idOf(world.airframeIds, name)}`,
      ),
    );
    const parts = rows.filter(({ serialNumber }) => /-P\d+$/.test(serialNumber));
    const listed = parts
      .map(({ serialNumber, remainingCycles }) => `${serialNumber} ${remainingCycles ?? '?'}`)
      .sort();
    const lists = COMPONENTS.filter(
      ({ name: part, kind }) => kind === 'part' && hangsOn(record, part) === name,
    )
      .map(({ name: part }) => `${world.serial(part)} ${dueOn(record, part, name) ?? '?'}`)
      .sort();
    expect(`due on ${name}`, listed.join(', '), lists.join(', '));
    const known = parts.flatMap(({ remainingCycles }) => remainingCycles ?? []);
    expect(`order of what is due on ${name}`, known.join(' '), [...known].sort((a, b) => a - b).join(' '));
  }
}

/** What remains of a part, where its cycles will be counted; null where no rule says how. */
function dueOn(record: PlainRecord, part: string, airframe: string): number | null {
  const engine = engineOf(record, part);
  const model = COMPONENTS.find(({ name }) => name === engine)?.model;
  return ruleOf(model, airframe) === null ? null : remainingOf(record, part);
}

/** The airframe a part hangs on now; null on none. */
function hangsOn(record: PlainRecord, part: string): string | null {
  let at: string | undefined = part;
  while (at !== undefined) {
    const slot: string | null =
      record.stays.find((stay) => stay.component === at && stay.to === null)?.slot ?? null;
    const parent = slot?.slice(0, slot.indexOf('/'));
    const airframe = AIRFRAMES.find(
      ({ name }) =>
        parent?.startsWith(name) === true && !COMPONENTS.some((component) => component.name === parent),
    );
    if (airframe !== undefined) return airframe.name;
    at = parent;
  }
  return null;
}
