-- Logs one flight that comes after all others of its airframe and after every boundary on it, as one act: one statement
-- changes every row, and one asks what fell due. What a statement costs here is its beginning and its end, not its rows;
-- log_flight, which looks at each thing that may stand against a flight, needs ten.
-- Answers {flight} as log_flight does. Answers null, with nothing written, when the airframe's head says that there is
-- more to look at: ask log_flight then, and also when a key or the span is taken (23505, 23P01) or nothing was recorded
-- of the airframe before (SB020). Two at once wait for each other at the head, and the second finds what the first left.
CREATE FUNCTION log_flight_in_order(p_operator int, p_person uuid, p_key text, p_fingerprint bytea, p_id uuid,
  p_airframe uuid, p_log_page text, p_from text, p_to text, p_take_off timestamptz, p_landing timestamptz, p_minutes int,
  p_touch_and_goes int, p_starts int, p_aborted_take_offs int, p_typed text, p_source text, p_body text)
RETURNS jsonb LANGUAGE plpgsql VOLATILE AS $$
DECLARE
  v_minutes bigint;
  v_flights bigint;
  v_landings bigint;
  v_touch_and_goes bigint;
  v_starts bigint;
  v_aborted bigint;
  v_number bigint;
  v_one uuid;
  v_passed jsonb := '[]';
  v_answer jsonb;
