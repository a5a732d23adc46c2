-- CreateTable
CREATE TABLE "gap_note" (
    "operator_id" INTEGER NOT NULL,
    "id" UUID NOT NULL,
    "flight_id" UUID NOT NULL,
    "kind" TEXT NOT NULL,
    "before" TEXT NOT NULL,
    "after" TEXT NOT NULL,
    "note" TEXT NOT NULL,
    "recorded_seq" BIGINT NOT NULL,
    "voided_seq" BIGINT,
    "void_reason" TEXT,

    CONSTRAINT "gap_note_pkey" PRIMARY KEY ("operator_id","id")
);

-- CreateIndex
CREATE INDEX "gap_note_operator_id_flight_id_idx" ON "gap_note"("operator_id", "flight_id");

-- AddForeignKey
ALTER TABLE "gap_note" ADD CONSTRAINT "gap_note_operator_id_fkey" FOREIGN KEY ("operator_id") REFERENCES "operator"("id") ON DELETE NO ACTION ON UPDATE NO ACTION;

-- AddForeignKey
ALTER TABLE "gap_note" ADD CONSTRAINT "gap_note_operator_id_flight_id_fkey" FOREIGN KEY ("operator_id", "flight_id") REFERENCES "flight"("operator_id", "id") ON DELETE NO ACTION ON UPDATE NO ACTION;

-- One that counts for each kind of gap before a flight.
CREATE UNIQUE INDEX gap_note_once ON gap_note (operator_id, flight_id, kind) WHERE voided_seq IS NULL;
ALTER TABLE gap_note
  ADD CHECK (kind IN ('pages', 'stations')), ADD CHECK (btrim(note) <> ''), ADD CHECK (before <> after);

ALTER TABLE gap_note ENABLE ROW LEVEL SECURITY;
ALTER TABLE gap_note FORCE ROW LEVEL SECURITY;
CREATE POLICY own_operator ON gap_note TO app, auditor
  USING (operator_id = (SELECT current_setting('app.operator_id')::int))
  WITH CHECK (operator_id = (SELECT current_setting('app.operator_id')::int));
CREATE POLICY whole_table ON gap_note TO owner USING (true) WITH CHECK (true);
GRANT SELECT ON gap_note TO app, auditor;
GRANT INSERT ON gap_note TO app;
GRANT UPDATE (voided_seq, void_reason) ON gap_note TO app;
CREATE TRIGGER fact_guard BEFORE UPDATE OR DELETE ON gap_note FOR EACH ROW EXECUTE FUNCTION fact_guard();
ALTER TABLE gap_note ENABLE ALWAYS TRIGGER fact_guard;
CREATE TRIGGER no_truncate BEFORE TRUNCATE ON gap_note FOR EACH STATEMENT EXECUTE FUNCTION record_guard();
ALTER TABLE gap_note ENABLE ALWAYS TRIGGER no_truncate;
