import { describe, expect, it } from '@jest/globals';
import { fraction } from '../units/fraction.js';
import { calibrationReasons, rangeReasons, type ToolFacts } from './tool-fitness.js';

const tool: ToolFacts = {
  serial: 'TW-7',
  unit: 'lbf·in',
  low: '150',
  high: '750',
  deviation: '4',
  calibrations: [{ calibratedOn: '2026-01-01', dueOn: '2026-06-30' }],
};
const onDay = (on: string, calibrations = tool.calibrations) =>
  calibrationReasons({ ...tool, calibrations }, on).map((reason) => reason.code);

describe('the calibration of a tool', () => {
  it('is good from its day through the day it is due', () => {
    expect(['2025-12-31', '2026-01-01', '2026-06-30', '2026-07-01'].map((on) => onDay(on))).toEqual([
      ['TOOL_NOT_CALIBRATED'],
      [],
      [],
      ['TOOL_OUT_OF_DATE'],
    ]);
    expect(onDay('2026-03-01', [])).toEqual(['TOOL_NOT_CALIBRATED']);
  });

  it('is the last one on that day, though an earlier one were good for longer', () => {
    const two = [
      { calibratedOn: '2026-05-01', dueOn: '2026-05-31' },
      { calibratedOn: '2026-01-01', dueOn: '2026-12-31' },
    ];
    expect(onDay('2026-04-30', two)).toEqual([]);
    expect(onDay('2026-06-01', two)).toEqual(['TOOL_OUT_OF_DATE']);
    const sameDay = [...two, { calibratedOn: '2026-05-01', dueOn: '2027-05-01' }];
    expect(onDay('2026-06-01', sameDay)).toEqual([]);
  });
});

describe('the range of a tool', () => {
  const at = (setting: ReturnType<typeof fraction>, facts: Partial<ToolFacts> = {}) =>
    rangeReasons({ ...tool, ...facts }, setting, 'lbf·in').map((reason) => reason.code);

  it('includes both its ends', () => {
    expect(
      [fraction(14_999, 100), fraction(150), fraction(750), fraction(75_001, 100)].map((set) => at(set)),
    ).toEqual([['TOOL_OUT_OF_RANGE'], [], [], ['TOOL_OUT_OF_RANGE']]);
  });

  it('is judged in its own unit', () => {
    expect(rangeReasons(tool, fraction(13), 'lbf·ft')).toEqual([]);
    expect(rangeReasons(tool, fraction(12), 'lbf·ft')).toEqual([
      {
        code: 'TOOL_OUT_OF_RANGE',
        detail: { tool: 'TW-7', setting: '144 lbf·in', low: '150 lbf·in', high: '750 lbf·in' },
      },
    ]);
  });

  it('is unknown where anything of it is not recorded, or is no torque', () => {
    const lacking = [{ unit: null }, { low: null }, { high: null }, { unit: 'mm' }, { low: 'small' }];
    for (const facts of lacking) expect(at(fraction(200), facts)).toEqual(['TOOL_RANGE_UNKNOWN']);
  });
});
