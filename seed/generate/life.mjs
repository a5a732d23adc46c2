// The life of a part by exact arithmetic, written apart from the system's own.
import { limitOf, models } from './models.mjs';

const plus = (a, b) => ({ n: a.n * b.d + b.n * a.d, d: a.d * b.d });
const whole = (n) => ({ n: BigInt(n), d: 1n });

/** Rounded down, for denominators above zero. */
function floor({ n, d }) {
  const quotient = n / d;
  return Number(n % d < 0n ? quotient - 1n : quotient);
}

/**
 * What remains, rounded down: {cycles, minutes}, each null when not limited by it; or a word.
 * `used`: by rating {minutes, units} in units of 1 / denominator; `worst`: amounts of an accepted gap.
 */
export function remainingOf(model, partNumber, { used, ratingNow, worst = null }) {
  const now = limitOf(model, partNumber, ratingNow);
  if (typeof now === 'string') return now;
  const { denominator } = models[model].rule;
  const cycles = inDimension('cycles', (part) => ({ n: BigInt(part.units), d: BigInt(denominator) }));
  const minutes = now.minutes === null ? null : inDimension('minutes', (part) => whole(part.minutes));
  return { cycles, minutes };

  function inDimension(dimension, amountOf) {
    const rows = Object.entries(used).filter(([, part]) => part.minutes !== 0 || part.units !== 0);
    const limits = rows.map(([rating]) => limitOf(model, partNumber, rating)[dimension]);
    if (models[model].lifeMethod === 'lowest-limit') {
      const all =
        worst === null
          ? limits
          : models[model].ratings.map((rating) => limitOf(model, partNumber, rating)[dimension]);
      const limit = Math.min(now[dimension], ...all);
      const total = rows.reduce((sum, [, part]) => plus(sum, amountOf(part)), whole(worst?.[dimension] ?? 0));
      return floor({ n: BigInt(limit) * total.d - total.n, d: total.d });
    }
    let share = whole(0);
    rows.forEach(([, part], index) => {
      const amount = amountOf(part);
      share = plus(share, { n: amount.n, d: amount.d * BigInt(limits[index]) });
    });
    const left = plus(whole(1), { n: -share.n, d: share.d });
    return floor({ n: left.n * BigInt(now[dimension]), d: left.d });
  }
}

/**
 * The largest opening in whole cycles at a rating that leaves at least `target` cycles, given what else was used.
 */
export function openingFor(model, partNumber, { ran, other, rating, ratingNow, target }) {
  let low = 0;
  let high = 60000;
  const { denominator } = models[model].rule;
  const leaves = (cycles) => {
    const used = add(add(ran, other), { [rating]: { minutes: 0, units: cycles * denominator } });
    return remainingOf(model, partNumber, { used, ratingNow }).cycles;
  };
  while (low < high) {
    const middle = Math.ceil((low + high) / 2);
    if (leaves(middle) >= target) low = middle;
    else high = middle - 1;
  }
  if (leaves(low) !== target) throw new Error(`no opening leaves ${target} cycles: ${partNumber}`);
  return low;
}

/** Adds amounts by rating. */
export function add(a, b) {
  const sum = { ...a };
  for (const [rating, part] of Object.entries(b)) {
    const before = sum[rating] ?? { minutes: 0, units: 0 };
    sum[rating] = { minutes: before.minutes + part.minutes, units: before.units + part.units };
  }
  return sum;
}
