import { describe, expect, it } from '@jest/globals';
import { decimalText } from '@strutbook/domain/torque/decimal.js';
import { convertTorque, inNewtonMetres } from '@strutbook/domain/torque/units.js';
import { fraction } from '@strutbook/domain/units/fraction.js';

/**
 * Source: NIST SP 811, appendix B.8: pound, foot, inch and standard gravity by definition, so that every factor is
 * exact. Digits recomputed from the definitions with thirty figures.
 */
describe('units of torque (NIST SP 811, appendix B.8)', () => {
  const one = fraction(1);

  it.each([
    ['lbf·ft', '1.3558179483314004'],
    ['lbf·in', '0.1129848290276167'],
    ['kgf·m', '9.8066500000000000'],
  ] as const)('one %s is %s N·m', (unit, text) => {
    expect(decimalText(inNewtonMetres(one, unit), 16)).toBe(text);
  });

  it.each([
    ['lbf·ft', '0.737562149277265'],
    ['lbf·in', '8.850745791327184'],
    ['kgf·m', '0.101971621297793'],
  ] as const)('one N·m in %s is %s', (unit, text) => {
    expect(decimalText(convertTorque(one, 'N·m', unit), 15)).toBe(text);
  });

  it('one lbf·ft is twelve lbf·in, exactly', () => {
    expect(convertTorque(one, 'lbf·ft', 'lbf·in')).toEqual(fraction(12));
  });
});
