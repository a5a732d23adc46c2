-- AlterTable
ALTER TABLE "package_change" ALTER COLUMN "position_id" DROP NOT NULL;

-- AlterTable
ALTER TABLE "person" ADD COLUMN     "pin_hash" TEXT;

-- AlterTable
ALTER TABLE "work_package" ADD COLUMN     "procedure_id" UUID,
ADD COLUMN     "reference" TEXT,
ADD COLUMN     "rule_set" TEXT;

-- CreateTable
CREATE TABLE "authorisation" (
    "operator_id" INTEGER NOT NULL,
    "id" UUID NOT NULL,
    "person_id" UUID NOT NULL,
    "scope" TEXT NOT NULL,
    "airframe_type_id" UUID,
    "from_on" DATE NOT NULL,
    "to_on" DATE,
    "reference" TEXT NOT NULL,
    "recorded_seq" BIGINT NOT NULL,
    "voided_seq" BIGINT,
    "void_reason" TEXT,

    CONSTRAINT "authorisation_pkey" PRIMARY KEY ("operator_id","id")
);

-- CreateTable
CREATE TABLE "tool" (
    "operator_id" INTEGER NOT NULL,
    "id" UUID NOT NULL,
    "serial_number" TEXT NOT NULL,
    "description" TEXT NOT NULL,
    "kind" TEXT NOT NULL,
    "unit" TEXT,
    "range_low" TEXT,
    "range_high" TEXT,
    "deviation" TEXT,
    "version" INTEGER NOT NULL DEFAULT 1,

    CONSTRAINT "tool_pkey" PRIMARY KEY ("operator_id","id")
);

-- CreateTable
CREATE TABLE "tool_calibration" (
    "operator_id" INTEGER NOT NULL,
    "id" UUID NOT NULL,
    "tool_id" UUID NOT NULL,
    "calibrated_on" DATE NOT NULL,
    "due_on" DATE NOT NULL,
    "certificate" TEXT NOT NULL,
    "recorded_seq" BIGINT NOT NULL,
    "voided_seq" BIGINT,
    "void_reason" TEXT,

    CONSTRAINT "tool_calibration_pkey" PRIMARY KEY ("operator_id","id")
);

-- CreateTable
CREATE TABLE "procedure" (
    "operator_id" INTEGER NOT NULL,
    "id" UUID NOT NULL,
    "code" TEXT NOT NULL,
    "revision" TEXT NOT NULL,
    "title" TEXT NOT NULL,
    "kind" TEXT NOT NULL,
    "document" TEXT NOT NULL,
    "document_revision" TEXT NOT NULL,
    "content" TEXT NOT NULL,
    "content_hash" BYTEA NOT NULL,
    "recorded_seq" BIGINT NOT NULL,

    CONSTRAINT "procedure_pkey" PRIMARY KEY ("operator_id","id")
);

-- CreateTable
CREATE TABLE "ordered_change" (
    "operator_id" INTEGER NOT NULL,
    "id" UUID NOT NULL,
    "package_id" UUID NOT NULL,
    "slot_id" UUID NOT NULL,
    "outgoing_id" UUID,
    "incoming_id" UUID,
    "rating_id" UUID,
    "removed_to_id" UUID,
    "reason" TEXT NOT NULL,
    "confirmed_by" UUID,
    "recorded_seq" BIGINT NOT NULL,
    "voided_seq" BIGINT,
    "void_reason" TEXT,

    CONSTRAINT "ordered_change_pkey" PRIMARY KEY ("operator_id","id")
);

-- CreateTable
CREATE TABLE "work_step" (
    "operator_id" INTEGER NOT NULL,
    "id" UUID NOT NULL,
    "package_id" UUID NOT NULL,
    "key" TEXT NOT NULL,
    "number" INTEGER NOT NULL,
    "definition" TEXT NOT NULL,
    "content_hash" BYTEA NOT NULL,
    "version" INTEGER NOT NULL DEFAULT 1,
    "recorded_seq" BIGINT NOT NULL,

    CONSTRAINT "work_step_pkey" PRIMARY KEY ("operator_id","id")
);

