-- AlterTable
ALTER TABLE "life_limit" ADD COLUMN     "basis" TEXT NOT NULL DEFAULT 'manual',
ADD COLUMN     "calendar_from" TEXT,
ADD COLUMN     "calendar_span" INTEGER,
ADD COLUMN     "calendar_unit" TEXT,
ADD COLUMN     "month_rule" TEXT;

-- AlterTable
ALTER TABLE "component" ADD COLUMN     "first_installed_on" DATE;

-- AlterTable
ALTER TABLE "job" ADD COLUMN     "not_before" TIMESTAMPTZ(6);

-- Closed words; a limited part has a limit in cycles, in hours, on the calendar, or in several; a directive's and a
-- manual's rows are told apart.
ALTER TABLE life_limit DROP CONSTRAINT life_limit_check;
ALTER TABLE life_limit
  ADD CHECK ((authorisation = 'limited') = (num_nonnulls(cycles, minutes, calendar_span) > 0)),
  ADD CHECK (basis IN ('manual', 'directive')), ADD CHECK (calendar_span > 0),
  ADD CHECK (calendar_unit IN ('days', 'months')),
  ADD CHECK (calendar_from IN ('new', 'first-installation', 'overhaul')),
  ADD CHECK (month_rule IN ('same-day', 'month-end')),
  ADD CHECK (num_nonnulls(calendar_span, calendar_unit, calendar_from, month_rule) IN (0, 4));
ALTER TABLE component ADD CHECK (first_installed_on >= manufactured_on);

-- Of calendar lives the first to end; they are few.
CREATE INDEX due_point_life_day ON due_point (operator_id, due_on, id) WHERE due_on IS NOT NULL AND requirement_id IS NULL;
