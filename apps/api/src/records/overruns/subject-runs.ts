import type { AmountRun } from '@strutbook/domain/life/overruns.js';
import { type Fraction, fraction } from '@strutbook/domain/units/fraction.js';
import type { Instant } from '@strutbook/domain/units/minutes.js';
import { subtractCounts } from '@strutbook/domain/usage/counts.js';
import { type CycleRule, cycles } from '@strutbook/domain/usage/cycle-rule.js';
import { piecesOfUse, type RanSpan } from '@strutbook/domain/usage/pieces-of-use.js';
import type { Counters as Pair } from '@strutbook/domain/usage/since.js';
import type { Tx } from '../../platform/database/database.js';
import { fromInstant, toInstant } from '../../platform/http/instants.js';
import {
  type CounterAsk,
  type CounterSources,
  countersOfSubjects,
} from '../requirements/subject-counters.js';
import type { Subject } from '../requirements/subjects.js';
import { readClocks } from '../usage/clock-readings.js';
import { POD_RULE } from '../usage/use-facts.js';

/** A subject over a span: from after `from` (null: the beginning) up to `until` (null: now). */
export interface RunAsk {
  readonly subject: Subject;
  readonly from: Date | null;
  readonly until: Date | null;
}

/** What a subject ran over a span, clock by clock, and its counters since new before the first of it. */
export interface SubjectRuns {
  readonly spans: readonly RanSpan[];
  /** When the records of its use begin; null where it never ran. */
  readonly recordedFrom: Instant | null;
  readonly before: Pair;
  readonly inMinutes: readonly AmountRun[];
  readonly inCycles: readonly AmountRun[];
}

const EPOCH = new Date(0);

/** What these subjects ran over their spans, in a constant number of statements. */
export async function runsOfSubjects(
  tx: Tx,
  operatorId: number,
  asks: readonly RunAsk[],
  sources: CounterSources,
): Promise<readonly SubjectRuns[]> {
  const { use } = sources;
  const componentIds = asks.flatMap(({ subject }) => subject.componentId ?? []);
  const facts = await use.of(
    tx,
    operatorId,
    componentIds.map((componentId) => ({ componentId, at: null })),
  );
  const opened = await openedAt(tx, operatorId, asks);
  const ranOf = (subject: Subject): readonly RanSpan[] =>
    subject.kind === 'component'
      ? facts.exposuresOf(subject.id).map(asSpan)
      : [wholeClock(subject.id, opened.get(airframeOf(subject)) ?? EPOCH)];
  const spansOf = ({ subject, from, until }: RunAsk): readonly RanSpan[] => {
    const exposures = ranOf(subject);
    const [since, end] = [from === null ? null : toInstant(from), until === null ? null : toInstant(until)];
    return piecesOfUse({ exposures, carried: [], since, until: end });
  };
  const spans = asks.map(spansOf);
  const reading = await readClocks(
    tx,
    operatorId,
    spans.flat().flatMap(({ carrierId, from, to }) => [
      { carrierId, at: fromInstant(from) },
      { carrierId, at: to === null ? null : fromInstant(to) },
    ]),
  );
  const starts = asks.map((_, index) => fromInstant(spans[index]?.[0]?.from ?? toInstant(EPOCH)));
  const counters = await countersOfSubjects(
    tx,
    operatorId,
    asksBySubject(asks, (index) => starts[index] ?? EPOCH),
    sources,
  );
  return asks.map(({ subject }, index) => {
    const own = spans[index] ?? [];
    const ran = own.map((span) => ({
      span,
      counts: subtractCounts(
        reading({ carrierId: span.carrierId, at: span.to === null ? null : fromInstant(span.to) }),
        reading({ carrierId: span.carrierId, at: fromInstant(span.from) }),
      ),
    }));
    const inUnits = (amount: (run: (typeof ran)[number]) => Fraction | null): AmountRun[] =>
      ran.flatMap((run) => {
        const { carrierId: clock, cycleRuleId, from, to } = run.span;
        const found = amount(run);
        return found === null ? [] : [{ clock, cycleRuleId, from, to, amount: found }];
      });
    const rules: ReadonlyMap<string, CycleRule> = facts.facts.cycleRules;
    const ruleOf = (span: RanSpan) =>
      subject.kind === 'component'
        ? span.cycleRuleId === null
          ? undefined
          : rules.get(span.cycleRuleId)
        : POD_RULE;
    return {
      spans: own,
      recordedFrom: ranOf(subject)[0]?.from ?? null,
      before: counters.get(subject.id)?.at(starts[index] ?? EPOCH) ?? { minutes: null, cycles: null },
      inMinutes: inUnits(({ counts }) => fraction(counts.minutes)),
      inCycles: inUnits(({ span, counts }) => {
        const rule = ruleOf(span);
        return rule === undefined ? null : cycles(counts, rule);
      }),
    };
  });
}

function asSpan(row: {
  carrierId: string;
  ratingId: string | null;
  cycleRuleId: string | null;
  fromAt: Date;
  toAt: Date | null;
}): RanSpan {
  const { carrierId, ratingId, cycleRuleId, fromAt, toAt } = row;
  return {
    ...{ carrierId, ratingId, cycleRuleId, from: toInstant(fromAt) },
    to: toAt === null ? null : toInstant(toAt),
  };
}

/** An airframe and a position run by their own clocks since the airframe's balance, one cycle a flight. */
function wholeClock(carrierId: string, from: Date): RanSpan {
  return {
    ...{ carrierId, ratingId: null, cycleRuleId: POD_RULE.id, to: null },
    from: toInstant(from),
  };
}

function airframeOf(subject: Subject): string {
  return subject.kind === 'position' ? subject.ofAirframeId : subject.id;
}

async function openedAt(
  tx: Tx,
  operatorId: number,
  asks: readonly RunAsk[],
): Promise<ReadonlyMap<string, Date>> {
  const ids = asks.flatMap(({ subject }) => (subject.kind === 'component' ? [] : [airframeOf(subject)]));
  if (ids.length === 0) return new Map();
  const rows = await tx.opening.findMany({
    where: { operatorId, airframeId: { in: ids }, basis: 'new', voidedSeq: null },
    select: { airframeId: true, at: true },
  });
  return new Map(rows.flatMap(({ airframeId, at }) => (airframeId === null ? [] : [[airframeId, at]])));
}

/** Each subject once, with every instant at which its counters are asked for. */
function asksBySubject(asks: readonly RunAsk[], startOf: (index: number) => Date): CounterAsk[] {
  const found = new Map<string, { readonly subject: Subject; readonly instants: Date[] }>();
  for (const [index, { subject }] of asks.entries()) {
    const ask = found.get(subject.id) ?? { subject, instants: [] };
    found.set(subject.id, ask);
    ask.instants.push(startOf(index));
  }
  return [...found.values()];
}
