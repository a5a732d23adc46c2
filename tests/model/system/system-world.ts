import { instantAt } from '../../support/scenario/instants.js';
import type { Register, RegisteredAirframe } from '../../support/scenario/register.js';
import {
  AIRFRAMES,
  COMPONENTS,
  type ComponentInWorld,
  FIRST_RATING,
  LIMITS,
  RATINGS,
  RULES,
  SLOTS,
} from './world.js';

/** What all histories use: types, models and limits, made once. */
export interface Foundation {
  readonly register: Register;
  readonly typeIds: ReadonlyMap<string, string>;
  readonly modelIds: ReadonlyMap<string, string>;
}

/** The world of one history in the running system: names and ids. Names carry a mark of their own. */
export interface SystemWorld {
  readonly register: Register;
  readonly serial: (component: string) => string;
  readonly componentIds: ReadonlyMap<string, string>;
  readonly airframeIds: ReadonlyMap<string, string>;
  readonly registration: (airframe: string) => string;
  readonly slotIds: ReadonlyMap<string, string>;
  /** Flights by airframe and page. */
  readonly flightIds: Map<string, string>;
}

const LIMITED = 'LIMITED';

export const codeOf = (rating: string): string => rating.slice(2);

/** The id behind a name. Throws when there is none. */
export function idOf(ids: ReadonlyMap<string, string>, name: string): string {
  const id = ids.get(name);
  if (id === undefined) throw new Error(`no id of ${name}`);
  return id;
}

export async function makeFoundation(register: Register): Promise<Foundation> {
  const typeIds = new Map<string, string>();
  for (const { type, positions } of AIRFRAMES)
    typeIds.set(type, await register.airframeType(type, positions));
  const modelIds = new Map<string, string>();
  for (const [model, ratings] of Object.entries(RATINGS)) {
    const rules = RULES.filter((rule) => rule.model === model).map(({ model: _, type, ...rule }) => ({
      ...rule,
      airframeTypeId: idOf(typeIds, type),
    }));
    const lifeMethod = model === 'Y' ? 'lowest-limit' : 'pro-rata';
    const engineModelId = await register.engineModel(model, {
      ratings: ratings.map(codeOf),
      rules,
      lifeMethod,
    });
    modelIds.set(model, engineModelId);
    for (const rating of ratings)
      await register.lifeLimit({
        partNumber: LIMITED,
        engineModelId,
        ratingCode: codeOf(rating),
        cycles: LIMITS[rating] ?? 0,
      });
  }
  await register.location('Store');
  return { register, typeIds, modelIds };
}

/** Makes a world as `world.ts` has it, everything in its place at minute 0. */
export async function makeWorld(foundation: Foundation, mark: string): Promise<SystemWorld> {
  const { register } = foundation;
  const world = {
    register,
    serial: (component: string) => `${mark}-${component}`,
    registration: (airframe: string) => `${mark}-${airframe}`,
    componentIds: new Map<string, string>(),
    airframeIds: new Map<string, string>(),
    slotIds: new Map<string, string>(),
    flightIds: new Map<string, string>(),
  };
  for (const { name, type, dayZone, opening } of AIRFRAMES) {
    const airframe = await register.airframe(world.registration(name), idOf(foundation.typeIds, type), {
      dayZone,
    });
    await register.opening({ airframeId: airframe.id }, [
      { ratingCode: null, minutes: opening.minutes, cycles: opening.flights },
    ]);
    world.airframeIds.set(name, airframe.id);
    keepSlots(world.slotIds, name, airframe);
  }
  await inTurns(COMPONENTS, 4, (component) => addComponent(foundation, world, component));
  await inTurns(Object.entries(FIRST_RATING), 4, ([engine, rating]) =>
    register.rating(idOf(world.componentIds, engine), codeOf(rating)),
  );
  // From the parts up, so that an engine is complete when it is hung.
  for (const kind of ['part', 'module', 'engine', 'pod'])
    await inTurns(
      COMPONENTS.filter((component) => component.kind === kind),
      4,
      async ({ name, startsIn }) => {
        const target =
          startsIn === null ? { locationName: 'Store' } : { slotId: idOf(world.slotIds, startsIn) };
        await register.place(idOf(world.componentIds, name), target);
      },
    );
  return world;
}

function keepSlots(slotIds: Map<string, string>, name: string, { positions }: RegisteredAirframe): void {
  for (const { number, slots } of positions)
    for (const { id, kind } of slots) slotIds.set(`${name}${number}/${kind}`, id);
}

async function addComponent(
  { register, modelIds }: Foundation,
  world: SystemWorld & { componentIds: Map<string, string>; slotIds: Map<string, string> },
  component: ComponentInWorld,
): Promise<void> {
  const { name, kind, model, podClock, opening } = component;
  const own = SLOTS.filter((slot) => slot.parent === name);
  const made = await register.component({
    kind,
    serialNumber: world.serial(name),
    lifeLimited: kind === 'part',
    ...(kind === 'part' ? { partNumber: LIMITED } : {}),
    ...(model === null ? {} : { engineModelId: idOf(modelIds, model) }),
    ...(podClock === null ? {} : { podClock }),
    slots: own.map((slot) => ({
      kind: slot.kind === 'module' ? 'module' : 'part',
      name: slot.name,
      lifeLimited: slot.kind === 'part',
    })),
  });
  world.componentIds.set(name, made.id);
  for (const slot of made.slots) world.slotIds.set(slot.name, slot.id);
  const rating = model === null ? null : (RATINGS[model]?.[0] ?? null);
  if (opening !== null)
    await register.opening({ componentId: made.id }, [
      { ratingCode: rating === null ? null : codeOf(rating), ...opening },
    ]);
}

/** Does `work` for each, so many at a time. */
export async function inTurns<T>(
  all: readonly T[],
  atOnce: number,
  work: (one: T) => Promise<void>,
): Promise<void> {
  const rest = [...all];
  const lane = async () => {
    for (let next = rest.shift(); next !== undefined; next = rest.shift()) await work(next);
  };
  await Promise.all(Array.from({ length: atOnce }, lane));
}

/** Where the plain list's `minute` is on the system's clock. */
export const at = instantAt;
