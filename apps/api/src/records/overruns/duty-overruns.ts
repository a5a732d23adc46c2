import type { DimensionDue } from '@strutbook/domain/due/dimension-due.js';
import { overrunsIn, segmentsOfDuty } from '@strutbook/domain/life/overruns.js';
import { addDays } from '@strutbook/domain/units/calendar.js';
import { ceil, type Fraction, floor, fraction, subtract, ZERO } from '@strutbook/domain/units/fraction.js';
import { overlapOf } from '@strutbook/domain/usage/carried-by.js';
import type { Tx } from '../../platform/database/database.js';
import { dayOf, toInstant } from '../../platform/http/instants.js';
import { dayBegins, zoneOf } from '../requirements/marks.js';
import type { Standing, Standings } from '../requirements/standings.js';
import type { CounterSources } from '../requirements/subject-counters.js';
import type { Scope } from '../requirements/subjects.js';
import { type PastDuty, pastDuties } from './past-duties.js';
import type { FoundOverrun, LimitBehind } from './past-overrun.js';
import { runsOfSubjects, type SubjectRuns } from './subject-runs.js';

type OpenDue = Extract<Standing['due'], { readonly kind: 'open' }>;

/** A duty as it stood at the end of a time, with what that time was. */
interface Hold {
  readonly standing: Standing;
  /** From when on it counts: it was done then, or the revision was not effective before. */
  readonly from: Date | null;
  /** When it was done, or ended to count; null: it is due still. */
  readonly until: Date | null;
}

/**
 * The times over which something flew on beyond a duty that was due: those that go on, and those that ended when the duty
 * was done at last, or when what it was counted from began anew. What was due is asked of the standings as of then.
 */
export async function overrunsOfDuties(
  tx: Tx,
  operatorId: number,
  scope: Scope,
  { standings, ...sources }: CounterSources & { readonly standings: Standings },
): Promise<FoundOverrun[]> {
  const now = await standings.of(tx, operatorId, scope);
  if (now.length === 0) return [];
  const open = now
    .filter(isOver)
    .map((standing): Hold => ({ standing, from: countsFrom(standing), until: null }));
  const past = await pastDuties(tx, operatorId, now, sources);
  const ended: Hold[] = [];
  for (const [moment, duties] of byMoment(past)) {
    const then = await standings.of(tx, operatorId, scopeOf(duties), { at: new Date(moment - 1) });
    for (const standing of then) {
      const { subject, requirement } = standing;
      const isMeant = duties.some((duty) => duty.subject.id === subject.id && duty.code === requirement.code);
      if (isMeant && isOver(standing))
        ended.push({ standing, from: countsFrom(standing), until: new Date(moment) });
    }
  }
  const holds = [...open, ...ended];
  if (holds.length === 0) return [];
  const runs = await runsOfSubjects(
    tx,
    operatorId,
    holds.map(({ standing: { subject }, from, until }) => ({ subject, from, until })),
    sources,
  );
  return holds.flatMap((hold, index) => {
    const ran = runs[index];
    return ran === undefined ? [] : overrunsOf(hold, ran);
  });
}

function isOver({ due }: Standing): boolean {
  return due.kind === 'open' && due.status === 'over';
}

function countsFrom({ requirement, subject, done, due }: Standing): Date {
  const zone = zoneOf(subject);
  const effective = dayBegins(requirement.effectiveOn, zone);
  const last = done.at(-1)?.at ?? effective;
  const event = due.kind === 'open' && due.combined === 'last' ? (due.event?.happenedOn ?? null) : null;
  const happened = event === null ? effective : dayBegins(dayOf(event), zone);
  return new Date(Math.max(effective.getTime(), last.getTime(), happened.getTime()));
}

/**
 * Whether these records cannot tell that it was late: it was due before they begin, and what was done before that is not
 * in them. What is due still is told by its status.
 */
function isOlderThanRecords({ standing, from, until }: Hold, { recordedFrom }: SubjectRuns): boolean {
  if (until === null || standing.done.length > 0) return false;
  return from === null || recordedFrom === null || toInstant(from) <= recordedFrom;
}

/** What hung there when these records begin was installed at a time they do not tell; so is what was done since. */
function beganWithRecords({ standing, until }: Hold, { recordedFrom }: SubjectRuns): boolean {
  const { requirement, subject, done } = standing;
  const { installedAt } = subject;
  if (until === null || done.length > 0 || requirement.countedFrom !== 'installation') return false;
  return installedAt === null || recordedFrom === null || toInstant(installedAt) <= recordedFrom;
}

