-- DropIndex
DROP INDEX "due_point_operator_id_component_id_kind_dimension_key";

-- AlterTable
ALTER TABLE "due_point" ADD COLUMN     "airframe_id" UUID,
ADD COLUMN     "due_on" DATE,
ADD COLUMN     "position_id" UUID,
ADD COLUMN     "requirement_id" UUID,
ADD COLUMN     "span" BIGINT,
ALTER COLUMN "component_id" DROP NOT NULL;

-- CreateTable
CREATE TABLE "requirement" (
    "operator_id" INTEGER NOT NULL,
    "id" UUID NOT NULL,
    "code" TEXT NOT NULL,
    "title" TEXT NOT NULL,
    "kind" TEXT NOT NULL,
    "document" TEXT NOT NULL,
    "revision" TEXT NOT NULL,
    "anchor" TEXT NOT NULL,
    "airframe_type_id" UUID,
    "position_number" INTEGER,
    "engine_model_id" UUID,
    "part_number" TEXT,
    "threshold_minutes" BIGINT,
    "threshold_cycles" INTEGER,
    "threshold_days" INTEGER,
    "threshold_months" INTEGER,
    "repeat_minutes" BIGINT,
    "repeat_cycles" INTEGER,
    "repeat_days" INTEGER,
    "repeat_months" INTEGER,
    "combine" TEXT NOT NULL,
    "month_rule" TEXT NOT NULL,
    "counted_from" TEXT NOT NULL,
    "from_on" DATE,
    "effective_on" DATE NOT NULL,
    "recorded_seq" BIGINT NOT NULL,
    "voided_seq" BIGINT,
    "void_reason" TEXT,

    CONSTRAINT "requirement_pkey" PRIMARY KEY ("operator_id","id")
);

-- CreateTable
CREATE TABLE "accomplishment" (
    "operator_id" INTEGER NOT NULL,
    "id" UUID NOT NULL,
    "requirement_id" UUID NOT NULL,
    "airframe_id" UUID,
    "position_id" UUID,
    "component_id" UUID,
    "at" TIMESTAMPTZ(6) NOT NULL,
    "done_on" DATE NOT NULL,
    "minutes" BIGINT,
    "cycles" BIGINT,
    "cycle_denominator" INTEGER NOT NULL DEFAULT 1,
    "evidence" TEXT NOT NULL,
    "package_id" UUID,
    "recorded_seq" BIGINT NOT NULL,
    "voided_seq" BIGINT,
    "void_reason" TEXT,

    CONSTRAINT "accomplishment_pkey" PRIMARY KEY ("operator_id","id")
);

-- CreateTable
CREATE TABLE "package_requirement" (
    "operator_id" INTEGER NOT NULL,
    "id" UUID NOT NULL,
    "package_id" UUID NOT NULL,
    "requirement_id" UUID NOT NULL,
    "airframe_id" UUID,
    "position_id" UUID,
    "component_id" UUID,
    "recorded_seq" BIGINT NOT NULL,
    "voided_seq" BIGINT,
    "void_reason" TEXT,

    CONSTRAINT "package_requirement_pkey" PRIMARY KEY ("operator_id","id")
);

-- CreateIndex
CREATE INDEX "accomplishment_operator_id_requirement_id_idx" ON "accomplishment"("operator_id", "requirement_id");

-- CreateIndex
CREATE INDEX "accomplishment_operator_id_package_id_idx" ON "accomplishment"("operator_id", "package_id");

-- CreateIndex
CREATE INDEX "accomplishment_operator_id_airframe_id_idx" ON "accomplishment"("operator_id", "airframe_id");

-- CreateIndex
CREATE INDEX "accomplishment_operator_id_position_id_idx" ON "accomplishment"("operator_id", "position_id");

-- CreateIndex
CREATE INDEX "accomplishment_operator_id_component_id_idx" ON "accomplishment"("operator_id", "component_id");

-- CreateIndex
CREATE INDEX "package_requirement_operator_id_package_id_idx" ON "package_requirement"("operator_id", "package_id");

-- CreateIndex
CREATE INDEX "due_point_operator_id_requirement_id_idx" ON "due_point"("operator_id", "requirement_id");

-- CreateIndex
CREATE INDEX "due_point_operator_id_airframe_id_idx" ON "due_point"("operator_id", "airframe_id");

-- CreateIndex
CREATE UNIQUE INDEX "due_point_once" ON "due_point"("operator_id", "component_id", "airframe_id", "position_id", "kind", "requirement_id", "dimension");

-- AddForeignKey
ALTER TABLE "due_point" ADD CONSTRAINT "due_point_operator_id_airframe_id_fkey" FOREIGN KEY ("operator_id", "airframe_id") REFERENCES "airframe"("operator_id", "id") ON DELETE NO ACTION ON UPDATE NO ACTION;

-- AddForeignKey
ALTER TABLE "due_point" ADD CONSTRAINT "due_point_operator_id_position_id_fkey" FOREIGN KEY ("operator_id", "position_id") REFERENCES "position"("operator_id", "id") ON DELETE NO ACTION ON UPDATE NO ACTION;

