import { describe, expect, it } from '@jest/globals';
import fc from 'fast-check';
import { compare, fraction, subtract } from '../units/fraction.js';
import { cosineOfDegrees } from './cosine.js';
import { type Extension, torqueAtFastener, wrenchSetting } from './extension.js';

const extension = (wrenchLength: number, length: number, angleDegrees: number): Extension => ({
  wrenchLength: fraction(wrenchLength),
  length: fraction(length),
  angleDegrees: fraction(angleDegrees),
});
const hundred = fraction(100);

describe('an adapter on a wrench', () => {
  it('adds straight out, does nothing across, takes away pointing back: exactly', () => {
    expect(torqueAtFastener(hundred, extension(10, 2, 0))).toEqual({ ok: true, value: fraction(120) });
    expect(torqueAtFastener(hundred, extension(10, 2, 60))).toEqual({ ok: true, value: fraction(110) });
    expect(torqueAtFastener(hundred, extension(10, 2, 90))).toEqual({ ok: true, value: hundred });
    expect(torqueAtFastener(hundred, extension(10, 2, 180))).toEqual({ ok: true, value: fraction(80) });
  });

  it('of no length changes nothing', () => {
    expect(wrenchSetting(hundred, extension(10, 0, 0))).toEqual({ ok: true, value: hundred });
  });

  it('leaves no lever when it points back as far as the wrench is long, or the wrench has none', () => {
    const none = { ok: false, refusal: { code: 'NO_EFFECTIVE_LENGTH' } };
    expect(torqueAtFastener(hundred, extension(10, 10, 180))).toEqual(none);
    expect(wrenchSetting(hundred, extension(10, 11, 180))).toEqual(none);
    expect(torqueAtFastener(hundred, extension(0, 2, 0))).toEqual(none);
    expect(torqueAtFastener(hundred, { ...extension(10, 0, 180), length: fraction(9999, 1000) }).ok).toBe(
      true,
    );
  });

  it('stands at 0 to 180 degrees', () => {
    const beyond = { ok: false, refusal: { code: 'ANGLE_OUT_OF_RANGE' } };
    expect(torqueAtFastener(hundred, extension(10, 2, 181))).toEqual(beyond);
    expect(torqueAtFastener(hundred, { ...extension(10, 2, 0), angleDegrees: fraction(-1, 10) })).toEqual(
      beyond,
    );
    expect(() => cosineOfDegrees(fraction(1801, 10))).toThrow(RangeError);
    expect(() => cosineOfDegrees(fraction(-1))).toThrow(RangeError);
  });

  it('is undone by the setting: what is wanted arrives', () => {
    const positive = fc.bigInt({ min: 1n, max: 100_000n }).map((num) => fraction(num, 100n));
    const angle = fc.integer({ min: 0, max: 1800 }).map((tenths) => fraction(tenths, 10));
    fc.assert(
      fc.property(positive, positive, positive, angle, (torque, wrenchLength, length, angleDegrees) => {
        const adapter = { wrenchLength, length, angleDegrees };
        const set = wrenchSetting(torque, adapter);
        fc.pre(set.ok);
        if (set.ok) expect(torqueAtFastener(set.value, adapter)).toEqual({ ok: true, value: torque });
      }),
    );
  });
});

describe('the cosine', () => {
  it('is exact where it is a simple number', () => {
    expect([0, 60, 90, 120, 180].map((degrees) => cosineOfDegrees(fraction(degrees)))).toEqual([
      fraction(1),
      fraction(1, 2),
      fraction(0),
      fraction(-1, 2),
      fraction(-1),
    ]);
  });

  it('agrees with floating point to twelve decimals, and mirrors at 90 degrees', () => {
    for (let tenths = 0; tenths <= 1800; tenths += 7) {
      const { num, den } = cosineOfDegrees(fraction(tenths, 10));
      expect(Math.abs(Number(num) / Number(den) - Math.cos((tenths / 1800) * Math.PI))).toBeLessThan(6e-13);
      const mirrored = cosineOfDegrees(subtract(fraction(180), fraction(tenths, 10)));
      expect(compare(mirrored, fraction(-num, den))).toBe(0);
    }
  });
});
