/**
 * The empty bay of the drill and the lanes in it. Upright lanes lie in the channels left and right of the engine: even
 * ones for the loop, odd ones for other pipes, so that no two pipes ever lie on top of each other. Millimetres [guess].
 */
import type { RectMm, Shell } from '../layout';

export const VIEW: RectMm = [20, 24, 1600, 930];
export const SHELL: Shell = {
  left: 80,
  right: 1560,
  firewall: 104,
  nose: 884,
  beam: 770,
  grille: 884,
  bumper: 960,
  lower: 910,
  round: 96,
  hold: 'rod',
};

export type Channel = 'left' | 'right';
export const CHANNELS: readonly Channel[] = ['left', 'right'];

const LANE_PITCH_MM = 50;
const FIRST_LEFT_MM = 120;
const FIRST_RIGHT_MM = 1520;
export const LOOP_LANES: readonly number[] = [0, 2, 4];

export const laneX = (channel: Channel, lane: number): number =>
  channel === 'left' ? FIRST_LEFT_MM + LANE_PITCH_MM * lane : FIRST_RIGHT_MM - LANE_PITCH_MM * lane;

/** The channel and lane an upright stretch lies in; null for one that lies in neither. */
export function laneAt(x: number): { readonly channel: Channel; readonly lane: number } | null {
  for (const channel of CHANNELS) {
    for (let lane = 0; lane < 6; lane++) if (laneX(channel, lane) === x) return { channel, lane };
  }
  return null;
}

/** Cross lanes at the firewall, under a valve's seats and under an evaporator's case. */
export const REAR_UNDER_VALVE: readonly number[] = [210, 254];
export const REAR_UNDER_CASE: readonly number[] = [296, 340];

export const CONDENSER: RectMm = [400, 818, 840, 66];
export const condenserEnd = (channel: Channel): number => (channel === 'left' ? 406 : 1234);
/** Where a line meets the condenser: the inner lane behind, the outer in front, so that they do not cross there. */
export const CONDENSER_ROWS: readonly [inner: number, outer: number] = [840, 866];
