/** The flow law of a metering device on what stands before it: `core.inlet`. `openShare`: lift or what is not clogged. */
import { expansionValveFlow } from './expansionValve';
import type { NetworkCore } from './networkCore';
import type { ExpansionValveLink, OrificeTubeLink } from './networkTypes';
import { orificeTubeFlow } from './orificeTube';

/** kg/s, air included. `area`: over the device's own. */
export function meteringFlow(
  core: NetworkCore,
  spec: OrificeTubeLink | ExpansionValveLink,
  openShare: number,
  area: number,
): number {
  const { inlet, refrigerant } = core;
  if (spec.kind === 'expansionValve') return expansionValveFlow(spec.areaM2 * area * openShare, inlet);
  const bore = area === 1 ? spec.boreM : spec.boreM * Math.sqrt(area);
  return orificeTubeFlow(
    bore,
    spec.lengthM,
    openShare,
    inlet,
    refrigerant.criticalPressurePa,
    refrigerant.criticalTemperatureK,
  );
}
