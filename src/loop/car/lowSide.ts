/**
 * The low side's parts in the order of their cells. A rear unit is a second branch: its cells stand before the part where
 * both join, and the last cell of the front branch drains past them.
 */
import type { ComponentData, VehicleData } from './vehicles';

export interface BranchPart extends ComponentData {
  /** Id of the cell its last one drains to; absent: the next. */
  readonly drainsTo?: string;
}

export interface Side {
  readonly id: string;
  readonly parts: readonly BranchPart[];
}

/** Throws `RangeError` where a rear unit joins no part behind the front coil. */
export function lowSideOf({ lowSide, rear }: Pick<VehicleData, 'lowSide' | 'rear'>): Side {
  if (!rear) return lowSide;
  const join = lowSide.parts.findIndex(({ part }) => part === rear.joins);
  if (join < 1) throw new RangeError(`a rear unit cannot join "${rear.joins}"`);
  const front = lowSide.parts.slice(0, join);
  const { part, cells } = lowSide.parts[join];
  return {
    id: lowSide.id,
    parts: [
      ...front.slice(0, -1),
      { ...front[join - 1], drainsTo: cells === 1 ? part : `${part}-1` },
      ...rear.parts,
      ...lowSide.parts.slice(join),
    ],
  };
}
