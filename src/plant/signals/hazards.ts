/**
 * What the place does to whoever works in it, as numbers: fumes, gas, oxygen, what met skin and eyes, volts, heat. Nobody
 * smells or sees most of it, so it is truth; what hands have set are controls.
 */
import { FUMES } from '../../equipment/fumes';
import type { PlantParts } from '../assemblePlant';
import { burningShare, holdsFlammable } from '../flammable';
import { BYPASSES } from '../hazardDesk';
import { loopForeignKg, otherGasKg } from '../loopForeign';
import { breathedPpm, burnsFuel, coPpm, isShutIn, oxygenShare, pitGasPpm, roomGasPpm } from '../placeAir';
import { HAZARD } from '../tally';
import { voltage } from '../voltage';
import { flag, type Signal, signal } from './signal';

const MILLIGRAMS = 1e6;

export function hazardSignals(parts: PlantParts): Signal[] {
  const { desk, tally, car, hoses, cans, options } = parts;
  const { network, loop } = car;
  const truth = (id: string, unit: string, read: () => number): Signal => signal(id, unit, 'truth', read);
  return [
    flag('gear.overall', 'control', () => desk.worn.overall),
    flag('heater.on', 'control', () => desk.hazards.heaterOn),
    flag('pit.in', 'control', () => desk.hazards.inPit),
    flag('place.shut', 'control', () => isShutIn(parts)),
    flag('exhaust.inShutRoom', 'control', () => desk.engineRpm > 0 && burnsFuel(parts) && isShutIn(parts)),
    ...BYPASSES.map((what) => flag(`bypass.${what}`, 'control', () => desk.hazards.bypass[what])),
    flag('highVoltage.isolated', 'control', () => desk.hazards.isolatedAt !== null),
    ...[...hoses.keys()].map((id) =>
      flag(`hose.${id}.adapter`, 'control', () => desk.hazards.adapters.includes(id)),
    ),
    ...[...hoses.keys()].map((id) =>
      flag(`hose.${id}.burned`, 'cue', () => desk.hazards.burned.includes(id)),
    ),
    ...[...cans].map(([id]) => flag(`can.${id}.burst`, 'cue', () => desk.hazards.burst.includes(id))),
    truth('place.coPpm', '1', () => coPpm(parts)),
    truth('place.gasPpm', '1', () => roomGasPpm(parts)),
    truth('pit.gasPpm', '1', () => pitGasPpm(parts)),
    truth('breathed.gasPpm', '1', () => breathedPpm(parts)),
    truth('breathed.oxygenShare', '1', () => oxygenShare(parts)),
    truth('cloud.burningShare', '1', () => burningShare(parts)),
    truth('loop.flammable', 'bool', () =>
      holdsFlammable(parts, loop.low) || holdsFlammable(parts, loop.high) ? 1 : 0,
    ),
    truth('loop.foreignKg', 'kg', () => loopForeignKg(parts)),
    truth('decomposed.milligrams', '1', () => MILLIGRAMS * tally[HAZARD.decomposedKg]),
    truth('contact.skinKg', 'kg', () => tally[HAZARD.skinKg]),
    truth('contact.eyeKg', 'kg', () => tally[HAZARD.eyeKg]),
    truth('contact.temperatureK', 'K', () =>
      tally[HAZARD.contactK] === 0 ? FUMES[network.refrigerantId].boilsK : tally[HAZARD.contactK],
    ),
    truth('vented.byHandKg', 'kg', () => tally[HAZARD.byHandKg]),
    truth('highVoltage.volts', '1', () => voltage(parts)),
    truth('manifold.temperatureK', 'K', () => tally[HAZARD.manifoldK] || options.weather.temperatureK),
    truth('coolant.temperatureK', 'K', () => car.number('engineK') + tally[HAZARD.soakK]),
    truth(
      'loop.sealerKg',
      'kg',
      () => network.massKg(loop.low, 'sealant') + network.massKg(loop.high, 'sealant'),
    ),
    truth('recovery.tankLiquidShare', '1', () => inTank(parts, (tank) => network.liquidShare(tank, 0))),
    truth('recovery.tankForeignKg', 'kg', () => inTank(parts, (tank) => otherGasKg(parts, tank))),
    truth('cans.hottestTemperatureK', 'K', () => hottestCan(parts).hottestK),
    truth(
      'cans.highestGaugePressurePa',
      'Pa',
      () => hottestCan(parts).highestPa - options.weather.pressurePa,
    ),
    ...sealerReading(parts),
  ];
}

/** Nothing where there is no tank. */
const inTank = ({ toolVessels }: PlantParts, read: (tank: number) => number): number =>
  toolVessels.recoveryTank < 0 ? 0 : read(toolVessels.recoveryTank);

function hottestCan({ cans, car: { network }, options }: PlantParts): {
  hottestK: number;
  highestPa: number;
} {
  let [hottestK, highestPa] = [options.weather.temperatureK, options.weather.pressurePa];
  for (const { vessel } of cans.values()) {
    hottestK = Math.max(hottestK, network.temperatureK(vessel, 0));
    highestPa = Math.max(highestPa, network.pressurePa(vessel));
  }
  return { hottestK, highestPa };
}

/** 1 found, 0 none; NaN until a test has ended. */
function sealerReading({ desk, options }: PlantParts): Signal[] {
  if (!options.bench.tools?.includes('sealer-test')) return [];
  return [
    signal('sealerTest.found', 'bool', 'reading', () => {
      const { found } = desk.hazards.sealerTest;
      return found === null ? Number.NaN : Number(found);
    }),
    flag('sealerTest.running', 'cue', () => desk.hazards.sealerTest.port !== null),
  ];
}
