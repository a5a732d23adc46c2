import type { DimensionDue } from '@strutbook/domain/due/dimension-due.js';
import { oneDecimal, wholeDays } from '@strutbook/domain/due/dimension-due.js';
import type { Status } from '@strutbook/domain/life/status.js';
import { addDays } from '@strutbook/domain/units/calendar.js';
import { ceil, type Fraction, floor } from '@strutbook/domain/units/fraction.js';
import { dayToWire } from '../../platform/http/instants.js';
import type {
  AssessmentStatus,
  DimensionStatus,
  RequirementStatus,
  VariationStatus,
} from './requirement-status.js';
import { needsAssessment } from './rule/requirement-rule.js';
import type { Standing } from './standings.js';

// A date further off than this says nothing.
const FARTHEST_DAYS = 36_500;

/** A standing as others read it. Total. */
export function statusOfStanding(standing: Standing): RequirementStatus {
  const { requirement, subject, due, reasons, today, done, closedBy } = standing;
  const { id: requirementId, code, title, kind, document, revision } = requirement;
  const open = due.kind === 'open' ? due : null;
  const governing = standing.isDoubtful ? null : (open?.governing ?? null);
  const last = done.at(-1);
  return {
    ...{ requirementId, code, title, kind, document, revision },
    combine: requirement.combine === 'last' ? 'last' : 'first',
    airframeId: subject.airframeId,
    positionId: subject.positionId,
    componentId: subject.componentId,
    subject: subject.name,
    status: statusOf(standing),
    reason: reasonOfStanding(standing),
    reasonCodes: reasons.map((reason) => reason.code),
    counting: open?.counting ?? null,
    dues: open?.dues.map((each) => dimensionStatus(each, each === governing)) ?? [],
    event: open?.event ?? null,
    needsAssessment: needsAssessment(requirement),
    assessment: assessmentStatus(standing),
    variation: variationStatus(standing),
    closedBy: closedBy === null ? null : { id: closedBy.id, code: closedBy.code },
    governing: governing?.dimension ?? null,
    projectedOn: projectedOn(governing, today),
    lastDone:
      last === undefined
        ? null
        : {
            ...{ id: last.id, on: dayToWire(last.doneOn), evidence: last.evidence, method: last.method },
            minutes: last.minutes === null ? null : Number(last.minutes),
            cycles:
              last.cycles === null
                ? null
                : { units: Number(last.cycles), denominator: last.cycleDenominator },
          },
  };
}

// Whether it applies at all comes before what would be due by it.
function statusOf({ due, isDoubtful }: Standing): Status {
  if (due.kind === 'not-applicable') return 'not-applicable';
  if (isDoubtful) return 'not-verified';
  return due.kind === 'open' ? due.status : 'closed';
}

function reasonOfStanding(standing: Standing): string | null {
  const { due, reasons } = standing;
  if (due.kind === 'open' && due.isDueByEvent && !standing.isDoubtful)
    return `Due at ${EVENT_WORDS[due.event?.kind ?? 'shop-visit']}, which was on ${due.event?.happenedOn ?? ''}`;
  const isTold = statusOf(standing) === 'not-verified' || due.kind !== 'open';
  return !isTold || reasons.length === 0 ? null : reasons.map(({ words }) => words).join('; ');
}

/** The events in words. */
export const EVENT_WORDS = {
  'shop-visit': 'the next shop visit',
  installation: 'the next installation',
  removal: 'the next removal',
  'main-base-return': 'the first return to the main base',
} as const;

function assessmentStatus({ assessment }: Standing): AssessmentStatus | null {
  if (assessment === null) return null;
  const { id, applicable, reason, method, assessedBy, reference, assessedOn } = assessment;
  return { id, applicable, reason, method, assessedBy, reference, on: dayToWire(assessedOn) };
}

function variationStatus({ variation, due }: Standing): VariationStatus | null {
  if (variation === null || due.kind !== 'open') return null;
  const { id, minutes, cycles, days, approvedBy, reference, approvedOn } = variation;
  return {
    ...{ id, cycles, days, approvedBy, reference },
    minutes: minutes === null ? null : Number(minutes),
    on: dayToWire(approvedOn),
  };
}

function dimensionStatus(due: DimensionDue, governs: boolean): DimensionStatus {
  const { dimension, interval, dueOn, remaining, daysExact, status, isBound } = due;
  const whole = (exact: Fraction | null) => (exact === null ? null : floor(exact));
  return {
    dimension,
    interval,
    dueAt: whole(due.dueAt),
    dueOn,
    remaining,
    days: wholeDays(daysExact),
    daysText: daysExact === null ? null : oneDecimal(daysExact),
    status,
    isBound,
    governs,
    earliestAt: due.earliestAt === null ? null : ceil(due.earliestAt),
    earliestOn: due.earliestOn,
    latestAt: whole(due.latestAt),
    latestOn: due.latestOn,
    variableAt: whole(due.variableAt),
    variableOn: due.variableOn,
  };
}

function projectedOn(governing: DimensionDue | null, today: string): string | null {
  if (governing === null) return null;
  if (governing.dueOn !== null) return governing.dueOn;
  const days = wholeDays(governing.daysExact);
  return days === null || days < 0 || days > FARTHEST_DAYS ? null : addDays(today, days);
}

const ORDER: readonly Status[] = [
  'over',
  'not-verified',
  'in-tolerance',
  'soon',
  'planned',
  'later',
  'closed',
  'not-applicable',
];

/** The most pressing first, then by the projected day, then by code and subject. Total. */
export function byUrgency(a: RequirementStatus, b: RequirementStatus): number {
  return (
    ORDER.indexOf(a.status) - ORDER.indexOf(b.status) ||
    (a.projectedOn ?? '9999').localeCompare(b.projectedOn ?? '9999') ||
    a.code.localeCompare(b.code) ||
    a.subject.localeCompare(b.subject)
  );
}
