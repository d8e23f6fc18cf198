/** Fills the placeholders of one sentence. Text only: nothing in it is ever read as markup. */
const PLACEHOLDER = /\{([a-z][a-zA-Z0-9]*)\}/g;

/** Throws `RangeError` where a placeholder has no value or a value has no placeholder. */
export function sentenceIn(id: string, sentence: string, values: Readonly<Record<string, string>>): string {
  const used = new Set<string>();
  const filled = sentence.replace(PLACEHOLDER, (_, name: string) => {
    const value = Object.hasOwn(values, name) ? values[name] : undefined;
    if (value === undefined) throw new RangeError(`word "${id}" needs a value for {${name}}`);
    used.add(name);
    return value;
  });
  const spare = Object.keys(values).find((name) => !used.has(name));
  if (spare !== undefined) throw new RangeError(`word "${id}" has no place for {${spare}}`);
  return filled;
}
