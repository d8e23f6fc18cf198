import { OutOfRangeError } from './outOfRangeError';

/** Pressures a cursor may be set to. */
export interface PressureLimits {
  readonly fluid: string;
  readonly minPressurePa: number;
  readonly maxPressurePa: number;
}

/** Throws `OutOfRangeError` unless low <= value <= high. */
export function checkRange(
  fluid: string,
  quantity: string,
  value: number,
  low: number,
  high: number,
  unit: string,
): void {
  if (!(value >= low && value <= high)) throw new OutOfRangeError(fluid, quantity, value, low, high, unit);
}
