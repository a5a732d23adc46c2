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
  const { number, airframe: on } = position;
  return number === 0 ? `${on.registration} APU` : `${on.registration} position ${number}`;
}
