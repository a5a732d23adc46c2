-- CreateTable
CREATE TABLE "planned_rate" (
    "operator_id" INTEGER NOT NULL,
    "id" UUID NOT NULL,
    "airframe_id" UUID NOT NULL,
    "from_on" DATE NOT NULL,
    "days" INTEGER NOT NULL,
    "minutes" INTEGER NOT NULL,
    "flights" INTEGER NOT NULL,
    "source" TEXT NOT NULL,
    "recorded_seq" BIGINT NOT NULL,
    "voided_seq" BIGINT,
    "void_reason" TEXT,

    CONSTRAINT "planned_rate_pkey" PRIMARY KEY ("operator_id","id")
);

-- CreateTable
CREATE TABLE "planned_flight" (
    "operator_id" INTEGER NOT NULL,
    "id" UUID NOT NULL,
    "airframe_id" UUID NOT NULL,
    "flight_number" TEXT,
    "from_station" TEXT,
    "to_station" TEXT,
    "take_off_at" TIMESTAMPTZ(6) NOT NULL,
    "landing_at" TIMESTAMPTZ(6) NOT NULL,
    "recorded_seq" BIGINT NOT NULL,
    "voided_seq" BIGINT,
    "void_reason" TEXT,

    CONSTRAINT "planned_flight_pkey" PRIMARY KEY ("operator_id","id")
);

-- AlterTable
ALTER TABLE "due_point" ADD COLUMN     "is_one_of" BOOLEAN NOT NULL DEFAULT false;

-- CreateIndex
CREATE INDEX "planned_rate_operator_id_airframe_id_from_on_idx" ON "planned_rate"("operator_id", "airframe_id", "from_on");

-- CreateIndex
CREATE INDEX "planned_flight_operator_id_airframe_id_take_off_at_idx" ON "planned_flight"("operator_id", "airframe_id", "take_off_at");

-- AddForeignKey
ALTER TABLE "planned_rate" ADD CONSTRAINT "planned_rate_operator_id_fkey" FOREIGN KEY ("operator_id") REFERENCES "operator"("id") ON DELETE NO ACTION ON UPDATE NO ACTION;

-- AddForeignKey
ALTER TABLE "planned_rate" ADD CONSTRAINT "planned_rate_operator_id_airframe_id_fkey" FOREIGN KEY ("operator_id", "airframe_id") REFERENCES "airframe"("operator_id", "id") ON DELETE NO ACTION ON UPDATE NO ACTION;

-- AddForeignKey
ALTER TABLE "planned_flight" ADD CONSTRAINT "planned_flight_operator_id_fkey" FOREIGN KEY ("operator_id") REFERENCES "operator"("id") ON DELETE NO ACTION ON UPDATE NO ACTION;

-- AddForeignKey
ALTER TABLE "planned_flight" ADD CONSTRAINT "planned_flight_operator_id_airframe_id_fkey" FOREIGN KEY ("operator_id", "airframe_id") REFERENCES "airframe"("operator_id", "id") ON DELETE NO ACTION ON UPDATE NO ACTION;

-- One rate from a day on; no more minutes than its days have, and none without a flight.
ALTER TABLE planned_rate
  ADD CHECK (days > 0), ADD CHECK (flights > 0), ADD CHECK (minutes >= flights), ADD CHECK (minutes <= days * 1440),
  ADD CHECK (btrim(source) <> '');
CREATE UNIQUE INDEX planned_rate_from ON planned_rate (operator_id, airframe_id, from_on) WHERE voided_seq IS NULL;
ALTER TABLE planned_flight
  ADD CHECK (landing_at > take_off_at),
  ADD CHECK (mod(extract(epoch FROM take_off_at), 60) = 0), ADD CHECK (mod(extract(epoch FROM landing_at), 60) = 0),
  ADD CONSTRAINT planned_flight_no_overlap EXCLUDE USING gist
    (operator_id WITH =, airframe_id WITH =, tstzrange(take_off_at, landing_at) WITH &&) WHERE (voided_seq IS NULL);

-- A duty of one part in several dimensions is told as one: whether a due point is one of several.
UPDATE due_point d SET is_one_of = true
 WHERE requirement_id IS NULL AND kind = 'life-limit' AND EXISTS (
   SELECT FROM due_point o WHERE o.operator_id = d.operator_id AND o.component_id = d.component_id
      AND o.kind = 'life-limit' AND o.id <> d.id);
CREATE INDEX due_point_one_of ON due_point (operator_id, id) WHERE is_one_of;

DO $$
DECLARE
  v_table text;
BEGIN
  FOREACH v_table IN ARRAY ARRAY['planned_rate', 'planned_flight'] LOOP
    EXECUTE format('ALTER TABLE %I ENABLE ROW LEVEL SECURITY', v_table);
    EXECUTE format('ALTER TABLE %I FORCE ROW LEVEL SECURITY', v_table);
    EXECUTE format('CREATE POLICY own_operator ON %I TO app, auditor '
      'USING (operator_id = (SELECT current_setting(''app.operator_id'')::int)) '
      'WITH CHECK (operator_id = (SELECT current_setting(''app.operator_id'')::int))', v_table);
    EXECUTE format('CREATE POLICY whole_table ON %I TO owner USING (true) WITH CHECK (true)', v_table);
    EXECUTE format('GRANT SELECT ON %I TO app, auditor', v_table);
    EXECUTE format('GRANT INSERT ON %I TO app', v_table);
    EXECUTE format('GRANT UPDATE (voided_seq, void_reason) ON %I TO app', v_table);
    EXECUTE format('CREATE TRIGGER fact_guard BEFORE UPDATE OR DELETE ON %I FOR EACH ROW EXECUTE FUNCTION fact_guard()', v_table);
    EXECUTE format('ALTER TABLE %I ENABLE ALWAYS TRIGGER fact_guard', v_table);
    EXECUTE format('CREATE TRIGGER no_truncate BEFORE TRUNCATE ON %I FOR EACH STATEMENT EXECUTE FUNCTION record_guard()', v_table);
    EXECUTE format('ALTER TABLE %I ENABLE ALWAYS TRIGGER no_truncate', v_table);
  END LOOP;
END $$;
