-- DropIndex
DROP INDEX "due_point_once";

-- AlterTable
ALTER TABLE "requirement" ADD COLUMN     "threshold_event" TEXT,
ADD COLUMN     "repeat_event" TEXT,
ADD COLUMN     "rule" JSONB NOT NULL DEFAULT '{}',
ADD COLUMN     "granted_by" TEXT,
ADD COLUMN     "serial_from" TEXT,
ADD COLUMN     "serial_to" TEXT,
ADD COLUMN     "only_with" TEXT[],
ADD COLUMN     "unless_with" TEXT[],
ADD COLUMN     "supersedes_id" UUID,
ADD COLUMN     "terminates_id" UUID,
ADD COLUMN     "credit" TEXT NOT NULL DEFAULT 'revisions',
ADD COLUMN     "mandatory" BOOLEAN NOT NULL DEFAULT false;

-- AlterTable
ALTER TABLE "accomplishment" ADD COLUMN     "method" TEXT,
ADD COLUMN     "corrects_id" UUID;

-- AlterTable
ALTER TABLE "due_point" ADD COLUMN     "latest_at" BIGINT,
ADD COLUMN     "latest_on" DATE,
ADD COLUMN     "bound" BOOLEAN NOT NULL DEFAULT false;

-- CreateTable
CREATE TABLE "assessment" (
    "operator_id" INTEGER NOT NULL,
    "id" UUID NOT NULL,
    "requirement_id" UUID NOT NULL,
    "airframe_id" UUID,
    "position_id" UUID,
    "component_id" UUID,
    "airframe_type_id" UUID,
    "engine_model_id" UUID,
    "applicable" BOOLEAN NOT NULL,
    "reason" TEXT,
    "method" TEXT,
    "assessed_by" TEXT NOT NULL,
    "reference" TEXT NOT NULL,
    "assessed_on" DATE NOT NULL,
    "recorded_seq" BIGINT NOT NULL,
    "voided_seq" BIGINT,
    "void_reason" TEXT,

    CONSTRAINT "assessment_pkey" PRIMARY KEY ("operator_id","id")
);

-- CreateTable
CREATE TABLE "variation" (
    "operator_id" INTEGER NOT NULL,
    "id" UUID NOT NULL,
    "requirement_id" UUID NOT NULL,
    "airframe_id" UUID,
    "position_id" UUID,
    "component_id" UUID,
    "accomplishment_id" UUID,
    "minutes" BIGINT,
    "cycles" INTEGER,
    "days" INTEGER,
    "approved_by" TEXT NOT NULL,
    "reference" TEXT NOT NULL,
    "reason" TEXT NOT NULL,
    "approved_on" DATE NOT NULL,
    "recorded_seq" BIGINT NOT NULL,
    "voided_seq" BIGINT,
    "void_reason" TEXT,

    CONSTRAINT "variation_pkey" PRIMARY KEY ("operator_id","id")
);

-- CreateTable
CREATE TABLE "occurrence" (
    "operator_id" INTEGER NOT NULL,
    "id" UUID NOT NULL,
    "airframe_id" UUID NOT NULL,
    "kind" TEXT NOT NULL,
    "at" TIMESTAMPTZ(6) NOT NULL,
    "evidence" TEXT NOT NULL,
    "recorded_seq" BIGINT NOT NULL,
    "voided_seq" BIGINT,
    "void_reason" TEXT,

    CONSTRAINT "occurrence_pkey" PRIMARY KEY ("operator_id","id")
);

-- CreateIndex
CREATE INDEX "assessment_operator_id_requirement_id_idx" ON "assessment"("operator_id", "requirement_id");

-- CreateIndex
CREATE INDEX "variation_operator_id_requirement_id_idx" ON "variation"("operator_id", "requirement_id");

-- CreateIndex
CREATE INDEX "occurrence_operator_id_airframe_id_at_idx" ON "occurrence"("operator_id", "airframe_id", "at");

