import { describe, expect, it } from '@jest/globals';
import { decimalText } from '@strutbook/domain/torque/decimal.js';
import { torqueAtFastener, wrenchSetting } from '@strutbook/domain/torque/extension.js';
import { fraction } from '@strutbook/domain/units/fraction.js';
import { decimal } from './torque-typed.js';

const setting = (torque: string, wrenchLength: string, length: string, angle: string, digits: number) => {
  const adapter = {
    wrenchLength: decimal(wrenchLength),
    length: decimal(length),
    angleDegrees: decimal(angle),
  };
  const set = wrenchSetting(decimal(torque), adapter);
  return set.ok ? decimalText(set.value, digits) : set.refusal.code;
};

/**
 * Source: the first two are printed in a rotorcraft maintenance manual, chapter 20; that FAA AC 43.13-1B, figure 7-2,
 * uses the same figures is from memory. 180 degrees is the adapter that points back.
 */
describe('an extension (a rotorcraft maintenance manual, chapter 20; the formula of FAA AC 43.13-1B, figure 7-2)', () => {
  it.each([
    ['135', '10', '1.5', '0', '117.39'],
    ['135', '10', '1.5', '180', '158.82'],
  ])(
    '%s by a wrench of %s and an adapter of %s at %s degrees is set to %s',
    (torque, arm, reach, angle, set) => {
      expect(setting(torque, arm, reach, angle, 2)).toBe(set);
    },
  );

  it('across the wrench has no effect (from memory)', () => {
    expect(setting('135', '10', '1.5', '90', 2)).toBe('135.00');
  });
});

/** Source: US Army TM 9-254, figure 4-5: 60 set with a wrench of 12 and an adapter of 2 gives 70. */
describe('an extension (US Army TM 9-254, figure 4-5)', () => {
  const adapter = { wrenchLength: fraction(12), length: fraction(2), angleDegrees: fraction(0) };

  it('70 is wanted, 60 is set, 70 arrives', () => {
    expect(wrenchSetting(fraction(70), adapter)).toEqual({ ok: true, value: fraction(60) });
    expect(torqueAtFastener(fraction(60), adapter)).toEqual({ ok: true, value: fraction(70) });
  });
});

/** Source: a torque calculator's public table, wrench 18 and adapter 3; the cosine of US Army TM 9-254, figure 4-6. */
describe('an adapter at an angle (a public table; US Army TM 9-254, figure 4-6)', () => {
  it.each([
    ['0', '85.71'],
    ['45', '89.46'],
    ['90', '100.00'],
  ])('100 at %s degrees is set to %s', (angle, set) => {
    expect(setting('100', '18', '3', angle, 2)).toBe(set);
  });
});

/** Source: manuals of makers of wrenches, adapters and vehicles, each printing its example. */
describe('an extension (examples printed in makers’ manuals)', () => {
  it.each([
    ['50', '16', '2', '44.44', 2],
    ['20', '12', '3', '16', 0],
    ['20', '14', '3', '16.5', 1],
  ])('%s by a wrench of %s and an adapter of %s is set to %s', (torque, arm, reach, set, digits) => {
    expect(setting(torque, arm, reach, '0', digits)).toBe(set);
  });
});

/** Source: the formula is that of US Navy training manual NAVEDTRA 14315 and US Army TB 43-0218. Values invented. */
describe('an extension (NAVEDTRA 14315; US Army TB 43-0218)', () => {
  it('100 lbf·in by a wrench of 12 in and an extension of 6 in is set to 66.7', () => {
    expect(setting('100', '12', '6', '0', 1)).toBe('66.7');
  });
});
