/** Where everything a person can set stands. */
import type { PlantParts } from '../assemblePlant';
import { flag, type Signal, signal } from './signal';

export function controlSignals({ desk, ports, hoses, cans }: PlantParts): Signal[] {
  return [
    flag('ac.on', 'control', () => desk.acOn),
    signal('blower.speed', '1', 'control', () => desk.blower),
    flag('windows.open', 'control', () => desk.windowsOpen),
    flag('air.recirculated', 'control', () => desk.recirculated),
    flag('door.open', 'control', () => desk.doorOpen),
    flag('gear.goggles', 'control', () => desk.worn.goggles),
    flag('gear.gloves', 'control', () => desk.worn.gloves),
    signal('manifold.low.sixteenths', '1', 'control', () => desk.manifold.low),
    signal('manifold.high.sixteenths', '1', 'control', () => desk.manifold.high),
    ...[...ports.keys()].flatMap((id) => [
      flag(`cap.${id}.on`, 'control', () => desk.caps[id]),
      ...(id in desk.covers ? [flag(`cover.${id}.on`, 'control', () => desk.covers[id])] : []),
    ]),
    ...[...hoses.keys()].flatMap((id) => [
      flag(`hose.${id}.coupled`, 'control', () => (desk.hoses[id]?.port ?? null) !== null),
      flag(`hose.${id}.couplerOpen`, 'control', () => desk.hoses[id]?.open === true),
    ]),
    ...[...cans.keys()].flatMap((id) => [
      signal(`can.${id}.valveSixteenths`, '1', 'control', () => desk.cans[id].turn),
      signal(`can.${id}.tiltDeg`, 'deg', 'control', () => desk.cans[id].tiltDeg),
      flag(`can.${id}.tapped`, 'control', () => desk.cans[id].onto !== null),
    ]),
  ];
}
