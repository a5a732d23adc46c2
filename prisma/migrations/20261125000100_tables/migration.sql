-- CreateSchema

-- CreateTable
CREATE TABLE "component" (
    "operator_id" INTEGER NOT NULL,
    "id" UUID NOT NULL,
    "kind" TEXT NOT NULL,
    "maker" TEXT NOT NULL,
    "part_number" TEXT NOT NULL,
    "serial_number" TEXT NOT NULL,
    "description" TEXT NOT NULL,
    "engine_model_id" UUID,
    "life_limited" BOOLEAN NOT NULL DEFAULT false,
    "pod_clock" TEXT,
    "owner" TEXT NOT NULL,
    "lessor" TEXT,
    "manufactured_on" DATE,
    "version" INTEGER NOT NULL DEFAULT 1,

    CONSTRAINT "component_pkey" PRIMARY KEY ("operator_id","id")
);

-- CreateTable
CREATE TABLE "location" (
    "operator_id" INTEGER NOT NULL,
    "id" UUID NOT NULL,
    "name" TEXT NOT NULL,
    "kind" TEXT NOT NULL,

    CONSTRAINT "location_pkey" PRIMARY KEY ("operator_id","id")
);

-- CreateTable
CREATE TABLE "slot" (
    "operator_id" INTEGER NOT NULL,
    "id" UUID NOT NULL,
    "position_id" UUID,
    "component_id" UUID,
    "kind" TEXT NOT NULL,
    "name" TEXT NOT NULL,
    "life_limited" BOOLEAN NOT NULL DEFAULT false,
    "sort" INTEGER NOT NULL DEFAULT 0,

    CONSTRAINT "slot_pkey" PRIMARY KEY ("operator_id","id")
);

-- CreateTable
CREATE TABLE "stay" (
    "operator_id" INTEGER NOT NULL,
    "id" UUID NOT NULL,
    "component_id" UUID NOT NULL,
    "slot_id" UUID,
    "location_id" UUID,
    "from_at" TIMESTAMPTZ(6) NOT NULL,
    "from_kind" TEXT NOT NULL,
    "from_text" TEXT,
    "to_at" TIMESTAMPTZ(6),
    "to_kind" TEXT,
    "to_text" TEXT,
    "reason" TEXT,
    "end_reason" TEXT,
    "package_id" UUID,
    "end_package_id" UUID,
    "recorded_seq" BIGINT NOT NULL,
    "ended_seq" BIGINT,
    "voided_seq" BIGINT,
    "void_reason" TEXT,

    CONSTRAINT "stay_pkey" PRIMARY KEY ("operator_id","id")
);

-- CreateTable
CREATE TABLE "rating_change" (
    "operator_id" INTEGER NOT NULL,
    "id" UUID NOT NULL,
    "component_id" UUID NOT NULL,
    "rating_id" UUID NOT NULL,
    "at" TIMESTAMPTZ(6) NOT NULL,
    "source" TEXT NOT NULL,
    "recorded_seq" BIGINT NOT NULL,
    "voided_seq" BIGINT,
    "void_reason" TEXT,

    CONSTRAINT "rating_change_pkey" PRIMARY KEY ("operator_id","id")
);

-- CreateTable
CREATE TABLE "airframe_type" (
    "operator_id" INTEGER NOT NULL,
    "id" UUID NOT NULL,
    "maker" TEXT NOT NULL,
    "designation" TEXT NOT NULL,
    "version" INTEGER NOT NULL DEFAULT 1,

    CONSTRAINT "airframe_type_pkey" PRIMARY KEY ("operator_id","id")
);

-- CreateTable
CREATE TABLE "type_position" (
    "operator_id" INTEGER NOT NULL,
    "airframe_type_id" UUID NOT NULL,
    "number" INTEGER NOT NULL,
    "kind" TEXT NOT NULL,
    "mount" TEXT NOT NULL,
    "label" TEXT NOT NULL,

    CONSTRAINT "type_position_pkey" PRIMARY KEY ("operator_id","airframe_type_id","number")
);

-- CreateTable
CREATE TABLE "airframe" (
    "operator_id" INTEGER NOT NULL,
    "id" UUID NOT NULL,
    "registration" TEXT NOT NULL,
    "serial_number" TEXT NOT NULL,
    "airframe_type_id" UUID NOT NULL,
    "rule_set" TEXT NOT NULL,
    "day_zone" TEXT NOT NULL DEFAULT 'UTC',
    "owner" TEXT NOT NULL,
    "lessor" TEXT,
    "manufactured_on" DATE,
    "version" INTEGER NOT NULL DEFAULT 1,

    CONSTRAINT "airframe_pkey" PRIMARY KEY ("operator_id","id")
);

-- CreateTable
CREATE TABLE "position" (
    "operator_id" INTEGER NOT NULL,
    "id" UUID NOT NULL,
    "airframe_id" UUID NOT NULL,
    "number" INTEGER NOT NULL,
    "kind" TEXT NOT NULL,
    "mount" TEXT NOT NULL,
    "label" TEXT NOT NULL,

    CONSTRAINT "position_pkey" PRIMARY KEY ("operator_id","id")
);

-- CreateTable
CREATE TABLE "engine_model" (
    "operator_id" INTEGER NOT NULL,
    "id" UUID NOT NULL,
    "kind" TEXT NOT NULL,
    "maker" TEXT NOT NULL,
    "designation" TEXT NOT NULL,
    "life_method" TEXT NOT NULL,
    "life_source" TEXT NOT NULL,
    "version" INTEGER NOT NULL DEFAULT 1,

    CONSTRAINT "engine_model_pkey" PRIMARY KEY ("operator_id","id")
);

-- CreateTable
CREATE TABLE "rating" (
    "operator_id" INTEGER NOT NULL,
    "id" UUID NOT NULL,
    "engine_model_id" UUID NOT NULL,
    "code" TEXT NOT NULL,
    "description" TEXT,

    CONSTRAINT "rating_pkey" PRIMARY KEY ("operator_id","id")
);

-- CreateTable
CREATE TABLE "cycle_rule" (
    "operator_id" INTEGER NOT NULL,
    "id" UUID NOT NULL,
    "engine_model_id" UUID NOT NULL,
    "airframe_type_id" UUID,
    "per_flight" INTEGER NOT NULL,
    "per_landing" INTEGER NOT NULL,
    "per_touch_and_go" INTEGER NOT NULL,
    "per_start" INTEGER NOT NULL,
    "per_aborted_take_off" INTEGER NOT NULL,
    "denominator" INTEGER NOT NULL,
    "source" TEXT NOT NULL,
    "revision" TEXT NOT NULL,

    CONSTRAINT "cycle_rule_pkey" PRIMARY KEY ("operator_id","id")
);

-- CreateTable
CREATE TABLE "import_file" (
    "operator_id" INTEGER NOT NULL,
    "id" UUID NOT NULL,
    "kind" TEXT NOT NULL,
    "file_name" TEXT NOT NULL,
    "sha256" BYTEA NOT NULL,
    "content" BYTEA NOT NULL,
    "state" TEXT NOT NULL,
    "rows" INTEGER NOT NULL DEFAULT 0,
    "ready" INTEGER NOT NULL DEFAULT 0,
    "failed" INTEGER NOT NULL DEFAULT 0,
    "already" INTEGER NOT NULL DEFAULT 0,
    "report" JSONB,
    "created_by_id" UUID NOT NULL,
    "created_at" TIMESTAMPTZ(6) NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "version" INTEGER NOT NULL DEFAULT 1,

    CONSTRAINT "import_file_pkey" PRIMARY KEY ("operator_id","id")
);

