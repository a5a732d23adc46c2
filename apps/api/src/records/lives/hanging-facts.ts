import type { UnfitComponent } from '@strutbook/domain/serviceability/unfit.js';
import type { Tx } from '../../platform/database/database.js';
import { Prisma } from '../../platform/database/generated/client.js';
import { type UnfitRow, unfitOf, unfitRows } from '../serviceability/unfit.sql.js';
import {
  FILLED_SLOTS,
  type FilledSlot,
  filledBeneath,
  filledSlots,
  inEngine,
  type SlotColumns,
} from '../stays/structure.sql.js';
import { clocksOfSeen, type ReadingsJson, readingsOf } from '../usage/clock-readings.js';
import { exposuresSeen, type UseFactsJson, useFacts, useFactsOfAsked } from '../usage/load-use-facts.js';
import { type Uses, usesOf } from '../usage/use.js';
import { ALL_HANGING, headsOf, heldSlots, NO_POSITIONS, PART_NUMBERS, PODS, TOPS } from './hanging.sql.js';
import { type DayFacts, dayFactsOf } from './life-days.js';
import { type LimitColumns, limitsFor, type RecordedLimit, recordedLimits } from './life-limits.js';

/** A component that was asked for, or an engine that limited parts are in, as it is known at the instant asked. */
export interface Head {
  readonly id: string;
  readonly kind: string;
  readonly serialNumber: string;
  readonly partNumber: string;
  readonly description: string;
  readonly engineModelId: string | null;
  readonly designation: string | null;
  readonly ratingId: string | null;
  readonly ratingCode: string | null;
}

/** Components with all that hangs beneath them, and everything the lives of it are judged by. */
export interface HangingFacts {
  /** The instant; null: now. */
  readonly at: Date | null;
  /** The slots of the airframe's positions, where one was asked for. */
  readonly positions: readonly HeldSlot[];
  /** The components that were asked for or hang on the airframe. */
  readonly tops: readonly string[];
  /** All slots beneath, parents before children. */
  readonly slots: readonly FilledSlot[];
  readonly heads: ReadonlyMap<string, Head>;
  /** What of all this its tag, or a shop it was not returned from, forbids to be fitted. */
  readonly unfit: ReadonlyMap<string, UnfitComponent>;
  /** The engine each of the tops is in, where it is in one. */
  readonly engineOf: ReadonlyMap<string, string>;
  /** The use of the tops and of all limited parts beneath them, at the instant alone. */
  readonly uses: Uses;
  /** The limits of those parts. */
  readonly limits: readonly RecordedLimit[];
  /** What the days of their calendar lives come from. */
  readonly dayFacts: readonly DayFacts[];
  /** The life method of each engine model. */
  readonly methods: ReadonlyMap<string, string | null>;
}

/** A slot of a position with what is in it. */
export interface HeldSlot {
  readonly positionId: string;
  readonly number: number;
  readonly slotKind: string;
  readonly componentId: string | null;
}

/**
 * What is asked for: what hangs on an airframe, or components, now (null) or at an instant, with ratings that count
 * instead of those recorded.
 */
export interface HangingAsk {
  readonly of: { readonly airframeId: string } | { readonly componentIds: readonly string[] };
  readonly at: Date | null;
  readonly willRunAt?: ReadonlyMap<string, string> | undefined;
}

interface HangingJson {
  readonly positions: readonly HeldSlot[];
  readonly tops: readonly string[];
  readonly slots: SlotColumns;
  readonly heads: readonly Head[];
  readonly engines: readonly (readonly [string, string])[];
  readonly models: readonly (readonly [string, string | null])[];
  readonly use: UseFactsJson;
  readonly clocks: ReadingsJson;
  readonly limits: LimitColumns;
  readonly unfit: readonly UnfitRow[];
  readonly dayFacts: readonly DayFacts[];
}

/** Reads all this in one statement, as JSON: thousands of rows would take longer to take in than to find. */
export async function loadHangingFacts(tx: Tx, operatorId: number, ask: HangingAsk): Promise<HangingFacts> {
  const { of, at, willRunAt = new Map() } = ask;
  const tree = { operatorId, at, componentIds: TOPS };
  const [row] = await tx.$queryRaw<HangingJson[]>`/* planned once */
    WITH RECURSIVE held AS MATERIALIZED (${'airframeId' in of ? heldSlots(operatorId, of.airframeId, at) : NO_POSITIONS}),
    top AS MATERIALIZED (SELECT ${
      'airframeId' in of
        ? Prisma.sql`component_id AS id FROM held WHERE component_id IS NOT NULL`
        : Prisma.sql`unnest(${[...of.componentIds]}::uuid[]) AS id`
    }),
    ${filledBeneath(tree)}, ${inEngine(tree)}, asked AS MATERIALIZED (
      SELECT ${TOPS} || ARRAY(SELECT filled_by FROM filled WHERE part_limited) AS ids
    ), ${exposuresSeen(operatorId)}, head AS MATERIALIZED (${headsOf(operatorId, at, willRunAt)})
    SELECT
      (SELECT coalesce(json_agg(json_build_object('positionId', position_id, 'number', number,
          'slotKind', slot_kind, 'componentId', component_id) ORDER BY number, slot_kind), '[]') FROM held) AS positions,
      to_json(${TOPS}) AS tops,
      ${FILLED_SLOTS} AS slots,
      (SELECT coalesce(json_agg(row_to_json(head)), '[]') FROM head) AS heads,
      (SELECT coalesce(json_agg(json_build_array(id, engine_id)), '[]') FROM in_engine) AS engines,
      (SELECT coalesce(json_agg(json_build_array(id, life_method)), '[]')
        FROM engine_model WHERE operator_id = ${operatorId}::int) AS models,
      ${useFactsOfAsked(operatorId, PODS)} AS use,
      ${clocksOfSeen(operatorId, at)} AS clocks,
      ${limitsFor(operatorId, PART_NUMBERS)} AS limits,
      ${unfitRows({ operatorId, at, componentIds: ALL_HANGING })} AS unfit,
      ${dayFactsOf(operatorId, Prisma.sql`(SELECT ids FROM asked)::uuid[]`, at)} AS "dayFacts"`;
  if (row === undefined) throw new Error('an aggregate without a row');
  const { unfit, slots, heads, engines, models, use, clocks, limits, ...rest } = row;
  return {
    ...rest,
    at,
    unfit: unfitOf(unfit),
    slots: filledSlots(slots),
    heads: new Map(heads.map((head) => [head.id, head])),
    engineOf: new Map(engines),
    uses: usesOf(useFacts(use), readingsOf(clocks)),
    limits: recordedLimits(limits),
    methods: new Map(models),
  };
}
