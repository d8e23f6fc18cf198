/**
 * Places of the loop that stand in the drawing, in the diagram and in the table alike: the four state points, and the
 * four stretches between them. In the order of flow.
 */
export const SPOTS = ['p1', 'compressor', 'p2', 'condenser', 'p3', 'metering', 'p4', 'evaporator'] as const;
export type SpotId = (typeof SPOTS)[number];

/** Number of a state point, 1 to 4; null for a stretch. */
export const pointOf = (spot: SpotId): number | null =>
  spot.startsWith('p') && spot.length === 2 ? Number(spot[1]) : null;

/** Numbers of the points a stretch runs between, in the order of flow; null for a point. */
export function endsOf(spot: SpotId): readonly [from: number, to: number] | null {
  const stretch = ['compressor', 'condenser', 'metering', 'evaporator'].indexOf(spot);
  return stretch < 0 ? null : [stretch + 1, ((stretch + 1) % 4) + 1];
}

/** The next place along the loop, or the one before. */
export function besides(spot: SpotId, step: 1 | -1): SpotId {
  return SPOTS[(SPOTS.indexOf(spot) + step + SPOTS.length) % SPOTS.length];
}
