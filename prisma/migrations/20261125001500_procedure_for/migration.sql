-- AlterTable
ALTER TABLE "procedure" ADD COLUMN     "airframe_type_id" UUID,
ADD COLUMN     "engine_model_id" UUID;

-- AddForeignKey
ALTER TABLE "procedure" ADD CONSTRAINT "procedure_operator_id_airframe_type_id_fkey" FOREIGN KEY ("operator_id", "airframe_type_id") REFERENCES "airframe_type"("operator_id", "id") ON DELETE NO ACTION ON UPDATE NO ACTION;

-- AddForeignKey
ALTER TABLE "procedure" ADD CONSTRAINT "procedure_operator_id_engine_model_id_fkey" FOREIGN KEY ("operator_id", "engine_model_id") REFERENCES "engine_model"("operator_id", "id") ON DELETE NO ACTION ON UPDATE NO ACTION;

ALTER TABLE procedure ADD CONSTRAINT procedure_for_one CHECK (num_nonnulls(airframe_type_id, engine_model_id) < 2);
