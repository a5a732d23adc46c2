import { done } from '../../support/scenario/problem.js';
import { idOf, inTurns, type SystemWorld } from '../system/system-world.js';
import { AIRFRAMES, COMPONENTS } from '../system/world.js';

interface Told {
  readonly counters: Readonly<Record<string, unknown>>;
  readonly life: unknown;
  readonly place: Readonly<Record<string, unknown>>;
}

/** What is left out of the comparison, for the relation changes it on purpose. */
export interface Without {
  /** Days and instants: the story happened at another time. */
  readonly when?: boolean;
  /** Counters since installed: something was taken off and put on again. */
  readonly sinceInstalled?: boolean;
}

/**
 * All totals, lives and due lists of a world as one text, in which nothing tells one world from another: two worlds in
 * which the same happened have the same text, byte for byte.
 */
export async function outcomeOf(world: SystemWorld, without: Without = {}): Promise<string> {
  const lines = new Map<string, unknown>();
  await inTurns(COMPONENTS, 4, async ({ name }) => {
    const { counters, life, place } = await toldOf(world, name);
    const { kind, positionNumber, slotName, parentSerial } = place;
    lines.set(name, { counters, life, place: { kind, positionNumber, slotName, parentSerial } });
  });
  for (const { name } of AIRFRAMES) {
    const airframeId = idOf(world.airframeIds, name);
    const { minutes, flights } = done(
      await world.register.client.get<{ minutes: number; flights: number }>(`/api/airframes/${airframeId}`),
    );
    lines.set(`airframe ${name}`, { minutes, flights });
    lines.set(`due on ${name}`, (await dueOn(world, airframeId)).sort());
  }
  const text = [...lines]
    .sort(([a], [b]) => (a < b ? -1 : 1))
    .map(([name, value]) => `${name} ${JSON.stringify(value, leavingOut(without))}`)
    .join('\n');
  return nameless(world, text);
}

const toldOf = async ({ register, componentIds }: SystemWorld, name: string, at = '') =>
  done(await register.client.get<Told>(`/api/components/${idOf(componentIds, name)}${at}`));

/** The counters of every component at an instant (now, unless one is given), as one text. */
export async function countersAt(world: SystemWorld, at: string | null): Promise<string> {
  const told = new Map<string, unknown>();
  await inTurns(COMPONENTS, 4, async ({ name }) => {
    told.set(name, (await toldOf(world, name, at === null ? '' : `?at=${at}`)).counters);
  });
  return COMPONENTS.map(({ name }) => `${name} ${JSON.stringify(told.get(name))}`).join('\n');
}

async function dueOn(world: SystemWorld, airframeId: string): Promise<string[]> {
  const rows: string[] = [];
  let after: string | null = null;
  do {
    const page: { rows: object[]; next: string | null } = done(
      await world.register.client.get<{ rows: object[]; next: string | null }>(
        `/api/due-points?limit=200&airframeId=${airframeId}${after === null ? '' : `&after=${encodeURIComponent(after)}`}`,
      ),
    );
    rows.push(...page.rows.map((row) => JSON.stringify({ ...row, id: undefined })));
    after = page.next;
  } while (after !== null);
  return rows.map((row) => nameless(world, row));
}

const WHEN = /(At|On|since|from|to|at)$/;

function leavingOut({ when = false, sinceInstalled = false }: Without) {
  return (key: string, value: unknown): unknown => {
    if (when && WHEN.test(key) && typeof value === 'string') return undefined;
    if (sinceInstalled && key === 'sinceInstalled') return undefined;
    return value;
  };
}

/** The text with names of `world.ts` where this world has ids and marked names of its own. */
function nameless(world: SystemWorld, text: string): string {
  const ids = [...world.componentIds, ...world.airframeIds, ...world.slotIds];
  const named = ids.reduce((told, [name, id]) => told.replaceAll(id, name), text);
  const mark = world.serial('');
  return named.replaceAll(mark, '');
}
