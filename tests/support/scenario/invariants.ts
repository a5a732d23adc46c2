import { withClient } from '../database.js';

/** Questions whose answer is empty while the projections are what the facts make them. Each row is a violation. */
const INVARIANTS: Readonly<Record<string, string>> = {
  'each month holds what its flights, exceptions, runs and readings add up to': `
    WITH posted AS (
      SELECT operator_id, airframe_id AS carrier_id, month_of(landing_at) AS month, sum(minutes) AS minutes, count(*) AS flights,
             sum(1 + touch_and_goes) AS landings, sum(starts) AS starts
        FROM flight WHERE voided_seq IS NULL GROUP BY 1, 2, 3
      UNION ALL
      SELECT operator_id, position_id, month_of(landing_at), -sum(minutes), -sum(flights), -sum(landings), -sum(starts)
        FROM flight_exception WHERE voided_seq IS NULL GROUP BY 1, 2, 3
      UNION ALL
      SELECT operator_id, carrier_id, month_of(ended_at), sum(counted_minutes), 0, 0, sum(starts)
        FROM ground_run WHERE voided_seq IS NULL GROUP BY 1, 2, 3
      UNION ALL
      SELECT operator_id, carrier_id, month_of(at), sum(minutes), 0, 0, sum(starts) FROM counter_posting GROUP BY 1, 2, 3),
    added AS (SELECT operator_id, carrier_id, month, sum(minutes) AS minutes, sum(flights) AS flights,
                     sum(landings) AS landings, sum(starts) AS starts FROM posted GROUP BY 1, 2, 3)
    SELECT b.*, p.minutes AS posted FROM bucket b FULL JOIN added p USING (operator_id, carrier_id, month)
     WHERE (coalesce(b.minutes, 0), coalesce(b.flights, 0), coalesce(b.landings, 0), coalesce(b.starts, 0))
        <> (coalesce(p.minutes, 0), coalesce(p.flights, 0), coalesce(p.landings, 0), coalesce(p.starts, 0))`,
  'each clock reads what its months add up to': `
    SELECT c.id, c.minutes, sum(b.minutes) FROM carrier c LEFT JOIN bucket b ON b.operator_id = c.operator_id AND b.carrier_id = c.id
     GROUP BY c.operator_id, c.id
    HAVING (c.minutes, c.flights, c.landings, c.touch_and_goes, c.starts, c.aborted_take_offs) <> (coalesce(sum(b.minutes), 0),
      coalesce(sum(b.flights), 0), coalesce(sum(b.landings), 0), coalesce(sum(b.touch_and_goes), 0), coalesce(sum(b.starts), 0),
      coalesce(sum(b.aborted_take_offs), 0))`,
  'each exposure saw its clock at its end less at its start, or begins at the reading of its start': `
    SELECT e.* FROM exposure e, LATERAL clock_at(e.operator_id, e.carrier_id, e.from_at) AS s,
           LATERAL clock_at(e.operator_id, e.carrier_id, coalesce(e.to_at, e.from_at)) AS t
     WHERE (e.minutes, e.flights, e.landings, e.touch_and_goes, e.starts, e.aborted_take_offs) <>
       CASE WHEN e.to_at IS NULL THEN (s.minutes, s.flights, s.landings, s.touch_and_goes, s.starts, s.aborted_take_offs)
            ELSE (t.minutes - s.minutes, t.flights - s.flights, t.landings - s.landings, t.touch_and_goes - s.touch_and_goes,
                  t.starts - s.starts, t.aborted_take_offs - s.aborted_take_offs) END`,
  'nobody flies twice at once': `
    SELECT a.id, b.id FROM flight a JOIN flight b ON b.operator_id = a.operator_id AND b.airframe_id = a.airframe_id AND b.id > a.id
       AND a.take_off_at < b.landing_at AND b.take_off_at < a.landing_at
     WHERE a.voided_seq IS NULL AND b.voided_seq IS NULL`,
  'nothing is in two places, and no place holds two': `
    SELECT a.id, b.id FROM stay a JOIN stay b ON b.operator_id = a.operator_id AND b.id > a.id
       AND (b.component_id = a.component_id OR b.slot_id = a.slot_id)
       AND a.from_at < coalesce(b.to_at, 'infinity') AND b.from_at < coalesce(a.to_at, 'infinity')
     WHERE a.voided_seq IS NULL AND b.voided_seq IS NULL`,
  'every act was answered, and has its entry in the journal': `
    SELECT a.key, a.status FROM act a
     WHERE a.status IS NULL OR NOT EXISTS (SELECT FROM journal_entry j
       WHERE j.operator_id = a.operator_id AND j.person_id = a.person_id AND j.body::jsonb ->> 'key' = a.key)`,
};

/** What is not as it must always be, by the promise it breaks; empty when all hold. Read as a superuser, by SQL alone. */
export function brokenInvariants(adminUrl: string): Promise<Readonly<Record<string, readonly object[]>>> {
  return withClient(adminUrl, async (client) => {
    const broken: Record<string, readonly object[]> = {};
    for (const [promise, sql] of Object.entries(INVARIANTS)) {
      const { rows } = await client.query<object>(sql);
      if (rows.length > 0) broken[promise] = rows.slice(0, 5);
    }
    return broken;
  });
}