-- AddForeignKey
ALTER TABLE "due_point" ADD CONSTRAINT "due_point_operator_id_requirement_id_fkey" FOREIGN KEY ("operator_id", "requirement_id") REFERENCES "requirement"("operator_id", "id") ON DELETE NO ACTION ON UPDATE NO ACTION;

-- AddForeignKey
ALTER TABLE "requirement" ADD CONSTRAINT "requirement_operator_id_fkey" FOREIGN KEY ("operator_id") REFERENCES "operator"("id") ON DELETE NO ACTION ON UPDATE NO ACTION;

-- AddForeignKey
ALTER TABLE "requirement" ADD CONSTRAINT "requirement_operator_id_airframe_type_id_fkey" FOREIGN KEY ("operator_id", "airframe_type_id") REFERENCES "airframe_type"("operator_id", "id") ON DELETE NO ACTION ON UPDATE NO ACTION;

-- AddForeignKey
ALTER TABLE "requirement" ADD CONSTRAINT "requirement_operator_id_engine_model_id_fkey" FOREIGN KEY ("operator_id", "engine_model_id") REFERENCES "engine_model"("operator_id", "id") ON DELETE NO ACTION ON UPDATE NO ACTION;

-- AddForeignKey
ALTER TABLE "accomplishment" ADD CONSTRAINT "accomplishment_operator_id_fkey" FOREIGN KEY ("operator_id") REFERENCES "operator"("id") ON DELETE NO ACTION ON UPDATE NO ACTION;

-- AddForeignKey
ALTER TABLE "accomplishment" ADD CONSTRAINT "accomplishment_operator_id_requirement_id_fkey" FOREIGN KEY ("operator_id", "requirement_id") REFERENCES "requirement"("operator_id", "id") ON DELETE NO ACTION ON UPDATE NO ACTION;

-- AddForeignKey
ALTER TABLE "accomplishment" ADD CONSTRAINT "accomplishment_operator_id_airframe_id_fkey" FOREIGN KEY ("operator_id", "airframe_id") REFERENCES "airframe"("operator_id", "id") ON DELETE NO ACTION ON UPDATE NO ACTION;

-- AddForeignKey
ALTER TABLE "accomplishment" ADD CONSTRAINT "accomplishment_operator_id_position_id_fkey" FOREIGN KEY ("operator_id", "position_id") REFERENCES "position"("operator_id", "id") ON DELETE NO ACTION ON UPDATE NO ACTION;

-- AddForeignKey
ALTER TABLE "accomplishment" ADD CONSTRAINT "accomplishment_operator_id_component_id_fkey" FOREIGN KEY ("operator_id", "component_id") REFERENCES "component"("operator_id", "id") ON DELETE NO ACTION ON UPDATE NO ACTION;

-- AddForeignKey
ALTER TABLE "accomplishment" ADD CONSTRAINT "accomplishment_operator_id_package_id_fkey" FOREIGN KEY ("operator_id", "package_id") REFERENCES "work_package"("operator_id", "id") ON DELETE NO ACTION ON UPDATE NO ACTION;

-- AddForeignKey
ALTER TABLE "package_requirement" ADD CONSTRAINT "package_requirement_operator_id_fkey" FOREIGN KEY ("operator_id") REFERENCES "operator"("id") ON DELETE NO ACTION ON UPDATE NO ACTION;

-- AddForeignKey
ALTER TABLE "package_requirement" ADD CONSTRAINT "package_requirement_operator_id_package_id_fkey" FOREIGN KEY ("operator_id", "package_id") REFERENCES "work_package"("operator_id", "id") ON DELETE NO ACTION ON UPDATE NO ACTION;

-- AddForeignKey
ALTER TABLE "package_requirement" ADD CONSTRAINT "package_requirement_operator_id_requirement_id_fkey" FOREIGN KEY ("operator_id", "requirement_id") REFERENCES "requirement"("operator_id", "id") ON DELETE NO ACTION ON UPDATE NO ACTION;

-- AddForeignKey
ALTER TABLE "package_requirement" ADD CONSTRAINT "package_requirement_operator_id_airframe_id_fkey" FOREIGN KEY ("operator_id", "airframe_id") REFERENCES "airframe"("operator_id", "id") ON DELETE NO ACTION ON UPDATE NO ACTION;

-- AddForeignKey
ALTER TABLE "package_requirement" ADD CONSTRAINT "package_requirement_operator_id_position_id_fkey" FOREIGN KEY ("operator_id", "position_id") REFERENCES "position"("operator_id", "id") ON DELETE NO ACTION ON UPDATE NO ACTION;

-- AddForeignKey
ALTER TABLE "package_requirement" ADD CONSTRAINT "package_requirement_operator_id_component_id_fkey" FOREIGN KEY ("operator_id", "component_id") REFERENCES "component"("operator_id", "id") ON DELETE NO ACTION ON UPDATE NO ACTION;

-- One due point of each kind and dimension for a subject: a component, an airframe or a position.
DROP INDEX due_point_once;
CREATE UNIQUE INDEX due_point_once ON due_point
  (operator_id, component_id, airframe_id, position_id, kind, requirement_id, dimension) NULLS NOT DISTINCT;
