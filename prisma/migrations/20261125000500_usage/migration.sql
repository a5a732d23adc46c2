-- Clocks and flights. An airframe's flight adds to its own carrier alone: no row of an engine or a part is touched
-- unless the flight is late.

CREATE TYPE counts AS (minutes bigint, flights bigint, landings bigint, touch_and_goes bigint, starts bigint,
  aborted_take_offs bigint);

CREATE FUNCTION month_of(p_at timestamptz) RETURNS date LANGUAGE sql IMMUTABLE AS $$
  SELECT date_trunc('month', p_at AT TIME ZONE 'UTC')::date
$$;

-- The reading of a carrier's own clock at an instant; a landing at that instant is in it.
CREATE FUNCTION own_clock_at(p_operator int, p_carrier uuid, p_at timestamptz) RETURNS counts
LANGUAGE sql STABLE AS $$
  SELECT sum(minutes)::bigint, sum(flights)::bigint, sum(landings)::bigint, sum(touch_and_goes)::bigint,
         sum(starts)::bigint, sum(aborted_take_offs)::bigint
    FROM (
      SELECT 0 AS minutes, 0 AS flights, 0 AS landings, 0 AS touch_and_goes, 0 AS starts, 0 AS aborted_take_offs
      UNION ALL
      SELECT minutes, flights, landings, touch_and_goes, starts, aborted_take_offs FROM bucket
       WHERE operator_id = p_operator AND carrier_id = p_carrier AND month < month_of(p_at)
      UNION ALL
      SELECT minutes, 1, 1 + touch_and_goes, touch_and_goes, starts, aborted_take_offs FROM flight
       WHERE operator_id = p_operator AND airframe_id = p_carrier AND voided_seq IS NULL
         AND landing_at >= month_of(p_at)::timestamp AT TIME ZONE 'UTC' AND landing_at <= p_at
      UNION ALL
      SELECT -minutes, -flights, -landings, -touch_and_goes, -starts, -aborted_take_offs FROM flight_exception
       WHERE operator_id = p_operator AND position_id = p_carrier AND voided_seq IS NULL
         AND landing_at >= month_of(p_at)::timestamp AT TIME ZONE 'UTC' AND landing_at <= p_at
    ) AS posted
$$;

-- The reading at an instant of the clock a component on this carrier runs by: a position's is its airframe's
-- and its own together.
CREATE FUNCTION clock_at(p_operator int, p_carrier uuid, p_at timestamptz) RETURNS counts
LANGUAGE sql STABLE AS $$
  SELECT sum((c.reading).minutes)::bigint, sum((c.reading).flights)::bigint, sum((c.reading).landings)::bigint,
         sum((c.reading).touch_and_goes)::bigint, sum((c.reading).starts)::bigint,
         sum((c.reading).aborted_take_offs)::bigint
    FROM (
      SELECT own_clock_at(p_operator, p_carrier, p_at) AS reading
      UNION ALL
      SELECT own_clock_at(p_operator, airframe_id, p_at) FROM carrier
       WHERE operator_id = p_operator AND id = p_carrier AND kind = 'position'
    ) AS c
$$;

-- The present reading of the same clock: one or two rows.
CREATE VIEW clock_now WITH (security_invoker = true) AS
SELECT c.operator_id, c.id AS carrier_id, c.kind, c.airframe_id, c.position_id,
       c.minutes + coalesce(a.minutes, 0) AS minutes, c.flights + coalesce(a.flights, 0) AS flights,
       c.landings + coalesce(a.landings, 0) AS landings,
       c.touch_and_goes + coalesce(a.touch_and_goes, 0) AS touch_and_goes,
       c.starts + coalesce(a.starts, 0) AS starts,
       c.aborted_take_offs + coalesce(a.aborted_take_offs, 0) AS aborted_take_offs,
       coalesce(a.last_landing_at, c.last_landing_at) AS last_landing_at
  FROM carrier c
  LEFT JOIN carrier a ON c.kind = 'position' AND a.operator_id = c.operator_id AND a.id = c.airframe_id;
