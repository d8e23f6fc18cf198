/**
 * Has anything stirred that comparisons hang on? Each signal is held between the limits next to where it stood, or at where
 * it stood: then every comparison of it says what it said.
 */
import type { Moment } from './moment';
import type { Limit } from './settled';

export interface Stir {
  /** Takes the signals as they stand for rest. */
  rest(moment: Moment): void;
  stirred(moment: Moment): boolean;
}

export function stir(limits: readonly Limit[]): Stir {
  const indices = [...new Set(limits.map(({ index }) => index))];
  const own = indices.map((index) => limits.filter((limit) => limit.index === index));
  const at = new Float64Array(indices.length);
  const lowest = new Float64Array(indices.length);
  const highest = new Float64Array(indices.length);
  return {
    rest(moment) {
      for (let i = 0; i < indices.length; i++) {
        const value = moment.value(indices[i]);
        at[i] = value;
        const isLost = Number.isNaN(value);
        lowest[i] = isLost ? Number.NaN : Number.NEGATIVE_INFINITY;
        highest[i] = isLost ? Number.NaN : Number.POSITIVE_INFINITY;
        for (const limit of own[i]) {
          if (limit.value <= value) lowest[i] = Math.max(lowest[i], limit.value);
          if (limit.value >= value) highest[i] = Math.min(highest[i], limit.value);
        }
      }
    },
    stirred(moment) {
      for (let i = 0; i < indices.length; i++) {
        const value = moment.value(indices[i]);
        if (value > lowest[i] && value < highest[i]) continue;
        if (value === at[i] || (Number.isNaN(value) && Number.isNaN(at[i]))) continue;
        return true;
      }
      return false;
    },
  };
}
