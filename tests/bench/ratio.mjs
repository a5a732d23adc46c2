/** The middle of some figures. */
export function median(figures) {
  const sorted = [...figures].sort((a, b) => a - b);
  const middle = Math.floor(sorted.length / 2);
  return sorted.length % 2 === 1 ? sorted[middle] : (sorted[middle - 1] + sorted[middle]) / 2;
}

async function timed(work, times) {
  const begun = process.hrtime.bigint();
  for (let turn = 0; turn < times; turn++) await work();
  return Number(process.hrtime.bigint() - begun) / 1e6 / times;
}

/**
 * Times a product's way and its hand-written twin in turn, A B A B …, so that a machine that drifts drifts for both.
 * Answers the medians in milliseconds for one call, and the median of the ratios pair by pair.
 */
export async function compare({ name, product, twin, target, rounds = 11, each = 100 }) {
  await timed(product, Math.ceil(each / 4));
  await timed(twin, Math.ceil(each / 4));
  const pairs = [];
  for (let round = 0; round < rounds; round++)
    pairs.push({ product: await timed(product, each), twin: await timed(twin, each) });
  return {
    name,
    target,
    product: median(pairs.map((pair) => pair.product)),
    twin: median(pairs.map((pair) => pair.twin)),
    ratio: median(pairs.map((pair) => pair.product / pair.twin)),
    least: Math.min(...pairs.map((pair) => pair.product / pair.twin)),
    most: Math.max(...pairs.map((pair) => pair.product / pair.twin)),
  };
}

/** One line of the report. */
export function told({ name, target, product, twin, ratio, least, most }) {
  const verdict = ratio <= target ? 'within' : 'OVER';
  return `${name.padEnd(46)} ${product.toFixed(3).padStart(9)} ${twin.toFixed(3).padStart(9)} ${ratio.toFixed(2).padStart(7)}  (${least.toFixed(2)}–${most.toFixed(2)})  ${verdict} ${target}`;
}
