import type { Interval } from '@strutbook/domain/due/requirement.js';
import type { Prisma, Requirement } from '../../platform/database/generated/client.js';
import { dayToWire, toWire } from '../../platform/http/instants.js';
import { nameOf } from '../../records/requirements/package-requirements.js';
import { ruleOf } from '../../records/requirements/requirement-rule.js';
import type { AccomplishmentDto, GrantedDto, RequirementDto } from './requirement-view.dto.js';

/** What a requirement is shown with. */
export const WITH_SCOPE = {
  airframeType: { select: { maker: true, designation: true } },
  engineModel: { select: { maker: true, designation: true } },
} as const satisfies Prisma.RequirementInclude;

type RequirementRow = Prisma.RequirementGetPayload<{ include: typeof WITH_SCOPE }>;

/** A requirement on the wire. Total. */
export function requirementToWire(
  row: RequirementRow,
  { inForce, open }: { readonly inForce: boolean; readonly open: number },
): RequirementDto {
  const rule = ruleOf(row);
  const { id, code, title, document, revision, airframeTypeId, positionNumber, engineModelId, partNumber } =
    row;
  return {
    id,
    code,
    title,
    kind: row.kind as RequirementDto['kind'],
    document,
    revision,
    anchor: row.anchor as RequirementDto['anchor'],
    airframeTypeId,
    airframeType: named(row.airframeType),
    positionNumber,
    engineModelId,
    engineModel: named(row.engineModel),
    partNumber,
    threshold: granted(rule.threshold),
    repeat: granted(rule.repeat),
    combine: rule.combine,
    monthRule: rule.monthRule,
    countedFrom: row.countedFrom as RequirementDto['countedFrom'],
    fromOn: row.fromOn === null ? null : dayToWire(row.fromOn),
    effectiveOn: dayToWire(row.effectiveOn),
    inForce,
    open,
    voided: row.voidedSeq !== null,
    voidReason: row.voidReason,
  };
}

function granted(interval: Interval | null): GrantedDto | null {
  return interval === null ? null : { ...interval };
}

function named(row: { readonly maker: string; readonly designation: string } | null): string | null {
  return row === null ? null : `${row.maker} ${row.designation}`;
}

/** The ids of the requirements in force: of each code the revision that is effective last. Total. */
export function idsInForce(
  rows: readonly Pick<Requirement, 'id' | 'code' | 'effectiveOn' | 'recordedSeq' | 'voidedSeq'>[],
): ReadonlySet<string> {
  const newest = new Map<string, (typeof rows)[number]>();
  for (const row of rows) {
    if (row.voidedSeq !== null) continue;
    const other = newest.get(row.code);
    if (other === undefined || isLater(row, other)) newest.set(row.code, row);
  }
  return new Set([...newest.values()].map((row) => row.id));
}

function isLater(
  a: Pick<Requirement, 'effectiveOn' | 'recordedSeq'>,
  b: Pick<Requirement, 'effectiveOn' | 'recordedSeq'>,
): boolean {
  const [at, bt] = [a.effectiveOn.getTime(), b.effectiveOn.getTime()];
  return at > bt || (at === bt && a.recordedSeq > b.recordedSeq);
}

/** What an accomplishment is shown with. */
export const WITH_SUBJECT = {
  requirement: { select: { code: true, title: true } },
  package: { select: { number: true } },
  airframe: { select: { registration: true } },
  position: { select: { number: true, airframe: { select: { registration: true } } } },
  component: { select: { description: true, serialNumber: true } },
} as const satisfies Prisma.AccomplishmentInclude;

type AccomplishmentRow = Prisma.AccomplishmentGetPayload<{ include: typeof WITH_SUBJECT }>;

/** An accomplishment on the wire. Total. */
export function accomplishmentToWire(row: AccomplishmentRow): AccomplishmentDto {
  const { id, requirementId, airframeId, positionId, componentId, evidence, packageId } = row;
  return {
    id,
    requirementId,
    code: row.requirement.code,
    title: row.requirement.title,
    airframeId,
    positionId,
    componentId,
    subject: nameOf(row),
    at: toWire(row.at),
    on: dayToWire(row.doneOn),
    minutes: row.minutes === null ? null : Number(row.minutes),
    cycles: row.cycles === null ? null : { units: Number(row.cycles), denominator: row.cycleDenominator },
    evidence,
    packageId,
    packageNumber: row.package?.number ?? null,
    voided: row.voidedSeq !== null,
    voidReason: row.voidReason,
  };
}
