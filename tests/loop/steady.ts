/** One car run until it has settled, as most tests of the loop want it: windows open, 1,500 engine rpm, eight minutes. */
import { vehicleOf } from '../../src/loop/car/vehicles';
import { type LoopResult, type LoopRun, runLoop } from '../../src/plant/runLoop';

export const CARS = ['hatchback', 'sedan'] as const;
export type CarId = (typeof CARS)[number];

const PA_PER_PSI = 6894.757;
const ZERO_C = 273.15;
const done = new Map<string, LoopResult>();

export interface Asked extends Partial<Omit<LoopRun, 'vehicle' | 'ambientK' | 'engineRevPerS'>> {
  readonly ambientC?: number;
  readonly rpm?: number;
  readonly minutes?: number;
}

/** The same question is answered once. A car without an engine takes the speed as being ready. */
export function steady(vehicle: string, asked: Asked = {}): LoopResult {
  const { ambientC = 32, rpm = 1500, minutes = 8, ...rest } = asked;
  const run: LoopRun = {
    vehicle,
    refrigerant: vehicleOf(vehicle).label.refrigerant,
    ambientK: ambientC + ZERO_C,
    relativeHumidity: 0.5,
    engineRevPerS: rpm / 60,
    durationS: minutes * 60,
    averageS: 180,
    cabin: 'open',
    chargeShare: 1,
    faults: [],
    start: 'equalised',
    ...rest,
  };
  const key = JSON.stringify(run);
  const known = done.get(key) ?? runLoop(run);
  done.set(key, known);
  return known;
}

export const psi = (pa: number): number => pa / PA_PER_PSI;
export const kPa = (pa: number): number => pa / 1000;
export const celsius = (kelvin: number): number => kelvin - ZERO_C;