ALTER TABLE due_point
  ADD CHECK (num_nonnulls(component_id, airframe_id, position_id) = 1),
  ADD CHECK ((kind = 'requirement') = (requirement_id IS NOT NULL)),
  ADD CHECK (num_nonnulls(due_at, due_on) <= 1);

-- Closed words, and what a requirement may ask of what it follows.
ALTER TABLE requirement
  ADD CHECK (kind IN ('inspection', 'overhaul', 'directive', 'bulletin', 'discard', 'check')),
  ADD CHECK (combine IN ('first', 'last')), ADD CHECK (month_rule IN ('same-day', 'month-end')),
  ADD CHECK (counted_from IN ('new', 'overhaul', 'installation', 'date')),
  ADD CHECK ((counted_from = 'date') = (from_on IS NOT NULL)),
  ADD CHECK (CASE anchor
    WHEN 'airframe' THEN num_nonnulls(position_number, engine_model_id, part_number) = 0 AND counted_from IN ('new', 'date')
    WHEN 'position' THEN num_nonnulls(engine_model_id, part_number) = 0 AND counted_from <> 'overhaul'
    WHEN 'engine' THEN num_nonnulls(airframe_type_id, position_number, part_number) = 0
    WHEN 'part' THEN num_nonnulls(airframe_type_id, position_number, engine_model_id) = 0 AND part_number IS NOT NULL
    ELSE false END),
  ADD CHECK (num_nonnulls(threshold_minutes, threshold_cycles, threshold_days, threshold_months,
                          repeat_minutes, repeat_cycles, repeat_days, repeat_months) > 0),
  ADD CHECK (least(threshold_minutes, threshold_cycles, threshold_days, threshold_months) > 0),
  ADD CHECK (least(repeat_minutes, repeat_cycles, repeat_days, repeat_months) > 0);
CREATE UNIQUE INDEX requirement_revision ON requirement (operator_id, code, revision) WHERE voided_seq IS NULL;
ALTER TABLE accomplishment
  ADD CHECK (num_nonnulls(airframe_id, position_id, component_id) = 1),
  ADD CHECK (minutes >= 0), ADD CHECK (cycles >= 0), ADD CHECK (cycle_denominator > 0),
  ADD CHECK (mod(extract(epoch FROM at), 60) = 0);
ALTER TABLE package_requirement ADD CHECK (num_nonnulls(airframe_id, position_id, component_id) = 1);
CREATE UNIQUE INDEX package_requirement_once ON package_requirement
  (operator_id, package_id, requirement_id, airframe_id, position_id, component_id) NULLS NOT DISTINCT WHERE voided_seq IS NULL;

DO $$
DECLARE
  v_table text;
BEGIN
  FOREACH v_table IN ARRAY ARRAY['requirement', 'accomplishment', 'package_requirement'] LOOP
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
CREATE TRIGGER frozen_package_guard BEFORE INSERT OR UPDATE ON package_requirement
  FOR EACH ROW EXECUTE FUNCTION frozen_package_guard();
ALTER TABLE package_requirement ENABLE ALWAYS TRIGGER frozen_package_guard;

-- As before, and now of requirements too, whose airframes and positions count one cycle for each flight. Of
-- 'whichever last' a single counter says nothing: only what has no other is told here.
CREATE OR REPLACE FUNCTION due_points_passed(p_operator int, p_airframe uuid, p_counts counts) RETURNS jsonb
LANGUAGE plpgsql STABLE AS $$
DECLARE
  v_passed jsonb;
BEGIN
  SELECT jsonb_agg(jsonb_build_object('componentId', d.component_id, 'airframeId', d.airframe_id, 'positionId', d.position_id,
           'requirementId', d.requirement_id, 'engineId', d.engine_id,
           'dimension', CASE reading.dimension WHEN 'flights' THEN 'cycles' ELSE reading.dimension END,
           'dueAt', d.due_at, 'reading', reading.now, 'denominator', reading.denominator)
         ORDER BY d.due_at - reading.now) INTO v_passed
    FROM (
      SELECT n.carrier_id, 'minutes' AS dimension, NULL::uuid AS rule_id, n.minutes AS now, p_counts.minutes AS added,
             1 AS denominator
        FROM clock_now n WHERE n.operator_id = p_operator AND n.airframe_id = p_airframe
      UNION ALL
      SELECT n.carrier_id, 'flights', NULL::uuid, n.flights, p_counts.flights, 1
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
   WHERE d.requirement_id IS NULL OR NOT EXISTS (
     SELECT FROM requirement q JOIN due_point o ON o.operator_id = q.operator_id AND o.requirement_id = q.id
      WHERE q.operator_id = p_operator AND q.id = d.requirement_id AND q.combine = 'last' AND o.id <> d.id
        AND (o.component_id, o.airframe_id, o.position_id) IS NOT DISTINCT FROM (d.component_id, d.airframe_id, d.position_id));
  RETURN coalesce(v_passed, '[]'::jsonb);
END $$;
