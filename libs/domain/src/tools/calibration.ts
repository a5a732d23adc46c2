import { addDays, type CalendarDate } from '../units/calendar.js';

/** One calibration: from the day it was made, good through the day it is due. */
export interface Calibration {
  readonly calibratedOn: CalendarDate;
  readonly dueOn: CalendarDate;
}

/** How a tool stands by its calibrations on a day. */
export type CalibrationStatus = 'in-date' | 'soon' | 'out-of-date' | 'never';

/** So many days before its calibration is due a tool is told as due soon; common practice, no source. */
export const SOON_DAYS = 30;

/**
 * The calibration that governs on a day: the newest made on or before it, of two on one day the later in the list.
 * An older one that would still be good does not help. Null when there is none yet. Total.
 */
export function governingCalibration<C extends Calibration>(
  calibrations: readonly C[],
  on: CalendarDate,
): C | null {
  return calibrations.reduce<C | null>(
    (best, next) =>
      next.calibratedOn <= on && (best === null || next.calibratedOn >= best.calibratedOn) ? next : best,
    null,
  );
}

/** In date through the day it is due, out of date the day after. Throws on something that is no date. */
export function calibrationStatus(calibrations: readonly Calibration[], on: CalendarDate): CalibrationStatus {
  const governing = governingCalibration(calibrations, on);
  if (governing === null) return 'never';
  if (governing.dueOn < on) return 'out-of-date';
  return governing.dueOn <= addDays(on, SOON_DAYS) ? 'soon' : 'in-date';
}
