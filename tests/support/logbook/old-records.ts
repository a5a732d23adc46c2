import { recordChange } from '../scenario/acts.js';
import { instantAt } from '../scenario/instants.js';
import { done } from '../scenario/problem.js';
import type { RegisteredAirframe } from '../scenario/register.js';
import type { FleetDesk } from './fleet-desk.js';

/** Minutes since 2025-01-01 of a morning some nine and a half years before. */
export const LONG_AGO = -5_000_000;

/** An airframe with one engine in which a disk of a short life hangs, on record since long ago. */
export interface OldRecords {
  readonly airframe: RegisteredAirframe;
  readonly engineId: string;
  readonly engineSerial: string;
  readonly diskId: string;
}

let made = 0;

/** Registers it: 1,000 cycles since new on the engine and the disk, whose limit is 1,002 at rating A. */
export async function oldRecords({ register, fleet, office }: FleetDesk): Promise<OldRecords> {
  made += 1;
  const mark = `OLD-${made}`;
  const airframe = await register.airframe(`ZZ-9${made}`, fleet.typeId);
  await register.opening(
    { airframeId: airframe.id },
    [{ ratingCode: null, minutes: 60_000, cycles: 900 }],
    LONG_AGO,
  );
  const of = { engineModelId: fleet.modelId };
  const engine = await register.component({
    ...{ ...of, kind: 'engine', serialNumber: mark },
    slots: [{ kind: 'part', name: 'Disk', lifeLimited: true }],
  });
  const partNumber = `K-SHORT-${made}`;
  const disk = await register.component({
    ...{ ...of, kind: 'part', partNumber, serialNumber: `${mark}-D`, lifeLimited: true },
  });
  for (const componentId of [engine.id, disk.id])
    await register.opening({ componentId }, [{ ratingCode: 'A', minutes: 60_000, cycles: 1_000 }], LONG_AGO);
  await register.post('/api/life-limits', {
    ...{ partNumber, engineModelId: fleet.modelId, ratingCode: 'A', cycles: 1_002 },
    ...{ authorisation: 'limited', document: 'Manual, chapter 05', revision: '7' },
    effectiveOn: '2010-01-01',
  });
  await register.place(disk.id, { slotId: engine.slots[0]?.id ?? '' }, LONG_AGO);
  await register.rating(engine.id, 'A', LONG_AGO);
  await register.place(engine.id, { locationName: 'Store' }, LONG_AGO);
  done(
    await recordChange(office.administrator, {
      ...{ airframeId: airframe.id, positionNumber: 1, slot: 'engine' },
      ...{ outgoingSerial: null, incomingSerial: mark },
      boundary: { kind: 'instant', at: instantAt(LONG_AGO + 10) },
    }),
  );
  return { airframe, engineId: engine.id, engineSerial: mark, diskId: disk.id };
}
