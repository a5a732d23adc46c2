import { fraction } from '@strutbook/domain/units/fraction.js';
import { instant } from '@strutbook/domain/units/minutes.js';
import type { CycleRule } from '@strutbook/domain/usage/cycle-rule.js';
import { type Columns, rowsOf } from '../../platform/database/columns.js';
import type { Tx } from '../../platform/database/database.js';
import { Prisma } from '../../platform/database/generated/client.js';
import {
  POD_RULE,
  type RecordedAcceptance,
  type RecordedGap,
  type StoredExposure,
  type UseFacts,
} from './use-facts.js';

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
  const pods = Prisma.sql`ARRAY(SELECT id FROM component
    WHERE operator_id = ${operatorId}::int AND id = ANY ((SELECT ids FROM asked)::uuid[]) AND kind = 'pod')`;
  const [row] = await tx.$queryRaw<{ facts: string }[]>`/* planned once */
    WITH asked AS MATERIALIZED (SELECT array_agg(id) AS ids FROM unnest(${ids}::uuid[]) AS listed (id)),
      ${exposuresSeen(operatorId)}
    SELECT ${useFactsOfAsked(operatorId, pods)}::text AS facts`;
  if (row === undefined) throw new Error('an aggregate without a row');
  return useFacts(JSON.parse(row.facts) as UseFactsJson);
}

/** For WITH, after `asked (ids)`: `seen`, the exposures of the asked components. */
export function exposuresSeen(operatorId: number): Prisma.Sql {
  return Prisma.sql`seen AS MATERIALIZED (
    SELECT * FROM exposure WHERE operator_id = ${operatorId}::int AND component_id = ANY ((SELECT ids FROM asked)::uuid[]))`;
}

/** All that the use of the asked components is made of, as JSON, from `asked` and `seen`; `pods` (a uuid[]) are those that are one. */
export function useFactsOfAsked(operatorId: number, pods: Prisma.Sql): Prisma.Sql {
  const ofAsked = Prisma.sql`operator_id = ${operatorId}::int AND component_id = ANY ((SELECT ids FROM asked)::uuid[])`;
  return Prisma.sql`json_build_object(
    'exposures', (SELECT coalesce(json_agg(json_build_array(component_ids, carrier_id, rating_id, cycle_rule_id,
        (extract(epoch FROM from_at) * 1000)::bigint, (extract(epoch FROM to_at) * 1000)::bigint,
        minutes, flights, landings, touch_and_goes, starts, aborted_take_offs) ORDER BY from_at), '[]')
      FROM (
        SELECT array_agg(component_id) AS component_ids, carrier_id, rating_id, cycle_rule_id, from_at, to_at,
               minutes, flights, landings, touch_and_goes, starts, aborted_take_offs
          FROM seen
         GROUP BY carrier_id, rating_id, cycle_rule_id, from_at, to_at, minutes, flights, landings, touch_and_goes, starts,
                  aborted_take_offs) alike),
    'openings', (SELECT json_build_object('componentId', array_agg(component_id), 'basis', array_agg(basis),
        'at', array_agg(floor(extract(epoch FROM at) / 60)::bigint), 'ratingId', array_agg(rating_id),
        'minutes', array_agg(minutes), 'cycles', array_agg(cycles), 'denominator', array_agg(cycle_denominator),
        'unshown', array_agg(CASE WHEN trace = 'not-shown' THEN json_build_object('id', id, 'act', recorded_seq::text,
          'source', source, 'note', trace_note) END))
      FROM (SELECT * FROM opening WHERE ${ofAsked} AND voided_seq IS NULL ORDER BY id) o),
    'gaps', (SELECT coalesce(json_agg(json_build_object('id', id, 'componentId', component_id,
        'fromAt', (extract(epoch FROM from_at) * 1000)::bigint, 'toAt', (extract(epoch FROM to_at) * 1000)::bigint, 'note', note)
        ORDER BY from_at), '[]')
      FROM trace_gap WHERE ${ofAsked} AND voided_seq IS NULL),
    'acceptances', (SELECT coalesce(json_agg(json_build_object('componentId', component_id, 'by', accepted_by,
        'reference', reference, 'traceGapId', coalesce(trace_gap_id, opening_id), 'cycles', cycles, 'minutes', minutes) ORDER BY recorded_seq), '[]')
      FROM gap_acceptance WHERE ${ofAsked} AND voided_seq IS NULL),
    'rules', (SELECT coalesce(json_agg(json_build_object('id', id, 'perFlight', per_flight, 'perLanding', per_landing,
        'perTouchAndGo', per_touch_and_go, 'perStart', per_start, 'perAbortedTakeOff', per_aborted_take_off,
        'denominator', denominator)), '[]') FROM cycle_rule WHERE operator_id = ${operatorId}::int),
    'pods', to_json(${pods}))`;
}