-- CreateTable
CREATE TABLE "job" (
    "operator_id" INTEGER NOT NULL,
    "id" UUID NOT NULL,
    "kind" TEXT NOT NULL,
    "state" TEXT NOT NULL,
    "done" INTEGER NOT NULL DEFAULT 0,
    "total" INTEGER,
    "cancel_requested_at" TIMESTAMPTZ(6),
    "subject_id" UUID,
    "input" JSONB,
    "result" JSONB,
    "failure" TEXT,
    "created_by_id" UUID NOT NULL,
    "created_at" TIMESTAMPTZ(6) NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "started_at" TIMESTAMPTZ(6),
    "ended_at" TIMESTAMPTZ(6),

    CONSTRAINT "job_pkey" PRIMARY KEY ("operator_id","id")
);

-- CreateTable
CREATE TABLE "document" (
    "operator_id" INTEGER NOT NULL,
    "id" UUID NOT NULL,
    "kind" TEXT NOT NULL,
    "subject_id" UUID NOT NULL,
    "file_name" TEXT NOT NULL,
    "bytes" BYTEA NOT NULL,
    "sha256" BYTEA NOT NULL,
    "pages" INTEGER NOT NULL,
    "created_by_id" UUID NOT NULL,
    "created_at" TIMESTAMPTZ(6) NOT NULL DEFAULT CURRENT_TIMESTAMP,

    CONSTRAINT "document_pkey" PRIMARY KEY ("operator_id","id")
);

-- CreateTable
CREATE TABLE "journal_stream" (
    "operator_id" INTEGER NOT NULL,
    "stream" UUID NOT NULL,
    "seq" BIGINT NOT NULL,
    "hash" BYTEA NOT NULL,

    CONSTRAINT "journal_stream_pkey" PRIMARY KEY ("operator_id","stream")
);

-- CreateTable
CREATE TABLE "journal_entry" (
    "operator_id" INTEGER NOT NULL,
    "number" BIGINT NOT NULL,
    "stream" UUID NOT NULL,
    "seq" BIGINT NOT NULL,
    "kind" TEXT NOT NULL,
    "recorded_at" TIMESTAMPTZ(6) NOT NULL,
    "person_id" UUID,
    "act_key" TEXT,
    "body" TEXT NOT NULL,
    "prev" BYTEA NOT NULL,
    "hash" BYTEA NOT NULL,

    CONSTRAINT "journal_entry_pkey" PRIMARY KEY ("operator_id","number")
);

-- CreateTable
CREATE TABLE "about" (
    "operator_id" INTEGER NOT NULL,
    "subject" UUID NOT NULL,
    "number" BIGINT NOT NULL,

    CONSTRAINT "about_pkey" PRIMARY KEY ("operator_id","subject","number")
);

-- CreateTable
CREATE TABLE "act" (
    "operator_id" INTEGER NOT NULL,
    "person_id" UUID NOT NULL,
    "key" TEXT NOT NULL,
    "fingerprint" BYTEA NOT NULL,
    "status" INTEGER,
    "resource" TEXT,
    "version" INTEGER,
    "body" TEXT,
    "number" BIGINT,
    "created_at" TIMESTAMPTZ(6) NOT NULL DEFAULT CURRENT_TIMESTAMP,

    CONSTRAINT "act_pkey" PRIMARY KEY ("operator_id","person_id","key")
);

-- CreateTable
CREATE TABLE "opening" (
    "operator_id" INTEGER NOT NULL,
    "id" UUID NOT NULL,
    "component_id" UUID,
    "airframe_id" UUID,
    "at" TIMESTAMPTZ(6) NOT NULL,
    "basis" TEXT NOT NULL,
    "rating_id" UUID,
    "minutes" BIGINT,
    "cycles" BIGINT,
    "cycle_denominator" INTEGER NOT NULL DEFAULT 1,
    "source" TEXT NOT NULL,
    "recorded_seq" BIGINT NOT NULL,
    "voided_seq" BIGINT,
    "void_reason" TEXT,

    CONSTRAINT "opening_pkey" PRIMARY KEY ("operator_id","id")
);

-- CreateTable
CREATE TABLE "reset" (
    "operator_id" INTEGER NOT NULL,
    "id" UUID NOT NULL,
    "component_id" UUID NOT NULL,
    "kind" TEXT NOT NULL,
    "at" TIMESTAMPTZ(6) NOT NULL,
    "evidence" TEXT NOT NULL,
    "recorded_seq" BIGINT NOT NULL,
    "voided_seq" BIGINT,
    "void_reason" TEXT,

    CONSTRAINT "reset_pkey" PRIMARY KEY ("operator_id","id")
);

-- CreateTable
CREATE TABLE "trace_gap" (
    "operator_id" INTEGER NOT NULL,
    "id" UUID NOT NULL,
    "component_id" UUID NOT NULL,
    "from_at" TIMESTAMPTZ(6) NOT NULL,
    "to_at" TIMESTAMPTZ(6) NOT NULL,
    "note" TEXT NOT NULL,
    "recorded_seq" BIGINT NOT NULL,
    "voided_seq" BIGINT,
    "void_reason" TEXT,

    CONSTRAINT "trace_gap_pkey" PRIMARY KEY ("operator_id","id")
);

-- CreateTable
CREATE TABLE "gap_acceptance" (
    "operator_id" INTEGER NOT NULL,
    "id" UUID NOT NULL,
    "component_id" UUID NOT NULL,
    "trace_gap_id" UUID,
    "accepted_by" TEXT NOT NULL,
    "reference" TEXT NOT NULL,
    "cycles" BIGINT,
    "minutes" BIGINT,
    "recorded_seq" BIGINT NOT NULL,
    "voided_seq" BIGINT,
    "void_reason" TEXT,

    CONSTRAINT "gap_acceptance_pkey" PRIMARY KEY ("operator_id","id")
);

-- CreateTable
CREATE TABLE "life_limit" (
    "operator_id" INTEGER NOT NULL,
    "id" UUID NOT NULL,
    "part_number" TEXT NOT NULL,
    "engine_model_id" UUID NOT NULL,
    "rating_id" UUID,
    "authorisation" TEXT NOT NULL,
    "cycles" INTEGER,
    "minutes" BIGINT,
    "document" TEXT NOT NULL,
    "revision" TEXT NOT NULL,
    "effective_on" DATE NOT NULL,
    "recorded_seq" BIGINT NOT NULL,
    "voided_seq" BIGINT,
    "void_reason" TEXT,

    CONSTRAINT "life_limit_pkey" PRIMARY KEY ("operator_id","id")
);

-- CreateTable
CREATE TABLE "due_point" (
    "operator_id" INTEGER NOT NULL,
    "id" UUID NOT NULL,
    "component_id" UUID NOT NULL,
    "engine_id" UUID,
    "carrier_id" UUID,
    "kind" TEXT NOT NULL,
    "verdict" TEXT NOT NULL,
    "dimension" TEXT NOT NULL,
    "cycle_rule_id" UUID,
    "life_limit_id" UUID,
    "due_at" BIGINT,
    "flagged" BOOLEAN NOT NULL DEFAULT false,
    "reason" TEXT,

    CONSTRAINT "due_point_pkey" PRIMARY KEY ("operator_id","id")
);

