/** Volts in the circuit of an electric compressor: all of them while the plug is in, then U = U0 exp(-t / lag). */
import { HIGH_VOLTAGE } from '../equipment/highVoltage';
import { exp } from '../numerics/exp';
import type { PlantParts } from './assemblePlant';
import { STEP_S } from './stepTime';
import { TALLY } from './tally';

export function voltage({ car, desk, tally }: Pick<PlantParts, 'car' | 'desk' | 'tally'>): number {
  if (car.vehicle.compressor.kind !== 'electric') return 0;
  const { isolatedAt } = desk.hazards;
  if (isolatedAt === null) return HIGH_VOLTAGE.volts;
  return HIGH_VOLTAGE.volts * exp((-(tally[TALLY.step] - isolatedAt) * STEP_S) / HIGH_VOLTAGE.emptyS);
}
