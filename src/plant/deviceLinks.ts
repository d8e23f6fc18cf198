/**
 * What a device on a hose, or an open valve with nothing on it, joins to what: links follow from the desk alone, so every
 * command sets the desk and asks for them anew.
 */
import { CHARGING_TANK } from '../equipment/chargingTank';
import { boreOf } from '../equipment/hoses';
import { NITROGEN } from '../equipment/nitrogen';
import { RECOVERY, RECOVERY_TANK } from '../equipment/recoveryMachine';
import { STRONG_GAS_IDS, STRONG_GAS_VALVE_CDA_M2, type StrongGasId } from '../equipment/strongGas';
import type { DeviceId } from '../equipment/tools';
import { VACUUM_PUMP } from '../equipment/vacuumPump';
import { type Port, ROOM } from '../loop/networkTypes';
import { dropLink, joinVessels } from './links';
import type { Rig, RigHose } from './rig';

export const DEVICE_LINKS = {
  recoveryInlet: 'device:recovery-inlet',
  recoveryPump: 'device:recovery-pump',
  vacuumPump: 'device:vacuum-pump',
  vacuumBack: 'device:vacuum-back',
  chargingTank: 'device:charging-tank',
  nitrogen: 'device:nitrogen',
  strong: 'device:strong-',
} as const;

const ROOM_PORT: Port = { vessel: ROOM, cell: 0, height: 'bulk' };
const topOf = (vessel: number): Port => ({ vessel, cell: 0, height: 'top' });
const inside = ({ vessel }: RigHose): Port => ({ vessel, cell: 0, height: 'bulk' });

/** Brings the links of one device to what the desk says of it. */
export function joinDevice(rig: Rig, id: DeviceId): void {
  const state = rig.desk.service.devices[id];
  const hose = state?.onto ? rig.hoses.get(state.onto) : undefined;
  const running = state?.running === true;
  if (id === 'recovery-machine') joinRecovery(rig, hose, running);
  else if (id === 'vacuum-pump') joinPump(rig, hose, running);
  else if (id === 'charging-tank') joinTank(rig, hose);
  else if (id === 'nitrogen') joinNitrogen(rig, hose);
  else if (isStrong(id)) joinStrong(rig, id, hose, running);
}

/** Shut inside while it stands: what is in it stays, and the hose stays as it is. */
function joinRecovery(rig: Rig, hose: RigHose | undefined, running: boolean): void {
  const { network, toolVessels, ambientK } = rig;
  const { separator, recoveryTank } = toolVessels;
  dropLink(network, DEVICE_LINKS.recoveryInlet);
  dropLink(network, DEVICE_LINKS.recoveryPump);
  network.setSurroundings(
    separator,
    0,
    running ? RECOVERY.warmK : ambientK,
    running ? RECOVERY.warmWPerK : RECOVERY.stillWPerK,
  );
  network.setSurroundings(
    recoveryTank,
    0,
    ambientK,
    running ? RECOVERY_TANK.fannedWPerK : RECOVERY_TANK.stillWPerK,
  );
  if (!running || !hose) return;
  joinVessels(network, DEVICE_LINKS.recoveryInlet, inside(hose), topOf(separator), RECOVERY.inletCdaM2);
  network.addLink({
    kind: 'pump',
    id: DEVICE_LINKS.recoveryPump,
    from: topOf(separator),
    to: topOf(recoveryTank),
    speedM3PerS: RECOVERY.speedM3PerS,
    ultimatePa: RECOVERY.ultimatePa,
    opening: 1,
  });
}

function joinPump({ network }: Rig, hose: RigHose | undefined, running: boolean): void {
  dropLink(network, DEVICE_LINKS.vacuumPump);
  dropLink(network, DEVICE_LINKS.vacuumBack);
  if (!hose) return;
  if (!running) {
    joinVessels(network, DEVICE_LINKS.vacuumBack, inside(hose), ROOM_PORT, VACUUM_PUMP.backCdaM2);
    return;
  }
  network.addLink({
    kind: 'pump',
    id: DEVICE_LINKS.vacuumPump,
    from: inside(hose),
    to: ROOM_PORT,
    speedM3PerS: VACUUM_PUMP.speedM3PerS,
    ultimatePa: VACUUM_PUMP.ultimatePa,
    opening: 1,
    bore: boreOf(hose.spec),
  });
}

function joinTank({ network, toolVessels, desk }: Rig, hose: RigHose | undefined): void {
  dropLink(network, DEVICE_LINKS.chargingTank);
  const { turn } = desk.service.tank;
  if (turn === 0) return;
  const from = topOf(toolVessels.chargingTank);
  const to = hose ? inside(hose) : ROOM_PORT;
  joinVessels(network, DEVICE_LINKS.chargingTank, from, to, CHARGING_TANK.valveCdaM2, turn / 16);
}

const isStrong = (id: string): id is StrongGasId => (STRONG_GAS_IDS as readonly string[]).includes(id);

/** Nothing between bottle and hose but the bottle's own valve. */
function joinStrong(
  { network, toolVessels }: Rig,
  id: StrongGasId,
  hose: RigHose | undefined,
  isOpen: boolean,
): void {
  const link = `${DEVICE_LINKS.strong}${id}`;
  dropLink(network, link);
  if (!isOpen || !hose) return;
  joinVessels(network, link, topOf(toolVessels.strong[id]), inside(hose), STRONG_GAS_VALVE_CDA_M2);
}

function joinNitrogen(rig: Rig, hose: RigHose | undefined): void {
  const { network, toolVessels, desk, airPressurePa } = rig;
  dropLink(network, DEVICE_LINKS.nitrogen);
  const { regulatorPa } = desk.service;
  if (regulatorPa === 0) return;
  network.addLink({
    kind: 'regulator',
    id: DEVICE_LINKS.nitrogen,
    from: topOf(toolVessels.nitrogen),
    to: hose ? inside(hose) : ROOM_PORT,
    areaM2: NITROGEN.regulatorCdaM2,
    opening: 1,
    setPa: airPressurePa + regulatorPa,
  });
}
