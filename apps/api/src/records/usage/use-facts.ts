import { fraction } from '@strutbook/domain/units/fraction.js';
import { type Counts, subtractCounts, zeroCounts } from '@strutbook/domain/usage/counts.js';
import type { CycleRule } from '@strutbook/domain/usage/cycle-rule.js';
import type { Opening } from '@strutbook/domain/usage/totals.js';
import type { Tx } from '../../platform/database/database.js';
import { toInstant } from '../../platform/http/instants.js';

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

/** Loads the facts for these components in a constant number of statements. */
export async function loadUseFacts(
  tx: Tx,
  operatorId: number,
  componentIds: readonly string[],
): Promise<UseFacts> {
  const where = { operatorId, componentId: { in: [...componentIds] } };
  const exposures = await tx.exposure.findMany({ where, orderBy: { fromAt: 'asc' } });
  const openings = await tx.opening.findMany({ where: { ...where, voidedSeq: null } });
  const gaps = await tx.traceGap.findMany({
    where: { ...where, voidedSeq: null },
    orderBy: { fromAt: 'asc' },
  });
  const acceptances = await tx.gapAcceptance.findMany({
    where: { ...where, voidedSeq: null },
    orderBy: { recordedSeq: 'asc' },
  });
  const rules = await tx.cycleRule.findMany({ where: { operatorId } });
  const pods = await tx.component.findMany({
    where: { operatorId, id: { in: [...componentIds] }, kind: 'pod' },
    select: { id: true },
  });
  const podIds = new Set(pods.map((pod) => pod.id));
  return {
    exposures: exposures.map((row) => ({
      componentId: row.componentId,
      carrierId: row.carrierId,
      ratingId: row.ratingId,
      cycleRuleId: podIds.has(row.componentId) ? POD_RULE.id : row.cycleRuleId,
      fromAt: row.fromAt,
      toAt: row.toAt,
      counts: {
        minutes: Number(row.minutes),
        flights: Number(row.flights),
        landings: Number(row.landings),
        touchAndGoes: Number(row.touchAndGoes),
        starts: Number(row.starts),
        abortedTakeOffs: Number(row.abortedTakeOffs),
      },
    })),
    openings: openings.flatMap(({ componentId, at, basis, ratingId, minutes, cycles, cycleDenominator }) =>
      componentId === null
        ? []
        : {
            componentId,
            basis,
            at: toInstant(at),
            ratingId,
            minutes: minutes === null ? null : Number(minutes),
            cycles: cycles === null ? null : fraction(cycles, BigInt(cycleDenominator)),
          },
    ),
    gaps: gaps.map(({ id, componentId, fromAt, toAt, note }) => ({
      id,
      componentId,
      fromAt,
      toAt,
      note,
      accepted: acceptances.some(
        (row) => row.componentId === componentId && (row.traceGapId === null || row.traceGapId === id),
      ),
    })),
    acceptances: acceptances.map(({ componentId, acceptedBy, reference, traceGapId, cycles, minutes }) => ({
      componentId,
      by: acceptedBy,
      reference,
      traceGapId,
      cycles: cycles === null ? null : Number(cycles),
      minutes: minutes === null ? null : Number(minutes),
    })),
    cycleRules: new Map([POD_RULE, ...rules].map((rule) => [rule.id, rule])),
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
