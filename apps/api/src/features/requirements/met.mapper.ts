import type { Prisma } from '../../platform/database/generated/client.js';
import { dayToWire, toWire } from '../../platform/http/instants.js';
import { nameOf } from '../../records/requirements/package-requirements.js';
import type { AccomplishmentDto, AssessmentDto, VariationDto } from './met-view.dto.js';

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
    method: row.method,
    correctsId: row.correctsId,
    packageId,
    packageNumber: row.package?.number ?? null,
    voided: row.voidedSeq !== null,
    voidReason: row.voidReason,
  };
}

const WITH_NAMES = {
  airframe: { select: { registration: true } },
  position: { select: { number: true, airframe: { select: { registration: true } } } },
  component: { select: { description: true, serialNumber: true } },
} as const;

/** What an assessment is shown with. */
export const WITH_ASSESSED = {
  ...WITH_NAMES,
  requirement: { select: { revision: true } },
  airframeType: { select: { maker: true, designation: true } },
  engineModel: { select: { maker: true, designation: true } },
} as const satisfies Prisma.AssessmentInclude;

type AssessmentRow = Prisma.AssessmentGetPayload<{ include: typeof WITH_ASSESSED }>;

/** An assessment on the wire. Total. */
export function assessmentToWire(row: AssessmentRow): AssessmentDto {
  const { id, requirementId, airframeId, positionId, componentId, airframeTypeId, engineModelId } = row;
  const group = row.airframeType ?? row.engineModel;
  const subject = group === null ? nameOf(row) : `${group.maker} ${group.designation}`;
  return {
    ...{ id, requirementId, airframeId, positionId, componentId, airframeTypeId, engineModelId },
    revision: row.requirement.revision,
    subject: subject === '' ? 'All it may be for' : subject,
    applicable: row.applicable,
    reason: row.reason,
    method: row.method,
    assessedBy: row.assessedBy,
    reference: row.reference,
    on: dayToWire(row.assessedOn),
    voided: row.voidedSeq !== null,
    voidReason: row.voidReason,
  };
}

/** What a variation is shown with. */
export const WITH_VARIED = WITH_NAMES satisfies Prisma.VariationInclude;

type VariationRow = Prisma.VariationGetPayload<{ include: typeof WITH_VARIED }>;

/** A variation on the wire. Total. */
export function variationToWire(row: VariationRow): VariationDto {
  const { id, requirementId, airframeId, positionId, componentId, accomplishmentId } = row;
  const { cycles, days, approvedBy, reference, reason } = row;
  return {
    ...{ id, requirementId, airframeId, positionId, componentId, accomplishmentId },
    subject: nameOf(row),
    minutes: row.minutes === null ? null : Number(row.minutes),
    ...{ cycles, days, approvedBy, reference, reason },
    on: dayToWire(row.approvedOn),
    voided: row.voidedSeq !== null,
    voidReason: row.voidReason,
  };
}