/**
 * Components with an exposure that is alike: hundreds of parts in one engine share theirs. Their ids, then carrier, rating,
 * rule, from and to (milliseconds since 1970), minutes, flights, landings, touch-and-goes, starts, aborted take-offs.
 */
type ExposureRow = readonly [
  readonly string[],
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

interface OpeningRow {
  readonly componentId: string;
  readonly basis: string;
  /** Minutes since 1970. */
  readonly at: number;
  readonly ratingId: string | null;
  readonly minutes: number | null;
  readonly cycles: number | null;
  readonly denominator: number;
  /** Where its trace is not shown: its row, the act it came by, and what is missing. */
  readonly unshown: {
    readonly id: string;
    readonly act: string;
    readonly source: string;
    readonly note: string;
  } | null;
}

/** The JSON of `useFactsOfAsked`. */
export interface UseFactsJson {
  readonly exposures: readonly ExposureRow[];
  readonly openings: Columns<OpeningRow>;
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

/** The facts of such JSON. Total. */
export function useFacts({ exposures, openings, gaps, acceptances, rules, pods }: UseFactsJson): UseFacts {
  const podIds = new Set(pods);
  const opened = rowsOf(openings);
  const unshown = unshownOpenings(opened, acceptances);
  return {
    exposures: exposures.flatMap((row) => exposuresOf(row, podIds)),
    openings: opened.map(({ componentId, at, basis, ratingId, minutes, cycles, denominator }) => ({
      componentId,
      basis,
      at: instant(at),
      ratingId,
      minutes,
      cycles: cycles === null ? null : fraction(cycles, denominator),
    })),
    gaps: [
      ...unshown.filter((gap) => gap.basis === 'new'),
      ...gaps.map(({ id, componentId, fromAt, toAt, note }) => ({
        id,
        componentId,
        fromAt: new Date(fromAt),
        toAt: new Date(toAt),
        note,
        accepted: acceptances.some(
          (row) => row.componentId === componentId && (row.traceGapId === null || row.traceGapId === id),
        ),
      })),
    ],
    unshownSince: unshown.filter((gap) => gap.basis !== 'new'),
    acceptances,
    cycleRules: new Map([POD_RULE, ...rules].map((rule) => [rule.id, rule])),
  };
}

/** An opening whose trace is not shown, once, though it has a row a rating: a gap from the beginning to its instant. */
function unshownOpenings(
  openings: readonly OpeningRow[],
  acceptances: readonly RecordedAcceptance[],
): (RecordedGap & { readonly basis: string })[] {
  const found = new Map<string, (RecordedGap & { readonly basis: string }) & { ids: string[] }>();
  for (const { componentId, basis, at, unshown } of openings) {
    if (unshown === null) continue;
    const key = `${componentId} ${basis} ${unshown.act}`;
    const known = found.get(key);
    if (known !== undefined) known.ids.push(unshown.id);
    else
      found.set(key, {
        ...{ id: unshown.id, ids: [unshown.id], componentId, basis },
        fromAt: new Date(0),
        toAt: new Date(at * 60_000),
        note: `What was used before the balance from ${unshown.source} is not shown: ${unshown.note}`,
        accepted: false,
      });
  }
  return [...found.values()].map(({ ids, ...gap }) => {
    const own = acceptances.findLast((row) => row.traceGapId !== null && ids.includes(row.traceGapId));
    const whole = acceptances.some((row) => row.componentId === gap.componentId && row.traceGapId === null);
    return { ...gap, id: own?.traceGapId ?? gap.id, accepted: own !== undefined || whole };
  });
}

function exposuresOf(
  [componentIds, carrierId, ratingId, ruleId, from, to, ...amounts]: ExposureRow,
  podIds: ReadonlySet<string>,
): StoredExposure[] {
  const [minutes, flights, landings, touchAndGoes, starts, abortedTakeOffs] = amounts;
  const alike = {
    carrierId,
    ratingId,
    fromAt: new Date(from),
    toAt: to === null ? null : new Date(to),
    counts: { minutes, flights, landings, touchAndGoes, starts, abortedTakeOffs },
  };
  return componentIds.map((componentId) => ({
    ...alike,
    componentId,
    cycleRuleId: podIds.has(componentId) ? POD_RULE.id : ruleId,
  }));
}
