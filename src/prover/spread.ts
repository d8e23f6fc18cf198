/** Least, mean and most of some numbers; there is at least one. */
import type { Spread } from './proof';

export const spread = (values: readonly number[]): Spread => ({
  least: Math.min(...values),
  mean: values.reduce((sum, value) => sum + value, 0) / values.length,
  most: Math.max(...values),
});