-- CreateTable
CREATE TABLE "operator" (
    "id" SERIAL NOT NULL,
    "code" TEXT NOT NULL,
    "name" TEXT NOT NULL,
    "created_at" TIMESTAMPTZ(6) NOT NULL DEFAULT CURRENT_TIMESTAMP,

    CONSTRAINT "operator_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "person" (
    "operator_id" INTEGER NOT NULL,
    "id" UUID NOT NULL,
    "sign_in_name" TEXT NOT NULL,
    "full_name" TEXT NOT NULL,
    "roles" TEXT[],
    "licence" TEXT,
    "password_hash" TEXT NOT NULL,
    "must_change_password" BOOLEAN NOT NULL DEFAULT false,
    "disabled_at" TIMESTAMPTZ(6),
    "version" INTEGER NOT NULL DEFAULT 1,
    "created_at" TIMESTAMPTZ(6) NOT NULL DEFAULT CURRENT_TIMESTAMP,

    CONSTRAINT "person_pkey" PRIMARY KEY ("operator_id","id")
);

-- CreateTable
CREATE TABLE "session" (
    "operator_id" INTEGER NOT NULL,
    "id" UUID NOT NULL,
    "token_hash" BYTEA NOT NULL,
    "csrf_token" TEXT NOT NULL,
    "person_id" UUID NOT NULL,
    "created_at" TIMESTAMPTZ(6) NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "last_seen_at" TIMESTAMPTZ(6) NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "expires_at" TIMESTAMPTZ(6) NOT NULL,
    "ended_at" TIMESTAMPTZ(6),

    CONSTRAINT "session_pkey" PRIMARY KEY ("operator_id","id")
);

-- CreateTable
CREATE TABLE "signature" (
    "operator_id" INTEGER NOT NULL,
    "id" UUID NOT NULL,
    "person_id" UUID NOT NULL,
    "person_name" TEXT NOT NULL,
    "licence" TEXT,
    "meaning" TEXT NOT NULL,
    "statement" TEXT NOT NULL,
    "content_hash" BYTEA NOT NULL,
    "method" TEXT NOT NULL,
    "signed_at" TIMESTAMPTZ(6) NOT NULL,
    "recorded_seq" BIGINT NOT NULL,

    CONSTRAINT "signature_pkey" PRIMARY KEY ("operator_id","id")
);

-- CreateTable
CREATE TABLE "carrier" (
    "operator_id" INTEGER NOT NULL,
    "id" UUID NOT NULL,
    "kind" TEXT NOT NULL,
    "airframe_id" UUID,
    "position_id" UUID,
    "component_id" UUID,
    "minutes" BIGINT NOT NULL DEFAULT 0,
    "flights" BIGINT NOT NULL DEFAULT 0,
    "landings" BIGINT NOT NULL DEFAULT 0,
    "touch_and_goes" BIGINT NOT NULL DEFAULT 0,
    "starts" BIGINT NOT NULL DEFAULT 0,
    "aborted_take_offs" BIGINT NOT NULL DEFAULT 0,
    "last_landing_at" TIMESTAMPTZ(6),
    "last_boundary_at" TIMESTAMPTZ(6),
    "version" INTEGER NOT NULL DEFAULT 1,

    CONSTRAINT "carrier_pkey" PRIMARY KEY ("operator_id","id")
);

-- CreateTable
CREATE TABLE "bucket" (
    "operator_id" INTEGER NOT NULL,
    "carrier_id" UUID NOT NULL,
    "month" DATE NOT NULL,
    "minutes" BIGINT NOT NULL DEFAULT 0,
    "flights" BIGINT NOT NULL DEFAULT 0,
    "landings" BIGINT NOT NULL DEFAULT 0,
    "touch_and_goes" BIGINT NOT NULL DEFAULT 0,
    "starts" BIGINT NOT NULL DEFAULT 0,
    "aborted_take_offs" BIGINT NOT NULL DEFAULT 0,

    CONSTRAINT "bucket_pkey" PRIMARY KEY ("operator_id","carrier_id","month")
);

-- CreateTable
CREATE TABLE "flight" (
    "operator_id" INTEGER NOT NULL,
    "id" UUID NOT NULL,
    "airframe_id" UUID NOT NULL,
    "log_page" TEXT NOT NULL,
    "from_station" TEXT NOT NULL,
    "to_station" TEXT NOT NULL,
    "take_off_at" TIMESTAMPTZ(6) NOT NULL,
    "landing_at" TIMESTAMPTZ(6) NOT NULL,
    "minutes" INTEGER NOT NULL,
    "touch_and_goes" INTEGER NOT NULL,
    "starts" INTEGER NOT NULL,
    "aborted_take_offs" INTEGER NOT NULL,
    "typed" TEXT NOT NULL,
    "source" TEXT NOT NULL,
    "entry_row" INTEGER,
    "replaces_id" UUID,
    "recorded_seq" BIGINT NOT NULL,
    "voided_seq" BIGINT,
    "void_reason" TEXT,

    CONSTRAINT "flight_pkey" PRIMARY KEY ("operator_id","id")
);

-- CreateTable
CREATE TABLE "flight_exception" (
    "operator_id" INTEGER NOT NULL,
    "id" UUID NOT NULL,
    "flight_id" UUID NOT NULL,
    "position_id" UUID NOT NULL,
    "airframe_id" UUID NOT NULL,
    "landing_at" TIMESTAMPTZ(6) NOT NULL,
    "kind" TEXT NOT NULL,
    "minutes" INTEGER NOT NULL,
    "flights" INTEGER NOT NULL,
    "landings" INTEGER NOT NULL,
    "touch_and_goes" INTEGER NOT NULL,
    "starts" INTEGER NOT NULL,
    "aborted_take_offs" INTEGER NOT NULL,
    "recorded_seq" BIGINT NOT NULL,
    "voided_seq" BIGINT,
    "void_reason" TEXT,

    CONSTRAINT "flight_exception_pkey" PRIMARY KEY ("operator_id","id")
);

-- CreateTable
CREATE TABLE "counter_reading" (
    "operator_id" INTEGER NOT NULL,
    "id" UUID NOT NULL,
    "component_id" UUID NOT NULL,
    "at" TIMESTAMPTZ(6) NOT NULL,
    "kind" TEXT NOT NULL,
    "minutes" BIGINT NOT NULL,
    "starts" BIGINT NOT NULL,
    "recorded_seq" BIGINT NOT NULL,
    "voided_seq" BIGINT,
    "void_reason" TEXT,

    CONSTRAINT "counter_reading_pkey" PRIMARY KEY ("operator_id","id")
);

-- CreateTable
CREATE TABLE "exposure" (
    "operator_id" INTEGER NOT NULL,
    "id" UUID NOT NULL,
    "component_id" UUID NOT NULL,
    "carrier_id" UUID NOT NULL,
    "rating_id" UUID,
    "cycle_rule_id" UUID,
    "from_at" TIMESTAMPTZ(6) NOT NULL,
    "to_at" TIMESTAMPTZ(6),
    "minutes" BIGINT NOT NULL DEFAULT 0,
    "flights" BIGINT NOT NULL DEFAULT 0,
    "landings" BIGINT NOT NULL DEFAULT 0,
    "touch_and_goes" BIGINT NOT NULL DEFAULT 0,
    "starts" BIGINT NOT NULL DEFAULT 0,
    "aborted_take_offs" BIGINT NOT NULL DEFAULT 0,

    CONSTRAINT "exposure_pkey" PRIMARY KEY ("operator_id","id")
);