-- CreateTable
CREATE TABLE "step_entry" (
    "operator_id" INTEGER NOT NULL,
    "id" UUID NOT NULL,
    "package_id" UUID NOT NULL,
    "step_id" UUID NOT NULL,
    "capture" TEXT NOT NULL,
    "point" TEXT,
    "kind" TEXT NOT NULL,
    "typed" TEXT NOT NULL,
    "judged" TEXT NOT NULL,
    "verdict" TEXT NOT NULL,
    "tool_id" UUID,
    "component_id" UUID,
    "person_id" UUID NOT NULL,
    "person_name" TEXT NOT NULL,
    "entered_at" TIMESTAMPTZ(6) NOT NULL,
    "recorded_seq" BIGINT NOT NULL,
    "voided_seq" BIGINT,
    "void_reason" TEXT,

    CONSTRAINT "step_entry_pkey" PRIMARY KEY ("operator_id","id")
);

-- CreateTable
CREATE TABLE "step_photo" (
    "operator_id" INTEGER NOT NULL,
    "id" UUID NOT NULL,
    "entry_id" UUID NOT NULL,
    "media_type" TEXT NOT NULL,
    "sha256" BYTEA NOT NULL,
    "content" BYTEA NOT NULL,
    "recorded_seq" BIGINT NOT NULL,

    CONSTRAINT "step_photo_pkey" PRIMARY KEY ("operator_id","id")
);

-- CreateTable
CREATE TABLE "step_signature" (
    "operator_id" INTEGER NOT NULL,
    "id" UUID NOT NULL,
    "package_id" UUID NOT NULL,
    "step_id" UUID NOT NULL,
    "signature_id" UUID NOT NULL,
    "meaning" TEXT NOT NULL,
    "covers_id" UUID,
    "content_hash" BYTEA NOT NULL,
    "performed_at" TIMESTAMPTZ(6) NOT NULL,
    "reinspection_reason" TEXT,
    "recorded_seq" BIGINT NOT NULL,
    "voided_seq" BIGINT,
    "void_reason" TEXT,

    CONSTRAINT "step_signature_pkey" PRIMARY KEY ("operator_id","id")
);

-- CreateIndex
CREATE INDEX "authorisation_operator_id_person_id_idx" ON "authorisation"("operator_id", "person_id");

-- CreateIndex
CREATE UNIQUE INDEX "tool_operator_id_serial_number_key" ON "tool"("operator_id", "serial_number");

-- CreateIndex
CREATE INDEX "tool_calibration_operator_id_tool_id_calibrated_on_idx" ON "tool_calibration"("operator_id", "tool_id", "calibrated_on");

-- CreateIndex
CREATE UNIQUE INDEX "procedure_operator_id_code_revision_key" ON "procedure"("operator_id", "code", "revision");

-- CreateIndex
CREATE INDEX "ordered_change_operator_id_package_id_idx" ON "ordered_change"("operator_id", "package_id");

-- CreateIndex
CREATE UNIQUE INDEX "work_step_operator_id_package_id_key_key" ON "work_step"("operator_id", "package_id", "key");

-- CreateIndex
CREATE UNIQUE INDEX "work_step_operator_id_package_id_number_key" ON "work_step"("operator_id", "package_id", "number");

-- CreateIndex
CREATE INDEX "step_entry_operator_id_package_id_idx" ON "step_entry"("operator_id", "package_id");

-- CreateIndex
CREATE INDEX "step_entry_operator_id_step_id_idx" ON "step_entry"("operator_id", "step_id");

-- CreateIndex
CREATE INDEX "step_entry_operator_id_tool_id_idx" ON "step_entry"("operator_id", "tool_id");

-- CreateIndex
CREATE INDEX "step_photo_operator_id_entry_id_idx" ON "step_photo"("operator_id", "entry_id");

-- CreateIndex
CREATE INDEX "step_signature_operator_id_package_id_idx" ON "step_signature"("operator_id", "package_id");

-- CreateIndex
CREATE INDEX "step_signature_operator_id_step_id_idx" ON "step_signature"("operator_id", "step_id");

