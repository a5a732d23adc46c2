import { describe, expect, it } from '@jest/globals';
import { addCounts, type Counts, equalCounts, negateCounts, subtractCounts, zeroCounts } from './counts.js';

const some: Counts = {
  minutes: 130,
  flights: 1,
  landings: 3,
  touchAndGoes: 2,
  starts: 4,
  abortedTakeOffs: 5,
};
const twice: Counts = {
  minutes: 260,
  flights: 2,
  landings: 6,
  touchAndGoes: 4,
  starts: 8,
  abortedTakeOffs: 10,
};

describe('counts', () => {
  it('are added and taken away kind by kind', () => {
    expect(addCounts(some, some)).toEqual(twice);
    expect(subtractCounts(twice, some)).toEqual(some);
    expect(addCounts(some, negateCounts(some))).toEqual(zeroCounts);
  });

  it.each(Object.keys(some) as (keyof Counts)[])('differ when their %s differ', (kind) => {
    expect(equalCounts(some, { ...some })).toBe(true);
    expect(equalCounts(some, { ...some, [kind]: 99 })).toBe(false);
  });
});
