/**
 * Ids of what a hand can take and where it can go: a port is its layout id, a part its layout id, a coupler
 * "coupler:low", a cap "cap:port-a", the can "can", its valve "can-valve", its dial "can-tilt", the end of a hose that a
 * can goes on "end:charging", the mat "mat", the scale "scale".
 */
import type { CoupledHose } from '../layout/layout';
import type { CanInlet } from './bayFrame';

export const MAT = 'mat';
export const SCALE = 'scale';
export const CAN = 'can';
export const CAN_VALVE = 'can-valve';
export const CAN_TILT = 'can-tilt';

export const couplerId = (hose: CoupledHose): string => `coupler:${hose}`;
export const capId = (portId: string): string => `cap:${portId}`;

export const endId = (inlet: CanInlet): string => `end:${inlet}`;

/** The hose of an end's id, or null for anything else. */
export function inletOfEnd(itemId: string): CanInlet | null {
  const inlet = itemId.startsWith('end:') ? itemId.slice('end:'.length) : '';
  return inlet === 'charging' || inlet === 'utility' ? inlet : null;
}

/** The hose of a coupler id, or null for anything else. */
export function hoseOfCoupler(itemId: string): CoupledHose | null {
  const hose = itemId.startsWith('coupler:') ? itemId.slice('coupler:'.length) : '';
  return hose === 'low' || hose === 'high' || hose === 'charging' ? hose : null;
}

/** The port of a cap id, or null for anything else. */
export function portOfCap(itemId: string): string | null {
  return itemId.startsWith('cap:') ? itemId.slice('cap:'.length) : null;
}
