import type { HttpClient } from '../http-client.js';
import { type InService, putInService } from '../scenario/in-service.js';
import { employ, type Office, openOffice } from '../scenario/office.js';
import { publishChange } from './change-procedure.js';
import { asOrder, type OrderToWrite, openPackage, type ShownStep, stepsOf } from './work-desk.js';

/** An operator at work: its people, its airframe in service, and a procedure to change an engine. */
export interface Hangar {
  readonly office: Office;
  readonly fleet: InService;
  readonly procedureId: string;
  readonly planner: HttpClient;
  readonly technician: HttpClient;
  readonly inspector: HttpClient;
  readonly certifier: HttpClient;
  readonly password: string;
  readonly close: () => Promise<void>;
}

/** Opens it. The technician is tec, the inspector ins, the certifying staff cer, the planner pla. */
export async function openHangar({ days = 3 } = {}): Promise<Hangar> {
  const office = await openOffice();
  try {
    const hire = (signInName: string, fullName: string, role: string) =>
      employ(office, { signInName, fullName, roles: [role], licence: `L ${signInName}` });
    return {
      office,
      fleet: await putInService(office.administrator, { days }),
      procedureId: await publishChange(office.administrator),
      planner: await hire('pla', 'Pla Nner', 'planner'),
      technician: await hire('tec', 'Tec Nician', 'technician'),
      inspector: await hire('ins', 'Ins Pector', 'inspector'),
      certifier: await hire('cer', 'Cer Tifier', 'certifying-staff'),
      password: office.founded.password,
      close: () => office.close(),
    };
  } catch (error) {
    await office.close();
    throw error;
  }
}

/** A package to change an engine by the procedure, with its steps by their keys. */
export async function openChange(
  { planner, fleet, procedureId }: Pick<Hangar, 'planner' | 'fleet' | 'procedureId'>,
  order: OrderToWrite,
): Promise<{ readonly id: string; readonly steps: Readonly<Record<string, ShownStep>> }> {
  const id = await openPackage(planner, {
    kind: 'engine-change',
    airframeId: fleet.airframe.id,
    procedureId,
    order: asOrder({ slot: 'engine', ...order }),
  });
  return { id, steps: await stepsOf(planner, id) };
}

/** A package of one step without captures, on the airframe. Answers the step. */
export async function openOneStep(
  { planner, fleet }: Pick<Hangar, 'planner' | 'fleet'>,
  step: object = {},
): Promise<{ readonly id: string; readonly step: ShownStep }> {
  const id = await openPackage(planner, {
    kind: 'inspection',
    airframeId: fleet.airframe.id,
    steps: [{ title: 'Look at the inlet.', inspection: 'independent', ...step }],
  });
  const [only] = Object.values(await stepsOf(planner, id));
  if (only === undefined) throw new Error('the package has no step');
  return { id, step: only };
}
