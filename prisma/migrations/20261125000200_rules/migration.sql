-- What is always true of a fact, held by the database itself.

-- One operator's keys where a column may be empty.
CREATE UNIQUE INDEX cycle_rule_model_type ON cycle_rule (operator_id, engine_model_id, airframe_type_id) NULLS NOT DISTINCT;
CREATE UNIQUE INDEX carrier_position ON carrier (operator_id, position_id) WHERE position_id IS NOT NULL;
CREATE UNIQUE INDEX flight_log_page ON flight (operator_id, airframe_id, log_page) WHERE voided_seq IS NULL;
CREATE UNIQUE INDEX import_file_content ON import_file (operator_id, kind, sha256) WHERE state IN ('applying', 'applied');
CREATE UNIQUE INDEX stay_open_component ON stay (operator_id, component_id) WHERE voided_seq IS NULL AND to_at IS NULL;
CREATE UNIQUE INDEX stay_open_slot ON stay (operator_id, slot_id) WHERE voided_seq IS NULL AND to_at IS NULL AND slot_id IS NOT NULL;

-- Closed words.
ALTER TABLE type_position
  ADD CHECK (kind IN ('engine', 'apu')), ADD CHECK (mount IN ('left-wing', 'right-wing', 'tail')),
  ADD CHECK ((kind = 'apu') = (number = 0));
ALTER TABLE position
  ADD CHECK (kind IN ('engine', 'apu')), ADD CHECK (mount IN ('left-wing', 'right-wing', 'tail')),
  ADD CHECK ((kind = 'apu') = (number = 0));
ALTER TABLE engine_model
  ADD CHECK (kind IN ('engine', 'apu')), ADD CHECK (life_method IN ('pro-rata', 'lowest-limit'));
ALTER TABLE cycle_rule
  ADD CHECK (denominator > 0),
  ADD CHECK (least(per_flight, per_landing, per_touch_and_go, per_start, per_aborted_take_off) >= 0);
ALTER TABLE component
  ADD CHECK (kind IN ('engine', 'module', 'part', 'pod', 'apu')),
  ADD CHECK ((pod_clock IS NOT NULL) = (kind = 'pod')), ADD CHECK (pod_clock IN ('airframe', 'position'));
ALTER TABLE location ADD CHECK (kind IN ('store', 'shop', 'quarantine', 'transferred-out', 'scrapped'));
ALTER TABLE slot
  ADD CHECK (num_nonnulls(position_id, component_id) = 1),
  ADD CHECK (kind IN ('engine', 'pod', 'apu', 'module', 'part')),
  ADD CHECK ((position_id IS NOT NULL) = (kind IN ('engine', 'pod', 'apu')));
ALTER TABLE carrier ADD CHECK (kind IN ('airframe', 'position', 'test-cell', 'apu-counter'));
ALTER TABLE work_package
  ADD CHECK (kind IN ('engine-change', 'pod-swap')), ADD CHECK (status IN ('open', 'released')),
  ADD CHECK (num_nonnulls(airframe_id, component_id) = 1);
ALTER TABLE opening
  ADD CHECK (num_nonnulls(component_id, airframe_id) = 1), ADD CHECK (basis IN ('new', 'overhaul', 'shop-visit')),
  ADD CHECK (cycle_denominator > 0), ADD CHECK (minutes >= 0), ADD CHECK (cycles >= 0);
ALTER TABLE reset ADD CHECK (kind IN ('overhaul', 'shop-visit'));
ALTER TABLE trace_gap ADD CHECK (to_at > from_at);
ALTER TABLE life_limit
  ADD CHECK (authorisation IN ('limited', 'not-limited', 'not-authorised')),
  ADD CHECK ((authorisation = 'limited') = (num_nonnulls(cycles, minutes) > 0)), ADD CHECK (cycles > 0), ADD CHECK (minutes > 0);

-- A flight: whole minutes, landing after take-off, none inside another of the same airframe.
ALTER TABLE flight
  ADD CHECK (landing_at > take_off_at),
  ADD CHECK (minutes = extract(epoch FROM landing_at - take_off_at) / 60),
  ADD CHECK (mod(extract(epoch FROM take_off_at), 60) = 0),
  ADD CHECK (least(touch_and_goes, starts, aborted_take_offs) >= 0),
  ADD CONSTRAINT flight_no_overlap EXCLUDE USING gist
    (operator_id WITH =, airframe_id WITH =, tstzrange(take_off_at, landing_at) WITH &&) WHERE (voided_seq IS NULL);
ALTER TABLE flight_exception
  ADD CHECK (kind IN ('shut-down', 'not-running')),
  ADD CHECK (least(minutes, flights, landings, touch_and_goes, starts) >= 0 AND aborted_take_offs >= 0);
CREATE UNIQUE INDEX flight_exception_position ON flight_exception (operator_id, flight_id, position_id) WHERE voided_seq IS NULL;