-- CreateTable
CREATE TABLE "work_package" (
    "operator_id" INTEGER NOT NULL,
    "id" UUID NOT NULL,
    "number" TEXT NOT NULL,
    "kind" TEXT NOT NULL,
    "title" TEXT NOT NULL,
    "airframe_id" UUID,
    "component_id" UUID,
    "status" TEXT NOT NULL DEFAULT 'open',
    "opened_at" TIMESTAMPTZ(6) NOT NULL,
    "version" INTEGER NOT NULL DEFAULT 1,
    "recorded_seq" BIGINT NOT NULL,

    CONSTRAINT "work_package_pkey" PRIMARY KEY ("operator_id","id")
);

-- CreateTable
CREATE TABLE "package_change" (
    "operator_id" INTEGER NOT NULL,
    "id" UUID NOT NULL,
    "package_id" UUID NOT NULL,
    "slot_id" UUID NOT NULL,
    "position_id" UUID NOT NULL,
    "outgoing_id" UUID,
    "incoming_id" UUID,
    "at" TIMESTAMPTZ(6) NOT NULL,
    "boundary_kind" TEXT NOT NULL,
    "boundary_text" TEXT NOT NULL,
    "reason" TEXT NOT NULL,
    "counters" TEXT NOT NULL,
    "recorded_seq" BIGINT NOT NULL,

    CONSTRAINT "package_change_pkey" PRIMARY KEY ("operator_id","id")
);

-- CreateTable
CREATE TABLE "release" (
    "operator_id" INTEGER NOT NULL,
    "id" UUID NOT NULL,
    "package_id" UUID NOT NULL,
    "number" TEXT NOT NULL,
    "signature_id" UUID NOT NULL,
    "rule_set" TEXT NOT NULL,
    "snapshot" TEXT NOT NULL,
    "snapshot_hash" BYTEA NOT NULL,
    "recorded_seq" BIGINT NOT NULL,

    CONSTRAINT "release_pkey" PRIMARY KEY ("operator_id","id")
);

-- CreateIndex
CREATE INDEX "component_operator_id_serial_number_idx" ON "component"("operator_id", "serial_number");

-- CreateIndex
CREATE UNIQUE INDEX "component_operator_id_maker_part_number_serial_number_key" ON "component"("operator_id", "maker", "part_number", "serial_number");

-- CreateIndex
CREATE UNIQUE INDEX "location_operator_id_name_key" ON "location"("operator_id", "name");

-- CreateIndex
CREATE UNIQUE INDEX "slot_operator_id_position_id_kind_key" ON "slot"("operator_id", "position_id", "kind");

-- CreateIndex
CREATE UNIQUE INDEX "slot_operator_id_component_id_name_key" ON "slot"("operator_id", "component_id", "name");

-- CreateIndex
CREATE INDEX "stay_operator_id_component_id_from_at_idx" ON "stay"("operator_id", "component_id", "from_at");

-- CreateIndex
CREATE INDEX "stay_operator_id_slot_id_from_at_idx" ON "stay"("operator_id", "slot_id", "from_at");

-- CreateIndex
CREATE INDEX "stay_operator_id_location_id_idx" ON "stay"("operator_id", "location_id");

-- CreateIndex
CREATE INDEX "stay_operator_id_from_at_idx" ON "stay"("operator_id", "from_at");

-- CreateIndex
CREATE INDEX "stay_operator_id_to_at_idx" ON "stay"("operator_id", "to_at");

-- CreateIndex
CREATE INDEX "rating_change_operator_id_component_id_at_idx" ON "rating_change"("operator_id", "component_id", "at");

-- CreateIndex
CREATE UNIQUE INDEX "airframe_type_operator_id_maker_designation_key" ON "airframe_type"("operator_id", "maker", "designation");

-- CreateIndex
CREATE UNIQUE INDEX "airframe_operator_id_registration_key" ON "airframe"("operator_id", "registration");

-- CreateIndex
CREATE UNIQUE INDEX "airframe_operator_id_airframe_type_id_serial_number_key" ON "airframe"("operator_id", "airframe_type_id", "serial_number");

-- CreateIndex
CREATE UNIQUE INDEX "position_operator_id_airframe_id_number_key" ON "position"("operator_id", "airframe_id", "number");

-- CreateIndex
CREATE UNIQUE INDEX "engine_model_operator_id_maker_designation_key" ON "engine_model"("operator_id", "maker", "designation");

-- CreateIndex
CREATE UNIQUE INDEX "rating_operator_id_engine_model_id_code_key" ON "rating"("operator_id", "engine_model_id", "code");

-- CreateIndex
CREATE INDEX "import_file_operator_id_created_at_idx" ON "import_file"("operator_id", "created_at");

-- CreateIndex
CREATE INDEX "job_operator_id_created_at_idx" ON "job"("operator_id", "created_at");

-- CreateIndex
CREATE INDEX "document_operator_id_subject_id_idx" ON "document"("operator_id", "subject_id");

-- CreateIndex
CREATE INDEX "journal_entry_operator_id_recorded_at_idx" ON "journal_entry"("operator_id", "recorded_at");

-- CreateIndex
CREATE UNIQUE INDEX "journal_entry_operator_id_stream_seq_key" ON "journal_entry"("operator_id", "stream", "seq");

-- CreateIndex
CREATE INDEX "opening_operator_id_component_id_idx" ON "opening"("operator_id", "component_id");

-- CreateIndex
CREATE INDEX "opening_operator_id_airframe_id_idx" ON "opening"("operator_id", "airframe_id");

-- CreateIndex
CREATE INDEX "reset_operator_id_component_id_at_idx" ON "reset"("operator_id", "component_id", "at");

-- CreateIndex
CREATE INDEX "trace_gap_operator_id_component_id_idx" ON "trace_gap"("operator_id", "component_id");

-- CreateIndex
CREATE INDEX "gap_acceptance_operator_id_component_id_idx" ON "gap_acceptance"("operator_id", "component_id");

-- CreateIndex
CREATE INDEX "life_limit_operator_id_part_number_engine_model_id_idx" ON "life_limit"("operator_id", "part_number", "engine_model_id");

-- CreateIndex
CREATE INDEX "due_point_operator_id_carrier_id_dimension_cycle_rule_id_du_idx" ON "due_point"("operator_id", "carrier_id", "dimension", "cycle_rule_id", "due_at");

-- CreateIndex
CREATE UNIQUE INDEX "due_point_operator_id_component_id_kind_dimension_key" ON "due_point"("operator_id", "component_id", "kind", "dimension");

-- CreateIndex
CREATE INDEX "due_point_operator_id_verdict_idx" ON "due_point"("operator_id", "verdict");

-- CreateIndex
CREATE UNIQUE INDEX "operator_code_key" ON "operator"("code");

-- CreateIndex
CREATE UNIQUE INDEX "person_operator_id_sign_in_name_key" ON "person"("operator_id", "sign_in_name");

-- CreateIndex
CREATE UNIQUE INDEX "session_operator_id_token_hash_key" ON "session"("operator_id", "token_hash");

-- CreateIndex
CREATE INDEX "carrier_operator_id_airframe_id_idx" ON "carrier"("operator_id", "airframe_id");

