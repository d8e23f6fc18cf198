/** The can that hands and the picture mean: the one chosen, else the one on a hose, else one off the mat, else the first. */
import type { CanView } from '../session/corePort';

export function canInUse(cans: readonly CanView[], tool: string | null): CanView | undefined {
  return (
    cans.find((can) => can.id === tool) ??
    cans.find((can) => can.onto !== null) ??
    cans.find((can) => can.place !== 'mat') ??
    cans[0]
  );
}
