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
 * Answers the medians in milliseconds for one call, the median of the ratios pair by pair, the lowest and the highest.
 */
export async function compare({
  operation,
  scale,
  product,
  twin,
  target,
  rounds = 11,
  each = 1,
  warm = Math.ceil(each / 4),
}) {
  await timed(product, warm);
  await timed(twin, warm);
  const pairs = [];
  for (let round = 0; round < rounds; round++)
    pairs.push({ product: await timed(product, each), twin: await timed(twin, each) });
  const ratios = pairs.map((pair) => pair.product / pair.twin);
  return {
    operation,
    scale,
    target,
    product: median(pairs.map((pair) => pair.product)),
    twin: median(pairs.map((pair) => pair.twin)),
    ratio: median(ratios),
    lowest: Math.min(...ratios),
    highest: Math.max(...ratios),
  };
}

/** The slope of a straight line through the logarithms of sizes and figures, by least squares. */
export function slope(points) {
  const logs = points.map(([size, figure]) => [Math.log(size), Math.log(figure)]);
  const mean = (of) => logs.reduce((sum, log) => sum + log[of], 0) / logs.length;
  const [x, y] = [mean(0), mean(1)];
  const over = logs.reduce((sum, log) => sum + (log[0] - x) * (log[1] - y), 0);
  return over / logs.reduce((sum, log) => sum + (log[0] - x) ** 2, 0);
}
