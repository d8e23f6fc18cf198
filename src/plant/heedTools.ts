/**
 * What the service tools do by themselves, after each step: the recovery machine's switches, gas that went where it should
 * not, the end of a sample.
 */
import { IDENTIFIER, NAMED_GASES } from '../equipment/identifier';
import { RECOVERY, RECOVERY_TANK } from '../equipment/recoveryMachine';
import { VACUUM_PUMP } from '../equipment/vacuumPump';
import type { PlantParts } from './assemblePlant';
import type { PlantEvent } from './commandSpecs';
import { SAMPLE_LINKS } from './commands/identify';
import { isFull } from './commands/service';
import { DEVICE_LINKS, joinDevice } from './deviceLinks';
import { dropLink } from './links';
import type { Rig } from './rig';
import { STEP_S } from './stepTime';

const TANK_SPECIES = ['air', 'foreign'] as const;

export function heedTools(rig: Rig, parts: PlantParts, events: PlantEvent[]): void {
  const { devices, sample } = rig.desk.service;
  if (devices['recovery-machine']?.running) heedRecovery(rig, events);
  if (devices['vacuum-pump']?.running) heedPump(rig, events);
  if (sample.port !== null && rig.step() >= sample.endsAt) endSample(rig, parts, events);
}

function heedRecovery(rig: Rig, events: PlantEvent[]): void {
  const { network, toolVessels, desk, airPressurePa } = rig;
  const { recovery } = desk.service;
  tellContamination(rig, events);
  const isLow = network.pressurePa(toolVessels.separator) < airPressurePa - RECOVERY.stopsBelowAirPa;
  recovery.lowSteps = isLow ? recovery.lowSteps + 1 : 0;
  if (isFull(rig) && !desk.hazards.bypass['tank-limit']) stop(rig, 'tank-filled', events);
  else if (recovery.lowSteps * STEP_S >= RECOVERY.stopsAfterS) stop(rig, 'recovery-ended', events);
}

function stop(rig: Rig, why: string, events: PlantEvent[]): void {
  const machine = rig.desk.service.devices['recovery-machine'];
  if (machine) machine.running = false;
  joinDevice(rig, 'recovery-machine');
  events.push({ id: why }, { id: 'device-stopped', subject: 'recovery-machine' });
}

/** Once for air, once for a foreign gas. */
function tellContamination({ network, toolVessels, desk }: Rig, events: PlantEvent[]): void {
  const { recovery } = desk.service;
  const tank = toolVessels.recoveryTank;
  for (const species of TANK_SPECIES) {
    const kg = network.massKg(tank, species);
    if (kg === 0 || recovery.contaminatedBy.includes(species)) continue;
    const mixed = kg / (network.chargeKg(tank) + network.massKg(tank, 'air'));
    // a foreign gas is whichever of two there is less of
    const share = species === 'foreign' ? Math.min(mixed, 1 - mixed) : mixed;
    if (share < RECOVERY_TANK.contaminatedShare[species]) continue;
    recovery.contaminatedBy = [...recovery.contaminatedBy, species];
    events.push({ id: 'tank-contaminated', subject: species, quantity: share, unit: '1' });
  }
}

/** A vacuum pump blows out whatever it is given. */
function heedPump({ network, desk }: Rig, events: PlantEvent[]): void {
  const { service } = desk;
  const before = service.blownOutKg;
  service.blownOutKg += network.massFlowKgPerS(network.linkNamed(DEVICE_LINKS.vacuumPump)) * STEP_S;
  if (before < VACUUM_PUMP.toldKg && service.blownOutKg >= VACUUM_PUMP.toldKg)
    events.push({ id: 'refrigerant-pumped-out', quantity: service.blownOutKg, unit: 'kg' });
}

function endSample(rig: Rig, parts: PlantParts, events: PlantEvent[]): void {
  const { network, toolVessels, desk, airPressurePa } = rig;
  const { sample } = desk.service;
  const port = sample.port ?? '';
  const reached = network.pressurePa(toolVessels.identifier) - airPressurePa >= IDENTIFIER.leastPa;
  const shares = reached ? sharesOf(rig, parts) : null;
  dropLink(network, SAMPLE_LINKS.inlet);
  dropLink(network, SAMPLE_LINKS.outlet);
  desk.service.sample = { port: null, endsAt: 0, shares };
  events.push({ id: reached ? 'sample-identified' : 'sample-failed', subject: port });
}

/** Shares by mass of what stands in the cell; what is under the threshold is not seen. */
function sharesOf({ network, toolVessels }: Rig, { foreign }: PlantParts): Record<string, number> {
  const cell = toolVessels.identifier;
  const shares: Record<string, number> = Object.fromEntries(NAMED_GASES.map((gas) => [gas, 0]));
  const held = {
    [network.refrigerantId]: network.massKg(cell, 'refrigerant'),
    air: network.massKg(cell, 'air'),
    ...(foreign === null ? {} : { [foreign]: network.massKg(cell, 'foreign') }),
  };
  const sum = Object.values(held).reduce((kg, more) => kg + more, 0);
  for (const [gas, kg] of Object.entries(held)) {
    const share = kg / sum;
    if (gas in shares && share >= IDENTIFIER.threshold) shares[gas] = share;
  }
  return shares;
}
