import { type InService, putInService } from '../scenario/in-service.js';
import { done } from '../scenario/problem.js';
import { recordRequirement } from '../scenario/requirements.js';
import { tabletChange } from '../work/tablet-change.js';
import { openEngineChange, recordProcedure, registerWrench, type ShownPackage } from '../work/work-desk.js';
import type { Credentials } from './desk.js';
import { engage, type House, openHouse } from './house.js';

/** Everybody who has a part in an engine change. */
export interface Crew {
  readonly clerk: Credentials;
  readonly planner: Credentials;
  readonly technician: Credentials;
  readonly inspector: Credentials;
  readonly certifier: Credentials;
  readonly auditor: Credentials;
}

/** An operator with an airframe flying, a procedure, a wrench and a requirement, and its crew. */
export interface ChangeHouse {
  readonly house: House;
  readonly fleet: InService;
  readonly procedureId: string;
  readonly toolId: string;
  readonly crew: Crew;
}

/** Every 6,000 flights of an airframe: due later. */
export const REQUIREMENT = 'K1-72-6000';

async function hireCrew(house: House): Promise<Crew> {
  const hire = (signInName: string, fullName: string, role: string, licence?: string) =>
    engage(house, { signInName, fullName, roles: [role], ...(licence === undefined ? {} : { licence }) });
  return {
    clerk: await hire('clerk', 'Cleo Kerk', 'records'),
    planner: await hire('plan', 'Pia Lanner', 'planner'),
    technician: await hire('tess', 'Tess Nichols', 'technician', 'T 17'),
    inspector: await hire('ines', 'Ines Pector', 'inspector', 'I 23'),
    certifier: await hire('roe', 'Lee Roe', 'certifying-staff', 'CS 4711'),
    auditor: await hire('audra', 'Audra Tor', 'auditor'),
  };
}

/** Starts it all. */
export async function openChangeHouse(): Promise<ChangeHouse> {
  const house = await openHouse();
  try {
    const { administrator } = house;
    const fleet = await putInService(administrator, { days: 3 });
    done(
      await recordRequirement(administrator, REQUIREMENT, {
        title: 'Mounts looked at',
        anchor: 'airframe',
        repeat: { cycles: 6_000 },
      }),
    );
    const procedureId = await recordProcedure(administrator, { content: tabletChange() });
    const toolId = await registerWrench(administrator);
    return { house, fleet, procedureId, toolId, crew: await hireCrew(house) };
  } catch (error) {
    await house.close();
    throw error;
  }
}

/** An engine change at a position of the airframe that flies, opened without the form. */
export async function orderChange(
  { house, fleet, procedureId }: ChangeHouse,
  { positionNumber = 1, incoming = 'ZZ-E3' } = {},
): Promise<ShownPackage> {
  return done(
    await openEngineChange(house.administrator, {
      airframeId: fleet.airframe.id,
      positionNumber,
      outgoingSerial: `ZZ-E${positionNumber}`,
      incomingSerial: incoming,
      procedureId,
    }),
  );
}