-- AddForeignKey
ALTER TABLE "authorisation" ADD CONSTRAINT "authorisation_operator_id_fkey" FOREIGN KEY ("operator_id") REFERENCES "operator"("id") ON DELETE NO ACTION ON UPDATE NO ACTION;

-- AddForeignKey
ALTER TABLE "authorisation" ADD CONSTRAINT "authorisation_operator_id_person_id_fkey" FOREIGN KEY ("operator_id", "person_id") REFERENCES "person"("operator_id", "id") ON DELETE NO ACTION ON UPDATE NO ACTION;

-- AddForeignKey
ALTER TABLE "authorisation" ADD CONSTRAINT "authorisation_operator_id_airframe_type_id_fkey" FOREIGN KEY ("operator_id", "airframe_type_id") REFERENCES "airframe_type"("operator_id", "id") ON DELETE NO ACTION ON UPDATE NO ACTION;

-- AddForeignKey
ALTER TABLE "tool" ADD CONSTRAINT "tool_operator_id_fkey" FOREIGN KEY ("operator_id") REFERENCES "operator"("id") ON DELETE NO ACTION ON UPDATE NO ACTION;

-- AddForeignKey
ALTER TABLE "tool_calibration" ADD CONSTRAINT "tool_calibration_operator_id_fkey" FOREIGN KEY ("operator_id") REFERENCES "operator"("id") ON DELETE NO ACTION ON UPDATE NO ACTION;

-- AddForeignKey
ALTER TABLE "tool_calibration" ADD CONSTRAINT "tool_calibration_operator_id_tool_id_fkey" FOREIGN KEY ("operator_id", "tool_id") REFERENCES "tool"("operator_id", "id") ON DELETE NO ACTION ON UPDATE NO ACTION;

-- AddForeignKey
ALTER TABLE "work_package" ADD CONSTRAINT "work_package_operator_id_procedure_id_fkey" FOREIGN KEY ("operator_id", "procedure_id") REFERENCES "procedure"("operator_id", "id") ON DELETE NO ACTION ON UPDATE NO ACTION;

-- AddForeignKey
ALTER TABLE "procedure" ADD CONSTRAINT "procedure_operator_id_fkey" FOREIGN KEY ("operator_id") REFERENCES "operator"("id") ON DELETE NO ACTION ON UPDATE NO ACTION;

-- AddForeignKey
ALTER TABLE "ordered_change" ADD CONSTRAINT "ordered_change_operator_id_fkey" FOREIGN KEY ("operator_id") REFERENCES "operator"("id") ON DELETE NO ACTION ON UPDATE NO ACTION;

-- AddForeignKey
ALTER TABLE "ordered_change" ADD CONSTRAINT "ordered_change_operator_id_package_id_fkey" FOREIGN KEY ("operator_id", "package_id") REFERENCES "work_package"("operator_id", "id") ON DELETE NO ACTION ON UPDATE NO ACTION;

-- AddForeignKey
ALTER TABLE "ordered_change" ADD CONSTRAINT "ordered_change_operator_id_slot_id_fkey" FOREIGN KEY ("operator_id", "slot_id") REFERENCES "slot"("operator_id", "id") ON DELETE NO ACTION ON UPDATE NO ACTION;

-- AddForeignKey
ALTER TABLE "ordered_change" ADD CONSTRAINT "ordered_change_operator_id_outgoing_id_fkey" FOREIGN KEY ("operator_id", "outgoing_id") REFERENCES "component"("operator_id", "id") ON DELETE NO ACTION ON UPDATE NO ACTION;

-- AddForeignKey
ALTER TABLE "ordered_change" ADD CONSTRAINT "ordered_change_operator_id_incoming_id_fkey" FOREIGN KEY ("operator_id", "incoming_id") REFERENCES "component"("operator_id", "id") ON DELETE NO ACTION ON UPDATE NO ACTION;

-- AddForeignKey
ALTER TABLE "ordered_change" ADD CONSTRAINT "ordered_change_operator_id_rating_id_fkey" FOREIGN KEY ("operator_id", "rating_id") REFERENCES "rating"("operator_id", "id") ON DELETE NO ACTION ON UPDATE NO ACTION;

