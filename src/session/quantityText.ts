/** temporary until units lands */
const FACTORS: Record<string, [string, number, number]> = {
  kPa: ['Pa', 1000, 0], Pa: ['Pa', 1, 0], g: ['kg', 0.001, 0], kg: ['kg', 1, 0], K: ['K', 1, 0], degC: ['K', 1, 273.15],
  s: ['s', 1, 0], min: ['s', 60, 0],
};
export function quantityIn(unit: string, text: string): number {
  const m = /^(-?[\d.]+) (\S+)$/.exec(text);
  const f = m && FACTORS[m[2]];
  if (!m || !f || f[0] !== unit) throw new RangeError(`"${text}" is not in ${unit}`);
  return Number(m[1]) * f[1] + f[2];
}
