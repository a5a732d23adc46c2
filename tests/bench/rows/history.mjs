import assert from 'node:assert/strict';
import { airframe, PERSON } from '../ids.mjs';
import { ACTOR } from '../open-app.mjs';

const CURSOR = `DECLARE by_hand NO SCROLL CURSOR FOR
  SELECT to_char(f.landing_at AT TIME ZONE 'UTC', 'YYYY-MM-DD"T"HH24:MI"Z"') AS at,
         to_char(f.take_off_at AT TIME ZONE 'UTC', 'YYYY-MM-DD"T"HH24:MI"Z"') AS take_off, f.log_page, f.from_station, f.to_station,
         f.minutes, f.recorded_seq, to_char(j.recorded_at AT TIME ZONE 'UTC', 'YYYY-MM-DD"T"HH24:MI"Z"') AS recorded, p.full_name,
         left(encode(j.hash, 'hex'), 8) AS hash
    FROM flight f JOIN journal_entry j ON j.operator_id = 1 AND j.number = f.recorded_seq
    LEFT JOIN person p ON p.operator_id = 1 AND p.id = j.person_id
   WHERE f.operator_id = 1 AND f.airframe_id = $1 AND f.voided_seq IS NULL ORDER BY f.landing_at, f.recorded_seq, f.id`;

/** The flights of an airframe as lines of its history, by a cursor and JSON.stringify, thousand by thousand. */
async function byHand(client, airframeId) {
  const parts = [];
  let [minutes, cycles] = [0, 0];
  await client.query('BEGIN');
  await client.query(CURSOR.replace('$1', `'${airframeId}'`));
  for (;;) {
    const { rows } = await client.query('FETCH 1000 FROM by_hand');
    for (const row of rows) {
      const sameDay = row.at.slice(0, 10) === row.take_off.slice(0, 10);
      minutes += row.minutes;
      cycles += 1;
      const line = {
        at: row.at,
        placed: null,
        title: 'Flight',
        detail: `Log page ${row.log_page}, ${row.from_station} to ${row.to_station}, take-off ${sameDay ? row.take_off.slice(11) : row.take_off.replace('T', ' ')}`,
        struck: null,
        adds: { minutes: row.minutes, cycles: { units: 1, denominator: 1 } },
        totals: { minutes, cycles },
        work: null,
        entry: {
          number: Number(row.recorded_seq),
          recordedAt: row.recorded,
          by: row.full_name,
          hash: row.hash,
        },
      };
      parts.push(JSON.stringify(line));
    }
    if (rows.length < 1000) break;
  }
  await client.query('COMMIT');
  return parts;
}

/** The whole history of the first airframe as JSON, against its flights by hand: line by line the same but for totals' ground. */
export async function historyWays(client, app) {
  await client.query("SELECT set_config('app.operator_id', '1', false)");
  const service = await app.find('features/history/history.service.js', 'HistoryService');
  const id = airframe(2);
  const product = async () => {
    const parts = [];
    for await (const part of await service.stream({ ...ACTOR, personId: PERSON }, { kind: 'airframe', id }))
      parts.push(part);
    return parts;
  };
  const twin = () => byHand(client, id);
  const lines = JSON.parse(
    Buffer.concat((await product()).map((part) => Buffer.from(part))).toString(),
  ).lines;
  const flights = lines.filter((line) => line.title === 'Flight').map(({ totals, ...line }) => line);
  assert.deepEqual(
    flights,
    (await twin()).map((text) => JSON.parse(text)).map(({ totals, ...line }) => line),
  );
  return { product, twin };
}