-- AddForeignKey
ALTER TABLE "requirement" ADD CONSTRAINT "requirement_operator_id_supersedes_id_fkey" FOREIGN KEY ("operator_id", "supersedes_id") REFERENCES "requirement"("operator_id", "id") ON DELETE NO ACTION ON UPDATE NO ACTION;
ALTER TABLE "requirement" ADD CONSTRAINT "requirement_operator_id_terminates_id_fkey" FOREIGN KEY ("operator_id", "terminates_id") REFERENCES "requirement"("operator_id", "id") ON DELETE NO ACTION ON UPDATE NO ACTION;
ALTER TABLE "accomplishment" ADD CONSTRAINT "accomplishment_operator_id_corrects_id_fkey" FOREIGN KEY ("operator_id", "corrects_id") REFERENCES "accomplishment"("operator_id", "id") ON DELETE NO ACTION ON UPDATE NO ACTION;

-- AddForeignKey
ALTER TABLE "assessment" ADD CONSTRAINT "assessment_operator_id_fkey" FOREIGN KEY ("operator_id") REFERENCES "operator"("id") ON DELETE NO ACTION ON UPDATE NO ACTION;
ALTER TABLE "assessment" ADD CONSTRAINT "assessment_operator_id_requirement_id_fkey" FOREIGN KEY ("operator_id", "requirement_id") REFERENCES "requirement"("operator_id", "id") ON DELETE NO ACTION ON UPDATE NO ACTION;
ALTER TABLE "assessment" ADD CONSTRAINT "assessment_operator_id_airframe_id_fkey" FOREIGN KEY ("operator_id", "airframe_id") REFERENCES "airframe"("operator_id", "id") ON DELETE NO ACTION ON UPDATE NO ACTION;
ALTER TABLE "assessment" ADD CONSTRAINT "assessment_operator_id_position_id_fkey" FOREIGN KEY ("operator_id", "position_id") REFERENCES "position"("operator_id", "id") ON DELETE NO ACTION ON UPDATE NO ACTION;
ALTER TABLE "assessment" ADD CONSTRAINT "assessment_operator_id_component_id_fkey" FOREIGN KEY ("operator_id", "component_id") REFERENCES "component"("operator_id", "id") ON DELETE NO ACTION ON UPDATE NO ACTION;
ALTER TABLE "assessment" ADD CONSTRAINT "assessment_operator_id_airframe_type_id_fkey" FOREIGN KEY ("operator_id", "airframe_type_id") REFERENCES "airframe_type"("operator_id", "id") ON DELETE NO ACTION ON UPDATE NO ACTION;
ALTER TABLE "assessment" ADD CONSTRAINT "assessment_operator_id_engine_model_id_fkey" FOREIGN KEY ("operator_id", "engine_model_id") REFERENCES "engine_model"("operator_id", "id") ON DELETE NO ACTION ON UPDATE NO ACTION;

-- AddForeignKey
ALTER TABLE "variation" ADD CONSTRAINT "variation_operator_id_fkey" FOREIGN KEY ("operator_id") REFERENCES "operator"("id") ON DELETE NO ACTION ON UPDATE NO ACTION;
ALTER TABLE "variation" ADD CONSTRAINT "variation_operator_id_requirement_id_fkey" FOREIGN KEY ("operator_id", "requirement_id") REFERENCES "requirement"("operator_id", "id") ON DELETE NO ACTION ON UPDATE NO ACTION;
ALTER TABLE "variation" ADD CONSTRAINT "variation_operator_id_airframe_id_fkey" FOREIGN KEY ("operator_id", "airframe_id") REFERENCES "airframe"("operator_id", "id") ON DELETE NO ACTION ON UPDATE NO ACTION;
ALTER TABLE "variation" ADD CONSTRAINT "variation_operator_id_position_id_fkey" FOREIGN KEY ("operator_id", "position_id") REFERENCES "position"("operator_id", "id") ON DELETE NO ACTION ON UPDATE NO ACTION;
ALTER TABLE "variation" ADD CONSTRAINT "variation_operator_id_component_id_fkey" FOREIGN KEY ("operator_id", "component_id") REFERENCES "component"("operator_id", "id") ON DELETE NO ACTION ON UPDATE NO ACTION;
ALTER TABLE "variation" ADD CONSTRAINT "variation_operator_id_accomplishment_id_fkey" FOREIGN KEY ("operator_id", "accomplishment_id") REFERENCES "accomplishment"("operator_id", "id") ON DELETE NO ACTION ON UPDATE NO ACTION;

