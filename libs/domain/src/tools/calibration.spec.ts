import { describe, expect, it } from '@jest/globals';
import { calibrationStatus, governingCalibration } from './calibration.js';

const year = { calibratedOn: '2025-06-30', dueOn: '2026-06-30' };

describe('a tool and its calibrations', () => {
  it('is in date through the day it is due, and out of date the day after', () => {
    expect(calibrationStatus([year], '2026-06-30')).toBe('soon');
    expect(calibrationStatus([year], '2026-07-01')).toBe('out-of-date');
  });

  it('is due soon from thirty days before', () => {
    expect(calibrationStatus([year], '2026-05-30')).toBe('in-date');
    expect(calibrationStatus([year], '2026-05-31')).toBe('soon');
  });

  it('was never calibrated before its first calibration, and is in date on the day of it', () => {
    expect(calibrationStatus([], '2025-06-30')).toBe('never');
    expect(calibrationStatus([year], '2025-06-29')).toBe('never');
    expect(calibrationStatus([year], '2025-06-30')).toBe('in-date');
  });

  it('goes by the newest calibration, also when an older one would last longer', () => {
    const shorter = { calibratedOn: '2025-09-01', dueOn: '2025-12-01' };
    expect(calibrationStatus([year, shorter], '2025-08-31')).toBe('in-date');
    expect(calibrationStatus([year, shorter], '2025-12-02')).toBe('out-of-date');
    expect(governingCalibration([shorter, year], '2025-12-02')).toBe(shorter);
  });

  it('goes by the later entry of two on one day', () => {
    const again = { calibratedOn: '2025-06-30', dueOn: '2025-07-30' };
    expect(governingCalibration([year, again], '2025-07-01')).toBe(again);
  });
});
