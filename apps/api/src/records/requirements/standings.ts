import { Injectable } from '@nestjs/common';
import type { Present } from '@strutbook/domain/due/requirement.js';
import { type RequirementDue, requirementDue } from '@strutbook/domain/due/requirement-due.js';
import type { Tx } from '../../platform/database/database.js';
import type { Accomplishment, Requirement } from '../../platform/database/generated/client.js';
import { Clock } from '../../platform/time/clock.js';
import { dayIn } from '../stays/day-zone.js';
import { Structure } from '../stays/structure.js';
import { Counters } from '../usage/counters.js';
import { groupRows } from '../usage/group-rows.js';
import { dailyUse } from '../usage/running-clocks.js';
import { Use } from '../usage/use.js';
import { baseOf, beginsAt, dayBegins, markOf, zoneOf } from './marks.js';
import { countsCycles, isFor, requirementsInForce, ruleOf } from './requirement-rule.js';
import { countersOfSubjects, type SubjectCounters } from './subject-counters.js';
import { loadSubjects, type Scope, type Subject } from './subjects.js';
import { reasonsNotKnown } from './unknown-reasons.js';

/** One requirement held against one subject. */
export interface Standing {
  readonly requirement: Requirement;
  readonly subject: Subject;
  readonly counters: SubjectCounters;
  readonly due: RequirementDue | { readonly kind: 'not-applicable' };
  /** Codes of what is not known, or why it does not apply. */
  readonly reasons: readonly string[];
  /** The day it is where the subject is. */
  readonly today: string;
  /** The accomplishments that count, in order. */
  readonly done: readonly Accomplishment[];
}

/** A requirement and what it is for. */
interface Pairing {
  readonly requirement: Requirement;
  readonly subject: Subject;
  readonly done: readonly Accomplishment[];
}

/** What is due of requirements, from the records as they stand. */
@Injectable()
export class Standings {
  constructor(
    private readonly structure: Structure,
    private readonly use: Use,
    private readonly counters: Counters,
    private readonly clock: Clock,
  ) {}

  /**
   * Each requirement in force (or those with one code) held against each subject of the scope that it is for, now
   * (null) or at an instant, in a constant number of statements.
   */
  async of(
    tx: Tx,
    operatorId: number,
    scope: Scope,
    { at = null, code }: { readonly at?: Date | null; readonly code?: string } = {},
  ): Promise<Standing[]> {
    const rows = (await requirementsInForce(tx, operatorId)).filter(
      (row) => code === undefined || row.code === code,
    );
    if (rows.length === 0) return [];
    const subjects = await loadSubjects(tx, operatorId, this.structure, scope, at);
    const wanted = subjects.flatMap((subject) =>
      rows.filter((row) => isFor(row, subject)).map((requirement) => ({ requirement, subject })),
    );
    if (wanted.length === 0) return [];
    const done = await loadDone(
      tx,
      operatorId,
      wanted.map(({ subject }) => subject.id),
      at,
    );
    const pairings = wanted.map(({ requirement, subject }) => ({
      requirement,
      subject,
      done: done.get(`${subject.id} ${requirement.code}`) ?? [],
    }));
    const now = this.clock.now();
    const counters = await countersOfSubjects(tx, operatorId, asksOf(pairings), {
      use: this.use,
      counters: this.counters,
      at,
      now,
    });
    return pairings.flatMap((pairing) => {
      const of = counters.get(pairing.subject.id);
      return of === undefined ? [] : standingOf(pairing, of, at ?? now);
    });
  }
}

/** Accomplishments by subject and code, in order: work done by an earlier revision counts on. */
async function loadDone(
  tx: Tx,
  operatorId: number,
  subjectIds: readonly string[],
  at: Date | null,
): Promise<ReadonlyMap<string, readonly Accomplishment[]>> {
  const ids = { in: [...new Set(subjectIds)] };
  const rows = await tx.accomplishment.findMany({
    where: {
      operatorId,
      voidedSeq: null,
      ...(at === null ? {} : { at: { lte: at } }),
      OR: [{ componentId: ids }, { airframeId: ids }, { positionId: ids }],
    },
    include: { requirement: { select: { code: true } } },
    orderBy: [{ at: 'asc' }, { recordedSeq: 'asc' }],
  });
  return groupRows(
    rows,
    (row) => `${row.componentId ?? row.positionId ?? row.airframeId} ${row.requirement.code}`,
  );
}

/** Every instant at which the counters of a subject are counted from. */
function asksOf(pairings: readonly Pairing[]) {
  const asks = new Map<string, { readonly subject: Subject; readonly instants: Date[] }>();
  for (const { requirement, subject, done } of pairings) {
    const ask = asks.get(subject.id) ?? { subject, instants: [] };
    asks.set(subject.id, ask);
    ask.instants.push(...done.map((row) => row.at));
    if (subject.kind === 'position' && subject.installedAt !== null) ask.instants.push(subject.installedAt);
    if (requirement.fromOn !== null) ask.instants.push(dayBegins(requirement.fromOn, zoneOf(subject)));
  }
  return [...asks.values()];
}

function standingOf(pairing: Pairing, counters: SubjectCounters, at: Date): Standing {
  const { requirement, subject } = pairing;
  const today = dayIn(counters.clock?.dayZone ?? zoneOf(subject), at);
  const base = { requirement, subject, counters, today };
  const notFor =
    subject.kind === 'component' && subject.gone !== null
      ? subject.gone
      : requirement.countedFrom === 'installation' && subject.installedAt === null
        ? 'NOT_INSTALLED'
        : null;
  if (notFor !== null)
    return { ...base, due: { kind: 'not-applicable' }, reasons: [notFor], done: pairing.done };
  const begins = beginsAt(requirement, subject, counters);
  const done = pairing.done.filter((row) => begins === null || row.at >= begins);
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
  const due = requirementDue({
    rule,
    base: from,
    done: marks,
    now,
    use: dailyUse(counters.clock, counters.rule),
  });
  const reasons =
    due.kind === 'closed'
      ? []
      : reasonsNotKnown(due.unknown, { from: marks.at(-1) ?? from, now, isUncounted });
  return { ...base, due, reasons, done };
}
