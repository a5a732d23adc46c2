import { dateOf } from '../units/calendar.js';
import type { Instant } from '../units/minutes.js';
import type { Objection } from './objection.js';
import type { ReleaseSnapshot } from './snapshot.js';

/** What the flights planned would make over, as advice: the release may be signed, and the flight must not be made. Total. */
export function objectionsToPlannedFlying({
  planned = [],
}: Pick<ReleaseSnapshot, 'planned'>): readonly Objection[] {
  return planned.map(({ record, name, on, positionNumber, takeOffAt }) => ({
    code: 'DUE_WITHIN_PLANNED_FLYING',
    severity: 'advisory',
    positionNumber,
    record,
    detail: { name, on, takeOff: minuteText(takeOffAt) },
  }));
}

function minuteText(at: Instant): string {
  const minute = ((at % 1440) + 1440) % 1440;
  const two = (part: number) => String(part).padStart(2, '0');
  return `${dateOf(at)} ${two(Math.floor(minute / 60))}:${two(minute % 60)}`;
}
