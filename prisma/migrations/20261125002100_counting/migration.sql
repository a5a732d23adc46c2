-- What runs besides flights: an auxiliary power unit by its own counter, engines on the ground and in test cells; and
-- cycle rules that change from a day on.

-- DropIndex
DROP INDEX "cycle_rule_model_type";

-- AlterTable
ALTER TABLE "carrier" ADD COLUMN     "last_run_at" TIMESTAMPTZ(6);

-- AlterTable
ALTER TABLE "counter_reading" ADD COLUMN     "fresh_minutes" BIGINT,
ADD COLUMN     "fresh_starts" BIGINT,
ADD COLUMN     "source" TEXT,
ADD COLUMN     "stay_id" UUID;

-- AlterTable
ALTER TABLE "cycle_rule" ADD COLUMN     "effective_on" DATE,
ADD COLUMN     "recorded_seq" BIGINT,
ADD COLUMN     "void_reason" TEXT,
ADD COLUMN     "voided_seq" BIGINT;

-- AlterTable
ALTER TABLE "slot" ADD COLUMN     "test_cell_id" UUID;

-- CreateTable
CREATE TABLE "test_cell" (
    "operator_id" INTEGER NOT NULL,
    "id" UUID NOT NULL,
    "name" TEXT NOT NULL,

    CONSTRAINT "test_cell_pkey" PRIMARY KEY ("operator_id","id")
);

-- CreateTable
CREATE TABLE "ground_run" (
    "operator_id" INTEGER NOT NULL,
    "id" UUID NOT NULL,
    "carrier_id" UUID NOT NULL,
    "airframe_id" UUID,
    "started_at" TIMESTAMPTZ(6) NOT NULL,
    "ended_at" TIMESTAMPTZ(6) NOT NULL,
    "run_minutes" INTEGER NOT NULL,
    "counted_minutes" INTEGER NOT NULL DEFAULT 0,
    "starts" INTEGER NOT NULL DEFAULT 0,
    "aborted_take_offs" INTEGER NOT NULL DEFAULT 0,
    "purpose" TEXT NOT NULL,
    "source" TEXT NOT NULL,
    "recorded_seq" BIGINT NOT NULL,
    "voided_seq" BIGINT,
    "void_reason" TEXT,

    CONSTRAINT "ground_run_pkey" PRIMARY KEY ("operator_id","id")
);

-- CreateIndex
CREATE UNIQUE INDEX "test_cell_operator_id_name_key" ON "test_cell"("operator_id", "name");

-- CreateIndex
CREATE INDEX "ground_run_operator_id_carrier_id_ended_at_idx" ON "ground_run"("operator_id", "carrier_id", "ended_at");

-- CreateIndex
CREATE INDEX "ground_run_operator_id_airframe_id_ended_at_idx" ON "ground_run"("operator_id", "airframe_id", "ended_at");

-- CreateIndex
CREATE INDEX "counter_reading_operator_id_stay_id_idx" ON "counter_reading"("operator_id", "stay_id");

-- CreateIndex
CREATE UNIQUE INDEX "slot_operator_id_test_cell_id_key" ON "slot"("operator_id", "test_cell_id");

-- AddForeignKey
ALTER TABLE "slot" ADD CONSTRAINT "slot_operator_id_test_cell_id_fkey" FOREIGN KEY ("operator_id", "test_cell_id") REFERENCES "test_cell"("operator_id", "id") ON DELETE NO ACTION ON UPDATE NO ACTION;

-- AddForeignKey
ALTER TABLE "test_cell" ADD CONSTRAINT "test_cell_operator_id_fkey" FOREIGN KEY ("operator_id") REFERENCES "operator"("id") ON DELETE NO ACTION ON UPDATE NO ACTION;

-- AddForeignKey
ALTER TABLE "ground_run" ADD CONSTRAINT "ground_run_operator_id_fkey" FOREIGN KEY ("operator_id") REFERENCES "operator"("id") ON DELETE NO ACTION ON UPDATE NO ACTION;

