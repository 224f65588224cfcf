// Mean and sample standard deviation of a few numbers, for tests and loads. Sums are taken in the order given.

/** The mean; at least one value. */
export function mean(values: readonly number[]): number {
  return values.reduce((sum, value) => sum + value, 0) / values.length;
}

/** With n − 1 below the line; at least two values. */
export function sampleDeviation(values: readonly number[]): number {
  const middle = mean(values);
  const squares = values.reduce((sum, value) => sum + (value - middle) ** 2, 0);
  return Math.sqrt(squares / (values.length - 1));
}