-- AddForeignKey
ALTER TABLE "occurrence" ADD CONSTRAINT "occurrence_operator_id_fkey" FOREIGN KEY ("operator_id") REFERENCES "operator"("id") ON DELETE NO ACTION ON UPDATE NO ACTION;
ALTER TABLE "occurrence" ADD CONSTRAINT "occurrence_operator_id_airframe_id_fkey" FOREIGN KEY ("operator_id", "airframe_id") REFERENCES "airframe"("operator_id", "id") ON DELETE NO ACTION ON UPDATE NO ACTION;

-- One due point of each kind and dimension for a subject, and one of an outer bound beside it.
CREATE UNIQUE INDEX due_point_once ON due_point
  (operator_id, component_id, airframe_id, position_id, kind, requirement_id, dimension, bound) NULLS NOT DISTINCT;
ALTER TABLE due_point ADD CHECK (num_nonnulls(latest_at, latest_on) <= 1);

-- Closed words, wider than before, and what a requirement may ask of what it follows.
ALTER TABLE requirement
  DROP CONSTRAINT requirement_kind_check, DROP CONSTRAINT requirement_counted_from_check,
  DROP CONSTRAINT requirement_check1, DROP CONSTRAINT requirement_check2,
  ADD CONSTRAINT requirement_kind_check CHECK (kind IN
    ('inspection', 'overhaul', 'directive', 'bulletin', 'discard', 'check', 'airworthiness-limitation')),
  ADD CONSTRAINT requirement_counted_from_check CHECK (counted_from IN
    ('new', 'overhaul', 'shop-visit', 'installation', 'accomplishment', 'effective', 'date')),
  ADD CONSTRAINT requirement_scope_check CHECK (CASE anchor
    WHEN 'airframe' THEN num_nonnulls(position_number, engine_model_id, part_number) = 0
      AND counted_from IN ('new', 'accomplishment', 'effective', 'date')
    WHEN 'position' THEN num_nonnulls(engine_model_id, part_number) = 0 AND counted_from NOT IN ('overhaul', 'shop-visit')
    WHEN 'engine' THEN num_nonnulls(airframe_type_id, position_number, part_number) = 0
    WHEN 'part' THEN num_nonnulls(airframe_type_id, position_number, engine_model_id) = 0 AND part_number IS NOT NULL
    ELSE false END),
  ADD CONSTRAINT requirement_due_check CHECK (num_nonnulls(threshold_event, repeat_event,
    threshold_minutes, threshold_cycles, threshold_days, threshold_months,
    repeat_minutes, repeat_cycles, repeat_days, repeat_months) > 0),
  ADD CONSTRAINT requirement_events_check CHECK (
    threshold_event IN ('shop-visit', 'installation', 'removal', 'main-base-return')
    AND repeat_event IN ('shop-visit', 'installation', 'removal', 'main-base-return')),
  ADD CONSTRAINT requirement_rule_check CHECK (jsonb_typeof(rule) = 'object'),
  ADD CONSTRAINT requirement_credit_check CHECK (credit IN ('none', 'revisions', 'superseded')),
  ADD CONSTRAINT requirement_grant_check CHECK (kind NOT IN ('directive', 'airworthiness-limitation')
    OR granted_by IS NOT NULL OR (NOT rule ? 'window' AND NOT rule ? 'variation')),
  ADD CONSTRAINT requirement_mandatory_check CHECK (NOT mandatory OR kind = 'bulletin'),
  ADD CONSTRAINT requirement_serials_check CHECK (anchor <> 'position' OR num_nonnulls(serial_from, serial_to) = 0);
ALTER TABLE accomplishment ADD CHECK (btrim(method) <> ''), ADD CHECK (corrects_id <> id);
ALTER TABLE assessment
  ADD CHECK (num_nonnulls(airframe_id, position_id, component_id, airframe_type_id, engine_model_id) <= 1),
  ADD CHECK (applicable OR reason IS NOT NULL), ADD CHECK (btrim(assessed_by) <> ''), ADD CHECK (btrim(reference) <> '');
ALTER TABLE variation
  ADD CHECK (num_nonnulls(airframe_id, position_id, component_id) = 1),
  ADD CHECK (num_nonnulls(minutes, cycles, days) > 0), ADD CHECK (least(minutes, cycles, days) > 0),
  ADD CHECK (btrim(approved_by) <> ''), ADD CHECK (btrim(reference) <> ''), ADD CHECK (btrim(reason) <> '');
