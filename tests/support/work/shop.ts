import type { HttpClient } from '../http-client.js';
import { type InService, putInService } from '../scenario/in-service.js';
import { employ, type Office, openOffice } from '../scenario/office.js';
import { done } from '../scenario/problem.js';
import { openEngineChange, recordProcedure, registerWrench, type ShownPackage } from './work-desk.js';

/** An operator with one airframe flying, the small procedure, a wrench, and the people who work. */
export interface Shop {
  readonly office: Office;
  readonly fleet: InService;
  readonly procedureId: string;
  readonly toolId: string;
  readonly planner: HttpClient;
  readonly technician: HttpClient;
  readonly inspector: HttpClient;
  readonly close: () => Promise<void>;
}

/** Starts it all, in a database of its own. */
export async function openShop(): Promise<Shop> {
  const office = await openOffice();
  try {
    const { administrator } = office;
    const fleet = await putInService(administrator, { days: 3 });
    const hire = (signInName: string, fullName: string, role: string) =>
      employ(office, { signInName, fullName, roles: [role] });
    return {
      office,
      fleet,
      procedureId: await recordProcedure(administrator),
      toolId: await registerWrench(administrator),
      planner: await hire('plan', 'Pia Planner', 'planner'),
      technician: await hire('tech', 'Tom Technician', 'technician'),
      inspector: await hire('insp', 'Ines Inspector', 'inspector'),
      close: office.close,
    };
  } catch (error) {
    await office.close();
    throw error;
  }
}

/** An engine change at a position of the airframe that flies: what is there off, `incoming` on. */
export async function engineChange(
  { fleet, planner, procedureId }: Pick<Shop, 'fleet' | 'planner' | 'procedureId'>,
  {
    positionNumber = 1,
    incoming = 'ZZ-E3',
  }: { readonly positionNumber?: number; readonly incoming?: string } = {},
): Promise<ShownPackage> {
  return done(
    await openEngineChange(planner, {
      airframeId: fleet.airframe.id,
      positionNumber,
      outgoingSerial: `ZZ-E${positionNumber}`,
      incomingSerial: incoming,
      procedureId,
    }),
  );
}
