import type { Prisma } from '../../platform/database/generated/client.js';
import type { CountersDto } from '../../platform/http/counters.dto.js';
import { toWire } from '../../platform/http/instants.js';
import type { PackageKind, PackageStatus } from '../../records/work/package-head.js';
import type { StepCounts } from '../../records/work/step-counts.js';
import type {
  MovedComponentDto,
  PackageChangeDto,
  PackageReleaseDto,
  PackageRowDto,
} from './packages.dto.js';

/** What a row of the list is read with. */
export const FOR_ROW = {
  airframe: true,
  component: true,
  orderedChangeByPackage: { where: { voidedSeq: null }, include: { slot: { include: { position: true } } } },
  packageChangeByPackage: { include: { slot: true, position: true }, orderBy: { recordedSeq: 'asc' } },
  releaseByPackage: { select: { number: true } },
} as const satisfies Prisma.WorkPackageInclude;

/** What a package is read with; its order is read by itself. */
export const WITH_CHANGES = {
  airframe: true,
  component: true,
  procedure: {
    select: { id: true, code: true, revision: true, title: true, document: true, documentRevision: true },
  },
  packageChangeByPackage: {
    include: { slot: true, position: true, outgoing: true, incoming: true },
    orderBy: { recordedSeq: 'asc' },
  },
  releaseByPackage: { include: { signature: true } },
} as const satisfies Prisma.WorkPackageInclude;

type ListedPackage = Prisma.WorkPackageGetPayload<{ include: typeof FOR_ROW }>;
type WholePackage = Prisma.WorkPackageGetPayload<{ include: typeof WITH_CHANGES }>;
type Change = WholePackage['packageChangeByPackage'][number];
type Place = { readonly position: { readonly label: string } | null; readonly name: string };

/** A package of the list, with the place of its order where it has one. Total. */
export function packageRow(
  row: Omit<ListedPackage, 'orderedChangeByPackage'>,
  counts: ReadonlyMap<string, StepCounts>,
  ordered: Place | undefined,
): PackageRowDto {
  const { airframe, component } = row;
  return {
    id: row.id,
    number: row.number,
    kind: row.kind as PackageKind,
    title: row.title,
    status: row.status as PackageStatus,
    openedAt: toWire(row.openedAt),
    airframe: airframe === null ? null : { id: airframe.id, registration: airframe.registration },
    component:
      component === null
        ? null
        : {
            id: component.id,
            kind: component.kind,
            serialNumber: component.serialNumber,
            partNumber: component.partNumber,
            description: component.description,
          },
    place: placeOf(ordered, row.packageChangeByPackage[0]),
    reference: row.reference,
    steps: counts.get(row.id) ?? { signed: 0, total: 0 },
    releaseNumber: row.releaseByPackage[0]?.number ?? null,
    version: row.version,
  };
}

/** The place a package changes: as ordered, or as it was logged. */
function placeOf(
  ordered: Place | undefined,
  changed: ListedPackage['packageChangeByPackage'][number] | undefined,
): string | null {
  if (ordered !== undefined) return ordered.position?.label ?? ordered.name;
  return changed === undefined ? null : (changed.position?.label ?? changed.slot.name);
}

/** The release of a package, in short; null while it has none. Total. */
export function releaseToWire({ releaseByPackage: [release] }: WholePackage): PackageReleaseDto | null {
  if (release === undefined) return null;
  return {
    id: release.id,
    number: release.number,
    signedAt: toWire(release.signature.signedAt),
    person: release.signature.personName,
    licence: release.signature.licence,
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

/** What was changed, with the counters as they were kept. Total. */
export function changeToWire(change: Change): PackageChangeDto {
  const kept = JSON.parse(change.counters) as KeptCounters;
  const precision =
    change.boundaryKind === 'instant' ? 'minute' : change.boundaryKind === 'after-page' ? 'page' : 'day';
  const { position } = change;
  return {
    position: position === null ? null : { id: position.id, number: position.number, label: position.label },
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