-- CreateIndex
CREATE INDEX "flight_operator_id_airframe_id_landing_at_idx" ON "flight"("operator_id", "airframe_id", "landing_at");

-- CreateIndex
CREATE INDEX "flight_operator_id_airframe_id_log_page_idx" ON "flight"("operator_id", "airframe_id", "log_page");

-- CreateIndex
CREATE INDEX "flight_exception_operator_id_flight_id_idx" ON "flight_exception"("operator_id", "flight_id");

-- CreateIndex
CREATE INDEX "flight_exception_operator_id_position_id_landing_at_idx" ON "flight_exception"("operator_id", "position_id", "landing_at");

-- CreateIndex
CREATE INDEX "counter_reading_operator_id_component_id_at_idx" ON "counter_reading"("operator_id", "component_id", "at");

-- CreateIndex
CREATE UNIQUE INDEX "exposure_operator_id_component_id_from_at_key" ON "exposure"("operator_id", "component_id", "from_at");

-- CreateIndex
CREATE INDEX "exposure_operator_id_carrier_id_to_at_idx" ON "exposure"("operator_id", "carrier_id", "to_at");

-- CreateIndex
CREATE INDEX "work_package_operator_id_airframe_id_idx" ON "work_package"("operator_id", "airframe_id");

-- CreateIndex
CREATE UNIQUE INDEX "work_package_operator_id_number_key" ON "work_package"("operator_id", "number");

-- CreateIndex
CREATE INDEX "package_change_operator_id_package_id_idx" ON "package_change"("operator_id", "package_id");

-- CreateIndex
CREATE UNIQUE INDEX "release_operator_id_package_id_key" ON "release"("operator_id", "package_id");

-- CreateIndex
CREATE UNIQUE INDEX "release_operator_id_number_key" ON "release"("operator_id", "number");

-- AddForeignKey
ALTER TABLE "component" ADD CONSTRAINT "component_operator_id_fkey" FOREIGN KEY ("operator_id") REFERENCES "operator"("id") ON DELETE NO ACTION ON UPDATE NO ACTION;

-- AddForeignKey
ALTER TABLE "component" ADD CONSTRAINT "component_operator_id_engine_model_id_fkey" FOREIGN KEY ("operator_id", "engine_model_id") REFERENCES "engine_model"("operator_id", "id") ON DELETE NO ACTION ON UPDATE NO ACTION;

-- AddForeignKey
ALTER TABLE "location" ADD CONSTRAINT "location_operator_id_fkey" FOREIGN KEY ("operator_id") REFERENCES "operator"("id") ON DELETE NO ACTION ON UPDATE NO ACTION;

-- AddForeignKey
ALTER TABLE "slot" ADD CONSTRAINT "slot_operator_id_fkey" FOREIGN KEY ("operator_id") REFERENCES "operator"("id") ON DELETE NO ACTION ON UPDATE NO ACTION;

-- AddForeignKey
ALTER TABLE "slot" ADD CONSTRAINT "slot_operator_id_position_id_fkey" FOREIGN KEY ("operator_id", "position_id") REFERENCES "position"("operator_id", "id") ON DELETE NO ACTION ON UPDATE NO ACTION;

-- AddForeignKey
ALTER TABLE "slot" ADD CONSTRAINT "slot_operator_id_component_id_fkey" FOREIGN KEY ("operator_id", "component_id") REFERENCES "component"("operator_id", "id") ON DELETE NO ACTION ON UPDATE NO ACTION;

-- AddForeignKey
ALTER TABLE "stay" ADD CONSTRAINT "stay_operator_id_fkey" FOREIGN KEY ("operator_id") REFERENCES "operator"("id") ON DELETE NO ACTION ON UPDATE NO ACTION;

-- AddForeignKey
ALTER TABLE "stay" ADD CONSTRAINT "stay_operator_id_component_id_fkey" FOREIGN KEY ("operator_id", "component_id") REFERENCES "component"("operator_id", "id") ON DELETE NO ACTION ON UPDATE NO ACTION;

-- AddForeignKey
ALTER TABLE "stay" ADD CONSTRAINT "stay_operator_id_slot_id_fkey" FOREIGN KEY ("operator_id", "slot_id") REFERENCES "slot"("operator_id", "id") ON DELETE NO ACTION ON UPDATE NO ACTION;

-- AddForeignKey
ALTER TABLE "stay" ADD CONSTRAINT "stay_operator_id_location_id_fkey" FOREIGN KEY ("operator_id", "location_id") REFERENCES "location"("operator_id", "id") ON DELETE NO ACTION ON UPDATE NO ACTION;

-- AddForeignKey
ALTER TABLE "stay" ADD CONSTRAINT "stay_operator_id_package_id_fkey" FOREIGN KEY ("operator_id", "package_id") REFERENCES "work_package"("operator_id", "id") ON DELETE NO ACTION ON UPDATE NO ACTION;

-- AddForeignKey
ALTER TABLE "stay" ADD CONSTRAINT "stay_operator_id_end_package_id_fkey" FOREIGN KEY ("operator_id", "end_package_id") REFERENCES "work_package"("operator_id", "id") ON DELETE NO ACTION ON UPDATE NO ACTION;

-- AddForeignKey
ALTER TABLE "rating_change" ADD CONSTRAINT "rating_change_operator_id_fkey" FOREIGN KEY ("operator_id") REFERENCES "operator"("id") ON DELETE NO ACTION ON UPDATE NO ACTION;

-- AddForeignKey
ALTER TABLE "rating_change" ADD CONSTRAINT "rating_change_operator_id_component_id_fkey" FOREIGN KEY ("operator_id", "component_id") REFERENCES "component"("operator_id", "id") ON DELETE NO ACTION ON UPDATE NO ACTION;

-- AddForeignKey
ALTER TABLE "rating_change" ADD CONSTRAINT "rating_change_operator_id_rating_id_fkey" FOREIGN KEY ("operator_id", "rating_id") REFERENCES "rating"("operator_id", "id") ON DELETE NO ACTION ON UPDATE NO ACTION;

-- AddForeignKey
ALTER TABLE "airframe_type" ADD CONSTRAINT "airframe_type_operator_id_fkey" FOREIGN KEY ("operator_id") REFERENCES "operator"("id") ON DELETE NO ACTION ON UPDATE NO ACTION;

-- AddForeignKey
ALTER TABLE "type_position" ADD CONSTRAINT "type_position_operator_id_fkey" FOREIGN KEY ("operator_id") REFERENCES "operator"("id") ON DELETE NO ACTION ON UPDATE NO ACTION;

-- AddForeignKey
ALTER TABLE "type_position" ADD CONSTRAINT "type_position_operator_id_airframe_type_id_fkey" FOREIGN KEY ("operator_id", "airframe_type_id") REFERENCES "airframe_type"("operator_id", "id") ON DELETE NO ACTION ON UPDATE NO ACTION;

-- AddForeignKey
ALTER TABLE "airframe" ADD CONSTRAINT "airframe_operator_id_fkey" FOREIGN KEY ("operator_id") REFERENCES "operator"("id") ON DELETE NO ACTION ON UPDATE NO ACTION;

-- AddForeignKey
ALTER TABLE "airframe" ADD CONSTRAINT "airframe_operator_id_airframe_type_id_fkey" FOREIGN KEY ("operator_id", "airframe_type_id") REFERENCES "airframe_type"("operator_id", "id") ON DELETE NO ACTION ON UPDATE NO ACTION;

