import type { Prisma } from '../../platform/database/generated/client.js';
import type { CountersDto } from '../../platform/http/counters.dto.js';
import { toWire } from '../../platform/http/instants.js';
import type { MovedComponentDto, PackageChangeDto, PackageDto, PackageRowDto } from './packages.dto.js';

/** What a package is read with. */
export const WITH_CHANGES = {
  airframe: true,
  packageChangeByPackage: {
    include: { slot: true, position: true, outgoing: true, incoming: true },
    orderBy: { recordedSeq: 'asc' },
  },
  releaseByPackage: { include: { signature: true } },
} as const satisfies Prisma.WorkPackageInclude;

/** What a row of the list is read with. */
export const FOR_ROW = {
  airframe: true,
  releaseByPackage: { select: { number: true } },
} as const satisfies Prisma.WorkPackageInclude;

type WholePackage = Prisma.WorkPackageGetPayload<{ include: typeof WITH_CHANGES }>;
type ListedPackage = Prisma.WorkPackageGetPayload<{ include: typeof FOR_ROW }>;
type Change = WholePackage['packageChangeByPackage'][number];

/** A package of the list. Total. */
export function packageRow(row: ListedPackage): PackageRowDto {
  return { ...headOf(row), releaseNumber: row.releaseByPackage[0]?.number ?? null, version: row.version };
}

/** One package. Total. */
export function packageToWire(row: WholePackage): PackageDto {
  const [release] = row.releaseByPackage;
  return {
    ...headOf(row),
    changes: row.packageChangeByPackage.map(changeToWire),
    release:
      release === undefined
        ? null
        : {
            id: release.id,
            number: release.number,
            signedAt: toWire(release.signature.signedAt),
            person: release.signature.personName,
            licence: release.signature.licence,
          },
    version: row.version,
  };
}

function headOf(row: Omit<ListedPackage, 'releaseByPackage'>) {
  return {
    id: row.id,
    number: row.number,
    kind: row.kind as PackageRowDto['kind'],
    title: row.title,
    status: row.status as PackageRowDto['status'],
    openedAt: toWire(row.openedAt),
    airframe: row.airframe === null ? null : { id: row.airframe.id, registration: row.airframe.registration },
  };
}

/** Counters as the change kept them. */
interface KeptCounters {
  readonly outgoing?: {
    readonly sinceNew?: CountersDto;
    readonly sinceInstalled?: CountersDto | null;
  } | null;
  readonly incoming?: {
    readonly sinceNew?: CountersDto;
    readonly sinceInstalled?: CountersDto | null;
  } | null;
}

function changeToWire(change: Change): PackageChangeDto {
  const kept = JSON.parse(change.counters) as KeptCounters;
  const precision =
    change.boundaryKind === 'instant' ? 'minute' : change.boundaryKind === 'after-page' ? 'page' : 'day';
  return {
    position:
      change.position === null
        ? null
        : { id: change.position.id, number: change.position.number, label: change.position.label },
    slot: change.slot.kind,
    slotName: change.slot.name,
    outgoing: moved(change.outgoing, kept.outgoing),
    incoming: moved(change.incoming, kept.incoming),
    at: toWire(change.at),
    precision,
    placed: precision === 'minute' ? null : change.boundaryText,
    reason: change.reason,
  };
}

function moved(component: Change['outgoing'], kept: KeptCounters['outgoing']): MovedComponentDto | null {
  if (component === null) return null;
  const { id, serialNumber, partNumber } = component;
  return {
    id,
    serialNumber,
    partNumber,
    sinceNew: kept?.sinceNew ?? null,
    sinceInstalled: kept?.sinceInstalled ?? null,
  };
}
