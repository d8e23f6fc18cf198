/**
 * What may be written down as the refrigerant of a loop. Under 98 % of one it is mixed, as identifiers' standards have it
 * (from memory). With no identifier on the bench, or nothing in the loop, not to know is right; with one, nothing is right
 * that was written without a sample: a label tells what should be in there.
 */
import type { Rig } from './rig';

const PURE_SHARE = 0.98;
const NOTHING_KG = 1e-3;

/** Everything that is right to write. */
export function gasesThatFit({ network, loopVessels, tools, vehicle, desk }: Rig): readonly string[] {
  const sum = (species: 'refrigerant' | 'foreign'): number =>
    loopVessels.reduce((kg, vessel) => kg + network.massKg(vessel, species), 0);
  const [ownKg, foreignKg] = [sum('refrigerant'), sum('foreign')];
  const totalKg = ownKg + foreignKg;
  if (totalKg < NOTHING_KG) return ['unknown', vehicle.label.refrigerant];
  const hasIdentifier = tools.includes('identifier');
  if (hasIdentifier && desk.service.sample.shares === null) return [];
  const unknown = hasIdentifier ? [] : ['unknown'];
  const most = ownKg >= foreignKg ? network.refrigerantId : network.foreign();
  // a hydrocarbon has no name on the card but that it does not belong here
  const isMixed =
    Math.max(ownKg, foreignKg) < PURE_SHARE * totalKg || most === 'hydrocarbon' || most === null;
  return [isMixed ? 'mixed' : most, ...unknown];
}
