import type { Present } from '@strutbook/domain/due/requirement.js';
import { phaseOf, requirementDue } from '@strutbook/domain/due/requirement-due.js';
import { dayIn } from '../stays/day-zone.js';
import { dailyUse } from '../usage/running-clocks.js';
import { type SubjectEvent, unmetEvent } from './facts/due-events.js';
import { placedVariations, type VariationRow } from './facts/variations.js';
import { baseOf, beginsAt, eventsSince, markOf, zoneOf } from './marks.js';
import type { Pairing } from './pairings.js';
import { type Reason, reasonOf } from './reasons.js';
import { countsCycles, ruleOf } from './rule/requirement-rule.js';
import type { Standing } from './standings.js';
import type { SubjectCounters } from './subject-counters.js';
import { reasonsNotKnown } from './unknown-reasons.js';

interface Beside {
  readonly at: Date;
  readonly variations: readonly VariationRow[];
  readonly events: readonly SubjectEvent[];
}

/** What is due of one requirement on one subject, from all that is known of both. Throws beyond the year 9999. */
export function standingOf(pairing: Pairing, counters: SubjectCounters, beside: Beside): Standing {
  const { requirement, subject, isForSubject, assessment, closedBy } = pairing;
  const today = dayIn(counters.clock?.dayZone ?? zoneOf(subject), beside.at);
  const base = {
    ...{ requirement, subject, counters, today, isForSubject, assessment },
    ...{ isDoubtful: false, variation: null, closedBy: null, done: pairing.done },
  };
  const notFor = gone(pairing) ?? pairing.notFor;
  if (notFor !== null) return { ...base, due: { kind: 'not-applicable' }, reasons: [notFor] };
  if (closedBy !== null)
    return { ...base, due: { kind: 'closed' }, reasons: [closedBy.reason], closedBy: closedBy.by };
  const open = openStanding(pairing, counters, { ...beside, today });
  const isDoubtful = pairing.doubts.length > 0;
  return { ...base, ...open, isDoubtful, reasons: [...pairing.doubts, ...open.reasons] };
}

/** Why nothing is held against it whatever it is: it is no more, or hangs nowhere. */
function gone({ requirement, subject, notFor }: Pairing): Reason | null {
  if (subject.kind === 'component' && subject.gone !== null) return reasonOf(subject.gone);
  const isNowhere = requirement.countedFrom === 'installation' && subject.installedAt === null;
  return isNowhere && notFor === null ? reasonOf('NOT_INSTALLED') : null;
}

function openStanding(
  { requirement, subject, done: all }: Pairing,
  counters: SubjectCounters,
  { variations, events, today }: Beside & { readonly today: string },
): Pick<Standing, 'due' | 'reasons' | 'variation' | 'done'> {
  const begins = beginsAt(requirement, subject, counters);
  const done = all.filter((row) => begins === null || row.at >= begins);
  const rule = ruleOf(requirement);
  // A clock without a rule counts no cycles: it would never come nearer, whatever is flown.
  const isUncounted = counters.clock !== undefined && counters.rule === undefined && countsCycles(rule);
  const now: Present = {
    minutes: counters.now.minutes,
    cycles: isUncounted ? null : counters.now.cycles,
    on: today,
  };
  const from = baseOf(requirement, subject, counters);
  const marks = done.map((row) => markOf(row, counters));
  const phase = phaseOf(rule, done.length);
  const lastDoneAt = done.at(-1)?.at ?? null;
  const happened = unmetEvent(events, phase === null ? null : (rule.events?.[phase] ?? null), {
    since: lastDoneAt ?? eventsSince(requirement, subject, counters),
    lastDoneAt,
  });
  const due = requirementDue({
    rule,
    base: from,
    done: marks,
    now,
    use: dailyUse(counters.clock, counters.rule),
    variations: placedVariations(variations, done),
    happenedOn: happened === null ? null : dayIn(zoneOf(subject), happened.at),
  });
  const unknown = due.kind === 'closed' ? [] : due.unknown;
  const { countedFrom } = requirement;
  const codes = reasonsNotKnown(unknown, { from: marks.at(-1) ?? from, now, isUncounted, countedFrom });
  const last = done.at(-1)?.id ?? null;
  const variation = variations.find(({ accomplishmentId }) => accomplishmentId === last) ?? null;
  return { due, reasons: codes.map(reasonOf), variation: phase === null ? null : variation, done };
}
