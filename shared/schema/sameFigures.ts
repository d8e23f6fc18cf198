/**
 * Whether two sentences hold the same figures, each with its unit, in any order: "0.48 kg" is "0,48 kg", "310,000 km" is
 * "310 000 km", "8 degC" is "8 °C"; one in braces, which follows its reader's units, stands in braces in both. What is written out in letters is not looked at.
 */
const FIGURE = /(?<![\w.,])[-−]?\d+(?:[.,  ]\d{3}(?!\d))*(?:[.,]\d+)?/g;
const UNIT = /^[  ]?(%|°C|°F|psi|kPa|MPa|bar|inHg|mL|kg|g|oz|km|mm|m³|m|rpm|min|s|h|K|V|L)(?![\p{L}\d])/u;

/** Null where they are; else what is missing or spare. */
export function sameFigures(original: string, given: string): string | null {
  const wanted = figuresOf(original);
  const found = figuresOf(given);
  const missing = without(wanted, found);
  const spare = without(found, wanted);
  if (missing.length === 0 && spare.length === 0) return null;
  const told = [
    ...(missing.length > 0 ? [`it lacks ${missing.join(', ')}`] : []),
    ...(spare.length > 0 ? [`it has ${spare.join(', ')}, which the original has not`] : []),
  ];
  return told.join('; ');
}

function figuresOf(written: string): string[] {
  const sentence = written.replaceAll('degC', '°C').replaceAll('degF', '°F');
  return [...sentence.matchAll(FIGURE)].map((match) => {
    const unit = UNIT.exec(sentence.slice(match.index + match[0].length))?.[1];
    const figure = unit === undefined ? plain(match[0]) : `${plain(match[0])} ${unit}`;
    return sentence[match.index - 1] === '{' ? `{${figure}}` : figure;
  });
}

/** Thousands without a mark, decimals after a point. Three figures after a mark are thousands. */
function plain(figure: string): string {
  const joined = figure.replace('−', '-').replace(/[.,  ](?=\d{3}(?!\d))/g, '');
  return joined.replace(',', '.');
}

/** Each of `from` that `others` has no partner for. */
function without(from: readonly string[], others: readonly string[]): string[] {
  const left = [...others];
  return from.filter((one) => {
    const at = left.indexOf(one);
    if (at >= 0) left.splice(at, 1);
    return at < 0;
  });
}