-- AddForeignKey
ALTER TABLE "ordered_change" ADD CONSTRAINT "ordered_change_operator_id_removed_to_id_fkey" FOREIGN KEY ("operator_id", "removed_to_id") REFERENCES "location"("operator_id", "id") ON DELETE NO ACTION ON UPDATE NO ACTION;

-- AddForeignKey
ALTER TABLE "ordered_change" ADD CONSTRAINT "ordered_change_operator_id_confirmed_by_fkey" FOREIGN KEY ("operator_id", "confirmed_by") REFERENCES "person"("operator_id", "id") ON DELETE NO ACTION ON UPDATE NO ACTION;

-- AddForeignKey
ALTER TABLE "work_step" ADD CONSTRAINT "work_step_operator_id_fkey" FOREIGN KEY ("operator_id") REFERENCES "operator"("id") ON DELETE NO ACTION ON UPDATE NO ACTION;

-- AddForeignKey
ALTER TABLE "work_step" ADD CONSTRAINT "work_step_operator_id_package_id_fkey" FOREIGN KEY ("operator_id", "package_id") REFERENCES "work_package"("operator_id", "id") ON DELETE NO ACTION ON UPDATE NO ACTION;

-- AddForeignKey
ALTER TABLE "step_entry" ADD CONSTRAINT "step_entry_operator_id_fkey" FOREIGN KEY ("operator_id") REFERENCES "operator"("id") ON DELETE NO ACTION ON UPDATE NO ACTION;

-- AddForeignKey
ALTER TABLE "step_entry" ADD CONSTRAINT "step_entry_operator_id_step_id_fkey" FOREIGN KEY ("operator_id", "step_id") REFERENCES "work_step"("operator_id", "id") ON DELETE NO ACTION ON UPDATE NO ACTION;

-- AddForeignKey
ALTER TABLE "step_entry" ADD CONSTRAINT "step_entry_operator_id_tool_id_fkey" FOREIGN KEY ("operator_id", "tool_id") REFERENCES "tool"("operator_id", "id") ON DELETE NO ACTION ON UPDATE NO ACTION;

-- AddForeignKey
ALTER TABLE "step_entry" ADD CONSTRAINT "step_entry_operator_id_component_id_fkey" FOREIGN KEY ("operator_id", "component_id") REFERENCES "component"("operator_id", "id") ON DELETE NO ACTION ON UPDATE NO ACTION;

-- AddForeignKey
ALTER TABLE "step_entry" ADD CONSTRAINT "step_entry_operator_id_person_id_fkey" FOREIGN KEY ("operator_id", "person_id") REFERENCES "person"("operator_id", "id") ON DELETE NO ACTION ON UPDATE NO ACTION;

-- AddForeignKey
ALTER TABLE "step_photo" ADD CONSTRAINT "step_photo_operator_id_fkey" FOREIGN KEY ("operator_id") REFERENCES "operator"("id") ON DELETE NO ACTION ON UPDATE NO ACTION;

-- AddForeignKey
ALTER TABLE "step_photo" ADD CONSTRAINT "step_photo_operator_id_entry_id_fkey" FOREIGN KEY ("operator_id", "entry_id") REFERENCES "step_entry"("operator_id", "id") ON DELETE NO ACTION ON UPDATE NO ACTION;

-- AddForeignKey
ALTER TABLE "step_signature" ADD CONSTRAINT "step_signature_operator_id_fkey" FOREIGN KEY ("operator_id") REFERENCES "operator"("id") ON DELETE NO ACTION ON UPDATE NO ACTION;

-- AddForeignKey
ALTER TABLE "step_signature" ADD CONSTRAINT "step_signature_operator_id_step_id_fkey" FOREIGN KEY ("operator_id", "step_id") REFERENCES "work_step"("operator_id", "id") ON DELETE NO ACTION ON UPDATE NO ACTION;

-- AddForeignKey
ALTER TABLE "step_signature" ADD CONSTRAINT "step_signature_operator_id_signature_id_fkey" FOREIGN KEY ("operator_id", "signature_id") REFERENCES "signature"("operator_id", "id") ON DELETE NO ACTION ON UPDATE NO ACTION;

