import type { Tx } from '../../platform/database/database.js';
import { toWire } from '../../platform/http/instants.js';
import { orNotFound } from '../../platform/problems/refusal.error.js';

/** The package that is to be released, with the work it holds. */
export interface WorkToRelease {
  readonly id: string;
  readonly number: string;
  readonly kind: string;
  readonly status: string;
  readonly version: number;
  readonly airframe: { readonly id: string; readonly registration: string; readonly ruleSet: string };
  readonly changes: readonly WorkDone[];
}

/** One change of the package: plain JSON, part of what is signed. */
export interface WorkDone {
  readonly position: number;
  readonly slot: string;
  readonly off: string | null;
  readonly on: string | null;
  readonly at: string;
  readonly reason: string;
  readonly counters: string;
}

/** Loads a package with its work. Refuses: NOT_FOUND. */
export async function loadWork(tx: Tx, operatorId: number, packageId: string): Promise<WorkToRelease> {
  const row = await tx.workPackage.findUnique({
    where: { operatorId_id: { operatorId, id: packageId } },
    include: {
      airframe: true,
      packageChangeByPackage: {
        include: { slot: true, position: true, outgoing: true, incoming: true },
        orderBy: { recordedSeq: 'asc' },
      },
    },
  });
  const { id, number, kind, status, version, airframe, packageChangeByPackage } = orNotFound(row, 'package');
  return {
    id,
    number,
    kind,
    status,
    version,
    airframe: orNotFound(airframe, 'airframe'),
    changes: packageChangeByPackage.map((change) => ({
      position: change.position.number,
      slot: change.slot.kind,
      off: change.outgoing?.serialNumber ?? null,
      on: change.incoming?.serialNumber ?? null,
      at: toWire(change.at),
      reason: change.reason,
      counters: change.counters,
    })),
  };
}

const SLOT_WORDS: Readonly<Record<string, string>> = {
  engine: 'Engine',
  pod: 'Pod',
  apu: 'Auxiliary power unit',
};

/** What was done, in one sentence, with when it was finished. Total. */
export function workSummary({ number, kind, airframe, changes }: WorkToRelease): string {
  const done = changes.map(({ position, slot, off, on }) => {
    const moved = [
      off === null ? null : `serial ${off} removed`,
      on === null ? null : `serial ${on} installed`,
    ].filter((part) => part !== null);
    return `${SLOT_WORDS[slot] ?? slot} at position ${position}: ${moved.join(', ')}`;
  });
  const finished = changes
    .map((change) => change.at)
    .sort()
    .at(-1);
  const what = kind === 'pod-swap' ? 'pod swap' : 'engine change';
  return `Package ${number}, ${what} on ${airframe.registration}. ${done.join('; ')}. Completed ${finished === undefined ? 'at a time not told' : printed(finished)}.`;
}

/** 'YYYY-MM-DDTHH:MMZ' as it is read. Total. */
export function printed(at: string): string {
  return `${at.slice(0, 10)} at ${at.slice(11, 16)} UTC`;
}
