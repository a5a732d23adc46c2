import { type Fraction, fraction } from '@strutbook/domain/units/fraction.js';
import type { Counts } from '@strutbook/domain/usage/counts.js';
import { subtractCounts } from '@strutbook/domain/usage/counts.js';
import { type CycleRule, cycles } from '@strutbook/domain/usage/cycle-rule.js';
import type { Tx } from '../../platform/database/database.js';
import { readClocks } from './clock-readings.js';

const DAYS = 90;

/** A clock as it stood at an instant, and what it counted in the 90 days before. */
export interface RunningClock {
  readonly carrierId: string;
  readonly airframeId: string | null;
  readonly dayZone: string;
  readonly reading: Counts;
  readonly usedIn90Days: Counts;
}

/** These clocks at an instant (null: now, which `now` names), in a constant number of statements. */
export async function runningClocks(
  tx: Tx,
  operatorId: number,
  carrierIds: readonly string[],
  { at, now }: { readonly at: Date | null; readonly now: Date },
): Promise<ReadonlyMap<string, RunningClock>> {
  if (carrierIds.length === 0) return new Map();
  const ids = [...new Set(carrierIds)];
  const carriers = await tx.carrier.findMany({
    where: { operatorId, id: { in: ids } },
    select: { id: true, kind: true, airframeId: true, airframe: { select: { dayZone: true } } },
  });
  const above = await airframesOfCounters(
    tx,
    operatorId,
    carriers.filter((carrier) => carrier.kind === 'apu-counter').map((carrier) => carrier.id),
  );
  const before = new Date((at ?? now).getTime() - DAYS * 86_400_000);
  const reading = await readClocks(
    tx,
    operatorId,
    ids.flatMap((carrierId) => [
      { carrierId, at },
      { carrierId, at: before },
    ]),
  );
  return new Map(
    carriers.map(({ id, airframeId, airframe }) => {
      const present = reading({ carrierId: id, at });
      const usedIn90Days = subtractCounts(present, reading({ carrierId: id, at: before }));
      return [
        id,
        {
          carrierId: id,
          airframeId: airframeId ?? above.get(id)?.airframeId ?? null,
          dayZone: (airframe ?? above.get(id))?.dayZone ?? 'UTC',
          reading: present,
          usedIn90Days,
        },
      ];
    }),
  );
}

/** The airframes these auxiliary power units hang on now: days are counted there. */
async function airframesOfCounters(
  tx: Tx,
  operatorId: number,
  componentIds: readonly string[],
): Promise<ReadonlyMap<string, { readonly airframeId: string; readonly dayZone: string }>> {
  if (componentIds.length === 0) return new Map();
  const rows = await tx.$queryRaw<{ id: string; airframeId: string; dayZone: string }[]>`
    SELECT st.component_id AS id, a.id AS "airframeId", a.day_zone AS "dayZone" FROM stay st
      JOIN slot s ON s.operator_id = st.operator_id AND s.id = st.slot_id
      JOIN position p ON p.operator_id = s.operator_id AND p.id = s.position_id
      JOIN airframe a ON a.operator_id = p.operator_id AND a.id = p.airframe_id
     WHERE st.operator_id = ${operatorId}::int AND st.component_id = ANY (${[...componentIds]}::uuid[])
       AND st.voided_seq IS NULL AND st.to_at IS NULL`;
  return new Map(rows.map(({ id, ...above }) => [id, above]));
}

/** The average daily use on a clock, exact; cycles null where no rule says what one is. Total. */
export function dailyUse(
  clock: RunningClock | undefined,
  rule: CycleRule | undefined,
): { readonly minutes: Fraction | null; readonly cycles: Fraction | null } {
  if (clock === undefined) return { minutes: null, cycles: null };
  const { usedIn90Days } = clock;
  return {
    minutes: fraction(usedIn90Days.minutes, DAYS),
    cycles: rule === undefined ? null : perDay(cycles(usedIn90Days, rule)),
  };
}

function perDay(used: Fraction): Fraction {
  return fraction(used.num, used.den * BigInt(DAYS));
}
