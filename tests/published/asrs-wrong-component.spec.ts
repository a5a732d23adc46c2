import { describe, expect, it } from '@jest/globals';
import type { Life } from '@strutbook/domain/life/life.js';
import { type EngineSnapshot, mayBeReleased } from '@strutbook/domain/release/check-release.js';
import { fraction } from '@strutbook/domain/units/fraction.js';
import type { Judgement } from '@strutbook/domain/work/entry.js';
import { reasonText } from '@strutbook/domain/work/entry-words.js';
import { judgeEntry, type OrderedFacts } from '@strutbook/domain/work/judge-entry.js';
import { heldAgainst } from './release-with.js';

const ordered: OrderedFacts = {
  outgoingSerial: 'E-22',
  outgoingPartNumber: null,
  incomingSerial: 'E-40',
  incomingPartNumber: null,
  positionNumber: 2,
};
const facts = {
  tool: null,
  entries: [],
  on: '2026-03-01',
  ordered,
  register: { partNumber: 'V840', description: 'Engine', place: 'ZZ-417', serviceable: true },
};
const told = (judged: Judgement) => judged.reasons.map((reason) => [reason.code, reasonText(reason)]);

/** Source: NASA ASRS report 1978585: the wrong engine was replaced. Serials and positions invented. */
describe('a removal ordered at position 2 (NASA ASRS report 1978585)', () => {
  const off = (serialNumber: string, positionNumber: string) =>
    judgeEntry(
      { kind: 'component-off', key: 'engine-off', label: 'Engine that comes off' },
      { kind: 'component-off', serialNumber, partNumber: null, positionNumber },
      facts,
    );

  it('stops at position 1, and asks for a second person before the order is another', () => {
    expect(told(off('E-22', '1'))).toEqual([
      ['POSITION_DIFFERS', expect.stringMatching(/^Position 1 .*position 2\. Stop: .*second person\.$/)],
    ]);
  });

  it('stops at another serial', () => {
    expect(told(off('E-21', '2'))).toEqual([
      ['SERIAL_DIFFERS', expect.stringMatching(/serial E-21, the order E-22\. Stop/)],
    ]);
  });

  it('goes on at the position and serial of the order', () => {
    expect(off('E-22', '2').verdict).toBe('accepted');
  });
});

const papers = (plateSerial: string, documentSerial: string, tag: 'serviceable' | 'unserviceable') =>
  judgeEntry(
    { kind: 'papers', key: 'papers', label: 'Plate and release document' },
    { kind: 'papers', plateSerial, documentSerial, documentNumber: 'F-7', tag },
    facts,
  );

/**
 * Source: 14 CFR 45.11 and 45.13 (the plate is the engine's identity); NASA ASRS report 722521 (plate and logbook
 * differed). Serials invented.
 */
describe('a plate that differs from its papers (14 CFR 45.13; NASA ASRS report 722521)', () => {
  it('sends the engine to quarantine', () => {
    expect(told(papers('E-40', 'E-41', 'serviceable'))).toEqual([
      ['PAPERS_DIFFER', expect.stringMatching(/quarantine/)],
    ]);
    expect(papers('E-40', 'E-40', 'serviceable').verdict).toBe('accepted');
  });
});

/** Source: M.A.504 of Reg. (EU) 1321/2014, an older text: what is unserviceable is not fitted. Serials invented. */
describe('a tag that says unserviceable (Reg. (EU) 1321/2014, older M.A.504)', () => {
  it('is rejected', () => {
    expect(told(papers('E-40', 'E-40', 'unserviceable')).map(([code]) => code)).toEqual([
      'TAGGED_UNSERVICEABLE',
    ]);
  });
});

/**
 * Source: M.A.503 and M.A.504 of Reg. (EU) 1321/2014: a part whose life is used up is unserviceable and is not fitted.
 * Its numbers are invented.
 */
describe('a disk whose life is used up (Reg. (EU) 1321/2014, M.A.503 and older M.A.504)', () => {
  const held = (remaining: number) => {
    const life: Life = {
      kind: 'limited',
      used: fraction(1),
      cyclesUsed: fraction(20_000 - remaining),
      minutesUsed: null,
      limit: 20_000,
      remaining,
      remainingExact: fraction(remaining),
      minutesLimit: null,
      remainingMinutes: null,
      calendar: null,
      goodThrough: null,
      remainingDays: null,
      flagged: false,
    };
    const part = { componentId: 'd', partNumber: 'D-7', serial: 'D-70', serviceable: true, life };
    const as: EngineSnapshot = {
      componentId: 'e',
      serial: 'E-40',
      modelId: 'm',
      modelName: 'M',
      authorised: true,
      serviceable: true,
      ratingId: 'r',
      ratingName: 'R',
      totals: { minutes: 0, cycles: 0 },
      limitedParts: [{ slotId: 's', slotName: 'Disk', part }],
    };
    return heldAgainst({ positions: [{ positionId: 'p', number: 2, engine: as }] });
  };

  it('is rejected in the engine it is in, and one with a cycle left is not', () => {
    expect(held(0).map(({ code }) => code)).toEqual(['AT_LIMIT']);
    expect(held(-1).map(({ code }) => code)).toEqual(['OVER_LIMIT']);
    expect([mayBeReleased(held(0)), mayBeReleased(held(1))]).toEqual([false, true]);
  });
});
