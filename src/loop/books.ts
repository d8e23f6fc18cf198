/**
 * The books: what was brought in equals what is held plus what went to the room, for every species and for energy.
 * Energy stored is H - pV of every cell, walls, and what oil holds; the work of a vessel's stretching wall is stored too.
 * Air, water, oil and sealant carry no energy here (what water takes to boil is heat), and a foreign fluid that of the
 * loop's own. An error is measured by what went through the books; in a car where next to nothing moved, by what would
 * warm it a kelvin.
 */
import { REFERENCE_PRESSURE_PA } from './march';
import { FOREIGN } from './moveSpecies';
import type { NetworkBooks } from './network';
import type { NetworkCore } from './networkCore';
import { TOTAL } from './networkNumbers';
import { volumeOf } from './networkPlan';
import { SPECIES, type Species } from './networkTypes';

/** J held by a vessel, walls included. */
export function storedIn(core: NetworkCore, vessel: number): number {
  const { numbers: n, plan } = core;
  const first = plan.firstCell[vessel];
  let sum = n.dissolvedHeat[vessel];
  for (let c = first; c < first + plan.cellCount[vessel]; c++) {
    sum += n.mass[c] * n.enthalpy[c] + plan.wallHeat[c] * n.wall[c];
  }
  const p = n.pressure[vessel];
  const away = p - REFERENCE_PRESSURE_PA;
  return sum - volumeOf(plan, vessel) * (p + 0.5 * plan.elasticity[vessel] * away * away);
}

/** kg of a species in a vessel; refrigerant includes what its oil holds, and not the foreign fluid in its cells. */
export function massIn(core: NetworkCore, vessel: number, species: number): number {
  const { numbers: n, plan } = core;
  if (species > 0) return n.extra[species - 1][vessel];
  const first = plan.firstCell[vessel];
  let sum = n.dissolved[vessel];
  for (let c = first; c < first + plan.cellCount[vessel]; c++) sum += n.mass[c];
  const own = sum - n.extra[FOREIGN - 1][vessel];
  return own > 0 ? own : 0;
}

const CP_J_PER_KG_K = 1000;

/** J that warm walls and contents of all vessels by one kelvin. */
function aKelvinOf(core: NetworkCore): number {
  const { numbers: n, plan } = core;
  let sum = 0;
  for (const v of plan.vesselSlots) {
    const first = plan.firstCell[v];
    for (let c = first; c < first + plan.cellCount[v]; c++)
      sum += plan.wallHeat[c] + CP_J_PER_KG_K * n.mass[c];
  }
  return sum;
}

export function readBooks(core: NetworkCore): NetworkBooks {
  const { totals } = core.numbers;
  const { vesselSlots } = core.plan;
  const held = bySpecies((s) => vesselSlots.reduce((sum, v) => sum + massIn(core, v, s), 0));
  const vented = bySpecies((s) => totals[TOTAL.ventedKg + s]);
  const massErrors = bySpecies((s) => {
    const name = SPECIES[s];
    // the cells' mass holds refrigerant and foreign fluid together, so that is what their sum is measured by
    const crossed = totals[TOTAL.crossedKg + s] + (s === 0 ? totals[TOTAL.crossedKg + FOREIGN] : 0);
    return shareOf(held[name] + vented[name] - totals[TOTAL.broughtInKg + s], crossed);
  });
  const storedJ = vesselSlots.reduce((sum, v) => sum + storedIn(core, v), 0);
  const heatInJ = totals[TOTAL.heatInJ];
  const workInJ = totals[TOTAL.workInJ];
  const turnedOverJ = totals[TOTAL.turnedJ];
  const energyError = storedJ + totals[TOTAL.ventedJ] - totals[TOTAL.broughtInJ] - heatInJ - workInJ;
  return {
    heldKg: held,
    ventedKg: vented,
    massErrors,
    massErrorRelative: Math.max(...Object.values(massErrors)),
    storedJ,
    heatInJ,
    workInJ,
    heatRejectedJ: totals[TOTAL.rejectedJ],
    turnedOverJ,
    energyErrorRelative: shareOf(energyError, Math.max(turnedOverJ, aKelvinOf(core))),
    unsolvedSteps: totals[TOTAL.unsolvedSteps],
  };
}

const shareOf = (error: number, measure: number): number => (measure > 0 ? Math.abs(error) / measure : 0);

function bySpecies(of: (index: number) => number): Record<Species, number> {
  const out: Record<Species, number> = {
    refrigerant: 0,
    air: 0,
    foreign: 0,
    water: 0,
    oil: 0,
    sealant: 0,
  };
  SPECIES.forEach((name, i) => {
    out[name] = of(i);
  });
  return out;
}
