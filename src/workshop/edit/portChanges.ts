/**
 * What becomes of a car's ports and of the ways of hoses from them in another car: a port becomes the one on the same side,
 * a way the one of the same name there, or the usual one.
 */

/** A port of a car, and the ways a hose can be led from it, the usual one first. */
export interface PortWays {
  readonly id: string;
  readonly side: 'low' | 'high';
  readonly ways: readonly { readonly id: string; readonly through: string }[];
}

export interface PortChange {
  readonly from: string;
  readonly to: string;
  /** Old way to new way, as `couple` takes them. */
  readonly ways: Readonly<Record<string, string>>;
}

export function portChanges(before: readonly PortWays[], next: readonly PortWays[]): PortChange[] {
  return before.flatMap(({ id, side, ways }) => {
    const there = next.find((port) => port.side === side);
    if (!there) return [];
    const way = (name: string) => (there.ways.find((one) => one.id === name) ?? there.ways[0])?.through;
    const pairs = ways.map(({ id: name, through }) => [through, way(name) ?? through] as const);
    return [{ from: id, to: there.id, ways: Object.fromEntries(pairs) }];
  });
}
