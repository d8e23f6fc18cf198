/** An argument outside the range in which the properties of a fluid are known. Says what was asked and what is allowed. */
export class OutOfRangeError extends Error {
  override readonly name = 'OutOfRangeError';
  readonly quantity: string;
  readonly value: number;
  readonly low: number;
  readonly high: number;

  constructor(fluid: string, quantity: string, value: number, low: number, high: number, unit: string) {
    super(`${fluid}: ${quantity} ${value} ${unit} is outside ${low} to ${high} ${unit}`);
    this.quantity = quantity;
    this.value = value;
    this.low = low;
    this.high = high;
  }
}
