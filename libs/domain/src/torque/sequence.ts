/**
 * The order in which a group of `n` fasteners, numbered round the circle from 1, is tightened crosswise.
 *
 * Where `n` is a multiple of four: fours in quadrature, each pair opposite, neighbouring fours apart. Else
 * each next one is the free one farthest round from the last; fewer than three go in order. The approved data's own
 * order comes first. Throws on something that is no count.
 *
 * Source: the cross pattern of ASME PCC-1, from memory.
 */
export function crossPattern(n: number): number[] {
  if (!Number.isSafeInteger(n) || n < 0) throw new RangeError(`not a count of fasteners: ${n}`);
  if (n < 3) return Array.from({ length: n }, (_, index) => index + 1);
  return n % 4 === 0 ? quadrature(n) : farthestFirst(n);
}

function quadrature(n: number): number[] {
  const quarter = n / 4;
  return spreadOut(quarter).flatMap((start) =>
    [start, start + 2 * quarter, start + quarter, start + 3 * quarter].map((place) => place + 1),
  );
}

/** 0 to count − 1, neighbours apart: every other one, then those between; up to three as they are. */
function spreadOut(count: number): number[] {
  const places = Array.from({ length: count }, (_, place) => place);
  const isEven = (place: number) => place % 2 === 0;
  return count <= 3 ? places : [...places.filter(isEven), ...places.filter((place) => !isEven(place))];
}

function farthestFirst(n: number): number[] {
  const free = new Set(Array.from({ length: n - 1 }, (_, index) => index + 2));
  const order = [1];
  while (free.size > 0) {
    const last = order.at(-1) ?? 1;
    const apart = (place: number) => Math.min(Math.abs(place - last), n - Math.abs(place - last));
    const next = [...free].reduce((best, place) => (apart(place) > apart(best) ? place : best));
    order.push(next);
    free.delete(next);
  }
  return order;
}
