/** Books what a link moved on both of its ends, so that nothing is made or lost. The room is a row of totals. */
import { carry } from './carry';
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

/**
 * kg of air (water vapour included) that links can still take out of a vessel in this step, after what was booked out of
 * it; the room has plenty.
 */
export function airLeftKg(core: NetworkCore, vessel: number): number {
  if (vessel === 0) return Number.MAX_VALUE;
  const held = core.numbers.extra[0][vessel];
  const steam = core.numbers.steam[vessel];
  const air = shareLeft(held, core.airSource[vessel]);
  if (steam <= 0) return air * held;
  const vapour = shareLeft(steam, core.steamSource[vessel]);
  return (held > 0 && air < vapour ? air : vapour) * (held + steam);
}

function shareLeft(held: number, booked: number): number {
  if (booked >= 0 || held <= 0) return 1;
  return held + booked > 0 ? (held + booked) / held : 0;
}

/**
 * Moves `massKg` of refrigerant at `enthalpyJPerKg` and `airKg` along link `l`, negative against it. What else there is
 * goes with them: the share of liquid is that of `core.draw`, which the caller has read at the end that gives.
 */
export function bookLink(
  core: NetworkCore,
  l: number,
  massKg: number,
  enthalpyJPerKg: number,
  airKg: number,
): void {
  const { links } = core;
  const heat = massKg * enthalpyJPerKg;
  const from = links.fromVessel[l];
  const to = links.toVessel[l];
  bookEnd(core, from, links.fromCell[l], -massKg, -heat, -airKg);
  bookEnd(core, to, links.toCell[l], massKg, heat, airKg);
  const liquid = core.draw.liquidShare;
  if (massKg > 0 || airKg > 0) carry(core, l, from, to, massKg, (massKg + airKg) * liquid, airKg);
  else if (massKg < 0 || airKg < 0) carry(core, l, to, from, -massKg, -(massKg + airKg) * liquid, -airKg);
}
