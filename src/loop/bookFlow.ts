/** Books what a link moved on both of its ends, so that nothing is made or lost. The room is a row of totals. */
import type { NetworkCore } from './networkCore';
import { TOTAL } from './networkNumbers';

/** `massKg` of refrigerant with `heatJ`, and `airKg`, into (or out of, negative) a cell of a vessel. */
export function bookEnd(
  core: NetworkCore,
  vessel: number,
  cell: number,
  massKg: number,
  heatJ: number,
  airKg: number,
): void {
  if (vessel === 0) {
    const { totals } = core.numbers;
    totals[TOTAL.ventedKg] += massKg;
    totals[TOTAL.ventedKg + 1] += airKg;
    totals[TOTAL.ventedJ] += heatJ;
    totals[TOTAL.crossedKg] += Math.abs(massKg);
    totals[TOTAL.crossedKg + 1] += Math.abs(airKg);
    totals[TOTAL.turnedJ] += Math.abs(heatJ);
    return;
  }
  core.scratch.sourceMass[cell] += massKg;
  core.scratch.sourceHeat[cell] += heatJ;
  core.airSource[vessel] += airKg;
}

/** kg of air that links can still take out of a vessel in this step, after what was booked out of it; the room has plenty. */
export function airLeftKg(core: NetworkCore, vessel: number): number {
  if (vessel === 0) return Number.MAX_VALUE;
  const out = core.airSource[vessel];
  const held = core.numbers.extra[0][vessel];
  if (out >= 0) return held;
  return held + out > 0 ? held + out : 0;
}

/** Moves `massKg` of refrigerant at `enthalpyJPerKg` and `airKg` along link `l`, negative against it. */
export function bookLink(
  core: NetworkCore,
  l: number,
  massKg: number,
  enthalpyJPerKg: number,
  airKg: number,
): void {
  const { links } = core;
  const heat = massKg * enthalpyJPerKg;
  bookEnd(core, links.fromVessel[l], links.fromCell[l], -massKg, -heat, -airKg);
  bookEnd(core, links.toVessel[l], links.toCell[l], massKg, heat, airKg);
}
