/** The hidden faults of a scenario: known, possible in this car and beside each other, at a place where they can be. */
import type { ScenarioData } from '../../../shared/schema/scenario';
import type { FaultNeed } from '../../faults/fault';
import type { LeakPlace } from '../../faults/leakPlaces';
import { clash, faultIds, faultOf, faultsFor } from '../../faults/registry';
import { vehicleIds, vehicleOf } from '../../loop/car/vehicles';
import { type WordId, word } from '../../words/words';
import type { Findings } from './findings';

type Hidden = ScenarioData['faults'][number];

/** `places` are those of this car's loop. */
export function checkFaults(data: ScenarioData, places: readonly LeakPlace[], findings: Findings): void {
  const possible = faultsFor(vehicleOf(data.vehicle)).map(({ id }) => id);
  data.faults.forEach((hidden, at) => {
    const { fault: id } = hidden;
    const path = ['faults', at, 'fault'];
    if (!possible.includes(id)) {
      if (faultIds.includes(id)) findings.error(path, 'SCN108', whyNotHere(id, data.vehicle));
      else findings.unknown(path, 'SCN102', word('check.noFault', { id }), id, possible);
      return;
    }
    checkBesides(data.faults.slice(0, at), id, placeOf(hidden), at, findings);
    checkSite(hidden, at, places, findings);
    checkGas(hidden, data.contents.refrigerant, at, findings);
    // an evacuated loop holds nothing, so a fault of what it holds would be passed over without a word
    if (data.contents.state === 'evacuated' && faultOf(id).contents)
      findings.error(path, 'SCN213', word('check.chargeFaultOfNothing', { id }));
  });
}

/** What the car has instead of that which the fault is one of, and the cars that can have it. */
function whyNotHere(id: string, vehicle: string): string {
  const { needs, applies } = faultOf(id);
  const why = needs === undefined ? '' : word(WHY[needs]);
  const cars = vehicleIds.filter((one) => applies(vehicleOf(one))).join(', ') || word('check.none');
  return word('check.faultNotHere', { id, vehicle, why, cars });
}

const WHY = {
  bulb: 'check.why.bulb',
  clutch: 'check.why.clutch',
  'coil-switch': 'check.why.coilSwitch',
  drier: 'check.why.drier',
  'electric-fan': 'check.why.electricFan',
  'expansion-valve': 'check.why.expansionValve',
  'orifice-tube': 'check.why.orificeTube',
} as const satisfies Readonly<Record<FaultNeed, WordId>>;

function checkGas({ fault: id, gas }: Hidden, own: string, at: number, findings: Findings): void {
  if (gas === undefined || (faultOf(id).takesGas && gas !== own)) return;
  findings.error(['faults', at, 'gas'], 'SCN107', word('check.noGas', { id, gas }));
}

/** Against those that stand before it. Two leaks are two when they are at two places. */
function checkBesides(
  before: readonly Hidden[],
  id: string,
  place: string | undefined,
  at: number,
  findings: Findings,
): void {
  const path = ['faults', at, 'fault'];
  if (before.some((other) => other.fault === id && placeOf(other) === place))
    findings.error(path, 'SCN103', word('check.faultTwice', { id }));
  const other = before.find(({ fault }) => faultIds.includes(fault) && clash([fault, id]) !== undefined);
  if (other) findings.error(path, 'SCN104', word('check.clash', { id, other: other.fault }));
}

function placeOf({ fault, site }: Hidden): string | undefined {
  if (!faultIds.includes(fault)) return site;
  const { usualSite } = faultOf(fault);
  return usualSite === undefined ? undefined : (site ?? usualSite);
}

function checkSite(
  { fault: id, site }: Hidden,
  at: number,
  places: readonly LeakPlace[],
  findings: Findings,
): void {
  if (site === undefined) return;
  const path = ['faults', at, 'site'];
  const { usualSite, canBeAt = () => true } = faultOf(id);
  if (usualSite === undefined) {
    findings.error(path, 'SCN105', word('check.noSite', { id }));
    return;
  }
  const fit = places.filter(canBeAt).map((place) => place.id);
  if (!fit.includes(site)) findings.unknown(path, 'SCN106', word('check.badSite', { site, id }), site, fit);
}
