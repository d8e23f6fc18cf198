/**
 * Steps of a conversion: permanent fittings locked on over the old ports, ports put out of use, oil by kind, seals, a
 * high-pressure cut-out, what the old label said, the new label. Fittings go on only where no pressure stands behind.
 */

import { OIL_KG_PER_M3, type OilKind } from '../../equipment/oils';
import { LEVEL_PA } from '../../equipment/openJoint';
import type { LeakPlace } from '../../faults/leakPlaces';
import type { Command, Outcome } from '../commandSpecs';
import { mayTurn } from '../mayTurn';
import { notFree } from '../notFree';
import { done, type Rig, type RigPort, refuse } from '../rig';

/** Over this a port's core spits. */
const PRESSURE_PA = 20_000;
const M3_PER_ML = 1e-6;
/** Of the oil on the walls, what runs out when every joint is undone and the lines are blown through [guess]. */
const DRAINED_SHARE = 0.7;

export const convert = {
  'convert-port'(rig: Rig, command: Command) {
    const port = rig.ports.get(String(command.port)) as RigPort;
    if (!rig.vehicle.conversion) return refuse('noConversion');
    const hindrance = hinderedAt(rig, port);
    if (hindrance) return hindrance;
    rig.desk.refitted.push(port.id);
    return done({ id: 'port-converted', subject: port.id });
  },

  'disable-port'(rig: Rig, command: Command) {
    const port = rig.ports.get(String(command.port)) as RigPort;
    const hindrance = hinderedAt(rig, port);
    if (hindrance) return hindrance;
    rig.desk.tasks.conversion.disabled.push(port.id);
    return done({ id: 'port-disabled', subject: port.id });
  },

  'fill-oil'(rig: Rig, command: Command) {
    const hindrance = notOpen(rig);
    if (hindrance) return hindrance;
    const kind = String(command.kind) as OilKind;
    const { opened } = rig.desk.search;
    const at = opened.includes('compressor') ? 'compressor' : opened[0];
    const { vessel } = (rig.places.get(at) as LeakPlace).port;
    const kg = Number(command.mL) * M3_PER_ML * OIL_KG_PER_M3[kind];
    rig.addOil(kind, kg, vessel, at === 'compressor' ? 'sump' : 'walls');
    return done({ id: 'oil-filled', subject: kind, quantity: kg, unit: 'kg' });
  },

  'renew-seals'(rig: Rig) {
    if (rig.desk.tasks.conversion.sealsRenewed) return refuse('already');
    const hindrance = notOpen(rig);
    if (hindrance) return hindrance;
    rig.desk.tasks.conversion.sealsRenewed = true;
    for (const { id, kind } of rig.places.values()) if (kind === 'joint') rig.repair(id);
    const oilKg = drain(rig);
    return done({ id: 'seals-renewed', quantity: oilKg, unit: 'kg' });
  },

  'fit-cut-out'(rig: Rig) {
    if (!rig.tools.includes('conversion-kit')) return refuse('noKit');
    if (rig.vehicle.switches.high.fitted || rig.desk.tasks.conversion.cutOut) return refuse('already');
    if (rig.desk.engineRpm > 0) return refuse('engineRuns');
    rig.desk.tasks.conversion.cutOut = true;
    return done({ id: 'cut-out-fitted' });
  },

  'note-old'(rig: Rig, command: Command) {
    const kg = Number(command.grams) / 1000;
    rig.desk.tasks.conversion.old = { kg, m3: Number(command.mL) * M3_PER_ML };
    return done({ id: 'old-noted', quantity: kg, unit: 'kg' });
  },

  'label-conversion'(rig: Rig, command: Command) {
    const kg = Number(command.grams) / 1000;
    rig.desk.tasks.conversion.label = {
      refrigerant: String(command.refrigerant),
      kg,
      oil: String(command.oil) as OilKind,
      m3: Number(command.mL) * M3_PER_ML,
    };
    return done({
      id: 'conversion-labelled',
      subject: String(command.refrigerant),
      quantity: kg,
      unit: 'kg',
    });
  },
};

/** What runs out of pipes and parts while joint after joint is undone; kg. Not what stands in the compressor. */
function drain({ network, loopVessels, desk }: Rig): number {
  const oilKg = loopVessels.reduce((sum, vessel) => {
    const onWallsKg = network.massKg(vessel, 'oil') - network.sumpOilKg(vessel);
    return sum - network.bringIn(vessel, 'oil', -DRAINED_SHARE * onWallsKg);
  }, 0);
  desk.tasks.oilOutKg += oilKg;
  return oilKg;
}

/** Why nothing can be done to a port now. */
function hinderedAt(rig: Rig, port: RigPort): Outcome | null {
  const { tools, desk, network, airPressurePa } = rig;
  if (!tools.includes('conversion-kit')) return refuse('noKit');
  if (desk.refitted.includes(port.id)) return refuse('portConverted');
  const turns = mayTurn(rig);
  if (turns) return refuse(turns);
  const hindrance = notFree(rig, port.id);
  if (hindrance) return hindrance;
  const overPa = network.pressurePa(port.at.vessel) - airPressurePa;
  return overPa > PRESSURE_PA ? refuse('portHolds') : null;
}

/** Oil and seals go in where the loop stands open, level with the room. */
function notOpen(rig: Rig): Outcome | null {
  const { desk, network, loopVessels, airPressurePa } = rig;
  const turns = mayTurn(rig);
  if (turns) return refuse(turns);
  if (desk.search.opened.length === 0) return refuse('loopNotOpen');
  const apart = loopVessels.map((vessel) => network.pressurePa(vessel) - airPressurePa);
  const overPa = apart.reduce((most, pa) => (Math.abs(pa) > Math.abs(most) ? pa : most), 0);
  if (Math.abs(overPa) <= LEVEL_PA) return null;
  return refuse(overPa > 0 ? 'loopBlows' : 'loopDraws');
}
