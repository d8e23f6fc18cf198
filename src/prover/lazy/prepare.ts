/**
 * What a tidy person does before a hose is touched, whatever they know: gear, air, chock, papers, history, the pipes
 * followed and each port said to be what its pipe says it is.
 */
import { layoutOf } from '../../layout/layouts';
import { tracePort } from '../../layout/trace';
import { vehicleOf } from '../../loop/car/vehicles';
import type { TidyHands } from './tidyHands';

const SAFE = [
  'wear goggles',
  'wear gloves',
  'wear overall',
  'door open',
  'chock on',
  'heater off',
  'pit out',
  'temperature coldest',
] as const;
const HISTORY = ['ask converted', 'ask opened', 'ask filled', 'ask used'] as const;

export function prepare({ core, give, scenario: { data } }: TidyHands): void {
  const layout = layoutOf(data.vehicle);
  const hasIdentifier = data.bench.tools?.includes('identifier') === true;
  give('begin', ...SAFE);
  give(...core.choices('sheet').map((sheet) => `read-sheet ${sheet}`), ...HISTORY);
  // with an identifier on the bench the label's gas is what people write who do not use it
  const { metering, label } = vehicleOf(data.vehicle);
  give(`note-loop ${metering.kind}`, `note-gas ${hasIdentifier ? label.refrigerant : 'unknown'}`);
  for (const { id } of layout.ports) give(`trace ${id}`, `judge-port ${id} ${tracePort(layout, id).side}`);
}
