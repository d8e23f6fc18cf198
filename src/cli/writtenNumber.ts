/** Numbers as people write them: decimal digits, never hexadecimal. `undefined` for anything else. */
const PLAIN = /^[+-]?(?:\d+\.?\d*|\.\d+)$/;
const WITH_EXPONENT = /^[+-]?(?:\d+\.?\d*|\.\d+)(?:[eE][+-]?\d+)?$/;

/** Digits and a point: options. */
export const plainNumber = (text: string): number | undefined => matched(text, PLAIN);

/** The same, or with a power of ten: what programs write into files. */
export const fileNumber = (text: string): number | undefined => matched(text, WITH_EXPONENT);

function matched(text: string, form: RegExp): number | undefined {
  const value = Number(text);
  return form.test(text.trim()) && Number.isFinite(value) ? value : undefined;
}
