import type { Status } from '../life/status.js';
import type { CalendarDate } from '../units/calendar.js';
import { compare } from '../units/fraction.js';
import type { DimensionDue } from './dimension-due.js';
import type { Dimension, RequirementRule } from './requirement.js';

/** What governs of a requirement, and its status. */
export interface Governed {
  /** The dimension that governs; null when something that could is not known, or the event does. */
  readonly governing: DimensionDue | null;
  /** Whether it is due by its event: it happened and governs. */
  readonly isDueByEvent: boolean;
  readonly status: Status;
}

interface Beside {
  /** Each governs as soon as it comes. */
  readonly bounds: readonly DimensionDue[];
  readonly event: { readonly happenedOn: CalendarDate | null } | null;
  readonly unknown: readonly Dimension[];
  readonly combined: RequirementRule['combine'];
}

/** What governs of all the dimensions of a requirement, its event and its outer bound. Total. */
export function combine(dues: readonly DimensionDue[], beside: Beside): Governed {
  const { bounds, event, unknown } = beside;
  const hasHappened = event !== null && event.happenedOn !== null;
  const own = ownPart(dues, beside);
  const first = [...own.dues, ...bounds].sort(byTime)[0] ?? null;
  const isOver = own.status === 'over' || bounds.some(({ status }) => status === 'over');
  // Of whichever comes last something unknown may be what comes last; past the bound it is over all the same.
  const isPast = bounds.some(({ status }) => status === 'over') || (beside.combined === 'first' && isOver);
  if (unknown.length > 0 && !isPast) return { governing: null, isDueByEvent: false, status: 'not-verified' };
  const isDueByEvent = hasHappened && own.isByEvent && first?.status !== 'over';
  const statuses = [...(own.status === null ? [] : [own.status]), ...bounds.map(({ status }) => status)];
  return {
    governing: isDueByEvent ? null : first,
    isDueByEvent,
    status: combinedStatus(statuses, 'first'),
  };
}

interface Own {
  /** What of the dimensions can govern beside the bound. */
  readonly dues: readonly DimensionDue[];
  readonly isByEvent: boolean;
  readonly status: Status | null;
}

function ownPart(dues: readonly DimensionDue[], { event, combined }: Beside): Own {
  const ordered = [...dues].sort(byTime);
  const statuses = dues.map(({ status }) => status);
  const known = statuses.length === 0 ? null : combinedStatus(statuses, combined);
  if (combined === 'first') {
    const isByEvent = event !== null && event.happenedOn !== null;
    const status = isByEvent ? 'over' : (known ?? (event === null ? null : 'later'));
    return { dues: ordered.slice(0, 1), isByEvent, status };
  }
  // Whichever comes last: until its event nothing is due.
  if (event !== null && event.happenedOn === null) return { dues: [], isByEvent: false, status: 'later' };
  const last = ordered.at(-1);
  return {
    dues: last === undefined ? [] : [last],
    isByEvent: event !== null && last === undefined,
    status: known ?? (event === null ? null : 'over'),
  };
}

/** From the most pressing to the least. */
const PRESSING: readonly Status[] = ['over', 'in-tolerance', 'soon', 'planned', 'later'];

/**
 * The status of a requirement whose dimensions are all known: the nearest where whichever comes first governs, the
 * farthest where whichever comes last does; not verified of none. Total.
 */
export function combinedStatus(statuses: readonly Status[], combined: 'first' | 'last'): Status {
  const ranks = statuses.map((status) => PRESSING.indexOf(status));
  const rank = combined === 'first' ? Math.min(...ranks) : Math.max(...ranks);
  return PRESSING[rank] ?? 'not-verified';
}

// What is over comes before all else, then what is past inside what is granted; what is not used comes never.
function byTime(a: DimensionDue, b: DimensionDue): number {
  const order = (due: DimensionDue) =>
    due.status === 'over' ? 0 : due.remaining < 0 ? 1 : due.daysExact === null ? 3 : 2;
  if (order(a) !== order(b)) return order(a) - order(b);
  return compare(a.daysExact ?? a.remainingExact, b.daysExact ?? b.remainingExact);
}