-- AddForeignKey
ALTER TABLE "ground_run" ADD CONSTRAINT "ground_run_operator_id_carrier_id_fkey" FOREIGN KEY ("operator_id", "carrier_id") REFERENCES "carrier"("operator_id", "id") ON DELETE NO ACTION ON UPDATE NO ACTION;

-- AddForeignKey
ALTER TABLE "ground_run" ADD CONSTRAINT "ground_run_operator_id_airframe_id_fkey" FOREIGN KEY ("operator_id", "airframe_id") REFERENCES "airframe"("operator_id", "id") ON DELETE NO ACTION ON UPDATE NO ACTION;

-- AddForeignKey
ALTER TABLE "counter_reading" ADD CONSTRAINT "counter_reading_operator_id_stay_id_fkey" FOREIGN KEY ("operator_id", "stay_id") REFERENCES "stay"("operator_id", "id") ON DELETE NO ACTION ON UPDATE NO ACTION;

-- A rule for a model and a type of airframe (null: for any type without its own, and in a test cell) from a day on.
CREATE UNIQUE INDEX cycle_rule_revision ON cycle_rule (operator_id, engine_model_id, airframe_type_id, effective_on)
  NULLS NOT DISTINCT WHERE voided_seq IS NULL;

-- A slot belongs to a position, a component or a test cell.
ALTER TABLE slot DROP CONSTRAINT slot_check, DROP CONSTRAINT slot_check1;
ALTER TABLE slot
  ADD CHECK (num_nonnulls(position_id, component_id, test_cell_id) = 1),
  ADD CHECK ((component_id IS NULL) = (kind IN ('engine', 'pod', 'apu'))),
  ADD CHECK (test_cell_id IS NULL OR kind = 'engine');

-- A replacement says where the old counter ended and where the new one begins.
ALTER TABLE counter_reading
  ADD CHECK (kind IN ('installed', 'removed', 'read', 'replaced')),
  ADD CHECK (minutes >= 0), ADD CHECK (starts >= 0), ADD CHECK (fresh_minutes >= 0), ADD CHECK (fresh_starts >= 0),
  ADD CHECK ((kind = 'replaced') = (fresh_minutes IS NOT NULL)), ADD CHECK ((kind = 'replaced') = (fresh_starts IS NOT NULL)),
  ADD CHECK (stay_id IS NULL OR kind IN ('installed', 'removed')),
  ADD CHECK (mod(extract(epoch FROM at), 60) = 0);
CREATE UNIQUE INDEX counter_reading_once ON counter_reading (operator_id, component_id, at, kind)
  WHERE voided_seq IS NULL;

ALTER TABLE ground_run
  ADD CHECK (ended_at > started_at),
  ADD CHECK (mod(extract(epoch FROM started_at), 60) = 0), ADD CHECK (mod(extract(epoch FROM ended_at), 60) = 0),
  ADD CHECK (run_minutes >= 0 AND run_minutes <= extract(epoch FROM ended_at - started_at) / 60),
  ADD CHECK (counted_minutes >= 0 AND counted_minutes <= run_minutes),
  ADD CHECK (least(starts, aborted_take_offs) >= 0),
  ADD CONSTRAINT ground_run_no_overlap EXCLUDE USING gist
    (operator_id WITH =, carrier_id WITH =, tstzrange(started_at, ended_at) WITH &&) WHERE (voided_seq IS NULL);

-- What a counter counted between its readings, at the later one; what ran before the first is not told by it. An
-- auxiliary power unit is its counter's carrier, with its own id.
CREATE VIEW counter_posting WITH (security_invoker = true) AS
SELECT operator_id, id AS reading_id, component_id AS carrier_id, at,
       coalesce(minutes - lag(coalesce(fresh_minutes, minutes)) OVER w, 0) AS minutes,
       coalesce(starts - lag(coalesce(fresh_starts, starts)) OVER w, 0) AS starts
  FROM counter_reading WHERE voided_seq IS NULL
