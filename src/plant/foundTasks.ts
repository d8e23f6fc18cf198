/** How the car was found, where that is more than the fresh desk says. */

import { oilKindOf } from '../equipment/oils';
import type { PlantParts } from './assemblePlant';
import { loopOilKg } from './oilBook';

/** The car's own oil is in it, a converted one's new; a can's oil is where the can is. */
export function foundTasks({ options, car, desk, cans, ports }: PlantParts): void {
  const { found = {}, start } = options;
  const { label, conversion } = car.vehicle;
  const { tasks } = desk;
  tasks.temperature = found.temperature ?? 'coldest';
  tasks.wasEmpty = start === 'evacuated';
  if (found.converted && conversion) desk.refitted = [...ports.keys()];
  const kind = oilKindOf(found.converted && conversion ? conversion.oil : label.oil);
  tasks.oil.kg[kind] = loopOilKg({ car });
  for (const [id, { vessel }] of cans) tasks.canOilKg[id] = car.network.massKg(vessel, 'oil');
}