GRANT SELECT ON clock_now TO app, auditor;

-- Adds to a carrier: its month and its head.
CREATE FUNCTION post_to_carrier(p_operator int, p_carrier uuid, p_landing timestamptz, p_sign int, p_counts counts)
RETURNS void LANGUAGE plpgsql VOLATILE AS $$
BEGIN
  INSERT INTO bucket AS b (operator_id, carrier_id, month, minutes, flights, landings, touch_and_goes, starts, aborted_take_offs)
  VALUES (p_operator, p_carrier, month_of(p_landing), p_sign * p_counts.minutes, p_sign * p_counts.flights,
    p_sign * p_counts.landings, p_sign * p_counts.touch_and_goes, p_sign * p_counts.starts, p_sign * p_counts.aborted_take_offs)
  ON CONFLICT (operator_id, carrier_id, month) DO UPDATE SET
    minutes = b.minutes + excluded.minutes, flights = b.flights + excluded.flights,
    landings = b.landings + excluded.landings, touch_and_goes = b.touch_and_goes + excluded.touch_and_goes,
    starts = b.starts + excluded.starts, aborted_take_offs = b.aborted_take_offs + excluded.aborted_take_offs;
  UPDATE carrier SET
    minutes = minutes + p_sign * p_counts.minutes, flights = flights + p_sign * p_counts.flights,
    landings = landings + p_sign * p_counts.landings,
    touch_and_goes = touch_and_goes + p_sign * p_counts.touch_and_goes,
    starts = starts + p_sign * p_counts.starts,
    aborted_take_offs = aborted_take_offs + p_sign * p_counts.aborted_take_offs,
    last_landing_at = greatest(last_landing_at, p_landing), version = version + 1
  WHERE operator_id = p_operator AND id = p_carrier;
END $$;

-- Carries a flight that came late, or went, into the exposures: a closed one that saw the landing takes the
-- amount, an open one that began at or after it moves its base, so that nothing gains what flew before it came.
CREATE FUNCTION carry_into_exposures(p_operator int, p_carriers uuid[], p_landing timestamptz, p_sign int, p_counts counts)
RETURNS void LANGUAGE sql VOLATILE AS $$
  UPDATE exposure SET
    minutes = minutes + p_sign * p_counts.minutes, flights = flights + p_sign * p_counts.flights,
    landings = landings + p_sign * p_counts.landings,
    touch_and_goes = touch_and_goes + p_sign * p_counts.touch_and_goes,
    starts = starts + p_sign * p_counts.starts,
    aborted_take_offs = aborted_take_offs + p_sign * p_counts.aborted_take_offs
  WHERE operator_id = p_operator AND carrier_id = ANY (p_carriers)
    AND ((to_at >= p_landing AND from_at < p_landing) OR (to_at IS NULL AND from_at >= p_landing))
$$;

-- Logs one flight as one act: the flight, its exceptions, month and head, the journal entry and the act's key.
-- Without p_key it is part of an act that keeps its own key, told as 'actKey' in the flight.
-- Answers {refusal}, {replay} of an earlier act with this key, {late: true} with nothing written when the flight
-- is late and p_allow_late is not set, or {flight} with the due points it newly passed.
CREATE FUNCTION log_flight(p_operator int, p_person uuid, p_key text, p_fingerprint bytea, p_flight jsonb,
  p_exceptions jsonb, p_body text, p_allow_late boolean) RETURNS jsonb LANGUAGE plpgsql VOLATILE AS $$
DECLARE
  v_airframe uuid := (p_flight ->> 'airframeId')::uuid;
  v_take_off timestamptz := (p_flight ->> 'takeOffAt')::timestamptz;
  v_landing timestamptz := (p_flight ->> 'landingAt')::timestamptz;
  v_head carrier;
  v_other flight;
  v_act act;
  v_counts counts;
  v_number bigint;
  v_late boolean;
  v_passed jsonb;
  v_answer jsonb;
  v_opening timestamptz;
