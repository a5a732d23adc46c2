import type { HttpClient } from '../http-client.js';
import { signedIn } from '../scenario/office.js';
import { done } from '../scenario/problem.js';
import { openPackage } from '../signing/work-desk.js';
import { signNow } from '../work/sign-now.js';
import { capture, captureAll, stepOf, torque, workOf } from '../work/work-desk.js';
import { type ChangeHouse, orderChange } from './change-house.js';

/** Packages, one in each state that the pages of work can show. */
export interface HalfDone {
  /** An engine change: step 1 changed since it was signed, 2 to 4 signed, 5 with a torque out of range. */
  readonly change: string;
  /** Its only step is done and waits for an inspection. */
  readonly toInspect: string;
  /** On a spare engine; nothing blocks its release. */
  readonly ready: string;
  /** An engine change of which nothing is done, and another that is withdrawn. */
  readonly untouched: string;
  readonly withdrawn: string;
}

async function workHalf(at: ChangeHouse, technician: HttpClient, secret: string): Promise<string> {
  const { id } = await orderChange(at);
  const good = { outgoingSerial: 'ZZ-E1', incomingSerial: 'ZZ-E3', positionNumber: '1', toolId: at.toolId };
  const stepNow = async (key: string) => stepOf(await workOf(technician, id), key);
  for (const key of ['make-safe', 'open-cowl', 'part-fuel', 'remove']) {
    const step = await captureAll(technician, await stepNow(key), good);
    await signNow(technician, step.id, { secret });
  }
  const install = await stepNow('install');
  const tooMuch = { capture: 'mount-bolts', typed: torque('1', '118.4'), toolId: at.toolId };
  done(await capture(technician, install.id, tooMuch));
  const recounted = { capture: 'tags-out', typed: { kind: 'count', number: '7' } };
  done(await capture(technician, (await stepNow('make-safe')).id, recounted));
  return id;
}

/** A package of one step of our own, signed as done. */
async function oneStep(
  { house }: ChangeHouse,
  technician: HttpClient,
  {
    on,
    inspection,
  }: { readonly on: Readonly<Record<string, string>>; readonly inspection: 'none' | 'independent' },
): Promise<string> {
  const id = await openPackage(house.administrator, {
    kind: 'inspection',
    ...on,
    steps: [{ title: 'Look at the inlet.', inspection }],
  });
  const [step] = (await workOf(technician, id)).steps;
  await signNow(technician, step?.id ?? '', { secret: house.founded.password });
  return id;
}

/** Makes them all. */
export async function makeHalfDone(at: ChangeHouse): Promise<HalfDone> {
  const { administrator, api, founded } = at.house;
  const technician = await signedIn(api, at.crew.technician);
  const untouched = await orderChange(at, { positionNumber: 2, incoming: 'ZZ-E4' });
  const withdrawn = await orderChange(at, { positionNumber: 2, incoming: 'ZZ-E5' });
  done(await administrator.post(`/api/packages/${withdrawn.id}/withdraw`, { reason: 'Ordered twice' }));
  const spare = { componentId: at.fleet.engines[4]?.id ?? '', ruleSet: 'us-121' };
  return {
    change: await workHalf(at, technician, founded.password),
    toInspect: await oneStep(at, technician, {
      on: { airframeId: at.fleet.airframe.id },
      inspection: 'independent',
    }),
    ready: await oneStep(at, technician, { on: spare, inspection: 'none' }),
    untouched: untouched.id,
    withdrawn: withdrawn.id,
  };
}