function byMoment(past: readonly PastDuty[]): ReadonlyMap<number, readonly PastDuty[]> {
  const groups = new Map<number, PastDuty[]>();
  for (const duty of past) {
    const moment = duty.until.getTime();
    groups.set(moment, [...(groups.get(moment) ?? []), duty]);
  }
  return groups;
}

function scopeOf(duties: readonly PastDuty[]): Scope {
  return {
    componentIds: [...new Set(duties.flatMap(({ subject }) => subject.componentId ?? []))],
    airframeIds: [
      ...new Set(
        duties.flatMap(({ subject }) =>
          subject.kind === 'component'
            ? []
            : [subject.kind === 'position' ? subject.ofAirframeId : subject.id],
        ),
      ),
    ],
  };
}

function overrunsOf(hold: Hold, ran: SubjectRuns): FoundOverrun[] {
  const { due } = hold.standing;
  if (due.kind !== 'open' || beganWithRecords(hold, ran)) return [];
  const areAllPassed = isPassedAltogether(due);
  const dues = due.dues.filter(
    (each) => each.status === 'over' && (due.combined === 'first' || each.isBound || areAllPassed),
  );
  return dues.flatMap((each) => inDimension(hold, each, ran));
}

/** Of whichever comes last: whether everything of it is past, its event too. An outer bound governs by itself. */
function isPassedAltogether({ dues, unknown, event }: OpenDue): boolean {
  const own = dues.filter(({ isBound }) => !isBound);
  return unknown.length === 0 && event?.happenedOn !== null && own.every(({ status }) => status === 'over');
}

function inDimension(hold: Hold, due: DimensionDue, ran: SubjectRuns): FoundOverrun[] {
  const { standing } = hold;
  const { subject, requirement } = standing;
  const isLast = requirement.combine === 'last' && !due.isBound;
  const base = {
    ...{ componentId: subject.componentId, airframeId: subject.airframeId, positionId: subject.positionId },
    limit: limitOf(standing, due),
    ...(isLast ? { lastOf: `${requirement.id} ${subject.id} ${hold.until?.getTime() ?? ''}` } : {}),
  };
  // What is granted past the due, by its window or an approved variation, is not beyond it.
  if (due.latestOn !== null)
    return byCalendar(hold, due.latestOn, ran).map((found) => ({ ...base, ...found }));
  const { dimension } = due;
  if (due.latestAt === null || (dimension !== 'minutes' && dimension !== 'cycles')) return [];
  const before = dimension === 'minutes' ? exact(ran.before.minutes) : ran.before.cycles;
  if (before === null) return [];
  const runs = dimension === 'minutes' ? ran.inMinutes : ran.inCycles;
  const left = subtract(due.latestAt, before);
  if (left.num < 0n && isOlderThanRecords(hold, ran)) return [];
  return overrunsIn(segmentsOfDuty(left, runs)).map(({ parts, by }) => ({
    ...base,
    ...{ dimension, parts, by: ceil(by), isOpen: hold.until === null },
  }));
}

function exact(minutes: number | null): Fraction | null {
  return minutes === null ? null : fraction(minutes);
}

/** A day is good through its end: what took off after it was beyond. */
function byCalendar(
  hold: Hold,
  latestOn: string,
  ran: SubjectRuns,
): Pick<FoundOverrun, 'dimension' | 'parts' | 'by' | 'isOpen'>[] {
  const { standing, until } = hold;
  const { spans } = ran;
  const zone = standing.counters.clock?.dayZone ?? zoneOf(standing.subject);
  const beyond = {
    from: toInstant(dayBegins(dayOf(addDays(latestOn, 1)), zone)),
    to: until === null ? null : toInstant(until),
  };
  const begins = ran.recordedFrom;
  if (begins !== null && beyond.from < begins && isOlderThanRecords(hold, ran)) return [];
  const parts = spans.flatMap(({ carrierId: clock, cycleRuleId, ...span }) => {
    const over = overlapOf(beyond, span);
    return over === null ? [] : [{ clock, cycleRuleId, ...over, allowance: ZERO }];
  });
  return parts.length === 0 ? [] : [{ dimension: 'days', parts, by: null, isOpen: until === null }];
}

function limitOf({ requirement }: Standing, { latestAt, latestOn }: DimensionDue): LimitBehind {
  const { id, code, title, document, revision } = requirement;
  return {
    ...{ kind: 'requirement', id, document, revision, requirement: `${code} ${title}`, dueOn: latestOn },
    amount: latestAt === null ? null : floor(latestAt),
  };
}