BEGIN
  PERFORM set_config('app.operator_id', p_operator::text, true);
  SELECT * INTO v_head FROM carrier WHERE operator_id = p_operator AND id = v_airframe AND kind = 'airframe' FOR NO KEY UPDATE;
  IF NOT FOUND THEN RETURN jsonb_build_object('refusal', jsonb_build_object('code', 'NOT_FOUND')); END IF;
  IF p_key IS NOT NULL THEN
    SELECT * INTO v_act FROM act WHERE operator_id = p_operator AND person_id = p_person AND key = p_key;
    IF FOUND THEN
      RETURN jsonb_build_object('replay', jsonb_build_object('status', v_act.status, 'body', v_act.body,
        'version', v_act.version, 'same', v_act.fingerprint = p_fingerprint));
    END IF;
  END IF;
  IF v_landing > clock_timestamp() + interval '5 minutes' THEN
    RETURN jsonb_build_object('refusal', jsonb_build_object('code', 'IN_THE_FUTURE', 'landingAt', v_landing));
  END IF;
  -- What takes off after the last landing overlaps nothing and is after the opening, as that landing was.
  IF v_head.last_landing_at IS NULL OR v_take_off < v_head.last_landing_at THEN
    SELECT * INTO v_other FROM flight WHERE operator_id = p_operator AND airframe_id = v_airframe
       AND landing_at > v_take_off AND voided_seq IS NULL ORDER BY landing_at LIMIT 1;
    IF v_other.take_off_at < v_landing THEN
      RETURN jsonb_build_object('refusal', jsonb_build_object('code', 'FLIGHTS_OVERLAP', 'flightId', v_other.id,
        'logPage', v_other.log_page, 'takeOffAt', v_other.take_off_at, 'landingAt', v_other.landing_at));
    END IF;
    SELECT max(at) INTO v_opening FROM opening WHERE operator_id = p_operator AND airframe_id = v_airframe AND voided_seq IS NULL;
    IF v_take_off < v_opening THEN
      RETURN jsonb_build_object('refusal', jsonb_build_object('code', 'BEFORE_OPENING', 'openingAt', v_opening));
    END IF;
  END IF;
  SELECT * INTO v_other FROM flight WHERE operator_id = p_operator AND airframe_id = v_airframe
     AND log_page = p_flight ->> 'logPage' AND voided_seq IS NULL;
  IF FOUND THEN
    RETURN jsonb_build_object('refusal', jsonb_build_object('code', 'LOG_PAGE_USED', 'flightId', v_other.id,
      'logPage', v_other.log_page, 'takeOffAt', v_other.take_off_at));
  END IF;
  v_late := coalesce(v_landing <= v_head.last_boundary_at, false);
  IF v_late AND NOT p_allow_late THEN RETURN jsonb_build_object('late', true); END IF;

  v_number := next_journal_number();
  INSERT INTO flight (operator_id, id, airframe_id, log_page, from_station, to_station, take_off_at, landing_at, minutes,
    touch_and_goes, starts, aborted_take_offs, typed, source, entry_row, replaces_id, recorded_seq)
  VALUES (p_operator, (p_flight ->> 'id')::uuid, v_airframe, p_flight ->> 'logPage', p_flight ->> 'fromStation',
    p_flight ->> 'toStation', v_take_off, v_landing, (extract(epoch FROM v_landing - v_take_off) / 60)::int,
    (p_flight ->> 'touchAndGoes')::int, (p_flight ->> 'starts')::int, (p_flight ->> 'abortedTakeOffs')::int,
    p_flight ->> 'typed', p_flight ->> 'source', (p_flight ->> 'entryRow')::int, (p_flight ->> 'replacesId')::uuid, v_number);
  v_counts := ROW((extract(epoch FROM v_landing - v_take_off) / 60)::bigint, 1, 1 + (p_flight ->> 'touchAndGoes')::bigint,
    (p_flight ->> 'touchAndGoes')::bigint, (p_flight ->> 'starts')::bigint, (p_flight ->> 'abortedTakeOffs')::bigint);
  PERFORM post_to_carrier(p_operator, v_airframe, v_landing, 1, v_counts);
  IF v_late THEN
    PERFORM carry_into_exposures(p_operator,
      ARRAY(SELECT id FROM carrier WHERE operator_id = p_operator AND airframe_id = v_airframe), v_landing, 1, v_counts);
  END IF;
  IF jsonb_array_length(p_exceptions) > 0 THEN
    PERFORM log_exceptions(p_operator, v_airframe, (p_flight ->> 'id')::uuid, v_landing, p_exceptions, v_number, v_late);
  END IF;
  PERFORM journal_append(p_operator, v_number, v_airframe, 'flight-logged', p_person,
    coalesce(p_key, p_flight ->> 'actKey'), p_body,
    ARRAY[(p_flight ->> 'id')::uuid]);

  v_passed := due_points_passed(p_operator, v_airframe, v_counts);
  v_answer := jsonb_build_object('id', p_flight ->> 'id', 'airframeId', v_airframe, 'number', v_number::text,
    'airframeMinutes', v_head.minutes + (v_counts).minutes, 'airframeFlights', v_head.flights + 1,
    'late', v_late, 'passed', v_passed);
  IF p_key IS NOT NULL THEN
    INSERT INTO act (operator_id, person_id, key, fingerprint, status, resource, version, body, number)
    VALUES (p_operator, p_person, p_key, p_fingerprint, 201, '/api/flights/' || (p_flight ->> 'id'), 1, v_answer::text, v_number);
  END IF;
  RETURN jsonb_build_object('flight', v_answer);
