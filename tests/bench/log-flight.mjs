import crypto from 'node:crypto';

const logFlight = `SELECT log_flight(1, md5('person')::uuid, $1, $2, $3::jsonb, '[]'::jsonb, $4, false) AS answer`;

const bareInsert = `INSERT INTO bare_flight (operator_id, id, airframe_id, log_page, from_station, to_station, take_off_at,
  landing_at, minutes, touch_and_goes, starts, aborted_take_offs, typed, source, recorded_seq)
  VALUES (1, $1, md5('a1')::uuid, $2, 'QXA', 'QXB', $3, $4, 30, 0, 1, 0, '{}', 'form', 0)`;

/** The bare twin: the same row into the same table with the same indexes and the same constraint against overlap. */
export async function makeTwin(admin) {
  await admin.query('CREATE TABLE bare_flight (LIKE flight INCLUDING ALL)');
  await admin.query(`ALTER TABLE bare_flight ADD EXCLUDE USING gist
    (operator_id WITH =, airframe_id WITH =, tstzrange(take_off_at, landing_at) WITH &&) WHERE (voided_seq IS NULL)`);
  await admin.query('INSERT INTO bare_flight SELECT * FROM flight');
  await admin.query('GRANT INSERT ON bare_flight TO app');
  await admin.query('ANALYZE bare_flight');
}

/** A run of flights after the last one recorded, half an hour each, on one airframe. */
function flights(begins) {
  let at = begins;
  return () => {
    at += 3_600_000;
    const takeOffAt = new Date(at - 1_800_000).toISOString();
    return {
      id: crypto.randomUUID(),
      page: crypto.randomUUID().slice(0, 18),
      takeOffAt,
      landingAt: new Date(at).toISOString(),
    };
  };
}

/** Logging one flight by the product's one statement, against a bare insert of the same row. */
export function flightWays(client, begins = Date.UTC(2023, 0, 1)) {
  const product = flights(begins);
  const twin = flights(begins);
  return {
    product: async () => {
      const { id, page, takeOffAt, landingAt } = product();
      const flight = {
        id,
        airframeId: airframe(1),
        logPage: page,
        fromStation: 'QXA',
        toStation: 'QXB',
        takeOffAt,
        landingAt,
        touchAndGoes: 0,
        starts: 1,
        abortedTakeOffs: 0,
        typed: '{}',
        source: 'form',
        entryRow: null,
        replacesId: null,
      };
      const body = JSON.stringify(flight);
      const fingerprint = crypto.createHash('sha256').update(body).digest();
      const { rows } = await client.query({
        name: 'log',
        text: logFlight,
        values: [id, fingerprint, body, body],
      });
      if (rows[0].answer.flight === undefined)
        throw new Error(`the flight was not logged: ${JSON.stringify(rows[0].answer)}`);
    },
    twin: async () => {
      const { id, page, takeOffAt, landingAt } = twin();
      await client.query({ name: 'bare', text: bareInsert, values: [id, page, takeOffAt, landingAt] });
    },
  };
}

/** The id the filling gave an airframe. */
export function airframe(number) {
  return idOf(`a${number}`);
}

/** The id the filling made of a text, as md5(text)::uuid does. */
export function idOf(text) {
  const hex = crypto.createHash('md5').update(text).digest('hex');
  return hex.replace(/^(.{8})(.{4})(.{4})(.{4})(.{12})$/, '$1-$2-$3-$4-$5');
}
