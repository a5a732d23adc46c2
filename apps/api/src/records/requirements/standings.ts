import { Injectable } from '@nestjs/common';
import type { RequirementDue } from '@strutbook/domain/due/requirement-due.js';
import type { Tx } from '../../platform/database/database.js';
import type { Assessment, Requirement, Variation } from '../../platform/database/generated/client.js';
import { Clock } from '../../platform/time/clock.js';
import { Structure } from '../stays/structure.js';
import { Counters } from '../usage/counters.js';
import { Use } from '../usage/use.js';
import { loadAssessments } from './facts/assessments.js';
import { loadEvents } from './facts/due-events.js';
import { type Linked, loadLinks } from './facts/links.js';
import { loadMet, type MetRow } from './facts/met.js';
import { loadVariations } from './facts/variations.js';
import { dayBegins, startOf, zoneOf } from './marks.js';
import { type Pairing, pairingsOf } from './pairings.js';
import type { Reason } from './reasons.js';
import { needsAssessment, requirementsInForce } from './rule/requirement-rule.js';
import { standingOf } from './standing-of.js';
import { countersOfSubjects, type SubjectCounters } from './subject-counters.js';
import { loadSubjects, type Scope, type Subject } from './subjects.js';

/** One requirement held against one subject. */
export interface Standing {
  readonly requirement: Requirement;
  readonly subject: Subject;
  readonly counters: SubjectCounters;
  readonly due: RequirementDue | { readonly kind: 'not-applicable' };
  /** Why it is not verified, does not apply or is closed by another. */
  readonly reasons: readonly Reason[];
  /** Whether it may be for this subject by its type, model, part number, position and serial number. */
  readonly isForSubject: boolean;
  /** Whether that it applies is not known: it was never assessed, or its serial number cannot be compared. */
  readonly isDoubtful: boolean;
  readonly assessment: Assessment | null;
  /** The variation that was approved for what is due now. */
  readonly variation: Variation | null;
  /** The requirement that closed it. */
  readonly closedBy: Linked | null;
  /** The day it is where the subject is. */
  readonly today: string;
  /** The accomplishments that count, in order. */
  readonly done: readonly MetRow[];
}

/** Which standings, and as of when. */
export interface StandingsAsk {
  /** Null: now. */
  readonly at?: Date | null;
  /** Of these codes alone. */
  readonly codes?: readonly string[];
  /** With all that does not apply, of another type, model or part number too. */
  readonly withAll?: boolean;
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
   * Each requirement in force (or those with some codes) held against each subject of the scope that it is for, in a
   * constant number of statements. A directive or bulletin that does not apply to one of its type or model is told with
   * its reason; of other kinds when asked.
   */
  async of(
    tx: Tx,
    operatorId: number,
    scope: Scope,
    { at = null, codes, withAll = false }: StandingsAsk = {},
  ): Promise<Standing[]> {
    const now = this.clock.now();
    const inForce = await requirementsInForce(tx, operatorId, at ?? now);
    const rows = inForce.filter((row) => codes === undefined || codes.includes(row.code));
    if (rows.length === 0) return [];
    const subjects = await loadSubjects(tx, operatorId, this.structure, scope, at);
    const met = await loadMet(tx, operatorId, subjects, at);
    const links = await loadLinks(tx, operatorId, inForce);
    const assessed = rows.filter(needsAssessment).map(({ id }) => id);
    const assessments = await loadAssessments(tx, operatorId, assessed, at);
    const pairings = pairingsOf(rows, subjects, { met, links, assessments, withAll });
    if (pairings.length === 0) return [];
    const counters = await countersOfSubjects(tx, operatorId, asksOf(pairings), {
      use: this.use,
      counters: this.counters,
      at,
      now,
    });
    const held = [...new Set(pairings.map(({ subject }) => subject))];
    const variations = await loadVariations(tx, operatorId, held);
    const hasEvents = rows.some((row) => row.thresholdEvent !== null || row.repeatEvent !== null);
    const events = hasEvents ? await loadEvents(tx, operatorId, held, at) : new Map();
    return pairings.flatMap((pairing) => {
      const { requirement, subject } = pairing;
      const of = counters.get(subject.id);
      if (of === undefined) return [];
      return standingOf(pairing, of, {
        at: at ?? now,
        variations: variations.get(`${subject.id} ${requirement.code}`) ?? [],
        events: events.get(subject.id) ?? [],
      });
    });
  }
}

/** Every instant at which the counters of a subject are counted from. */
function asksOf(pairings: readonly Pairing[]) {
  const asks = new Map<string, { readonly subject: Subject; readonly instants: Date[] }>();
  for (const { requirement, subject, done } of pairings) {
    const ask = asks.get(subject.id) ?? { subject, instants: [] };
    asks.set(subject.id, ask);
    ask.instants.push(...done.map((row) => row.at));
    if (subject.kind === 'position' && subject.installedAt !== null) ask.instants.push(subject.installedAt);
    const start = startOf(requirement);
    if (start !== null) ask.instants.push(dayBegins(start, zoneOf(subject)));
  }
  return [...asks.values()];
}
