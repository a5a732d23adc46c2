import type { Tx } from '../../platform/database/database.js';
import type { PackageRequirementRow } from './requirement-status.js';

/** What a package is to meet, by code, each with what it is held against. */
export async function packageRequirements(
  tx: Tx,
  operatorId: number,
  packageId: string,
): Promise<PackageRequirementRow[]> {
  const rows = await tx.packageRequirement.findMany({
    where: { operatorId, packageId, voidedSeq: null },
    include: {
      requirement: true,
      airframe: { select: { registration: true } },
      position: { select: { number: true, airframe: { select: { registration: true } } } },
      component: { select: { description: true, serialNumber: true } },
    },
    orderBy: [{ requirement: { code: 'asc' } }, { id: 'asc' }],
  });
  return rows.map(({ id, requirementId, airframeId, positionId, componentId, requirement, ...row }) => ({
    id,
    requirementId,
    airframeId,
    positionId,
    componentId,
    code: requirement.code,
    title: requirement.title,
    kind: requirement.kind,
    document: requirement.document,
    revision: requirement.revision,
    subject: nameOf(row),
  }));
}

/** What something is called that a requirement is held against. Total. */
export function nameOf({
  airframe,
  position,
  component,
}: {
  readonly airframe: { readonly registration: string } | null;
  readonly position: {
    readonly number: number;
    readonly airframe: { readonly registration: string };
  } | null;
  readonly component: { readonly description: string; readonly serialNumber: string } | null;
}): string {
  if (component !== null) return `${component.description} ${component.serialNumber}`;
  if (position === null) return airframe?.registration ?? '';
  return nameOfPosition(position.airframe.registration, position.number);
}

/** What a position is called: 'ZZ-101 position 1'; number 0 is the place of the auxiliary power unit. Total. */
export function nameOfPosition(registration: string, number: number): string {
  return number === 0 ? `${registration} APU` : `${registration} position ${number}`;
}
