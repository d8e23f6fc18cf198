/**
 * Why nothing is changed on the car now: its engine runs, or it has none and stands ready with its air conditioning on, so
 * that its compressor and fans may turn at any moment. Null where it stands.
 */
import { hasEngine } from '../loop/car/hasEngine';
import type { Rig } from './rig';

export function mayTurn({ desk, vehicle }: Pick<Rig, 'desk' | 'vehicle'>): 'engineRuns' | 'coolingOn' | null {
  if (desk.engineRpm > 0) return 'engineRuns';
  return !hasEngine(vehicle) && desk.acOn ? 'coolingOn' : null;
}
