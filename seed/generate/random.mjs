/**
 * A small linear congruential generator (multiplier and increment of Numerical Recipes, from memory), so that
 * the same seed always gives the same demonstration.
 */
export function randomOf(seed) {
  let state = seed >>> 0;
  const next = () => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    return state / 0x100000000;
  };
  /** A whole number from `low` to `high`, both included. */
  const whole = (low, high) => low + Math.floor(next() * (high - low + 1));
  const pick = (list) => list[whole(0, list.length - 1)];
  return { whole, pick, oneIn: (n) => whole(1, n) === 1 };
}

/** A seed from a word: the same word, the same numbers. */
export function seedOf(word) {
  let seed = 2166136261;
  for (const letter of word) seed = Math.imul(seed ^ letter.charCodeAt(0), 16777619) >>> 0;
  return seed;
}