WINDOW w AS (PARTITION BY operator_id, component_id ORDER BY at, recorded_seq, id);
GRANT SELECT ON counter_posting TO app, auditor;

-- Sets months and head of a counter from its readings: a reading between two others changes both differences.
CREATE FUNCTION set_counter_clock(p_operator int, p_component uuid) RETURNS void LANGUAGE plpgsql VOLATILE AS $$
BEGIN
  INSERT INTO carrier (operator_id, id, kind, component_id) VALUES (p_operator, p_component, 'apu-counter', p_component)
    ON CONFLICT (operator_id, id) DO NOTHING;
  DELETE FROM bucket WHERE operator_id = p_operator AND carrier_id = p_component;
  INSERT INTO bucket (operator_id, carrier_id, month, minutes, starts)
    SELECT operator_id, carrier_id, month_of(at), sum(minutes), sum(starts) FROM counter_posting
     WHERE operator_id = p_operator AND carrier_id = p_component GROUP BY operator_id, carrier_id, month_of(at);
  UPDATE carrier SET (minutes, starts, last_landing_at) = (
      SELECT coalesce(sum(minutes), 0), coalesce(sum(starts), 0), max(at) FROM counter_posting
       WHERE operator_id = p_operator AND carrier_id = p_component),
    version = version + 1
   WHERE operator_id = p_operator AND id = p_component;
END $$;

-- As before, and with ground runs at their end and counters at their readings.
CREATE OR REPLACE FUNCTION own_clock_at(p_operator int, p_carrier uuid, p_at timestamptz) RETURNS counts
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
      UNION ALL
      SELECT counted_minutes, 0, 0, 0, starts, aborted_take_offs FROM ground_run
       WHERE operator_id = p_operator AND carrier_id = p_carrier AND voided_seq IS NULL
         AND ended_at >= month_of(p_at)::timestamp AT TIME ZONE 'UTC' AND ended_at <= p_at
      UNION ALL
      SELECT minutes, 0, 0, 0, starts, 0 FROM counter_posting
       WHERE operator_id = p_operator AND carrier_id = p_carrier
         AND at >= month_of(p_at)::timestamp AT TIME ZONE 'UTC' AND at <= p_at
    ) AS posted
$$;

-- The carrier on which a slot's engine ran at an instant, walking up the stays: a position or a test cell; empty when
-- it ran on none. With p_before the place just before the instant is meant.
CREATE FUNCTION carrier_of_slot(p_operator int, p_slot uuid, p_at timestamptz, p_before boolean) RETURNS uuid
LANGUAGE plpgsql STABLE AS $$
DECLARE
  v_slot slot;
  v_next uuid := p_slot;
BEGIN
  FOR i IN 1..8 LOOP
    SELECT * INTO v_slot FROM slot WHERE operator_id = p_operator AND id = v_next;
    IF v_slot.component_id IS NULL THEN RETURN coalesce(v_slot.position_id, v_slot.test_cell_id); END IF;
    SELECT slot_id INTO v_next FROM stay
     WHERE operator_id = p_operator AND component_id = v_slot.component_id AND voided_seq IS NULL
       AND CASE WHEN p_before THEN from_at < p_at AND (to_at IS NULL OR to_at >= p_at)
                ELSE from_at <= p_at AND (to_at IS NULL OR to_at > p_at) END;
    IF v_next IS NULL THEN RETURN NULL; END IF;
  END LOOP;
  RAISE EXCEPTION 'a slot is nested too deep' USING ERRCODE = 'SB009';
END $$;

