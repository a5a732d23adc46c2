import { describe, expect, it } from '@jest/globals';
import { judgePull, reasonsOf } from './torque-typed.js';

/** Source: NASA ASRS report 123429: a torque converted wrongly. The values follow it. */
describe('a range of 800 to 1140 lbf·in (NASA ASRS report 123429)', () => {
  it('is not reached by 42 lbf·ft, which are 504 lbf·in', () => {
    const judged = judgePull({ range: ['800', '1140'], unit: 'lbf·in', typed: '42', typedUnit: 'lbf·ft' });
    expect(judged.computed['atFastener']).toBe('504 lbf·in');
    expect(reasonsOf(judged)).toEqual(['BELOW_RANGE']);
  });

  it('is reached by 80 lbf·ft', () => {
    const judged = judgePull({ range: ['800', '1140'], unit: 'lbf·in', typed: '80', typedUnit: 'lbf·ft' });
    expect([judged.verdict, judged.computed['atFastener']]).toEqual(['accepted', '960 lbf·in']);
  });
});

/** Source: NASA ASRS report 749986: an aft mount torqued by an inch-pound wrench where foot-pounds were asked for. */
describe('31 lbf·ft asked for (NASA ASRS report 749986)', () => {
  it('is not reached by 31 lbf·in, which are 2.58 lbf·ft', () => {
    const judged = judgePull({ range: ['31', '31'], unit: 'lbf·ft', typed: '31', typedUnit: 'lbf·in' });
    expect(judged.computed['atFastener']).toBe('2.58 lbf·ft');
    expect(reasonsOf(judged)).toEqual(['BELOW_RANGE']);
  });

  it('is reached by 31 lbf·ft', () => {
    expect(judgePull({ range: ['31', '31'], unit: 'lbf·ft', typed: '31' }).verdict).toBe('accepted');
  });
});
