/** What an identifier would show of a ghost at rest: the sample is drawn, as from any car. Shares in the device's order. */
import { IDENTIFIER, NAMED_GASES } from '../../equipment/identifier';
import { layoutOf } from '../../layout/layouts';
import { tracePort } from '../../layout/trace';
import type { PlantOptions } from '../../plant/buildPlant';
import { CHANNELS } from '../../plant/panel';
import { STEPS_PER_SECOND } from '../../session/clock';
import type { GhostSpec } from '../../suspects/causes';
import { buildGhost } from '../../suspects/ghost';

export const SAMPLE_S = IDENTIFIER.sampleS + 2;
const FIRST = CHANNELS.indexOf('gas-r134a');

export function sampleOf(options: PlantOptions, spec: GhostSpec): readonly number[] {
  const ghost = buildGhost({ ...options, bench: { ...options.bench, tools: ['identifier'] } }, spec);
  const layout = layoutOf(options.vehicleId);
  const port = layout.ports.find(({ id }) => tracePort(layout, id).side === 'low')?.id ?? layout.ports[0].id;
  ghost.perform({ do: 'cover', port, to: 'off' });
  ghost.perform({ do: 'cap', port, to: 'off' });
  ghost.perform({ do: 'identify', port });
  ghost.runTo(SAMPLE_S * STEPS_PER_SECOND);
  return NAMED_GASES.map((_, gas) => ghost.parts.panel.lagged[FIRST + gas]);
}