-- As before, and of runs of the engine too.
CREATE OR REPLACE FUNCTION refuse_boundary_in_flight(p_operator int, p_stay uuid, p_slot uuid, p_at timestamptz, p_before boolean)
RETURNS void LANGUAGE plpgsql VOLATILE AS $$
DECLARE
  v_airframe uuid := airframe_of_slot(p_operator, p_slot, p_at, p_before);
  v_carrier uuid := carrier_of_slot(p_operator, p_slot, p_at, p_before);
  v_flight flight;
  v_run ground_run;
BEGIN
  IF v_carrier IS NULL THEN RETURN; END IF;
  PERFORM 1 FROM carrier WHERE operator_id = p_operator AND id = coalesce(v_airframe, v_carrier) FOR NO KEY UPDATE;
  UPDATE carrier SET last_boundary_at = p_at
   WHERE operator_id = p_operator AND id = coalesce(v_airframe, v_carrier)
     AND (last_boundary_at IS NULL OR last_boundary_at < p_at);
  SELECT * INTO v_run FROM ground_run
   WHERE operator_id = p_operator AND carrier_id = v_carrier AND ended_at > p_at AND voided_seq IS NULL
   ORDER BY ended_at LIMIT 1;
  IF v_run.started_at < p_at AND EXISTS (SELECT FROM slot WHERE operator_id = p_operator AND id = p_slot AND kind <> 'pod') THEN
    RAISE EXCEPTION 'a stay begins or ends inside a run' USING ERRCODE = 'SB041',
      DETAIL = jsonb_build_object('at', p_at, 'runId', v_run.id, 'startedAt', v_run.started_at, 'endedAt', v_run.ended_at)::text;
  END IF;
  IF v_airframe IS NULL THEN RETURN; END IF;
  SELECT * INTO v_flight FROM flight
   WHERE operator_id = p_operator AND airframe_id = v_airframe AND landing_at > p_at AND voided_seq IS NULL
   ORDER BY landing_at LIMIT 1;
  IF v_flight.take_off_at < p_at THEN
    RAISE EXCEPTION 'a stay begins or ends inside a flight' USING ERRCODE = 'SB001',
      DETAIL = jsonb_build_object('at', p_at, 'stayId', p_stay, 'flightId', v_flight.id, 'logPage', v_flight.log_page,
        'takeOffAt', v_flight.take_off_at, 'landingAt', v_flight.landing_at)::text;
  END IF;
END $$;

-- As before, and no flight while an engine of the airframe ran on the ground.
CREATE OR REPLACE FUNCTION flight_guard() RETURNS trigger LANGUAGE plpgsql AS $$
DECLARE
  v_stay stay;
  v_head carrier;
  v_run ground_run;
BEGIN
  SELECT * INTO v_head FROM carrier WHERE operator_id = NEW.operator_id AND id = NEW.airframe_id;
  IF v_head.last_run_at > NEW.take_off_at THEN
    SELECT * INTO v_run FROM ground_run
     WHERE operator_id = NEW.operator_id AND airframe_id = NEW.airframe_id AND voided_seq IS NULL
       AND ended_at > NEW.take_off_at AND started_at < NEW.landing_at ORDER BY ended_at LIMIT 1;
    IF FOUND THEN
      RAISE EXCEPTION 'an engine ran on the ground during the flight' USING ERRCODE = 'SB042',
        DETAIL = jsonb_build_object('runId', v_run.id, 'startedAt', v_run.started_at, 'endedAt', v_run.ended_at)::text;
    END IF;
  END IF;
  IF v_head.last_boundary_at IS NULL OR v_head.last_boundary_at <= NEW.take_off_at THEN RETURN NEW; END IF;
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

-- A run lies within one stay of an engine there, and not in a flight. It locks the head, as flights and stays do.
CREATE FUNCTION ground_run_guard() RETURNS trigger LANGUAGE plpgsql AS $$
DECLARE
  v_flight flight;