-- AddForeignKey
ALTER TABLE "step_signature" ADD CONSTRAINT "step_signature_operator_id_covers_id_fkey" FOREIGN KEY ("operator_id", "covers_id") REFERENCES "step_signature"("operator_id", "id") ON DELETE NO ACTION ON UPDATE NO ACTION;

-- Closed words, and what is always true.
ALTER TABLE work_package
  DROP CONSTRAINT work_package_kind_check,
  DROP CONSTRAINT work_package_status_check,
  ADD CONSTRAINT work_package_kind_check
    CHECK (kind IN ('engine-change', 'pod-swap', 'inspection', 'component-change', 'directive')),
  ADD CONSTRAINT work_package_status_check CHECK (status IN ('open', 'released', 'withdrawn'));
ALTER TABLE procedure
  ADD CHECK (kind IN ('engine-change', 'pod-swap', 'inspection', 'component-change', 'directive'));
ALTER TABLE ordered_change ADD CHECK (num_nonnulls(outgoing_id, incoming_id) > 0);
CREATE UNIQUE INDEX ordered_change_once ON ordered_change (operator_id, package_id, slot_id) WHERE voided_seq IS NULL;
ALTER TABLE work_step ADD CHECK (number > 0), ADD CHECK (octet_length(content_hash) = 32);
ALTER TABLE step_entry
  ADD CHECK (kind IN ('torque', 'count', 'component-off', 'component-on', 'papers', 'leak-check', 'readings', 'text', 'check',
    'photo')),
  ADD CHECK (verdict IN ('accepted', 'rejected'));
ALTER TABLE step_photo
  ADD CHECK (media_type IN ('image/jpeg', 'image/png', 'image/webp')), ADD CHECK (octet_length(content) <= 8388608),
  ADD CHECK (sha256 = sha256(content));
ALTER TABLE step_signature
  ADD CHECK (meaning IN ('done', 'inspection')), ADD CHECK ((meaning = 'inspection') = (covers_id IS NOT NULL)),
  ADD CHECK (mod(extract(epoch FROM performed_at), 60) = 0);
ALTER TABLE tool
  ADD CHECK (kind IN ('torque-wrench', 'gauge', 'other')),
  ADD CHECK (num_nonnulls(range_low, range_high) <> 1), ADD CHECK (range_low IS NULL OR unit IS NOT NULL);
ALTER TABLE tool_calibration ADD CHECK (due_on >= calibrated_on);
ALTER TABLE authorisation
  ADD CHECK (scope IN ('work', 'inspection', 'release')), ADD CHECK (to_on IS NULL OR to_on >= from_on);

-- Of a step's content one signature says that it was done, and one that it was looked at: of many signers at once the
-- first wins. What no longer counts was signed on another hash, or is undone.
CREATE UNIQUE INDEX step_signature_once ON step_signature (operator_id, step_id, meaning, content_hash, covers_id)
  NULLS NOT DISTINCT WHERE voided_seq IS NULL;

-- A released or withdrawn package is frozen: nothing is added to it, and nothing in it is voided or changed.
CREATE FUNCTION frozen_package_guard() RETURNS trigger LANGUAGE plpgsql AS $$
DECLARE
  v_status text;
BEGIN
  SELECT status INTO v_status FROM work_package
   WHERE operator_id = NEW.operator_id AND id = NEW.package_id FOR SHARE;
  IF v_status <> 'open' THEN
    RAISE EXCEPTION 'the package is %', v_status USING ERRCODE = 'SB010', DETAIL = jsonb_build_object('status', v_status)::text;
  END IF;
  RETURN NEW;
END $$;

-- Who inspects is not who did the work, unless a reason says why one person looked again; and the covered signature is
-- one of the same step.
CREATE FUNCTION inspection_guard() RETURNS trigger LANGUAGE plpgsql AS $$
DECLARE
  v_done record;
