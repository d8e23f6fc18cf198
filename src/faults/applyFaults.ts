/** Brings faults to a car: what it is filled with, what still works, and the ways out they open. */
import { partNamed } from '../loop/car/assembleLoop';
import type { Car } from '../loop/car/car';
import { HEALTH_NAMES, type HealthName } from '../loop/car/carNumbers';
import type { VehicleData } from '../loop/car/vehicles';
import type { ValveLink } from '../loop/networkTypes';
import type { ActiveFault, Filling } from './fault';
import { faultOf } from './registry';

/** What the loop holds at the start. */
export function fillingWith(active: readonly ActiveFault[], sound: Filling): Filling {
  return active.reduce(
    (filling, { id, severity }) => faultOf(id).contents?.(filling, severity) ?? filling,
    sound,
  );
}

/** Share of the sound that is left of everything a fault can wear; 1 where none does. */
export function healthWith(
  active: readonly ActiveFault[],
  vehicle: VehicleData,
): Readonly<Record<HealthName, number>> {
  const health = Object.fromEntries(HEALTH_NAMES.map((name) => [name, 1])) as Record<HealthName, number>;
  for (const { id, severity } of active) {
    const factors = faultOf(id).parameters?.(severity, vehicle) ?? {};
    for (const name of HEALTH_NAMES) health[name] *= factors[name] ?? 1;
  }
  return health;
}

/** Ways out that the faults open; two at one place are one hole with the area of both. */
export function holesWith(active: readonly ActiveFault[], car: Car): readonly ValveLink[] {
  const holes = new Map<string, ValveLink>();
  for (const { id, severity, site } of active) {
    const { links, usualSite } = faultOf(id);
    if (!links) continue;
    for (const hole of links(severity, partNamed(car.loop.parts, site ?? usualSite ?? 'condenser'))) {
      const areaM2 = hole.areaM2 + (holes.get(hole.id)?.areaM2 ?? 0);
      holes.set(hole.id, { ...hole, areaM2 });
    }
  }
  return [...holes.values()];
}

/** Sets the car to exactly these faults: health, and holes opened, closed or of another size. */
export function settleFaults(car: Car, active: readonly ActiveFault[]): void {
  const health = healthWith(active, car.vehicle);
  for (const name of HEALTH_NAMES) if (car.number(name) !== health[name]) car.setHealth(name, health[name]);
  settleHoles(car, holesWith(active, car));
}

function settleHoles(car: Car, wanted: readonly ValveLink[]): void {
  const { network } = car;
  for (const { slot, spec } of network.structure().links) {
    if (spec.kind !== 'valve' || !spec.id.startsWith('leak:')) continue;
    if (!wanted.some(({ id, areaM2 }) => id === spec.id && areaM2 === spec.areaM2)) network.removeLink(slot);
  }
  for (const spec of wanted) if (network.linkNamed(spec.id) < 0) network.addLink(spec);
}
