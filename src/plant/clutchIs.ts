/**
 * Whether a clutch does what somebody says of it: cycling, when it came in at least twice in two minutes; slipping, over a
 * twentieth [guess]; turning or standing, by its hub. What cycles neither turns nor stands.
 */
import { hasClutch } from '../loop/car/coolingAsked';
import type { Rig } from './rig';
import type { ClutchDoing } from './taskDesk';

const SLIPS_FROM = 0.05;
const CYCLES_FROM_PER_MIN = 1;

/** Null for a car without a clutch. */
export function clutchIs(
  { vehicle, clutch }: Pick<Rig, 'vehicle' | 'clutch'>,
  doing: ClutchDoing,
): boolean | null {
  if (!hasClutch(vehicle)) return null;
  const { turning, slip, cyclesPerMin } = clutch();
  if (doing === 'slipping') return turning && slip > SLIPS_FROM;
  const isCycling = cyclesPerMin >= CYCLES_FROM_PER_MIN;
  if (doing === 'cycling') return isCycling;
  return !isCycling && turning === (doing === 'turning') && slip <= SLIPS_FROM;
}
