/**
 * Kinds of compressor oil, and their density at 20 °C: mineral 0.91, polyglycol (PAG) 0.99, ester (POE) 0.98 kg/L, from
 * memory. Which kind belongs in a car follows from its compressor, not from its refrigerant: the label says it.
 */
export const OIL_KINDS = ['mineral', 'PAG', 'POE'] as const;
export type OilKind = (typeof OIL_KINDS)[number];

export const OIL_KG_PER_M3: Readonly<Record<OilKind, number>> = { mineral: 910, PAG: 990, POE: 980 };

/** The kind that a label's words mean: "PAG 150", "mineral 500". */
export function oilKindOf(text: string): OilKind {
  if (/mineral/i.test(text)) return 'mineral';
  return /POE|ester/i.test(text) ? 'POE' : 'PAG';
}