-- AddForeignKey
ALTER TABLE "position" ADD CONSTRAINT "position_operator_id_fkey" FOREIGN KEY ("operator_id") REFERENCES "operator"("id") ON DELETE NO ACTION ON UPDATE NO ACTION;

-- AddForeignKey
ALTER TABLE "position" ADD CONSTRAINT "position_operator_id_airframe_id_fkey" FOREIGN KEY ("operator_id", "airframe_id") REFERENCES "airframe"("operator_id", "id") ON DELETE NO ACTION ON UPDATE NO ACTION;

-- AddForeignKey
ALTER TABLE "engine_model" ADD CONSTRAINT "engine_model_operator_id_fkey" FOREIGN KEY ("operator_id") REFERENCES "operator"("id") ON DELETE NO ACTION ON UPDATE NO ACTION;

-- AddForeignKey
ALTER TABLE "rating" ADD CONSTRAINT "rating_operator_id_fkey" FOREIGN KEY ("operator_id") REFERENCES "operator"("id") ON DELETE NO ACTION ON UPDATE NO ACTION;

-- AddForeignKey
ALTER TABLE "rating" ADD CONSTRAINT "rating_operator_id_engine_model_id_fkey" FOREIGN KEY ("operator_id", "engine_model_id") REFERENCES "engine_model"("operator_id", "id") ON DELETE NO ACTION ON UPDATE NO ACTION;

-- AddForeignKey
ALTER TABLE "cycle_rule" ADD CONSTRAINT "cycle_rule_operator_id_fkey" FOREIGN KEY ("operator_id") REFERENCES "operator"("id") ON DELETE NO ACTION ON UPDATE NO ACTION;

-- AddForeignKey
ALTER TABLE "cycle_rule" ADD CONSTRAINT "cycle_rule_operator_id_engine_model_id_fkey" FOREIGN KEY ("operator_id", "engine_model_id") REFERENCES "engine_model"("operator_id", "id") ON DELETE NO ACTION ON UPDATE NO ACTION;

-- AddForeignKey
ALTER TABLE "cycle_rule" ADD CONSTRAINT "cycle_rule_operator_id_airframe_type_id_fkey" FOREIGN KEY ("operator_id", "airframe_type_id") REFERENCES "airframe_type"("operator_id", "id") ON DELETE NO ACTION ON UPDATE NO ACTION;

-- AddForeignKey
ALTER TABLE "import_file" ADD CONSTRAINT "import_file_operator_id_fkey" FOREIGN KEY ("operator_id") REFERENCES "operator"("id") ON DELETE NO ACTION ON UPDATE NO ACTION;

-- AddForeignKey
ALTER TABLE "import_file" ADD CONSTRAINT "import_file_operator_id_created_by_id_fkey" FOREIGN KEY ("operator_id", "created_by_id") REFERENCES "person"("operator_id", "id") ON DELETE NO ACTION ON UPDATE NO ACTION;

-- AddForeignKey
ALTER TABLE "job" ADD CONSTRAINT "job_operator_id_fkey" FOREIGN KEY ("operator_id") REFERENCES "operator"("id") ON DELETE NO ACTION ON UPDATE NO ACTION;

-- AddForeignKey
ALTER TABLE "job" ADD CONSTRAINT "job_operator_id_created_by_id_fkey" FOREIGN KEY ("operator_id", "created_by_id") REFERENCES "person"("operator_id", "id") ON DELETE NO ACTION ON UPDATE NO ACTION;

-- AddForeignKey
ALTER TABLE "document" ADD CONSTRAINT "document_operator_id_fkey" FOREIGN KEY ("operator_id") REFERENCES "operator"("id") ON DELETE NO ACTION ON UPDATE NO ACTION;

-- AddForeignKey
ALTER TABLE "document" ADD CONSTRAINT "document_operator_id_created_by_id_fkey" FOREIGN KEY ("operator_id", "created_by_id") REFERENCES "person"("operator_id", "id") ON DELETE NO ACTION ON UPDATE NO ACTION;

-- AddForeignKey
ALTER TABLE "journal_stream" ADD CONSTRAINT "journal_stream_operator_id_fkey" FOREIGN KEY ("operator_id") REFERENCES "operator"("id") ON DELETE NO ACTION ON UPDATE NO ACTION;

-- AddForeignKey
ALTER TABLE "journal_entry" ADD CONSTRAINT "journal_entry_operator_id_fkey" FOREIGN KEY ("operator_id") REFERENCES "operator"("id") ON DELETE NO ACTION ON UPDATE NO ACTION;

-- AddForeignKey
ALTER TABLE "journal_entry" ADD CONSTRAINT "journal_entry_operator_id_person_id_fkey" FOREIGN KEY ("operator_id", "person_id") REFERENCES "person"("operator_id", "id") ON DELETE NO ACTION ON UPDATE NO ACTION;

-- AddForeignKey
ALTER TABLE "about" ADD CONSTRAINT "about_operator_id_fkey" FOREIGN KEY ("operator_id") REFERENCES "operator"("id") ON DELETE NO ACTION ON UPDATE NO ACTION;

-- AddForeignKey
ALTER TABLE "act" ADD CONSTRAINT "act_operator_id_fkey" FOREIGN KEY ("operator_id") REFERENCES "operator"("id") ON DELETE NO ACTION ON UPDATE NO ACTION;

-- AddForeignKey
ALTER TABLE "act" ADD CONSTRAINT "act_operator_id_person_id_fkey" FOREIGN KEY ("operator_id", "person_id") REFERENCES "person"("operator_id", "id") ON DELETE NO ACTION ON UPDATE NO ACTION;

-- AddForeignKey
ALTER TABLE "opening" ADD CONSTRAINT "opening_operator_id_fkey" FOREIGN KEY ("operator_id") REFERENCES "operator"("id") ON DELETE NO ACTION ON UPDATE NO ACTION;

-- AddForeignKey
ALTER TABLE "opening" ADD CONSTRAINT "opening_operator_id_component_id_fkey" FOREIGN KEY ("operator_id", "component_id") REFERENCES "component"("operator_id", "id") ON DELETE NO ACTION ON UPDATE NO ACTION;

-- AddForeignKey
ALTER TABLE "opening" ADD CONSTRAINT "opening_operator_id_airframe_id_fkey" FOREIGN KEY ("operator_id", "airframe_id") REFERENCES "airframe"("operator_id", "id") ON DELETE NO ACTION ON UPDATE NO ACTION;

-- AddForeignKey
ALTER TABLE "opening" ADD CONSTRAINT "opening_operator_id_rating_id_fkey" FOREIGN KEY ("operator_id", "rating_id") REFERENCES "rating"("operator_id", "id") ON DELETE NO ACTION ON UPDATE NO ACTION;

-- AddForeignKey
ALTER TABLE "reset" ADD CONSTRAINT "reset_operator_id_fkey" FOREIGN KEY ("operator_id") REFERENCES "operator"("id") ON DELETE NO ACTION ON UPDATE NO ACTION;

-- AddForeignKey
ALTER TABLE "reset" ADD CONSTRAINT "reset_operator_id_component_id_fkey" FOREIGN KEY ("operator_id", "component_id") REFERENCES "component"("operator_id", "id") ON DELETE NO ACTION ON UPDATE NO ACTION;