END $$;

-- Posts, for each position that did not run for all of the flight, what it did not count.
CREATE FUNCTION log_exceptions(p_operator int, p_airframe uuid, p_flight uuid, p_landing timestamptz, p_exceptions jsonb,
  p_number bigint, p_late boolean) RETURNS void LANGUAGE plpgsql VOLATILE AS $$
DECLARE
  v_row record;
  v_counts counts;
BEGIN
  FOR v_row IN SELECT * FROM jsonb_to_recordset(p_exceptions) AS x("id" uuid, "positionId" uuid, "kind" text,
      "minutes" int, "flights" int, "landings" int, "touchAndGoes" int, "starts" int, "abortedTakeOffs" int)
  LOOP
    INSERT INTO flight_exception (operator_id, id, flight_id, position_id, airframe_id, landing_at, kind, minutes, flights,
      landings, touch_and_goes, starts, aborted_take_offs, recorded_seq)
    VALUES (p_operator, v_row."id", p_flight, v_row."positionId", p_airframe, p_landing, v_row."kind", v_row."minutes",
      v_row."flights", v_row."landings", v_row."touchAndGoes", v_row."starts", v_row."abortedTakeOffs", p_number);
    v_counts := ROW(v_row."minutes", v_row."flights", v_row."landings", v_row."touchAndGoes", v_row."starts", v_row."abortedTakeOffs");
    PERFORM post_to_carrier(p_operator, v_row."positionId", p_landing, -1, v_counts);
    IF p_late THEN
      PERFORM carry_into_exposures(p_operator, ARRAY[v_row."positionId"], p_landing, -1, v_counts);
    END IF;
  END LOOP;
END $$;

-- The due points of what hangs on this airframe that its clock has just reached or passed. OFFSET 0 pins the plan:
-- for each clock and rule the index is asked for its own short range of readings, however many due points there are.
CREATE FUNCTION due_points_passed(p_operator int, p_airframe uuid, p_counts counts) RETURNS jsonb
LANGUAGE plpgsql STABLE AS $$
DECLARE
  v_passed jsonb;