BEGIN
  PERFORM 1 FROM carrier WHERE operator_id = NEW.operator_id AND id = coalesce(NEW.airframe_id, NEW.carrier_id) FOR NO KEY UPDATE;
  UPDATE carrier SET last_run_at = NEW.ended_at
   WHERE operator_id = NEW.operator_id AND id = coalesce(NEW.airframe_id, NEW.carrier_id)
     AND (last_run_at IS NULL OR last_run_at < NEW.ended_at);
  SELECT * INTO v_flight FROM flight
   WHERE operator_id = NEW.operator_id AND airframe_id = NEW.airframe_id AND voided_seq IS NULL
     AND landing_at > NEW.started_at AND take_off_at < NEW.ended_at ORDER BY landing_at LIMIT 1;
  IF FOUND THEN
    RAISE EXCEPTION 'the airframe flew during the run' USING ERRCODE = 'SB043',
      DETAIL = jsonb_build_object('logPage', v_flight.log_page, 'takeOffAt', v_flight.take_off_at, 'landingAt', v_flight.landing_at)::text;
  END IF;
  IF NOT EXISTS (SELECT FROM slot s JOIN stay st ON st.operator_id = s.operator_id AND st.slot_id = s.id
      WHERE s.operator_id = NEW.operator_id AND s.kind = 'engine' AND (s.position_id = NEW.carrier_id OR s.test_cell_id = NEW.carrier_id)
        AND st.voided_seq IS NULL AND st.from_at <= NEW.started_at AND (st.to_at IS NULL OR st.to_at >= NEW.ended_at)) THEN
    RAISE EXCEPTION 'no engine was there during the run' USING ERRCODE = 'SB044',
      DETAIL = jsonb_build_object('startedAt', NEW.started_at, 'endedAt', NEW.ended_at)::text;
  END IF;
  RETURN NULL;
END $$;
CREATE TRIGGER ground_run_guard AFTER INSERT ON ground_run FOR EACH ROW EXECUTE FUNCTION ground_run_guard();
ALTER TABLE ground_run ENABLE ALWAYS TRIGGER ground_run_guard;

DO $$
DECLARE
  v_table text;
BEGIN
  FOREACH v_table IN ARRAY ARRAY['ground_run', 'test_cell'] LOOP
    EXECUTE format('ALTER TABLE %I ENABLE ROW LEVEL SECURITY', v_table);
    EXECUTE format('ALTER TABLE %I FORCE ROW LEVEL SECURITY', v_table);
    EXECUTE format('CREATE POLICY own_operator ON %I TO app, auditor '
      'USING (operator_id = (SELECT current_setting(''app.operator_id'')::int)) '
      'WITH CHECK (operator_id = (SELECT current_setting(''app.operator_id'')::int))', v_table);
    EXECUTE format('CREATE POLICY whole_table ON %I TO owner USING (true) WITH CHECK (true)', v_table);
    EXECUTE format('GRANT SELECT ON %I TO app, auditor', v_table);
    EXECUTE format('GRANT INSERT ON %I TO app', v_table);
  END LOOP;
  FOREACH v_table IN ARRAY ARRAY['ground_run', 'cycle_rule'] LOOP
    EXECUTE format('GRANT UPDATE (voided_seq, void_reason) ON %I TO app', v_table);
    EXECUTE format('CREATE TRIGGER fact_guard BEFORE UPDATE OR DELETE ON %I FOR EACH ROW EXECUTE FUNCTION fact_guard()', v_table);
    EXECUTE format('ALTER TABLE %I ENABLE ALWAYS TRIGGER fact_guard', v_table);
    EXECUTE format('CREATE TRIGGER no_truncate BEFORE TRUNCATE ON %I FOR EACH STATEMENT EXECUTE FUNCTION record_guard()', v_table);
    EXECUTE format('ALTER TABLE %I ENABLE ALWAYS TRIGGER no_truncate', v_table);
  END LOOP;
END $$;