-- A component is at one place at any instant; a slot holds at most one component. Half-open spans let a
-- removal and an installation share an instant, so nothing needs to be deferrable.
ALTER TABLE stay
  ADD CHECK (num_nonnulls(slot_id, location_id) = 1),
  ADD CHECK (to_at > from_at),
  ADD CHECK ((to_at IS NULL) = (ended_seq IS NULL)), ADD CHECK ((to_at IS NULL) = (to_kind IS NULL)),
  ADD CHECK (from_kind IN ('instant', 'after-page', 'before-first', 'after-last')),
  ADD CHECK (to_kind IN ('instant', 'after-page', 'before-first', 'after-last')),
  ADD CHECK (mod(extract(epoch FROM from_at), 60) = 0), ADD CHECK (mod(extract(epoch FROM to_at), 60) = 0),
  ADD CONSTRAINT stay_component_once EXCLUDE USING gist
    (operator_id WITH =, component_id WITH =, tstzrange(from_at, to_at) WITH &&) WHERE (voided_seq IS NULL),
  ADD CONSTRAINT stay_slot_once EXCLUDE USING gist
    (operator_id WITH =, slot_id WITH =, tstzrange(from_at, to_at) WITH &&) WHERE (voided_seq IS NULL AND slot_id IS NOT NULL);

-- The airframe on which a slot was at an instant, walking up the stays; empty when it was on none.
-- With p_before the place just before the instant is meant, as for the end of a stay.
CREATE FUNCTION airframe_of_slot(p_operator int, p_slot uuid, p_at timestamptz, p_before boolean) RETURNS uuid
LANGUAGE plpgsql STABLE AS $$
DECLARE
  v_slot slot;
  v_next uuid := p_slot;
BEGIN
  FOR i IN 1..8 LOOP
    SELECT * INTO v_slot FROM slot WHERE operator_id = p_operator AND id = v_next;
    IF v_slot.position_id IS NOT NULL THEN
      RETURN (SELECT airframe_id FROM position WHERE operator_id = p_operator AND id = v_slot.position_id);
    END IF;
    SELECT slot_id INTO v_next FROM stay
     WHERE operator_id = p_operator AND component_id = v_slot.component_id AND voided_seq IS NULL
       AND CASE WHEN p_before THEN from_at < p_at AND (to_at IS NULL OR to_at >= p_at)
                ELSE from_at <= p_at AND (to_at IS NULL OR to_at > p_at) END;
    IF v_next IS NULL THEN RETURN NULL; END IF;
  END LOOP;
  RAISE EXCEPTION 'a slot is nested too deep' USING ERRCODE = 'SB009';
END $$;

-- Refuses a boundary of a stay strictly inside a flight of the airframe it is on. Locks the airframe's head
-- first, as logging a flight does, so that of two at once the second sees the first, and keeps there the latest
-- boundary, so that a flight after it need not look for any.
CREATE FUNCTION refuse_boundary_in_flight(p_operator int, p_stay uuid, p_slot uuid, p_at timestamptz, p_before boolean)
RETURNS void LANGUAGE plpgsql VOLATILE AS $$
DECLARE
  v_airframe uuid := airframe_of_slot(p_operator, p_slot, p_at, p_before);
  v_flight flight;
BEGIN
  IF v_airframe IS NULL THEN RETURN; END IF;
  PERFORM 1 FROM carrier WHERE operator_id = p_operator AND id = v_airframe FOR NO KEY UPDATE;
  UPDATE carrier SET last_boundary_at = p_at
   WHERE operator_id = p_operator AND id = v_airframe AND (last_boundary_at IS NULL OR last_boundary_at < p_at);
  SELECT * INTO v_flight FROM flight
   WHERE operator_id = p_operator AND airframe_id = v_airframe AND landing_at > p_at AND voided_seq IS NULL
   ORDER BY landing_at LIMIT 1;
  IF v_flight.take_off_at < p_at THEN
    RAISE EXCEPTION 'a stay begins or ends inside a flight' USING ERRCODE = 'SB001',
      DETAIL = jsonb_build_object('at', p_at, 'stayId', p_stay, 'flightId', v_flight.id, 'logPage', v_flight.log_page,
        'takeOffAt', v_flight.take_off_at, 'landingAt', v_flight.landing_at)::text;
  END IF;
END $$;

CREATE FUNCTION stay_guard() RETURNS trigger LANGUAGE plpgsql AS $$
DECLARE
  v_component component;
  v_slot slot;
