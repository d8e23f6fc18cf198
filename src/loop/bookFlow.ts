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
    return;
  }
  core.scratch.sourceMass[cell] += massKg;
  core.scratch.sourceHeat[cell] += heatJ;
  core.airSource[vessel] += airKg;
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
