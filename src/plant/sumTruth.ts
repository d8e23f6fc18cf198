/**
 * What a sum on the card should come to, from this car and this bench: g, a count, or mL, with how far off is still right.
 *
 * charge: by label or conversion. net: refrigerant in a can, not its print. cans: the fewest whose net contents give the charge
 * and what the hose keeps. remainder: what is then left in the last one. hose: its volume full of gas at the day's
 * temperature, or of liquid where a can or the tank stands upside down. oil: what left with old parts and in the
 * recovery machine; in a conversion all that belongs in.
 */
import { type HoseId, hoseVolumeM3 } from '../equipment/hoses';
import { OIL_KG_PER_M3 } from '../equipment/oils';
import { refrigerant } from '../refrigerant/fluids';
import { dueWith } from './due';
import type { Rig, RigHose } from './rig';
import type { SumOf } from './taskDesk';

export interface SumTruth {
  readonly amount: number;
  readonly tolerance: number;
}

const G_PER_KG = 1000;
const ML_PER_M3 = 1e6;
/** How far off a sum may be: a can's print, what a scale and rounding leave [guess]. */
const NET_G = 5;
const REMAINDER_G = 15;
const HOSE_G = 3;
const OIL_ML = 10;
const ROUGHLY = 0.2;

/** Null where this bench has nothing to reckon it from. */
export function sumTruth(rig: Rig, of: SumOf): SumTruth | null {
  const due = dueWith(rig.vehicle, rig.onBench);
  const nets = [...rig.cans.values()].map(({ spec }) => spec.netKg);
  if (of === 'charge') return { amount: G_PER_KG * due.chargeKg, tolerance: G_PER_KG * due.toleranceKg };
  if (of === 'oil') return oilTruth(rig);
  const kept = hoseKg(rig);
  if (of === 'hose') return kept === null ? null : roughly(G_PER_KG * kept, HOSE_G);
  if (nets.length === 0) return null;
  if (of === 'net') return { amount: G_PER_KG * nets[0], tolerance: NET_G };
  const [count, leftKg] = cansFor(due.chargeKg + (kept ?? 0), nets);
  if (of === 'cans') return { amount: count, tolerance: 0 };
  return { amount: G_PER_KG * leftKg, tolerance: REMAINDER_G };
}

const roughly = (amount: number, least: number): SumTruth => ({
  amount,
  tolerance: Math.max(least, ROUGHLY * amount),
});

/** How many of them, in the order they stand, and what is left in the last; beyond those there are, more like the last. */
function cansFor(neededKg: number, nets: readonly number[]): [count: number, leftKg: number] {
  let given = 0;
  let count = 0;
  while (given < neededKg) {
    given += nets[Math.min(count, nets.length - 1)];
    count++;
  }
  return [count, given - neededKg];
}

const volumeOf = (hose?: RigHose): number => (hose ? hoseVolumeM3(hose.spec) : 0);

/** In the hoses between can and port, when all is open. */
function hoseKg({ hoses, desk, network, ambientK }: Rig): number | null {
  const way: HoseId[] = hoses.has('charging') ? ['charging'] : ['utility', 'gauge-low'];
  const volumeM3 = way.reduce((sum, id) => sum + volumeOf(hoses.get(id)), 0);
  if (volumeM3 === 0) return null;
  const fluid = refrigerant(network.refrigerantId);
  const cursor = fluid.isobar();
  cursor.setPressurePa(fluid.saturationPressurePa(ambientK));
  const isLiquid = desk.service.tank.inverted || Object.values(desk.cans).some(({ tiltDeg }) => tiltDeg > 90);
  return volumeM3 / (isLiquid ? cursor.liquidVolumeM3PerKg : cursor.vapourVolumeM3PerKg);
}

function oilTruth({ vehicle, onBench, desk, network, toolVessels }: Rig): SumTruth {
  const due = dueWith(vehicle, onBench);
  if (vehicle.conversion?.refrigerant === onBench && onBench !== vehicle.label.refrigerant)
    return roughly(ML_PER_M3 * due.oilM3, OIL_ML);
  const { separator } = toolVessels;
  const outKg = desk.tasks.oilOutKg + (separator < 0 ? 0 : network.massKg(separator, 'oil'));
  return roughly((ML_PER_M3 * outKg) / OIL_KG_PER_M3[due.oil], OIL_ML);
}