BEGIN
  IF NEW.voided_seq IS NOT NULL THEN RETURN NEW; END IF;
  IF TG_OP = 'INSERT' THEN
    SELECT * INTO v_component FROM component WHERE operator_id = NEW.operator_id AND id = NEW.component_id;
    IF NEW.slot_id IS NOT NULL THEN
      SELECT * INTO v_slot FROM slot WHERE operator_id = NEW.operator_id AND id = NEW.slot_id;
      IF v_slot.kind <> v_component.kind THEN
        RAISE EXCEPTION 'this slot takes another kind of component' USING ERRCODE = 'SB003',
          DETAIL = jsonb_build_object('slotKind', v_slot.kind, 'componentKind', v_component.kind)::text;
      END IF;
      PERFORM refuse_boundary_in_flight(NEW.operator_id, NEW.id, NEW.slot_id, NEW.from_at, false);
    END IF;
    IF v_component.manufactured_on > (NEW.from_at AT TIME ZONE 'UTC')::date THEN
      RAISE EXCEPTION 'a stay begins before the component was made' USING ERRCODE = 'SB004',
        DETAIL = jsonb_build_object('manufacturedOn', v_component.manufactured_on)::text;
    END IF;
  END IF;
  IF NEW.slot_id IS NOT NULL AND NEW.to_at IS NOT NULL THEN
    PERFORM refuse_boundary_in_flight(NEW.operator_id, NEW.id, NEW.slot_id, NEW.to_at, true);
  END IF;
  RETURN NEW;
END $$;
CREATE TRIGGER stay_guard BEFORE INSERT OR UPDATE ON stay FOR EACH ROW EXECUTE FUNCTION stay_guard();
ALTER TABLE stay ENABLE ALWAYS TRIGGER stay_guard;

-- A stay entered in the past brings along what hung beneath it then: none of their boundaries may fall inside a
-- flight of the airframe either.
CREATE FUNCTION nested_guard() RETURNS trigger LANGUAGE plpgsql AS $$
DECLARE
  v_boundary record;
BEGIN
  IF NEW.slot_id IS NULL OR NEW.voided_seq IS NOT NULL THEN RETURN NULL; END IF;
  FOR v_boundary IN
    WITH RECURSIVE beneath AS (
      SELECT st.id, st.component_id, st.slot_id, st.from_at, st.to_at
        FROM slot s JOIN stay st ON st.operator_id = s.operator_id AND st.slot_id = s.id AND st.voided_seq IS NULL
       WHERE s.operator_id = NEW.operator_id AND s.component_id = NEW.component_id
      UNION
      SELECT st.id, st.component_id, st.slot_id, st.from_at, st.to_at
        FROM beneath b
        JOIN slot s ON s.operator_id = NEW.operator_id AND s.component_id = b.component_id
        JOIN stay st ON st.operator_id = s.operator_id AND st.slot_id = s.id AND st.voided_seq IS NULL
    )
    SELECT id, slot_id, from_at AS at, false AS before FROM beneath WHERE from_at > NEW.from_at AND from_at < coalesce(NEW.to_at, 'infinity')
    UNION ALL
    SELECT id, slot_id, to_at, true FROM beneath WHERE to_at > NEW.from_at AND to_at < coalesce(NEW.to_at, 'infinity')
  LOOP
    PERFORM refuse_boundary_in_flight(NEW.operator_id, v_boundary.id, v_boundary.slot_id, v_boundary.at, v_boundary.before);
  END LOOP;
  RETURN NULL;
END $$;
CREATE TRIGGER nested_guard AFTER INSERT ON stay FOR EACH ROW EXECUTE FUNCTION nested_guard();
ALTER TABLE stay ENABLE ALWAYS TRIGGER nested_guard;

CREATE FUNCTION flight_guard() RETURNS trigger LANGUAGE plpgsql AS $$
DECLARE
  v_stay stay;
  v_last timestamptz;
BEGIN
  SELECT last_boundary_at INTO v_last FROM carrier WHERE operator_id = NEW.operator_id AND id = NEW.airframe_id;
  IF v_last IS NULL OR v_last <= NEW.take_off_at THEN RETURN NEW; END IF;
  FOR v_stay IN
    SELECT * FROM stay WHERE operator_id = NEW.operator_id AND voided_seq IS NULL AND slot_id IS NOT NULL
       AND from_at > NEW.take_off_at AND from_at < NEW.landing_at
    UNION ALL
    SELECT * FROM stay WHERE operator_id = NEW.operator_id AND voided_seq IS NULL AND slot_id IS NOT NULL
       AND to_at > NEW.take_off_at AND to_at < NEW.landing_at
  LOOP
    IF (v_stay.from_at > NEW.take_off_at AND v_stay.from_at < NEW.landing_at
        AND airframe_of_slot(NEW.operator_id, v_stay.slot_id, v_stay.from_at, false) = NEW.airframe_id)
    OR (v_stay.to_at > NEW.take_off_at AND v_stay.to_at < NEW.landing_at
        AND airframe_of_slot(NEW.operator_id, v_stay.slot_id, v_stay.to_at, true) = NEW.airframe_id) THEN
      RAISE EXCEPTION 'a flight contains the beginning or end of a stay' USING ERRCODE = 'SB002',
        DETAIL = jsonb_build_object('stayId', v_stay.id, 'componentId', v_stay.component_id,
          'fromAt', v_stay.from_at, 'toAt', v_stay.to_at)::text;
    END IF;
  END LOOP;
  RETURN NEW;
END $$;
CREATE TRIGGER flight_guard BEFORE INSERT ON flight FOR EACH ROW EXECUTE FUNCTION flight_guard();
ALTER TABLE flight ENABLE ALWAYS TRIGGER flight_guard;
