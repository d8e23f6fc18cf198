/** Mass units. International avoirdupois pound 0.45359237 kg, exact (NIST Special Publication 811, 2008). */
export const KG_PER_GRAM = 0.001;
export const KG_PER_POUND = 0.45359237;
export const KG_PER_OUNCE = KG_PER_POUND / 16;

export function gramsFromKg(massKg: number): number {
  return massKg / KG_PER_GRAM;
}

export function ouncesFromKg(massKg: number): number {
  return massKg / KG_PER_OUNCE;
}
