/** Joining and parting two places of the network with a valve that a person works. */
import type { Network } from '../loop/network';
import { type Bore, type Port, ROOM, type VesselIndex } from '../loop/networkTypes';

/** Joins two ports with a valve of this area, or sets the valve that is there to `opening` (0..1). */
export function joinVessels(
  network: Network,
  id: string,
  from: Port,
  to: Port,
  areaM2: number,
  opening = 1,
  bore?: Bore,
): void {
  const there = network.linkNamed(id);
  if (there >= 0) network.setOpening(there, opening);
  else network.addLink({ kind: 'valve', id, from, to, areaM2, opening, ...(bore ? { bore } : {}) });
}

/** Opens a vessel's first cell to the air. */
export function joinToRoom(network: Network, id: string, vessel: VesselIndex, areaM2: number): void {
  const from: Port = { vessel, cell: 0, height: 'bulk' };
  joinVessels(network, id, from, { vessel: ROOM, cell: 0, height: 'bulk' }, areaM2);
}

export function dropLink(network: Network, id: string): void {
  const link = network.linkNamed(id);
  if (link >= 0) network.removeLink(link);
}
