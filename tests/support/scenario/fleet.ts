import type { NewComponent, Register, RegisteredAirframe, RegisteredComponent } from './register.js';

/** An engine with a module, a limited part in it and one in the engine itself. */
export interface BuiltEngine {
  readonly id: string;
  readonly serialNumber: string;
  readonly moduleId: string;
  readonly partIds: readonly string[];
  readonly slotIds: { readonly fan: string; readonly disk: string; readonly hub: string };
}

/** A small operator: two airframes of one type, spare engines and pods in the store. */
export interface Fleet {
  readonly register: Register;
  readonly typeId: string;
  readonly modelId: string;
  readonly limitIds: readonly string[];
  readonly airframes: readonly RegisteredAirframe[];
  readonly engines: readonly BuiltEngine[];
  readonly pods: readonly RegisteredComponent[];
}

const HUB = 'K-HUB';
const DISK = 'K-DISK';

/** The slot of one kind at one position. Throws when there is none. */
export function slotOf(airframe: RegisteredAirframe, positionNumber: number, kind: 'engine' | 'pod'): string {
  const position = airframe.positions.find((each) => each.number === positionNumber);
  const slot = position?.slots.find((each) => each.kind === kind);
  if (slot === undefined)
    throw new Error(`${airframe.registration} has no ${kind} slot at position ${positionNumber}`);
  return slot.id;
}

function namedSlot({ slots }: RegisteredComponent, name: string): string {
  const slot = slots.find((each) => each.name === name);
  if (slot === undefined) throw new Error(`no slot ${name}`);
  return slot.id;
}

async function stored(
  register: Register,
  component: NewComponent,
  ratingCode: string | null,
): Promise<RegisteredComponent> {
  const made = await register.component(component);
  await register.opening({ componentId: made.id }, [{ ratingCode, minutes: 60_000, cycles: 1_000 }]);
  return made;
}

/** Builds an engine up in the store: 1000:00 hours and 1000 cycles since new, running at rating A. */
export async function buildEngine(
  register: Register,
  modelId: string,
  serialNumber: string,
): Promise<BuiltEngine> {
  const of = { engineModelId: modelId };
  const engine = await stored(
    register,
    {
      ...of,
      kind: 'engine',
      serialNumber,
      slots: [
        { kind: 'module', name: 'Fan', lifeLimited: false },
        { kind: 'part', name: 'Disk', lifeLimited: true },
      ],
    },
    'A',
  );
  const module = await stored(
    register,
    {
      ...of,
      kind: 'module',
      serialNumber: `${serialNumber}-M`,
      slots: [{ kind: 'part', name: 'Hub', lifeLimited: true }],
    },
    'A',
  );
  const hub = await stored(
    register,
    { ...of, kind: 'part', partNumber: HUB, serialNumber: `${serialNumber}-H`, lifeLimited: true },
    'A',
  );
  const disk = await stored(
    register,
    { ...of, kind: 'part', partNumber: DISK, serialNumber: `${serialNumber}-D`, lifeLimited: true },
    'A',
  );
  const slotIds = {
    fan: namedSlot(engine, 'Fan'),
    disk: namedSlot(engine, 'Disk'),
    hub: namedSlot(module, 'Hub'),
  };
  await register.place(hub.id, { slotId: slotIds.hub });
  await register.place(disk.id, { slotId: slotIds.disk });
  await register.place(module.id, { slotId: slotIds.fan });
  await register.rating(engine.id, 'A');
  await register.place(engine.id, { locationName: 'Store' });
  return { id: engine.id, serialNumber, moduleId: module.id, partIds: [hub.id, disk.id], slotIds };
}

/**
 * Registers the small operator: `airframes` airframes with two positions each, nothing installed on them, and
 * `engines` engines and two pods in the location 'Store'. Registrations and serial numbers begin with `mark`.
 */
export async function makeFleet(
  register: Register,
  { mark = 'ZZ', airframes: airframeCount = 2, engines: engineCount = 5 } = {},
): Promise<Fleet> {
  await register.location('Store');
  const typeId = await register.airframeType(`${mark}-T2`, 2);
  const modelId = await register.engineModel(`${mark}-K1`, {
    ratings: ['A', 'B'],
    rules: [{ perFlight: 1 }],
  });
  const limitIds: string[] = [];
  for (const partNumber of [HUB, DISK])
    for (const [ratingCode, cycles] of [
      ['A', 20_000],
      ['B', 15_000],
    ] as const)
      limitIds.push(await register.lifeLimit({ partNumber, engineModelId: modelId, ratingCode, cycles }));
  const airframes: RegisteredAirframe[] = [];
  for (let index = 1; index <= airframeCount; index += 1) {
    const airframe = await register.airframe(`${mark}-${100 + index}`, typeId);
    await register.opening({ airframeId: airframe.id }, [
      { ratingCode: null, minutes: 600_000, cycles: 5_000 },
    ]);
    airframes.push(airframe);
  }
  const engines: BuiltEngine[] = [];
  for (let index = 1; index <= engineCount; index += 1)
    engines.push(await buildEngine(register, modelId, `${mark}-E${index}`));
  const pods: RegisteredComponent[] = [];
  for (const podClock of ['airframe', 'position'] as const) {
    const pod = await stored(
      register,
      { kind: 'pod', serialNumber: `${mark}-N-${podClock}`, podClock },
      null,
    );
    await register.place(pod.id, { locationName: 'Store' });
    pods.push(pod);
  }
  return { register, typeId, modelId, limitIds, airframes, engines, pods };
}