BEGIN
  SELECT jsonb_agg(jsonb_build_object('componentId', d.component_id, 'engineId', d.engine_id,
           'dimension', reading.dimension, 'dueAt', d.due_at, 'reading', reading.now, 'denominator', reading.denominator)
         ORDER BY d.due_at - reading.now) INTO v_passed
    FROM (
      SELECT n.carrier_id, 'minutes' AS dimension, NULL::uuid AS rule_id, n.minutes AS now, p_counts.minutes AS added,
             1 AS denominator
        FROM clock_now n WHERE n.operator_id = p_operator AND n.airframe_id = p_airframe
      UNION ALL
      SELECT n.carrier_id, 'cycles', r.id,
             r.per_flight * n.flights + r.per_landing * n.landings + r.per_touch_and_go * n.touch_and_goes
               + r.per_start * n.starts + r.per_aborted_take_off * n.aborted_take_offs,
             r.per_flight * p_counts.flights + r.per_landing * p_counts.landings
               + r.per_touch_and_go * p_counts.touch_and_goes + r.per_start * p_counts.starts
               + r.per_aborted_take_off * p_counts.aborted_take_offs,
             r.denominator
        FROM clock_now n
        JOIN airframe f ON f.operator_id = p_operator AND f.id = p_airframe
        JOIN cycle_rule r ON r.operator_id = p_operator
         AND (r.airframe_type_id IS NULL OR r.airframe_type_id = f.airframe_type_id)
       WHERE n.operator_id = p_operator AND n.airframe_id = p_airframe AND n.kind = 'position'
    ) AS reading
    CROSS JOIN LATERAL (
      SELECT due_point.component_id, due_point.engine_id, due_point.due_at FROM due_point
       WHERE operator_id = p_operator AND carrier_id = reading.carrier_id AND due_point.dimension = 'minutes'
         AND reading.dimension = 'minutes' AND due_at > reading.now - reading.added AND due_at <= reading.now
      UNION ALL
      SELECT due_point.component_id, due_point.engine_id, due_point.due_at FROM due_point
       WHERE operator_id = p_operator AND carrier_id = reading.carrier_id AND due_point.dimension = 'cycles'
         AND cycle_rule_id = reading.rule_id AND due_at > reading.now - reading.added AND due_at <= reading.now
      OFFSET 0
    ) AS d;
  RETURN coalesce(v_passed, '[]'::jsonb);
END $$;

-- Voids a flight: the fact keeps its row, the counts go from month, head and exposures. The caller writes the
-- journal entry and computes again what hung there.
CREATE FUNCTION void_flight(p_operator int, p_flight uuid, p_number bigint, p_reason text) RETURNS void
LANGUAGE plpgsql VOLATILE AS $$
DECLARE
  v_flight flight;
  v_exception flight_exception;
  v_counts counts;
BEGIN
  UPDATE flight SET voided_seq = p_number, void_reason = p_reason
   WHERE operator_id = p_operator AND id = p_flight AND voided_seq IS NULL RETURNING * INTO STRICT v_flight;
  v_counts := ROW(v_flight.minutes, 1, 1 + v_flight.touch_and_goes, v_flight.touch_and_goes, v_flight.starts, v_flight.aborted_take_offs);
  PERFORM post_to_carrier(p_operator, v_flight.airframe_id, v_flight.landing_at, -1, v_counts);
  PERFORM carry_into_exposures(p_operator,
    ARRAY(SELECT id FROM carrier WHERE operator_id = p_operator AND airframe_id = v_flight.airframe_id),
    v_flight.landing_at, -1, v_counts);
  FOR v_exception IN SELECT * FROM flight_exception WHERE operator_id = p_operator AND flight_id = p_flight AND voided_seq IS NULL LOOP
    UPDATE flight_exception SET voided_seq = p_number, void_reason = p_reason
     WHERE operator_id = p_operator AND id = v_exception.id;
    v_counts := ROW(v_exception.minutes, v_exception.flights, v_exception.landings, v_exception.touch_and_goes,
      v_exception.starts, v_exception.aborted_take_offs);
    PERFORM post_to_carrier(p_operator, v_exception.position_id, v_exception.landing_at, 1, v_counts);
    PERFORM carry_into_exposures(p_operator, ARRAY[v_exception.position_id], v_exception.landing_at, 1, v_counts);
  END LOOP;
  UPDATE carrier SET last_landing_at = (SELECT max(landing_at) FROM flight
      WHERE operator_id = p_operator AND airframe_id = v_flight.airframe_id AND voided_seq IS NULL)
   WHERE operator_id = p_operator AND id = v_flight.airframe_id;
END $$;
