/**
 * Which service fitting a port has now: the car's own, told by its refrigerant and the port's side, or the R-134a fitting
 * that a conversion has locked on over it. Commands, signals, twin and drawing all ask here.
 */
import { type FittingId, fittingOf } from '../equipment/fittings';
import type { Desk } from './desk';
import type { RigPort } from './rig';

interface Fitted {
  readonly ports: ReadonlyMap<string, RigPort>;
  readonly desk: Pick<Desk, 'refitted'>;
}

/** Throws `RangeError` for a port the car has not. */
export function fittingAt({ ports, desk }: Fitted, portId: string): FittingId {
  const port = ports.get(portId);
  if (!port) throw new RangeError(`no port "${portId}"; there is ${[...ports.keys()].join(', ')}`);
  return desk.refitted.includes(portId) ? fittingOf('R-134a', port.side) : port.fitting;
}