-- AddForeignKey
ALTER TABLE "trace_gap" ADD CONSTRAINT "trace_gap_operator_id_fkey" FOREIGN KEY ("operator_id") REFERENCES "operator"("id") ON DELETE NO ACTION ON UPDATE NO ACTION;

-- AddForeignKey
ALTER TABLE "trace_gap" ADD CONSTRAINT "trace_gap_operator_id_component_id_fkey" FOREIGN KEY ("operator_id", "component_id") REFERENCES "component"("operator_id", "id") ON DELETE NO ACTION ON UPDATE NO ACTION;

-- AddForeignKey
ALTER TABLE "gap_acceptance" ADD CONSTRAINT "gap_acceptance_operator_id_fkey" FOREIGN KEY ("operator_id") REFERENCES "operator"("id") ON DELETE NO ACTION ON UPDATE NO ACTION;

-- AddForeignKey
ALTER TABLE "gap_acceptance" ADD CONSTRAINT "gap_acceptance_operator_id_component_id_fkey" FOREIGN KEY ("operator_id", "component_id") REFERENCES "component"("operator_id", "id") ON DELETE NO ACTION ON UPDATE NO ACTION;

-- AddForeignKey
ALTER TABLE "gap_acceptance" ADD CONSTRAINT "gap_acceptance_operator_id_trace_gap_id_fkey" FOREIGN KEY ("operator_id", "trace_gap_id") REFERENCES "trace_gap"("operator_id", "id") ON DELETE NO ACTION ON UPDATE NO ACTION;

-- AddForeignKey
ALTER TABLE "life_limit" ADD CONSTRAINT "life_limit_operator_id_fkey" FOREIGN KEY ("operator_id") REFERENCES "operator"("id") ON DELETE NO ACTION ON UPDATE NO ACTION;

-- AddForeignKey
ALTER TABLE "life_limit" ADD CONSTRAINT "life_limit_operator_id_engine_model_id_fkey" FOREIGN KEY ("operator_id", "engine_model_id") REFERENCES "engine_model"("operator_id", "id") ON DELETE NO ACTION ON UPDATE NO ACTION;

-- AddForeignKey
ALTER TABLE "life_limit" ADD CONSTRAINT "life_limit_operator_id_rating_id_fkey" FOREIGN KEY ("operator_id", "rating_id") REFERENCES "rating"("operator_id", "id") ON DELETE NO ACTION ON UPDATE NO ACTION;

-- AddForeignKey
ALTER TABLE "due_point" ADD CONSTRAINT "due_point_operator_id_fkey" FOREIGN KEY ("operator_id") REFERENCES "operator"("id") ON DELETE NO ACTION ON UPDATE NO ACTION;

-- AddForeignKey
ALTER TABLE "due_point" ADD CONSTRAINT "due_point_operator_id_component_id_fkey" FOREIGN KEY ("operator_id", "component_id") REFERENCES "component"("operator_id", "id") ON DELETE NO ACTION ON UPDATE NO ACTION;

-- AddForeignKey
ALTER TABLE "due_point" ADD CONSTRAINT "due_point_operator_id_engine_id_fkey" FOREIGN KEY ("operator_id", "engine_id") REFERENCES "component"("operator_id", "id") ON DELETE NO ACTION ON UPDATE NO ACTION;

-- AddForeignKey
ALTER TABLE "due_point" ADD CONSTRAINT "due_point_operator_id_carrier_id_fkey" FOREIGN KEY ("operator_id", "carrier_id") REFERENCES "carrier"("operator_id", "id") ON DELETE NO ACTION ON UPDATE NO ACTION;

-- AddForeignKey
ALTER TABLE "due_point" ADD CONSTRAINT "due_point_operator_id_cycle_rule_id_fkey" FOREIGN KEY ("operator_id", "cycle_rule_id") REFERENCES "cycle_rule"("operator_id", "id") ON DELETE NO ACTION ON UPDATE NO ACTION;

-- AddForeignKey
ALTER TABLE "due_point" ADD CONSTRAINT "due_point_operator_id_life_limit_id_fkey" FOREIGN KEY ("operator_id", "life_limit_id") REFERENCES "life_limit"("operator_id", "id") ON DELETE NO ACTION ON UPDATE NO ACTION;

-- AddForeignKey
ALTER TABLE "person" ADD CONSTRAINT "person_operator_id_fkey" FOREIGN KEY ("operator_id") REFERENCES "operator"("id") ON DELETE NO ACTION ON UPDATE NO ACTION;

-- AddForeignKey
ALTER TABLE "session" ADD CONSTRAINT "session_operator_id_fkey" FOREIGN KEY ("operator_id") REFERENCES "operator"("id") ON DELETE NO ACTION ON UPDATE NO ACTION;

-- AddForeignKey
ALTER TABLE "session" ADD CONSTRAINT "session_operator_id_person_id_fkey" FOREIGN KEY ("operator_id", "person_id") REFERENCES "person"("operator_id", "id") ON DELETE NO ACTION ON UPDATE NO ACTION;

-- AddForeignKey
ALTER TABLE "signature" ADD CONSTRAINT "signature_operator_id_fkey" FOREIGN KEY ("operator_id") REFERENCES "operator"("id") ON DELETE NO ACTION ON UPDATE NO ACTION;

-- AddForeignKey
ALTER TABLE "signature" ADD CONSTRAINT "signature_operator_id_person_id_fkey" FOREIGN KEY ("operator_id", "person_id") REFERENCES "person"("operator_id", "id") ON DELETE NO ACTION ON UPDATE NO ACTION;

-- AddForeignKey
ALTER TABLE "carrier" ADD CONSTRAINT "carrier_operator_id_fkey" FOREIGN KEY ("operator_id") REFERENCES "operator"("id") ON DELETE NO ACTION ON UPDATE NO ACTION;

-- AddForeignKey
ALTER TABLE "carrier" ADD CONSTRAINT "carrier_operator_id_airframe_id_fkey" FOREIGN KEY ("operator_id", "airframe_id") REFERENCES "airframe"("operator_id", "id") ON DELETE NO ACTION ON UPDATE NO ACTION;

-- AddForeignKey
ALTER TABLE "carrier" ADD CONSTRAINT "carrier_operator_id_position_id_fkey" FOREIGN KEY ("operator_id", "position_id") REFERENCES "position"("operator_id", "id") ON DELETE NO ACTION ON UPDATE NO ACTION;

-- AddForeignKey
ALTER TABLE "carrier" ADD CONSTRAINT "carrier_operator_id_component_id_fkey" FOREIGN KEY ("operator_id", "component_id") REFERENCES "component"("operator_id", "id") ON DELETE NO ACTION ON UPDATE NO ACTION;

-- AddForeignKey
ALTER TABLE "bucket" ADD CONSTRAINT "bucket_operator_id_fkey" FOREIGN KEY ("operator_id") REFERENCES "operator"("id") ON DELETE NO ACTION ON UPDATE NO ACTION;

-- AddForeignKey
ALTER TABLE "bucket" ADD CONSTRAINT "bucket_operator_id_carrier_id_fkey" FOREIGN KEY ("operator_id", "carrier_id") REFERENCES "carrier"("operator_id", "id") ON DELETE NO ACTION ON UPDATE NO ACTION;

-- AddForeignKey
ALTER TABLE "flight" ADD CONSTRAINT "flight_operator_id_fkey" FOREIGN KEY ("operator_id") REFERENCES "operator"("id") ON DELETE NO ACTION ON UPDATE NO ACTION;

