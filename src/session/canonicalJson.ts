/**
 * JSON text in one form only: keys in code-unit order, no spaces, members that are `undefined` left out. What a hash is
 * taken over, so that the order in which an object was put together does not matter.
 *
 * Throws `RangeError` on a number JSON cannot hold.
 */
export function canonicalJson(value: unknown): string {
  if (typeof value === 'number' && !Number.isFinite(value)) throw new RangeError(`JSON cannot hold ${value}`);
  if (typeof value !== 'object' || value === null) return JSON.stringify(value) ?? 'null';
  if (Array.isArray(value)) return `[${value.map(canonicalJson).join(',')}]`;
  const members = Object.entries(value).filter(([, member]) => member !== undefined);
  members.sort(([a], [b]) => (a < b ? -1 : 1));
  return `{${members.map(([key, member]) => `${JSON.stringify(key)}:${canonicalJson(member)}`).join(',')}}`;
}
