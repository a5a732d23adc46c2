import type { LifeDays } from '@strutbook/domain/life/calendar-life.js';
import type { Tx } from '../../platform/database/database.js';
import { Prisma } from '../../platform/database/generated/client.js';
import { dayIn } from '../stays/day-zone.js';

/** What the days of a calendar life come from. */
export interface DayFacts {
  readonly componentId: string;
  readonly manufacturedOn: string | null;
  /** As recorded, for what came here used. */
  readonly firstInstalledOn: string | null;
  /** When it was first put in by these records; null while it is only known from papers, or never was. Milliseconds since 1970. */
  readonly firstInstalledAt: number | null;
  /** Whether its records say that it came here unused. */
  readonly unused: boolean;
  readonly overhauledAt: number | null;
  /** Of the airframe it runs on; null where it hangs on none. */
  readonly dayZone: string | null;
}

/**
 * The facts of the calendar lives among components (a uuid[]), as JSON: only of those whose part number has one.
 *
 * What came here used was installed before, and these records do not say when: then only the recorded day counts.
 */
export function dayFactsOf(
  operatorId: number,
  componentIds: Prisma.Sql,
  at: Date | null,
  withDays: Prisma.Sql = Prisma.sql`false`,
): Prisma.Sql {
  const then = at === null ? Prisma.sql`'infinity'::timestamptz` : Prisma.sql`${at}::timestamptz`;
  return Prisma.sql`(SELECT coalesce(json_agg(json_build_object('componentId', k.id, 'manufacturedOn', k.manufactured_on,
      'firstInstalledOn', k.first_installed_on,
      'firstInstalledAt', CASE WHEN NOT EXISTS (SELECT FROM opening o WHERE o.operator_id = k.operator_id AND o.component_id = k.id
          AND o.basis = 'new' AND o.voided_seq IS NULL AND (o.cycles IS DISTINCT FROM 0 OR o.minutes IS DISTINCT FROM 0))
        THEN (SELECT (extract(epoch FROM min(s.from_at)) * 1000)::bigint FROM stay s WHERE s.operator_id = k.operator_id
          AND s.component_id = k.id AND s.slot_id IS NOT NULL AND s.voided_seq IS NULL AND s.from_at <= ${then}) END,
      'unused', EXISTS (SELECT FROM opening o WHERE o.operator_id = k.operator_id AND o.component_id = k.id
          AND o.basis = 'new' AND o.voided_seq IS NULL AND o.cycles = 0 AND o.minutes = 0)
        AND NOT EXISTS (SELECT FROM opening o WHERE o.operator_id = k.operator_id AND o.component_id = k.id
          AND o.basis = 'new' AND o.voided_seq IS NULL AND (o.cycles IS DISTINCT FROM 0 OR o.minutes IS DISTINCT FROM 0)),
      'overhauledAt', (SELECT (extract(epoch FROM max(r.at)) * 1000)::bigint FROM reset r WHERE r.operator_id = k.operator_id
          AND r.component_id = k.id AND r.kind = 'overhaul' AND r.voided_seq IS NULL AND r.at <= ${then}),
      'dayZone', (SELECT a.day_zone FROM exposure x JOIN carrier c ON c.operator_id = x.operator_id AND c.id = x.carrier_id
          JOIN airframe a ON a.operator_id = c.operator_id AND a.id = c.airframe_id
         WHERE x.operator_id = k.operator_id AND x.component_id = k.id AND x.from_at <= ${then}
           AND (x.to_at IS NULL OR x.to_at > ${then}) ORDER BY x.from_at DESC LIMIT 1))), '[]')
    FROM component k
   WHERE k.operator_id = ${operatorId}::int AND k.id = ANY (${componentIds}) AND k.life_limited
     AND (${withDays} OR k.part_number IN (SELECT l.part_number FROM life_limit l
           WHERE l.operator_id = ${operatorId}::int AND l.calendar_span IS NOT NULL AND l.voided_seq IS NULL)))`;
}

/** The same of components by their ids; of all of them, whatever is recorded of their part numbers, when told so. */
export async function loadDayFacts(
  tx: Tx,
  operatorId: number,
  {
    componentIds,
    at,
    withDays,
  }: { readonly componentIds: readonly string[]; readonly at: Date | null; readonly withDays: boolean },
): Promise<DayFacts[]> {
  const ids = Prisma.sql`${[...componentIds]}::uuid[]`;
  const [row] = await tx.$queryRaw<{ facts: DayFacts[] }[]>`/* planned once */
    SELECT ${dayFactsOf(operatorId, ids, at, Prisma.sql`${withDays}::boolean`)} AS facts`;
  return row?.facts ?? [];
}

/** The days a part's calendar lives count from, in the zone of the airframe it is on, else UTC; and the day it is there. Total. */
export function lifeDays(facts: DayFacts, now: Date): LifeDays {
  const zone = facts.dayZone ?? 'UTC';
  const dayOf = (at: number | null) => (at === null ? null : dayIn(zone, new Date(at)));
  return {
    today: dayIn(zone, now),
    new: facts.manufacturedOn,
    'first-installation':
      facts.firstInstalledOn ?? dayOf(facts.firstInstalledAt) ?? (facts.unused ? 'not-yet' : null),
    overhaul: dayOf(facts.overhauledAt),
  };
}
