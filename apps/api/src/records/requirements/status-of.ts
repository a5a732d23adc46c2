import type { DimensionDue } from '@strutbook/domain/due/dimension-due.js';
import { oneDecimal, wholeDays } from '@strutbook/domain/due/dimension-due.js';
import type { Status } from '@strutbook/domain/life/status.js';
import { addDays } from '@strutbook/domain/units/calendar.js';
import { floor } from '@strutbook/domain/units/fraction.js';
import { dayToWire } from '../../platform/http/instants.js';
import { reasonInWords } from '../due-points/windows.js';
import type { DimensionStatus, RequirementStatus } from './requirement-status.js';
import type { Standing } from './standings.js';

// A date further off than this says nothing.
const FARTHEST_DAYS = 36_500;

/** A standing as others read it. Total. */
export function statusOfStanding({
  requirement,
  subject,
  due,
  reasons,
  today,
  done,
}: Standing): RequirementStatus {
  const { id: requirementId, code, title, kind, document, revision } = requirement;
  const open = due.kind === 'open' ? due : null;
  const last = done.at(-1);
  return {
    requirementId,
    code,
    title,
    kind,
    document,
    revision,
    combine: requirement.combine === 'last' ? 'last' : 'first',
    airframeId: subject.airframeId,
    positionId: subject.positionId,
    componentId: subject.componentId,
    subject: subject.name,
    status: open?.status ?? (due.kind === 'closed' ? 'closed' : 'not-applicable'),
    reason:
      open?.status === 'not-verified' || due.kind === 'not-applicable'
        ? reasonInWords(reasons.join(' '))
        : null,
    counting: open?.counting ?? null,
    dues: open?.dues.map(dimensionStatus) ?? [],
    governing: open?.governing?.dimension ?? null,
    projectedOn: projectedOn(open?.governing ?? null, today),
    lastDone:
      last === undefined ? null : { id: last.id, on: dayToWire(last.doneOn), evidence: last.evidence },
  };
}

function dimensionStatus(due: DimensionDue): DimensionStatus {
  const { dimension, interval, dueAt, dueOn, remaining, daysExact, status } = due;
  return {
    dimension,
    interval,
    dueAt: dueAt === null ? null : floor(dueAt),
    dueOn,
    remaining,
    days: wholeDays(daysExact),
    daysText: daysExact === null ? null : oneDecimal(daysExact),
    status,
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