BEGIN
  IF NEW.meaning <> 'inspection' THEN RETURN NEW; END IF;
  SELECT st.step_id, si.person_id INTO v_done
    FROM step_signature st JOIN signature si ON si.operator_id = st.operator_id AND si.id = st.signature_id
   WHERE st.operator_id = NEW.operator_id AND st.id = NEW.covers_id AND st.meaning = 'done';
  IF v_done.step_id IS DISTINCT FROM NEW.step_id THEN
    RAISE EXCEPTION 'an inspection covers the work of its own step' USING ERRCODE = 'SB011';
  END IF;
  IF NEW.reinspection_reason IS NULL AND v_done.person_id =
     (SELECT person_id FROM signature WHERE operator_id = NEW.operator_id AND id = NEW.signature_id) THEN
    RAISE EXCEPTION 'who did the work does not inspect it' USING ERRCODE = 'SB012';
  END IF;
  RETURN NEW;
END $$;
CREATE TRIGGER inspection_guard BEFORE INSERT ON step_signature FOR EACH ROW EXECUTE FUNCTION inspection_guard();
ALTER TABLE step_signature ENABLE ALWAYS TRIGGER inspection_guard;

DO $$
DECLARE
  v_table text;
  v_facts text[] := ARRAY['ordered_change', 'step_entry', 'step_signature', 'tool_calibration', 'authorisation'];
  v_records text[] := ARRAY['procedure', 'step_photo'];
BEGIN
  FOREACH v_table IN ARRAY v_facts || v_records || ARRAY['work_step', 'tool'] LOOP
    EXECUTE format('ALTER TABLE %I ENABLE ROW LEVEL SECURITY', v_table);
    EXECUTE format('ALTER TABLE %I FORCE ROW LEVEL SECURITY', v_table);
    EXECUTE format('CREATE POLICY own_operator ON %I TO app, auditor '
      'USING (operator_id = (SELECT current_setting(''app.operator_id'')::int)) '
      'WITH CHECK (operator_id = (SELECT current_setting(''app.operator_id'')::int))', v_table);
    EXECUTE format('CREATE POLICY whole_table ON %I TO owner USING (true) WITH CHECK (true)', v_table);
    EXECUTE format('GRANT SELECT ON %I TO app, auditor', v_table);
    EXECUTE format('GRANT INSERT ON %I TO app', v_table);
    IF v_table = ANY (v_facts) THEN
      EXECUTE format('GRANT UPDATE (voided_seq, void_reason) ON %I TO app', v_table);
      EXECUTE format('CREATE TRIGGER fact_guard BEFORE UPDATE OR DELETE ON %I FOR EACH ROW EXECUTE FUNCTION fact_guard()', v_table);
      EXECUTE format('ALTER TABLE %I ENABLE ALWAYS TRIGGER fact_guard', v_table);
    ELSIF v_table = ANY (v_records) THEN
      EXECUTE format('CREATE TRIGGER record_guard BEFORE UPDATE OR DELETE ON %I FOR EACH ROW EXECUTE FUNCTION record_guard()', v_table);
      EXECUTE format('ALTER TABLE %I ENABLE ALWAYS TRIGGER record_guard', v_table);
    END IF;
    IF v_table = ANY (v_facts || v_records) THEN
      EXECUTE format('CREATE TRIGGER no_truncate BEFORE TRUNCATE ON %I FOR EACH STATEMENT EXECUTE FUNCTION record_guard()', v_table);
      EXECUTE format('ALTER TABLE %I ENABLE ALWAYS TRIGGER no_truncate', v_table);
    END IF;
  END LOOP;
  FOREACH v_table IN ARRAY ARRAY['ordered_change', 'work_step', 'step_entry', 'step_signature'] LOOP
    EXECUTE format('CREATE TRIGGER frozen_package_guard BEFORE INSERT OR UPDATE ON %I FOR EACH ROW EXECUTE FUNCTION frozen_package_guard()', v_table);
    EXECUTE format('ALTER TABLE %I ENABLE ALWAYS TRIGGER frozen_package_guard', v_table);
  END LOOP;
END $$;
GRANT UPDATE (content_hash, version) ON work_step TO app;
GRANT UPDATE (version) ON tool TO app;
