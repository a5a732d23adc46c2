import { describe, expect, it } from '@jest/globals';
import { decimalText } from '@strutbook/domain/torque/decimal.js';
import { settingWindow } from '@strutbook/domain/torque/window.js';
import { fraction } from '@strutbook/domain/units/fraction.js';
import { judgePull, reasonsOf } from './torque-typed.js';

/**
 * Source: ISO 6789, as a tool maker's manual restates it: a setting tool deviates by 4 % at most above 10 N·m, by
 * 6 % at most up to there, from what it is set to. The window follows from it; ranges constructed.
 */
describe('the window of a tool (ISO 6789, as a maker’s manual restates it; constructed)', () => {
  it.each([
    [100, 140, 4, '104.1667', '134.6154'],
    [12, 15, 6, '12.7660', '14.1509'],
    [20, 25, 4, '20.8333', '24.0385'],
  ])('of %i to %i at %i %% is %s to %s', (low, high, percent, from, to) => {
    const window = settingWindow({ low: fraction(low), high: fraction(high) }, fraction(percent, 100));
    expect(window && [decimalText(window.low, 4), decimalText(window.high, 4)]).toEqual([from, to]);
  });

  it('of 500 to 520 at 4 % is empty', () => {
    expect(settingWindow({ low: fraction(500), high: fraction(520) }, fraction(4, 100))).toBeNull();
  });

  it('binds only where the data says so: a torque in range and outside the window', () => {
    const pull = (binds: 'range' | 'window') =>
      reasonsOf(judgePull({ range: ['100', '140'], unit: 'N·m', typed: '104.1', capture: { binds } }));
    expect(pull('range')).toEqual([]);
    expect(pull('window')).toEqual(['OUTSIDE_WINDOW']);
  });
});

/**
 * Source: ISO 6789-1:2017, as a trade article tells it: a tool is used from its lowest marked value to its highest.
 * That the range is judged on what is set and not on what arrives: common practice, no source. Values constructed.
 */
describe('the range of a tool (ISO 6789-1:2017, as a trade article tells it; constructed)', () => {
  const pull = (low: string) =>
    reasonsOf(
      judgePull({
        range: ['100', '120'],
        unit: 'N·m',
        typed: '88',
        more: { extension: { wrenchLength: '400', length: '100', angle: '0' } },
        tool: { unit: 'N·m', low, high: '88' },
      }),
    );

  it('holds the setting, though the fastener gets more', () => {
    expect(pull('80')).toEqual([]);
    expect(pull('88')).toEqual([]);
    expect(pull('88.1')).toEqual(['TOOL_OUT_OF_RANGE']);
  });
});