BEGIN
  PERFORM set_config('app.operator_id', p_operator::text, true);
  WITH head AS (
    UPDATE carrier SET minutes = minutes + p_minutes, flights = flights + 1, landings = landings + 1 + p_touch_and_goes,
      touch_and_goes = touch_and_goes + p_touch_and_goes, starts = starts + p_starts,
      aborted_take_offs = aborted_take_offs + p_aborted_take_offs, last_landing_at = p_landing, version = version + 1
     WHERE operator_id = p_operator AND id = p_airframe AND kind = 'airframe' AND last_landing_at <= p_take_off
       AND (last_boundary_at IS NULL OR last_boundary_at < p_landing) AND p_landing <= clock_timestamp() + interval '5 minutes'
    RETURNING minutes, flights, landings, touch_and_goes, starts, aborted_take_offs
  ), stream AS (
    UPDATE journal_stream j SET seq = o.seq + 1,
           hash = journal_hash(p_operator, p_airframe, o.seq + 1, o.number, o.at, o.hash, p_body)
      FROM (
        SELECT s.seq, s.hash, nextval('journal_number') AS number, clock_timestamp() AS at
          FROM head CROSS JOIN LATERAL (
            SELECT seq, hash FROM journal_stream WHERE operator_id = p_operator AND stream = p_airframe FOR NO KEY UPDATE) s
        OFFSET 0
      ) AS o
     WHERE j.operator_id = p_operator AND j.stream = p_airframe
    RETURNING j.seq, j.hash, o.hash AS prev, o.at, o.number
  ), flown AS (
    INSERT INTO flight (operator_id, id, airframe_id, log_page, from_station, to_station, take_off_at, landing_at, minutes,
      touch_and_goes, starts, aborted_take_offs, typed, source, recorded_seq)
    SELECT p_operator, p_id, p_airframe, p_log_page, p_from, p_to, p_take_off, p_landing, p_minutes, p_touch_and_goes, p_starts,
           p_aborted_take_offs, p_typed, p_source, number FROM stream
  ), month AS (
    INSERT INTO bucket AS b (operator_id, carrier_id, month, minutes, flights, landings, touch_and_goes, starts, aborted_take_offs)
    SELECT p_operator, p_airframe, month_of(p_landing), p_minutes, 1, 1 + p_touch_and_goes, p_touch_and_goes, p_starts,
           p_aborted_take_offs FROM stream
    ON CONFLICT (operator_id, carrier_id, month) DO UPDATE SET
      minutes = b.minutes + excluded.minutes, flights = b.flights + excluded.flights,
      landings = b.landings + excluded.landings, touch_and_goes = b.touch_and_goes + excluded.touch_and_goes,
      starts = b.starts + excluded.starts, aborted_take_offs = b.aborted_take_offs + excluded.aborted_take_offs
  ), entry AS (
    INSERT INTO journal_entry (operator_id, number, stream, seq, kind, recorded_at, person_id, act_key, body, prev, hash)
    SELECT p_operator, number, p_airframe, seq, 'flight-logged', at, p_person, p_key, p_body, prev, hash FROM stream
  ), concerned AS (
    INSERT INTO about (operator_id, subject, number)
    SELECT p_operator, subject, number FROM stream, (VALUES (p_airframe), (p_id)) AS of (subject)
  )
  SELECT stream.number, head.minutes, head.flights, head.landings, head.touch_and_goes, head.starts, head.aborted_take_offs
    INTO v_number, v_minutes, v_flights, v_landings, v_touch_and_goes, v_starts, v_aborted
    FROM head LEFT JOIN stream ON true;
  IF v_minutes IS NULL THEN RETURN NULL; END IF;
  IF v_number IS NULL THEN RAISE EXCEPTION 'nothing is recorded of this airframe yet' USING ERRCODE = 'SB020'; END IF;

  -- Whether anything fell due: what due_points_passed asks, with nothing gathered or sorted, as it nearly always finds
  -- nothing. The lateral parts and OFFSET 0 pin the plan: for each clock and rule its own short range of the index.
  SELECT d.id INTO v_one
    FROM carrier c
    CROSS JOIN LATERAL (
      SELECT p.id FROM due_point p
       WHERE p.operator_id = p_operator AND p.carrier_id = c.id AND p.dimension = 'minutes'
         AND p.due_at > CASE WHEN c.id = p_airframe THEN 0 ELSE c.minutes END + v_minutes - p_minutes
         AND p.due_at <= CASE WHEN c.id = p_airframe THEN 0 ELSE c.minutes END + v_minutes
      UNION ALL
      SELECT p.id FROM due_point p
       WHERE p.operator_id = p_operator AND p.carrier_id = c.id AND p.dimension = 'flights'
         AND p.due_at > CASE WHEN c.id = p_airframe THEN 0 ELSE c.flights END + v_flights - 1
         AND p.due_at <= CASE WHEN c.id = p_airframe THEN 0 ELSE c.flights END + v_flights
      UNION ALL
      SELECT q.id FROM cycle_rule r CROSS JOIN LATERAL (
        SELECT p.id FROM due_point p
         WHERE p.operator_id = p_operator AND p.carrier_id = c.id AND p.dimension = 'cycles' AND p.cycle_rule_id = r.id
           AND p.due_at > r.per_flight * (c.flights + v_flights - 1) + r.per_landing * (c.landings + v_landings - 1 - p_touch_and_goes)
             + r.per_touch_and_go * (c.touch_and_goes + v_touch_and_goes - p_touch_and_goes) + r.per_start * (c.starts + v_starts - p_starts)
             + r.per_aborted_take_off * (c.aborted_take_offs + v_aborted - p_aborted_take_offs)
           AND p.due_at <= r.per_flight * (c.flights + v_flights) + r.per_landing * (c.landings + v_landings)
             + r.per_touch_and_go * (c.touch_and_goes + v_touch_and_goes) + r.per_start * (c.starts + v_starts)
             + r.per_aborted_take_off * (c.aborted_take_offs + v_aborted) OFFSET 0) AS q
       WHERE r.operator_id = p_operator AND c.kind = 'position'
    ) AS d
   WHERE c.operator_id = p_operator AND c.airframe_id = p_airframe
   LIMIT 1;
  IF v_one IS NOT NULL THEN
    v_passed := due_points_passed(p_operator, p_airframe,
      ROW(p_minutes, 1, 1 + p_touch_and_goes, p_touch_and_goes, p_starts, p_aborted_take_offs)::counts);
  END IF;
  v_answer := jsonb_build_object('id', p_id, 'airframeId', p_airframe, 'number', v_number::text,
    'airframeMinutes', v_minutes, 'airframeFlights', v_flights, 'late', false, 'passed', v_passed);
  INSERT INTO act (operator_id, person_id, key, fingerprint, status, resource, version, body, number)
  VALUES (p_operator, p_person, p_key, p_fingerprint, 201, '/api/flights/' || p_id, 1, v_answer::text, v_number);
  RETURN jsonb_build_object('flight', v_answer);
END $$;