-- AddForeignKey
ALTER TABLE "flight" ADD CONSTRAINT "flight_operator_id_airframe_id_fkey" FOREIGN KEY ("operator_id", "airframe_id") REFERENCES "airframe"("operator_id", "id") ON DELETE NO ACTION ON UPDATE NO ACTION;

-- AddForeignKey
ALTER TABLE "flight" ADD CONSTRAINT "flight_operator_id_replaces_id_fkey" FOREIGN KEY ("operator_id", "replaces_id") REFERENCES "flight"("operator_id", "id") ON DELETE NO ACTION ON UPDATE NO ACTION;

-- AddForeignKey
ALTER TABLE "flight_exception" ADD CONSTRAINT "flight_exception_operator_id_fkey" FOREIGN KEY ("operator_id") REFERENCES "operator"("id") ON DELETE NO ACTION ON UPDATE NO ACTION;

-- AddForeignKey
ALTER TABLE "flight_exception" ADD CONSTRAINT "flight_exception_operator_id_flight_id_fkey" FOREIGN KEY ("operator_id", "flight_id") REFERENCES "flight"("operator_id", "id") ON DELETE NO ACTION ON UPDATE NO ACTION;

-- AddForeignKey
ALTER TABLE "flight_exception" ADD CONSTRAINT "flight_exception_operator_id_position_id_fkey" FOREIGN KEY ("operator_id", "position_id") REFERENCES "position"("operator_id", "id") ON DELETE NO ACTION ON UPDATE NO ACTION;

-- AddForeignKey
ALTER TABLE "flight_exception" ADD CONSTRAINT "flight_exception_operator_id_airframe_id_fkey" FOREIGN KEY ("operator_id", "airframe_id") REFERENCES "airframe"("operator_id", "id") ON DELETE NO ACTION ON UPDATE NO ACTION;

-- AddForeignKey
ALTER TABLE "counter_reading" ADD CONSTRAINT "counter_reading_operator_id_fkey" FOREIGN KEY ("operator_id") REFERENCES "operator"("id") ON DELETE NO ACTION ON UPDATE NO ACTION;

-- AddForeignKey
ALTER TABLE "counter_reading" ADD CONSTRAINT "counter_reading_operator_id_component_id_fkey" FOREIGN KEY ("operator_id", "component_id") REFERENCES "component"("operator_id", "id") ON DELETE NO ACTION ON UPDATE NO ACTION;

-- AddForeignKey
ALTER TABLE "exposure" ADD CONSTRAINT "exposure_operator_id_fkey" FOREIGN KEY ("operator_id") REFERENCES "operator"("id") ON DELETE NO ACTION ON UPDATE NO ACTION;

-- AddForeignKey
ALTER TABLE "exposure" ADD CONSTRAINT "exposure_operator_id_component_id_fkey" FOREIGN KEY ("operator_id", "component_id") REFERENCES "component"("operator_id", "id") ON DELETE NO ACTION ON UPDATE NO ACTION;

-- AddForeignKey
ALTER TABLE "exposure" ADD CONSTRAINT "exposure_operator_id_carrier_id_fkey" FOREIGN KEY ("operator_id", "carrier_id") REFERENCES "carrier"("operator_id", "id") ON DELETE NO ACTION ON UPDATE NO ACTION;

-- AddForeignKey
ALTER TABLE "exposure" ADD CONSTRAINT "exposure_operator_id_rating_id_fkey" FOREIGN KEY ("operator_id", "rating_id") REFERENCES "rating"("operator_id", "id") ON DELETE NO ACTION ON UPDATE NO ACTION;

-- AddForeignKey
ALTER TABLE "exposure" ADD CONSTRAINT "exposure_operator_id_cycle_rule_id_fkey" FOREIGN KEY ("operator_id", "cycle_rule_id") REFERENCES "cycle_rule"("operator_id", "id") ON DELETE NO ACTION ON UPDATE NO ACTION;

-- AddForeignKey
ALTER TABLE "work_package" ADD CONSTRAINT "work_package_operator_id_fkey" FOREIGN KEY ("operator_id") REFERENCES "operator"("id") ON DELETE NO ACTION ON UPDATE NO ACTION;

-- AddForeignKey
ALTER TABLE "work_package" ADD CONSTRAINT "work_package_operator_id_airframe_id_fkey" FOREIGN KEY ("operator_id", "airframe_id") REFERENCES "airframe"("operator_id", "id") ON DELETE NO ACTION ON UPDATE NO ACTION;

-- AddForeignKey
ALTER TABLE "work_package" ADD CONSTRAINT "work_package_operator_id_component_id_fkey" FOREIGN KEY ("operator_id", "component_id") REFERENCES "component"("operator_id", "id") ON DELETE NO ACTION ON UPDATE NO ACTION;

-- AddForeignKey
ALTER TABLE "package_change" ADD CONSTRAINT "package_change_operator_id_fkey" FOREIGN KEY ("operator_id") REFERENCES "operator"("id") ON DELETE NO ACTION ON UPDATE NO ACTION;

-- AddForeignKey
ALTER TABLE "package_change" ADD CONSTRAINT "package_change_operator_id_package_id_fkey" FOREIGN KEY ("operator_id", "package_id") REFERENCES "work_package"("operator_id", "id") ON DELETE NO ACTION ON UPDATE NO ACTION;

-- AddForeignKey
ALTER TABLE "package_change" ADD CONSTRAINT "package_change_operator_id_slot_id_fkey" FOREIGN KEY ("operator_id", "slot_id") REFERENCES "slot"("operator_id", "id") ON DELETE NO ACTION ON UPDATE NO ACTION;

-- AddForeignKey
ALTER TABLE "package_change" ADD CONSTRAINT "package_change_operator_id_position_id_fkey" FOREIGN KEY ("operator_id", "position_id") REFERENCES "position"("operator_id", "id") ON DELETE NO ACTION ON UPDATE NO ACTION;

-- AddForeignKey
ALTER TABLE "package_change" ADD CONSTRAINT "package_change_operator_id_outgoing_id_fkey" FOREIGN KEY ("operator_id", "outgoing_id") REFERENCES "component"("operator_id", "id") ON DELETE NO ACTION ON UPDATE NO ACTION;

-- AddForeignKey
ALTER TABLE "package_change" ADD CONSTRAINT "package_change_operator_id_incoming_id_fkey" FOREIGN KEY ("operator_id", "incoming_id") REFERENCES "component"("operator_id", "id") ON DELETE NO ACTION ON UPDATE NO ACTION;

-- AddForeignKey
ALTER TABLE "release" ADD CONSTRAINT "release_operator_id_fkey" FOREIGN KEY ("operator_id") REFERENCES "operator"("id") ON DELETE NO ACTION ON UPDATE NO ACTION;

-- AddForeignKey
ALTER TABLE "release" ADD CONSTRAINT "release_operator_id_package_id_fkey" FOREIGN KEY ("operator_id", "package_id") REFERENCES "work_package"("operator_id", "id") ON DELETE NO ACTION ON UPDATE NO ACTION;

-- AddForeignKey
ALTER TABLE "release" ADD CONSTRAINT "release_operator_id_signature_id_fkey" FOREIGN KEY ("operator_id", "signature_id") REFERENCES "signature"("operator_id", "id") ON DELETE NO ACTION ON UPDATE NO ACTION;
