import { describe, expect, it } from '@jest/globals';
import type { LifeFacts, RatingLimit } from '@strutbook/domain/life/life.js';
import { lifeOf } from '@strutbook/domain/life/limited-life.js';
import { limiterOf } from '@strutbook/domain/life/limiter.js';
import { checkRelease, mayBeReleased } from '@strutbook/domain/release/check-release.js';
import { NOTHING_ELSE } from '@strutbook/domain/release/snapshot.js';
import { fraction } from '@strutbook/domain/units/fraction.js';
import { instant } from '@strutbook/domain/units/minutes.js';

/**
 * Source: public copies of engine manuals' life-limit pages (chapter 05-11): cycles per part and engine model,
 * 'N/A' not authorised in that model, 'N/L' not life limited. The formula of the first check and its rounding
 * are from memory and agree with them. Values invented.
 */
const life = (used: number, limit: RatingLimit): ReturnType<typeof lifeOf> => {
  const facts: LifeFacts = {
    used: [{ ratingId: 'r', minutes: 0, cycles: fraction(used) }],
    limits: [limit],
    method: 'pro-rata',
    ratingNow: 'r',
    traceGaps: [],
    acceptance: null,
  };
  return lifeOf(facts);
};
const limited = (cycles: number): RatingLimit => ({ ratingId: 'r', kind: 'limited', cycles, minutes: null });

describe('life-limit pages of engine manuals (public copies, chapter 05-11)', () => {
  it('a part at 3,500 fitted at engine cycles 8,000 has 4,750 at 9,250, and 15,250 of 20,000 left', () => {
    const used = 3500 + (9250 - 8000);
    expect(life(used, limited(20_000))).toMatchObject({ cyclesUsed: fraction(4750), remaining: 15_250 });
  });

  it('of 15,250, 4,020, 900 and not limited, 900 limits the engine', () => {
    const lives = [
      life(4750, limited(20_000)),
      life(980, limited(5000)),
      life(19_100, limited(20_000)),
      life(5, { ratingId: 'r', kind: 'not-limited' }),
    ];
    const parts = lives.map((each, index) => ({ componentId: `part ${index + 1}`, life: each }));
    expect(
      parts.map((part) => (part.life.kind === 'limited' ? part.life.remaining : part.life.kind)),
    ).toEqual([15_250, 4020, 900, 'not-limited']);
    expect(limiterOf(parts).byCycles?.componentId).toBe('part 3');
  });

  it('a part marked N/A for the model is not authorised there, and forbids a release', () => {
    const notAuthorised = life(10, { ratingId: 'r', kind: 'not-authorised' });
    expect(notAuthorised).toEqual({ kind: 'not-authorised' });
    const part = { componentId: 'c', partNumber: 'P', serial: 'S', serviceable: true, life: notAuthorised };
    const objections = checkRelease({
      package: { id: 'w', kind: 'engine-change', airframeId: 'a', registration: 'ZZ-AAA', ruleSet: 'us-121' },
      at: instant(0),
      positions: [
        {
          positionId: 'p',
          number: 1,
          engine: {
            componentId: 'e',
            serial: 'E',
            modelId: 'm',
            modelName: 'M',
            authorised: true,
            serviceable: true,
            ratingId: 'r',
            ratingName: 'R',
            totals: { minutes: 0, cycles: 0 },
            limitedParts: [{ slotId: 's', slotName: 'Disk', part }],
          },
        },
      ],
      ...NOTHING_ELSE,
    });
    expect(objections.map((objection) => objection.code)).toEqual(['NOT_AUTHORISED']);
    expect(mayBeReleased(objections)).toBe(false);
  });
});
