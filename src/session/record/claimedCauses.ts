/** What is claimed of the causes named, in their order: the last ones, each once, as many as there are to name. */
export function claimedCauses(named: readonly string[], wanted: number): readonly string[] {
  return [...new Set([...named].reverse())].slice(0, Math.max(1, wanted));
}
