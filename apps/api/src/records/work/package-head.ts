import type { Tx } from '../../platform/database/database.js';
import { Prisma } from '../../platform/database/generated/client.js';
import { orNotFound, refuse } from '../../platform/problems/refusal.error.js';

/** What packages, and the procedures for them, are of. */
export const PACKAGE_KINDS = [
  'engine-change',
  'pod-swap',
  'inspection',
  'component-change',
  'directive',
] as const;

export type PackageKind = (typeof PACKAGE_KINDS)[number];
export type PackageStatus = 'open' | 'released' | 'withdrawn';

/** What a package is, and of what. */
export interface PackageHead {
  readonly id: string;
  readonly number: string;
  readonly kind: PackageKind;
  readonly title: string;
  readonly status: PackageStatus;
  readonly reference: string | null;
  readonly version: number;
  readonly openedAt: Date;
  /** The airframe it is on, directly; null for a package of a component. */
  readonly airframe: PackageAirframe | null;
  readonly component: PackageComponent | null;
  /** The code of the rule set it is released under. */
  readonly ruleSet: string;
  readonly procedureId: string | null;
}

export interface PackageAirframe {
  readonly id: string;
  readonly registration: string;
  readonly serialNumber: string;
  readonly typeId: string;
  readonly ruleSet: string;
}

export interface PackageComponent {
  readonly id: string;
  readonly kind: string;
  readonly partNumber: string;
  readonly serialNumber: string;
  readonly description: string;
}

/** What a package is, and of what. Refuses: NOT_FOUND. */
export async function packageHead(tx: Tx, operatorId: number, packageId: string): Promise<PackageHead> {
  const row = await tx.workPackage.findUnique({
    where: { operatorId_id: { operatorId, id: packageId } },
    include: { airframe: true, component: true },
  });
  const { airframe, component, ...own } = orNotFound(row, 'package');
  return {
    id: own.id,
    number: own.number,
    kind: own.kind as PackageKind,
    title: own.title,
    status: own.status as PackageStatus,
    reference: own.reference,
    version: own.version,
    openedAt: own.openedAt,
    procedureId: own.procedureId,
    ruleSet: airframe?.ruleSet ?? own.ruleSet ?? '',
    airframe:
      airframe === null
        ? null
        : {
            id: airframe.id,
            registration: airframe.registration,
            serialNumber: airframe.serialNumber,
            typeId: airframe.airframeTypeId,
            ruleSet: airframe.ruleSet,
          },
    component:
      component === null
        ? null
        : {
            id: component.id,
            kind: component.kind,
            partNumber: component.partNumber,
            serialNumber: component.serialNumber,
            description: component.description,
          },
  };
}

/**
 * Locks a package so that nobody releases, withdraws or amends it meanwhile; those who work in it don't wait for one
 * another. Refuses: NOT_FOUND, WRONG_STATE when it is not open.
 */
export async function lockOpenPackage(tx: Tx, operatorId: number, packageId: string): Promise<void> {
  await lockOpen(tx, operatorId, packageId, Prisma.sql`FOR SHARE`);
}

/** Locks a package alone, to change what it is. Refuses: NOT_FOUND, WRONG_STATE when it is not open. */
export async function lockPackageAlone(tx: Tx, operatorId: number, packageId: string): Promise<void> {
  await lockOpen(tx, operatorId, packageId, Prisma.sql`FOR NO KEY UPDATE`);
}

async function lockOpen(tx: Tx, operatorId: number, packageId: string, lock: Prisma.Sql): Promise<void> {
  const [row] = await tx.$queryRaw<
    { number: string; status: string }[]
  >`SELECT number, status FROM work_package
    WHERE operator_id = ${operatorId}::int AND id = ${packageId}::uuid ${lock}`;
  const { number, status } = orNotFound(row, 'package');
  if (status !== 'open')
    refuse({ code: 'WRONG_STATE', what: `package ${number}`, state: status, needed: 'open' });
}
