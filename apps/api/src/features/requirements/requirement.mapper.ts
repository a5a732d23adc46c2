import { REBASE } from '@strutbook/domain/due/rebase.js';
import type { DueEvent, Interval } from '@strutbook/domain/due/requirement.js';
import type { Grants } from '@strutbook/domain/due/tolerance.js';
import type { Prisma, Requirement } from '../../platform/database/generated/client.js';
import { dayToWire } from '../../platform/http/instants.js';
import { needsAssessment, ruleOf } from '../../records/requirements/rule/requirement-rule.js';
import type { LinkedRequirementDto, RequirementDto } from './requirement-view.dto.js';
import type { AmountsDto, GrantedDto, GrantedTiersDto } from './rules/granted-view.dto.js';

/** What a requirement is shown with. */
export const WITH_SCOPE = {
  airframeType: { select: { maker: true, designation: true } },
  engineModel: { select: { maker: true, designation: true } },
  supersedes: { select: { id: true, code: true } },
  terminates: { select: { id: true, code: true } },
} as const satisfies Prisma.RequirementInclude;

type RequirementRow = Prisma.RequirementGetPayload<{ include: typeof WITH_SCOPE }>;

/** A requirement on the wire. Total. */
export function requirementToWire(
  row: RequirementRow,
  {
    inForce,
    open,
    supersededBy,
  }: {
    readonly inForce: boolean;
    readonly open: number;
    readonly supersededBy: LinkedRequirementDto | null;
  },
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
    threshold: granted(rule.threshold, rule.events?.threshold ?? null, rule.bounds?.threshold ?? null),
    repeat: granted(rule.repeat, rule.events?.repeat ?? null, rule.bounds?.repeat ?? null),
    combine: rule.combine,
    monthRule: rule.monthRule,
    countedFrom: row.countedFrom as RequirementDto['countedFrom'],
    fromOn: row.fromOn === null ? null : dayToWire(row.fromOn),
    effectiveOn: dayToWire(row.effectiveOn),
    window:
      rule.window === undefined
        ? null
        : { early: tiersToWire(rule.window.early), late: tiersToWire(rule.window.late) },
    variation: rule.variation === undefined ? null : tiersToWire(rule.variation),
    grantedBy: row.grantedBy,
    rebase: { ...(rule.rebase ?? REBASE) },
    serialFrom: row.serialFrom,
    serialTo: row.serialTo,
    onlyWith: row.onlyWith,
    unlessWith: row.unlessWith,
    supersedes: row.supersedes,
    supersededBy,
    terminates: row.terminates,
    credit: row.credit as RequirementDto['credit'],
    mandatory: row.mandatory,
    needsAssessment: needsAssessment(row),
    inForce,
    open,
    voided: row.voidedSeq !== null,
    voidReason: row.voidReason,
  };
}

const NO_AMOUNTS: AmountsDto = { minutes: null, cycles: null, days: null, months: null };

function granted(
  interval: Interval | null,
  event: DueEvent | null,
  bound: Interval | null,
): GrantedDto | null {
  if (interval === null && event === null) return null;
  return { ...(interval ?? NO_AMOUNTS), event, notToExceed: bound === null ? null : { ...bound } };
}

function tiersToWire(grants: Grants): GrantedTiersDto {
  const of = (dimension: keyof Grants) => (grants[dimension] ?? []).map((tier) => ({ ...tier }));
  return { minutes: of('minutes'), cycles: of('cycles'), days: of('days'), months: of('months') };
}

function named(row: { readonly maker: string; readonly designation: string } | null): string | null {
  return row === null ? null : `${row.maker} ${row.designation}`;
}

/** The ids of the requirements in force at an instant: of each code the revision that became effective last. Total. */
export function idsInForce(
  rows: readonly Pick<Requirement, 'id' | 'code' | 'effectiveOn' | 'recordedSeq' | 'voidedSeq'>[],
  now: Date,
): ReadonlySet<string> {
  const newest = new Map<string, (typeof rows)[number]>();
  for (const row of rows) {
    if (row.voidedSeq !== null || row.effectiveOn > now) continue;
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
