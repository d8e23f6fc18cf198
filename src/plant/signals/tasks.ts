/**
 * What has been found out, marked, converted and told, and what of it is true: chocks, cans put away, the test to the
 * service information's conditions, steps of a conversion, oil by kind, what remains wrong at a hand-over.
 */
import { OIL_KG_PER_M3 } from '../../equipment/oils';
import type { PlantParts } from '../assemblePlant';
import { labelMistakes, oldMistakes } from '../conversionLabel';
import { dueNow } from '../due';
import { loopOilKg, oilFromCansKg, oilKgNow, wrongOilShare } from '../oilBook';
import { chargeIsProven, faultsRemaining } from '../stillWrong';
import { testedShare } from '../testConditions';
import { flag, type Signal, signal } from './signal';

/** Accepted in new systems only; never a conversion's own. */
const FORBIDDEN: readonly string[] = ['R-1234yf', 'R-12'];

export function taskSignals(parts: PlantParts): Signal[] {
  const { desk, cans } = parts;
  const read = () => desk.tasks;
  const truth = (id: string, unit: string, value: () => number): Signal => signal(id, unit, 'truth', value);
  return [
    flag('chock.on', 'control', () => read().chocked),
    flag('temperature.coldest', 'control', () => read().temperature === 'coldest'),
    flag('temperature.warmest', 'control', () => read().temperature === 'warmest'),
    flag('recovery.arranged', 'cue', () => read().licensed !== null),
    signal('recovery.licensedKg', 'kg', 'control', () => read().licensedKg ?? 0),
    signal('test.heldRatio', '1', 'control', () => testedShare(parts)),
    ...[...cans.keys()].flatMap((id) => [
      signal(`can.${id}.markedKg`, 'kg', 'control', () => read().canMarksKg[id] ?? 0),
      flag(`can.${id}.marked`, 'control', () => id in read().canMarksKg),
      flag(`can.${id}.stored`, 'control', () => read().stored.includes(id)),
      truth(`can.${id}.oilKg`, 'kg', () => parts.car.network.massKg(vesselOf(parts, id), 'oil')),
    ]),
    truth('faults.remainingCount', '1', () => faultsRemaining(parts)),
    flag('charge.proven', 'truth', () => chargeIsProven(parts)),
    ...oilSignals(parts),
    ...conversionSignals(parts),
  ];
}

const vesselOf = ({ cans }: PlantParts, id: string): number => cans.get(id)?.vessel ?? 0;

function oilSignals(parts: PlantParts): Signal[] {
  const truth = (id: string, unit: string, value: () => number): Signal => signal(id, unit, 'truth', value);
  return [
    truth('oil.inLoopKg', 'kg', () => loopOilKg(parts)),
    truth('oil.mineralKg', 'kg', () => oilKgNow(parts, 'mineral')),
    truth('oil.pagKg', 'kg', () => oilKgNow(parts, 'PAG')),
    truth('oil.poeKg', 'kg', () => oilKgNow(parts, 'POE')),
    truth('oil.fromCansKg', 'kg', () => oilFromCansKg(parts)),
    truth('sealer.fromCansKg', 'kg', () => sealerFromCansKg(parts)),
    truth('oil.wrongRatio', '1', () => wrongOilShare(parts)),
    truth('oil.dueKg', 'kg', () => dueOilKg(parts)),
  ];
}

function conversionSignals(parts: PlantParts): Signal[] {
  const { desk, ports } = parts;
  const conversion = () => desk.tasks.conversion;
  const step = (id: string, isDone: () => boolean): Signal => flag(`conversion.${id}`, 'control', isDone);
  const isOld = (port: string): boolean =>
    !desk.refitted.includes(port) && !conversion().disabled.includes(port);
  const refittedOn = (side: string): boolean =>
    [...ports.values()].some((port) => port.side === side && desk.refitted.includes(port.id));
  return [
    step('fittings', () => refittedOn('low') && refittedOn('high')),
    signal('conversion.oldPortsCount', '1', 'control', () => [...ports.keys()].filter(isOld).length),
    step('drier', () => ['drier', 'accumulator'].some((part) => desk.replaced.includes(part))),
    step('seals', () => conversion().sealsRenewed),
    step('cutOut', () => conversion().cutOut || parts.car.vehicle.switches.high.fitted),
    step('oldNoted', () => conversion().old !== null),
    step('labelled', () => conversion().label !== null),
    step('labelForbidden', () => FORBIDDEN.includes(conversion().label?.refrigerant ?? '')),
    signal('conversion.oldKg', 'kg', 'truth', () => oldGasKg(parts)),
    signal('conversion.oldWrongCount', '1', 'truth', () => oldMistakes(parts)),
    signal('conversion.labelWrongCount', '1', 'truth', () => labelMistakes(parts)),
  ];
}

/** Of the refrigerant the car was built for, in the loop now. */
function oldGasKg({ car: { network, loop, vehicle } }: PlantParts): number {
  const species = network.refrigerantId === vehicle.label.refrigerant ? 'refrigerant' : 'foreign';
  if (species === 'foreign' && network.foreign() !== vehicle.label.refrigerant) return 0;
  return network.massKg(loop.high, species) + network.massKg(loop.low, species);
}

function sealerFromCansKg({ cans, car }: PlantParts): number {
  let sum = 0;
  for (const { spec, vessel } of cans.values())
    sum += (spec.sealerKg ?? 0) - car.network.massKg(vessel, 'sealant');
  return sum;
}

function dueOilKg({ car, desk }: PlantParts): number {
  const { oil, oilM3 } = dueNow(car.vehicle, desk);
  return oilM3 * OIL_KG_PER_M3[oil];
}
