-- Components sent to a shop and returned, what is tagged, and how what lies in store is preserved.

-- AlterTable
ALTER TABLE "reset" ADD COLUMN     "shop_visit_id" UUID;

-- CreateTable
CREATE TABLE "shop_visit" (
    "operator_id" INTEGER NOT NULL,
    "id" UUID NOT NULL,
    "component_id" UUID NOT NULL,
    "location_id" UUID NOT NULL,
    "order_reference" TEXT NOT NULL,
    "workscope" TEXT NOT NULL,
    "sent_at" TIMESTAMPTZ(6) NOT NULL,
    "build" JSONB NOT NULL,
    "recorded_seq" BIGINT NOT NULL,
    "voided_seq" BIGINT,
    "void_reason" TEXT,

    CONSTRAINT "shop_visit_pkey" PRIMARY KEY ("operator_id","id")
);

-- CreateTable
CREATE TABLE "shop_return" (
    "operator_id" INTEGER NOT NULL,
    "id" UUID NOT NULL,
    "visit_id" UUID NOT NULL,
    "component_id" UUID NOT NULL,
    "location_id" UUID NOT NULL,
    "returned_at" TIMESTAMPTZ(6) NOT NULL,
    "report" TEXT NOT NULL,
    "certificate" TEXT,
    "work_done" TEXT NOT NULL,
    "build" JSONB NOT NULL,
    "objections" JSONB NOT NULL,
    "recorded_seq" BIGINT NOT NULL,
    "voided_seq" BIGINT,
    "void_reason" TEXT,

    CONSTRAINT "shop_return_pkey" PRIMARY KEY ("operator_id","id")
);

-- CreateTable
CREATE TABLE "shop_change" (
    "operator_id" INTEGER NOT NULL,
    "id" UUID NOT NULL,
    "return_id" UUID NOT NULL,
    "slot_id" UUID NOT NULL,
    "outgoing_id" UUID,
    "incoming_id" UUID,
    "removed_to_id" UUID,
    "at" TIMESTAMPTZ(6) NOT NULL,
    "reason" TEXT NOT NULL,
    "certificate" TEXT,
    "disposition" TEXT,
    "disposition_text" TEXT,
    "recorded_seq" BIGINT NOT NULL,
    "voided_seq" BIGINT,
    "void_reason" TEXT,

    CONSTRAINT "shop_change_pkey" PRIMARY KEY ("operator_id","id")
);

-- CreateTable
CREATE TABLE "serviceability_tag" (
    "operator_id" INTEGER NOT NULL,
    "id" UUID NOT NULL,
    "component_id" UUID NOT NULL,
    "status" TEXT NOT NULL,
    "tag_number" TEXT NOT NULL,
    "reason" TEXT NOT NULL,
    "certificate" TEXT,
    "issued_by" TEXT NOT NULL,
    "at" TIMESTAMPTZ(6) NOT NULL,
    "recorded_seq" BIGINT NOT NULL,
    "voided_seq" BIGINT,
    "void_reason" TEXT,

    CONSTRAINT "serviceability_tag_pkey" PRIMARY KEY ("operator_id","id")
);

-- CreateTable
CREATE TABLE "preservation" (
    "operator_id" INTEGER NOT NULL,
    "id" UUID NOT NULL,
    "component_id" UUID NOT NULL,
    "at" TIMESTAMPTZ(6) NOT NULL,
    "method" TEXT NOT NULL,
    "good_until" DATE NOT NULL,
    "document" TEXT NOT NULL,
    "recorded_seq" BIGINT NOT NULL,
    "voided_seq" BIGINT,
    "void_reason" TEXT,

    CONSTRAINT "preservation_pkey" PRIMARY KEY ("operator_id","id")
);

-- CreateIndex
CREATE INDEX "reset_operator_id_shop_visit_id_idx" ON "reset"("operator_id", "shop_visit_id");

-- CreateIndex
CREATE INDEX "shop_visit_operator_id_component_id_sent_at_idx" ON "shop_visit"("operator_id", "component_id", "sent_at");

-- CreateIndex
CREATE INDEX "shop_visit_operator_id_sent_at_id_idx" ON "shop_visit"("operator_id", "sent_at", "id");