-- One time: of one due of one subject there is one variation.
CREATE UNIQUE INDEX variation_once ON variation
  (operator_id, requirement_id, airframe_id, position_id, component_id, accomplishment_id) NULLS NOT DISTINCT WHERE voided_seq IS NULL;
ALTER TABLE occurrence
  ADD CHECK (kind IN ('main-base-return')), ADD CHECK (mod(extract(epoch FROM at), 60) = 0), ADD CHECK (btrim(evidence) <> '');
CREATE UNIQUE INDEX occurrence_once ON occurrence (operator_id, airframe_id, kind, at) WHERE voided_seq IS NULL;

DO $$
DECLARE
  v_table text;
BEGIN
  FOREACH v_table IN ARRAY ARRAY['assessment', 'variation', 'occurrence'] LOOP
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

-- As before; an outer bound governs by itself, whatever else its requirement combines.
CREATE OR REPLACE FUNCTION due_points_passed(p_operator int, p_airframe uuid, p_counts counts) RETURNS jsonb
LANGUAGE plpgsql STABLE AS $$
DECLARE
  v_passed jsonb;
BEGIN
  WITH clock AS MATERIALIZED (
    SELECT * FROM clock_now WHERE operator_id = p_operator AND airframe_id = p_airframe
  )
  SELECT jsonb_agg(jsonb_build_object('componentId', d.component_id, 'airframeId', d.airframe_id, 'positionId', d.position_id,
           'requirementId', d.requirement_id, 'engineId', d.engine_id,
           'dimension', CASE reading.dimension WHEN 'flights' THEN 'cycles' ELSE reading.dimension END,
           'dueAt', d.due_at, 'reading', reading.now, 'denominator', reading.denominator)
         ORDER BY d.due_at - reading.now) INTO v_passed
    FROM (
      SELECT n.carrier_id, 'minutes' AS dimension, NULL::uuid AS rule_id, n.minutes AS now, p_counts.minutes AS added,
             1 AS denominator
        FROM clock n
      UNION ALL
      SELECT n.carrier_id, 'flights', NULL::uuid, n.flights, p_counts.flights, 1
        FROM clock n
      UNION ALL
      SELECT n.carrier_id, 'cycles', r.id,
             r.per_flight * n.flights + r.per_landing * n.landings + r.per_touch_and_go * n.touch_and_goes
               + r.per_start * n.starts + r.per_aborted_take_off * n.aborted_take_offs,
             r.per_flight * p_counts.flights + r.per_landing * p_counts.landings
               + r.per_touch_and_go * p_counts.touch_and_goes + r.per_start * p_counts.starts
               + r.per_aborted_take_off * p_counts.aborted_take_offs,
             r.denominator
        FROM clock n
        JOIN airframe f ON f.operator_id = p_operator AND f.id = p_airframe
        JOIN cycle_rule r ON r.operator_id = p_operator
         AND (r.airframe_type_id IS NULL OR r.airframe_type_id = f.airframe_type_id)
       WHERE n.kind = 'position'
    ) AS reading
    CROSS JOIN LATERAL (
      SELECT p.* FROM due_point p
       WHERE p.operator_id = p_operator AND p.carrier_id = reading.carrier_id AND p.dimension = reading.dimension
         AND reading.dimension IN ('minutes', 'flights')
         AND p.due_at > reading.now - reading.added AND p.due_at <= reading.now
      UNION ALL
      SELECT p.* FROM due_point p
       WHERE p.operator_id = p_operator AND p.carrier_id = reading.carrier_id AND p.dimension = 'cycles'
         AND p.cycle_rule_id = reading.rule_id AND p.due_at > reading.now - reading.added AND p.due_at <= reading.now
      OFFSET 0
    ) AS d
   WHERE d.requirement_id IS NULL OR d.bound OR NOT EXISTS (
     SELECT FROM requirement q JOIN due_point o ON o.operator_id = q.operator_id AND o.requirement_id = q.id
      WHERE q.operator_id = p_operator AND q.id = d.requirement_id AND q.combine = 'last' AND NOT o.bound AND o.id <> d.id
        AND (o.component_id, o.airframe_id, o.position_id) IS NOT DISTINCT FROM (d.component_id, d.airframe_id, d.position_id));
  RETURN coalesce(v_passed, '[]'::jsonb);
END $$;
