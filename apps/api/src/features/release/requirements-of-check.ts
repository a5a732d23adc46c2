import type { PositionSnapshot } from '@strutbook/domain/release/snapshot.js';
import type { RequirementSnapshot } from '@strutbook/domain/release/work-snapshot.js';
import { formatHours } from '@strutbook/domain/units/minutes.js';
import type {
  DimensionStatus,
  PackageRequirementRow,
  RequirementStatus,
  RequirementSubject,
} from '../../records/requirements/requirement-status.js';

const PRESSING = ['over', 'in-tolerance', 'not-verified'] as const;

/** Requirements as the check looks at them; those the package names are closed by it. Total. */
export function requirementSnapshots(
  statuses: readonly RequirementStatus[],
  {
    named,
    positions,
  }: { readonly named: readonly PackageRequirementRow[]; readonly positions: readonly PositionSnapshot[] },
): RequirementSnapshot[] {
  return statuses.map((status) => {
    const verdict = PRESSING.find((pressing) => pressing === status.status) ?? 'in-order';
    return {
      id: status.requirementId,
      name: `${status.code}, ${status.title}`,
      on: status.subject,
      positionNumber: positionOf(status, positions),
      verdict,
      why: verdict === 'in-order' ? '' : whyOf(status),
      closedHere: named.some((row) => row.requirementId === status.requirementId && sameSubject(row, status)),
    };
  });
}

function whyOf({ status, reason, dues }: RequirementStatus): string {
  if (status === 'not-verified') return reason ?? 'Something it is counted from is not known.';
  const due =
    dues.find(({ governs }) => governs) ??
    (reason === null ? dues.find((each) => each.status === 'over') : undefined);
  if (due === undefined) return reason === null ? 'It is past what is granted.' : `${reason}.`;
  const until = status === 'in-tolerance' ? untilWords(due) : '';
  return `${pastWords(due)}${until}`;
}

function pastWords({ dimension, remaining, dueAt, dueOn }: DimensionStatus): string {
  const past = Math.abs(remaining);
  if (dimension === 'minutes')
    return `${formatHours(past)} hours past${dueAt === null ? '' : ` ${formatHours(dueAt)}`}.`;
  if (dimension === 'cycles') return `${past} cycles past${dueAt === null ? '' : ` ${dueAt}`}.`;
  return `It was due on ${dueOn ?? 'a day that is past'}.`;
}

function untilWords({ dimension, latestAt, latestOn }: DimensionStatus): string {
  if (latestOn !== null) return ` Granted until ${latestOn}.`;
  if (latestAt === null) return '';
  return ` Granted until ${dimension === 'minutes' ? `${formatHours(latestAt)} hours` : `${latestAt} cycles`}.`;
}

function sameSubject(a: RequirementSubject, b: RequirementSubject): boolean {
  return a.airframeId === b.airframeId && a.positionId === b.positionId && a.componentId === b.componentId;
}

function positionOf(
  { positionId, componentId }: RequirementSubject,
  positions: readonly PositionSnapshot[],
): number | null {
  const found = positions.find(
    (position) =>
      position.positionId === positionId ||
      (componentId !== null &&
        (position.engine?.componentId === componentId ||
          position.engine?.limitedParts.some(({ part }) => part?.componentId === componentId))),
  );
  return found?.number ?? null;
}
