/**
 * Soap and dye. A wetted joint bubbles where gas comes out of it: under a cubic millimetre a second (about 0.13 kg of
 * R-134a a year) nothing is seen in a quarter of a minute [guess]. The text rule "only over 1.3 kg a year" is coarse; a
 * patient eye at a still joint finds a tenth of that (from memory). Dye comes out with the oil that leaves, by its share of
 * it, as soon as it has gone round with it; 20 micrograms glow under the lamp [guess]. Its cartridge holds 60 mL, eight
 * doses of 7.5 mL for a car [guess].
 */
export const SOAP_S = 15;
export const SOAP_LEAST_M3_PER_S = 1e-9;
export const DYE_KG_PER_ML = 0.95e-3;
export const DYE_CARTRIDGE_ML = 60;
export const DYE_ROUND_S = 300;
export const DYE_LEAST_KG = 2e-8;

/** 0 nothing; then one more for every doubling over what is just seen, 8 at most. */
export function seenLevel(amount: number, least: number): number {
  let level = 0;
  for (let left = amount / least; left >= 1 && level < 8; left /= 2) level += 1;
  return level;
}
