import { fraction } from '@strutbook/domain/units/fraction.js';
import { instant } from '@strutbook/domain/units/minutes.js';
import { type Counts, subtractCounts, zeroCounts } from '@strutbook/domain/usage/counts.js';
import type { CycleRule } from '@strutbook/domain/usage/cycle-rule.js';
import type { Opening } from '@strutbook/domain/usage/totals.js';
import type { Tx } from '../../platform/database/database.js';

/** An exposure as stored: a closed one with its amounts, an open one with the clock's reading at its start. */
export interface StoredExposure {
  readonly componentId: string;
  readonly carrierId: string;
  readonly ratingId: string | null;
  readonly cycleRuleId: string | null;
  readonly fromAt: Date;
  readonly toAt: Date | null;
  readonly counts: Counts;
}

/** A span the records of a component do not cover, and whether somebody accepted the worst case for it. */
export interface RecordedGap {
  readonly id: string;
  readonly componentId: string;
  readonly fromAt: Date;
  readonly toAt: Date;
  readonly note: string;
  readonly accepted: boolean;
}

/** A recorded acceptance of the worst case. */
export interface RecordedAcceptance {
  readonly componentId: string;
  readonly by: string;
  readonly reference: string;
  /** The gap it is for; null for an unknown rating and all gaps without their own. */
  readonly traceGapId: string | null;
  /** The most that may have been used; null when it doesn't say. */
  readonly cycles: number | null;
  readonly minutes: number | null;
}

/** Everything recorded that the use of some components is made of. */
export interface UseFacts {
  readonly exposures: readonly StoredExposure[];
  readonly openings: readonly (Opening & { readonly componentId: string; readonly basis: string })[];
  readonly gaps: readonly RecordedGap[];
  readonly acceptances: readonly RecordedAcceptance[];
  readonly cycleRules: ReadonlyMap<string, CycleRule>;
}

/** Stands for the rule of a pod, whose cycles are the flights it was on. */
export const POD_RULE: CycleRule = {
  id: 'one-per-flight',
  perFlight: 1,
  perLanding: 0,
  perTouchAndGo: 0,
  perStart: 0,
  perAbortedTakeOff: 0,
  denominator: 1,
};

interface FactRows {
  readonly exposures: readonly ExposureRow[];
  readonly openings: readonly {
    readonly componentId: string;
    readonly basis: string;
    readonly at: number;
    readonly ratingId: string | null;
    readonly minutes: number | null;
    readonly cycles: number | null;
    readonly denominator: number;
  }[];
  readonly gaps: readonly {
    readonly id: string;
    readonly componentId: string;
    readonly fromAt: number;
    readonly toAt: number;
    readonly note: string;
  }[];
  readonly acceptances: readonly RecordedAcceptance[];
  readonly rules: readonly CycleRule[];
  readonly pods: readonly string[];
}

/** Component, carrier, rating, rule, from, to, then minutes, flights, landings, touch-and-goes, starts, aborted take-offs. */
type ExposureRow = readonly [
  string,
  string,
  string | null,
  string | null,
  number,
  number | null,
  number,
  number,
  number,
  number,
  number,
  number,
];

/**
 * Loads the facts for these components in one statement. They come as one text: hundreds of parts as rows of many
 * columns would take longer to take in than to find.
 */
