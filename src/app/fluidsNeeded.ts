/** The refrigerants whose tables a scenario's plant needs: of the loop, of the bench, and of the bulbs of the car's valves. */
import type { ScenarioData } from '../../shared/schema/scenario';
import { fillingWith } from '../faults/applyFaults';
import { purely } from '../faults/fault';
import { refrigerantsOf } from '../loop/car/refrigerantsOf';
import { vehicleOf } from '../loop/car/vehicles';
import type { RefrigerantId } from '../refrigerant/refrigerant';

export function fluidsNeeded({ vehicle, contents, faults, bench }: ScenarioData): readonly RefrigerantId[] {
  const car = vehicleOf(vehicle);
  const active = faults.map(({ fault, severity }) => ({ id: fault, severity }));
  // only which refrigerant it is counts here
  const filled = fillingWith(active, car, purely(contents.refrigerant, 0));
  return refrigerantsOf(car, onBench({ contents, bench }), contents.refrigerant, filled.refrigerant);
}

/** What cans, tank and gauges are made for. */
export const onBench = ({ contents, bench }: Pick<ScenarioData, 'contents' | 'bench'>): RefrigerantId =>
  bench.refrigerant ?? contents.refrigerant;