-- CreateIndex
CREATE INDEX "shop_return_operator_id_visit_id_idx" ON "shop_return"("operator_id", "visit_id");

-- CreateIndex
CREATE INDEX "shop_return_operator_id_component_id_idx" ON "shop_return"("operator_id", "component_id");

-- CreateIndex
CREATE INDEX "shop_change_operator_id_return_id_idx" ON "shop_change"("operator_id", "return_id");

-- CreateIndex
CREATE INDEX "shop_change_operator_id_outgoing_id_idx" ON "shop_change"("operator_id", "outgoing_id");

-- CreateIndex
CREATE INDEX "shop_change_operator_id_incoming_id_idx" ON "shop_change"("operator_id", "incoming_id");

-- CreateIndex
CREATE INDEX "serviceability_tag_operator_id_component_id_at_idx" ON "serviceability_tag"("operator_id", "component_id", "at");

-- CreateIndex
CREATE INDEX "preservation_operator_id_component_id_at_idx" ON "preservation"("operator_id", "component_id", "at");

-- AddForeignKey
ALTER TABLE "shop_visit" ADD CONSTRAINT "shop_visit_operator_id_fkey" FOREIGN KEY ("operator_id") REFERENCES "operator"("id") ON DELETE NO ACTION ON UPDATE NO ACTION;

-- AddForeignKey
ALTER TABLE "shop_visit" ADD CONSTRAINT "shop_visit_operator_id_component_id_fkey" FOREIGN KEY ("operator_id", "component_id") REFERENCES "component"("operator_id", "id") ON DELETE NO ACTION ON UPDATE NO ACTION;

-- AddForeignKey
ALTER TABLE "shop_visit" ADD CONSTRAINT "shop_visit_operator_id_location_id_fkey" FOREIGN KEY ("operator_id", "location_id") REFERENCES "location"("operator_id", "id") ON DELETE NO ACTION ON UPDATE NO ACTION;

-- AddForeignKey
ALTER TABLE "reset" ADD CONSTRAINT "reset_operator_id_shop_visit_id_fkey" FOREIGN KEY ("operator_id", "shop_visit_id") REFERENCES "shop_visit"("operator_id", "id") ON DELETE NO ACTION ON UPDATE NO ACTION;

-- AddForeignKey
ALTER TABLE "shop_return" ADD CONSTRAINT "shop_return_operator_id_fkey" FOREIGN KEY ("operator_id") REFERENCES "operator"("id") ON DELETE NO ACTION ON UPDATE NO ACTION;

-- AddForeignKey
ALTER TABLE "shop_return" ADD CONSTRAINT "shop_return_operator_id_visit_id_fkey" FOREIGN KEY ("operator_id", "visit_id") REFERENCES "shop_visit"("operator_id", "id") ON DELETE NO ACTION ON UPDATE NO ACTION;

-- AddForeignKey
ALTER TABLE "shop_return" ADD CONSTRAINT "shop_return_operator_id_component_id_fkey" FOREIGN KEY ("operator_id", "component_id") REFERENCES "component"("operator_id", "id") ON DELETE NO ACTION ON UPDATE NO ACTION;

-- AddForeignKey
ALTER TABLE "shop_return" ADD CONSTRAINT "shop_return_operator_id_location_id_fkey" FOREIGN KEY ("operator_id", "location_id") REFERENCES "location"("operator_id", "id") ON DELETE NO ACTION ON UPDATE NO ACTION;

-- AddForeignKey
ALTER TABLE "shop_change" ADD CONSTRAINT "shop_change_operator_id_fkey" FOREIGN KEY ("operator_id") REFERENCES "operator"("id") ON DELETE NO ACTION ON UPDATE NO ACTION;

-- AddForeignKey
ALTER TABLE "shop_change" ADD CONSTRAINT "shop_change_operator_id_return_id_fkey" FOREIGN KEY ("operator_id", "return_id") REFERENCES "shop_return"("operator_id", "id") ON DELETE NO ACTION ON UPDATE NO ACTION;

-- AddForeignKey
ALTER TABLE "shop_change" ADD CONSTRAINT "shop_change_operator_id_slot_id_fkey" FOREIGN KEY ("operator_id", "slot_id") REFERENCES "slot"("operator_id", "id") ON DELETE NO ACTION ON UPDATE NO ACTION;