export async function loadUseFacts(
  tx: Tx,
  operatorId: number,
  componentIds: readonly string[],
): Promise<UseFacts> {
  const ids = [...componentIds];
  const [row] = await tx.$queryRaw<{ facts: string }[]>`/* planned once */
    WITH asked AS MATERIALIZED (SELECT array_agg(id) AS ids FROM unnest(${ids}::uuid[]) AS listed (id))
    SELECT json_build_object(
      'exposures', (SELECT coalesce(json_agg(json_build_array(component_id, carrier_id, rating_id, cycle_rule_id,
          (extract(epoch FROM from_at) * 1000)::bigint, (extract(epoch FROM to_at) * 1000)::bigint,
          minutes, flights, landings, touch_and_goes, starts, aborted_take_offs) ORDER BY from_at), '[]')
         FROM exposure WHERE operator_id = ${operatorId}::int AND component_id = ANY ((SELECT ids FROM asked)::uuid[])),
      'openings', (SELECT coalesce(json_agg(json_build_object('componentId', component_id, 'basis', basis,
          'at', floor(extract(epoch FROM at) / 60)::bigint, 'ratingId', rating_id, 'minutes', minutes, 'cycles', cycles,
          'denominator', cycle_denominator) ORDER BY id), '[]')
         FROM opening WHERE operator_id = ${operatorId}::int AND component_id = ANY ((SELECT ids FROM asked)::uuid[]) AND voided_seq IS NULL),
      'gaps', (SELECT coalesce(json_agg(json_build_object('id', id, 'componentId', component_id,
          'fromAt', (extract(epoch FROM from_at) * 1000)::bigint, 'toAt', (extract(epoch FROM to_at) * 1000)::bigint, 'note', note)
          ORDER BY from_at), '[]')
         FROM trace_gap WHERE operator_id = ${operatorId}::int AND component_id = ANY ((SELECT ids FROM asked)::uuid[]) AND voided_seq IS NULL),
      'acceptances', (SELECT coalesce(json_agg(json_build_object('componentId', component_id, 'by', accepted_by,
          'reference', reference, 'traceGapId', trace_gap_id, 'cycles', cycles, 'minutes', minutes) ORDER BY recorded_seq), '[]')
         FROM gap_acceptance WHERE operator_id = ${operatorId}::int AND component_id = ANY ((SELECT ids FROM asked)::uuid[]) AND voided_seq IS NULL),
      'rules', (SELECT coalesce(json_agg(json_build_object('id', id, 'perFlight', per_flight, 'perLanding', per_landing,
          'perTouchAndGo', per_touch_and_go, 'perStart', per_start, 'perAbortedTakeOff', per_aborted_take_off,
          'denominator', denominator)), '[]') FROM cycle_rule WHERE operator_id = ${operatorId}::int),
      'pods', (SELECT coalesce(json_agg(id), '[]') FROM component
         WHERE operator_id = ${operatorId}::int AND id = ANY ((SELECT ids FROM asked)::uuid[]) AND kind = 'pod'))::text AS facts`;
  return useFacts(JSON.parse(row?.facts ?? '{}') as FactRows);
}

function useFacts({ exposures, openings, gaps, acceptances, rules, pods }: FactRows): UseFacts {
  const podIds = new Set(pods);
  return {
    exposures: exposures.map((row) => exposureOf(row, podIds)),
    openings: openings.map(({ componentId, at, basis, ratingId, minutes, cycles, denominator }) => ({
      componentId,
      basis,
      at: instant(at),
      ratingId,
      minutes,
      cycles: cycles === null ? null : fraction(cycles, denominator),
    })),
    gaps: gaps.map(({ id, componentId, fromAt, toAt, note }) => ({
      id,
      componentId,
      fromAt: new Date(fromAt),
      toAt: new Date(toAt),
      note,
      accepted: acceptances.some(
        (row) => row.componentId === componentId && (row.traceGapId === null || row.traceGapId === id),
      ),
    })),
    acceptances,
    cycleRules: new Map([POD_RULE, ...rules].map((rule) => [rule.id, rule])),
  };
}

function exposureOf(
  [componentId, carrierId, ratingId, ruleId, from, to, ...counts]: ExposureRow,
  podIds: ReadonlySet<string>,
): StoredExposure {
  const [minutes, flights, landings, touchAndGoes, starts, abortedTakeOffs] = counts;
  return {
    componentId,
    carrierId,
    ratingId,
    cycleRuleId: podIds.has(componentId) ? POD_RULE.id : ruleId,
    fromAt: new Date(from),
    toAt: to === null ? null : new Date(to),
    counts: { minutes, flights, landings, touchAndGoes, starts, abortedTakeOffs },
  };
}

/** What an exposure had seen of its clock by an instant (null: by now); nothing before it began. */
export function seenBy(
  exposure: StoredExposure,
  at: Date | null,
  reading: (ask: { carrierId: string; at: Date | null }) => Counts,
): Counts {
  const { carrierId, fromAt, toAt, counts } = exposure;
  if (at !== null && at <= fromAt) return zeroCounts;
  if (toAt !== null && (at === null || toAt <= at)) return counts;
  const start = toAt === null ? counts : reading({ carrierId, at: fromAt });
  return subtractCounts(reading({ carrierId, at }), start);
}
