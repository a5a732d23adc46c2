-- How a moment of older records was told, and how well an opening balance is shown.

-- AlterTable
ALTER TABLE "gap_acceptance" ADD COLUMN     "opening_id" UUID;

-- AlterTable
ALTER TABLE "opening" ADD COLUMN     "at_airframe_id" UUID,
ADD COLUMN     "at_kind" TEXT NOT NULL DEFAULT 'instant',
ADD COLUMN     "at_text" TEXT,
ADD COLUMN     "trace" TEXT NOT NULL DEFAULT 'shown',
ADD COLUMN     "trace_note" TEXT;

-- AlterTable
ALTER TABLE "rating_change" ADD COLUMN     "at_airframe_id" UUID,
ADD COLUMN     "at_kind" TEXT NOT NULL DEFAULT 'instant',
ADD COLUMN     "at_text" TEXT;

-- AlterTable
ALTER TABLE "reset" ADD COLUMN     "at_airframe_id" UUID,
ADD COLUMN     "at_kind" TEXT NOT NULL DEFAULT 'instant',
ADD COLUMN     "at_text" TEXT;

-- AlterTable
ALTER TABLE "trace_gap" ADD COLUMN     "airframe_id" UUID,
ADD COLUMN     "from_kind" TEXT NOT NULL DEFAULT 'instant',
ADD COLUMN     "from_text" TEXT,
ADD COLUMN     "to_kind" TEXT NOT NULL DEFAULT 'instant',
ADD COLUMN     "to_text" TEXT;

-- AddForeignKey
ALTER TABLE "rating_change" ADD CONSTRAINT "rating_change_operator_id_at_airframe_id_fkey" FOREIGN KEY ("operator_id", "at_airframe_id") REFERENCES "airframe"("operator_id", "id") ON DELETE NO ACTION ON UPDATE NO ACTION;

-- AddForeignKey
ALTER TABLE "opening" ADD CONSTRAINT "opening_operator_id_at_airframe_id_fkey" FOREIGN KEY ("operator_id", "at_airframe_id") REFERENCES "airframe"("operator_id", "id") ON DELETE NO ACTION ON UPDATE NO ACTION;

-- AddForeignKey
ALTER TABLE "reset" ADD CONSTRAINT "reset_operator_id_at_airframe_id_fkey" FOREIGN KEY ("operator_id", "at_airframe_id") REFERENCES "airframe"("operator_id", "id") ON DELETE NO ACTION ON UPDATE NO ACTION;

-- AddForeignKey
ALTER TABLE "trace_gap" ADD CONSTRAINT "trace_gap_operator_id_airframe_id_fkey" FOREIGN KEY ("operator_id", "airframe_id") REFERENCES "airframe"("operator_id", "id") ON DELETE NO ACTION ON UPDATE NO ACTION;

-- AddForeignKey
ALTER TABLE "gap_acceptance" ADD CONSTRAINT "gap_acceptance_operator_id_opening_id_fkey" FOREIGN KEY ("operator_id", "opening_id") REFERENCES "opening"("operator_id", "id") ON DELETE NO ACTION ON UPDATE NO ACTION;

-- A repair sets counters of its own; what is told by a page or a date keeps what was typed.
ALTER TABLE reset DROP CONSTRAINT reset_kind_check, ADD CHECK (kind IN ('overhaul', 'shop-visit', 'repair')),
  ADD CHECK (at_kind IN ('instant', 'after-page', 'before-first', 'after-last')), ADD CHECK ((at_kind = 'instant') = (at_text IS NULL));
ALTER TABLE opening DROP CONSTRAINT opening_basis_check, ADD CHECK (basis IN ('new', 'overhaul', 'shop-visit', 'repair')),
  ADD CHECK (at_kind IN ('instant', 'after-page', 'before-first', 'after-last')), ADD CHECK ((at_kind = 'instant') = (at_text IS NULL)),
  ADD CHECK (trace IN ('shown', 'stated', 'not-shown')), ADD CHECK (trace = 'shown' OR coalesce(btrim(trace_note), '') <> '');
ALTER TABLE rating_change
  ADD CHECK (at_kind IN ('instant', 'after-page', 'before-first', 'after-last')), ADD CHECK ((at_kind = 'instant') = (at_text IS NULL));
ALTER TABLE trace_gap
  ADD CHECK (from_kind IN ('instant', 'after-page', 'before-first', 'after-last')), ADD CHECK ((from_kind = 'instant') = (from_text IS NULL)),
  ADD CHECK (to_kind IN ('instant', 'after-page', 'before-first', 'after-last')), ADD CHECK ((to_kind = 'instant') = (to_text IS NULL));
ALTER TABLE gap_acceptance ADD CHECK (num_nonnulls(trace_gap_id, opening_id) < 2);
