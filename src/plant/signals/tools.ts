/**
 * Service tools: where their valves and switches stand, what an eye sees of them, and what their vessels hold in truth.
 * Only what lies on the bench has any.
 */

import type { PlantParts } from '../assemblePlant';
import { isFull } from '../commands/service';
import type { DeviceOnDesk } from '../serviceDesk';
import { flag, type Signal, signal } from './signal';

const EIGHTHS = 8;

export function toolSignals(parts: PlantParts): Signal[] {
  const { desk, toolVessels, options, car } = parts;
  const tools = options.bench.tools ?? [];
  const { network } = car;
  const device = (id: string): DeviceOnDesk | undefined =>
    desk.service.devices[id as keyof typeof desk.service.devices];
  const signals = Object.keys(desk.service.devices).flatMap((id) => [
    flag(`device.${id}.attached`, 'control', () => (device(id)?.onto ?? null) !== null),
    ...(id === 'recovery-machine' || id === 'vacuum-pump'
      ? [flag(`device.${id}.running`, 'cue', () => device(id)?.running === true)]
      : []),
  ]);
  if (tools.includes('recovery-machine'))
    signals.push(
      flag('recoveryTank.full', 'cue', () => isFull({ network, toolVessels })),
      signal('recoveryTank.fillRatio', '1', 'cue', () =>
        eighths(network.liquidShare(toolVessels.recoveryTank, 0)),
      ),
      ...heldIn(parts, 'recoveryTank', toolVessels.recoveryTank),
      signal('separator.oilKg', 'kg', 'truth', () => network.massKg(toolVessels.separator, 'oil')),
    );
  if (tools.includes('charging-tank'))
    signals.push(
      signal('chargingTank.valveSixteenths', '1', 'control', () => desk.service.tank.turn),
      flag('chargingTank.inverted', 'control', () => desk.service.tank.inverted),
      ...heldIn(parts, 'chargingTank', toolVessels.chargingTank),
    );
  if (tools.includes('nitrogen'))
    signals.push(signal('regulator.gaugePressurePa', 'Pa', 'control', () => desk.service.regulatorPa));
  if (tools.includes('oil-injector'))
    signals.push(signal('oilInjector.leftM3', 'm3', 'cue', () => desk.service.cartridgeM3));
  if (tools.includes('identifier'))
    signals.push(flag('identifier.sampling', 'cue', () => desk.service.sample.port !== null));
  return signals;
}

function heldIn({ car }: PlantParts, id: string, vessel: number): Signal[] {
  const { network } = car;
  return [
    signal(`${id}.netKg`, 'kg', 'truth', () => network.massKg(vessel, 'refrigerant')),
    signal(`${id}.airKg`, 'kg', 'truth', () => network.massKg(vessel, 'air')),
    signal(`${id}.foreignKg`, 'kg', 'truth', () => network.massKg(vessel, 'foreign')),
    signal(`${id}.pressurePa`, 'Pa', 'truth', () => network.pressurePa(vessel)),
  ];
}

/** As a float shows it. */
const eighths = (share: number): number => Math.round(EIGHTHS * share) / EIGHTHS;