-- AddForeignKey
ALTER TABLE "shop_change" ADD CONSTRAINT "shop_change_operator_id_outgoing_id_fkey" FOREIGN KEY ("operator_id", "outgoing_id") REFERENCES "component"("operator_id", "id") ON DELETE NO ACTION ON UPDATE NO ACTION;

-- AddForeignKey
ALTER TABLE "shop_change" ADD CONSTRAINT "shop_change_operator_id_incoming_id_fkey" FOREIGN KEY ("operator_id", "incoming_id") REFERENCES "component"("operator_id", "id") ON DELETE NO ACTION ON UPDATE NO ACTION;

-- AddForeignKey
ALTER TABLE "shop_change" ADD CONSTRAINT "shop_change_operator_id_removed_to_id_fkey" FOREIGN KEY ("operator_id", "removed_to_id") REFERENCES "location"("operator_id", "id") ON DELETE NO ACTION ON UPDATE NO ACTION;

-- AddForeignKey
ALTER TABLE "serviceability_tag" ADD CONSTRAINT "serviceability_tag_operator_id_fkey" FOREIGN KEY ("operator_id") REFERENCES "operator"("id") ON DELETE NO ACTION ON UPDATE NO ACTION;

-- AddForeignKey
ALTER TABLE "serviceability_tag" ADD CONSTRAINT "serviceability_tag_operator_id_component_id_fkey" FOREIGN KEY ("operator_id", "component_id") REFERENCES "component"("operator_id", "id") ON DELETE NO ACTION ON UPDATE NO ACTION;

-- AddForeignKey
ALTER TABLE "preservation" ADD CONSTRAINT "preservation_operator_id_fkey" FOREIGN KEY ("operator_id") REFERENCES "operator"("id") ON DELETE NO ACTION ON UPDATE NO ACTION;

-- AddForeignKey
ALTER TABLE "preservation" ADD CONSTRAINT "preservation_operator_id_component_id_fkey" FOREIGN KEY ("operator_id", "component_id") REFERENCES "component"("operator_id", "id") ON DELETE NO ACTION ON UPDATE NO ACTION;

-- Closed words; a visit is returned from once, and a component is in one shop at a time: the service looks under the
-- component's lock, the index has the last word on the first.
CREATE UNIQUE INDEX shop_return_once ON shop_return (operator_id, visit_id) WHERE voided_seq IS NULL;
ALTER TABLE shop_visit
  ADD CHECK (btrim(order_reference) <> ''), ADD CHECK (btrim(workscope) <> ''),
  ADD CHECK (mod(extract(epoch FROM sent_at), 60) = 0);
ALTER TABLE shop_return
  ADD CHECK (btrim(report) <> ''), ADD CHECK (btrim(work_done) <> ''),
  ADD CHECK (mod(extract(epoch FROM returned_at), 60) = 0);
ALTER TABLE shop_change
  ADD CHECK (num_nonnulls(outgoing_id, incoming_id) > 0),
  ADD CHECK ((outgoing_id IS NULL) = (removed_to_id IS NULL)),
  ADD CHECK (disposition IN ('record', 'tag', 'temporary-mark', 'permanent-mark', 'segregated', 'mutilated', 'other')),
  ADD CHECK ((disposition IS NULL) = (disposition_text IS NULL)),
  ADD CHECK (disposition IS NULL OR outgoing_id IS NOT NULL),
  ADD CHECK (mod(extract(epoch FROM at), 60) = 0);
ALTER TABLE serviceability_tag
  ADD CHECK (status IN ('serviceable', 'unserviceable', 'quarantine')),
  ADD CHECK (btrim(tag_number) <> ''), ADD CHECK (mod(extract(epoch FROM at), 60) = 0);
ALTER TABLE preservation
  ADD CHECK (btrim(method) <> ''), ADD CHECK (mod(extract(epoch FROM at), 60) = 0);

DO $$
DECLARE
  v_table text;
BEGIN
  FOREACH v_table IN ARRAY ARRAY['shop_visit', 'shop_return', 'shop_change', 'serviceability_tag', 'preservation'] LOOP
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
