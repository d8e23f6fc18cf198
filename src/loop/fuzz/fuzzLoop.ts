/**
 * Runs cars into every state that equipment can bring about, at random but repeatably, and stops at the first number
 * that cannot be: not finite, a mass below nothing, a pressure or temperature out of reason, books that do not balance.
 */

import type { Car } from '../car/car';
import { EDIT_NAMES, EDITS, type EditName } from '../car/carNumbers';
import { type VehicleData, vehicleIds, vehicleOf } from '../car/vehicles';
import { SPECIES } from '../networkTypes';
import { buildFuzzCar, type Draw, drawer, type FuzzCar } from './fuzzCar';

const STEP_S = 0.02;
const STEPS_A_CAR = 10_000;
const CHECK_EVERY = 20;
const MASS_TOLERANCE = 1e-12;
const ENERGY_TOLERANCE = 1e-10;

export interface FuzzReport {
  readonly steps: number;
  readonly edits: number;
  /** Null when nothing was found; else what, and the seed and step at which it happens again. */
  readonly finding: string | null;
}

/** `steps` steps of 20 ms, a new car every 10,000: one of the shipped, or of `vehicles`. */
export function fuzzLoop(
  steps: number,
  seed: number,
  vehicles: readonly VehicleData[] = vehicleIds.map(vehicleOf),
): FuzzReport {
  let edits = 0;
  for (let done = 0; done < steps; done += STEPS_A_CAR) {
    const draw = drawer(seed + done);
    const subject = buildFuzzCar(draw, vehicles);
    for (let i = 0; i < Math.min(STEPS_A_CAR, steps - done); i++) {
      if (draw('edit') < 0.02) {
        edit(subject, draw);
        edits++;
      }
      subject.car.step(STEP_S);
      if (i % CHECK_EVERY !== 0) continue;
      const finding = check(subject);
      if (finding) return { steps: done + i, edits, finding: `seed ${seed + done}, step ${i}: ${finding}` };
    }
  }
  return { steps, edits, finding: null };
}

export function edit({ car, cans, valves, pump }: FuzzCar, draw: Draw): void {
  const { network } = car;
  const kind = draw('kind');
  const amount = draw('amount');
  if (kind < 0.35)
    network.setOpening(valves[Math.floor(draw('which') * valves.length)], amount < 0.5 ? 0 : amount);
  else if (kind < 0.4) for (const valve of valves) network.setOpening(valve, 0);
  else if (kind < 0.45) network.setOpening(pump, amount < 0.5 ? 0 : 1);
  else if (kind < 0.55) car.set({ engineRevPerS: amount < 0.2 ? 0 : (600 + 5400 * draw('rpm')) / 60 });
  else if (kind < 0.62)
    car.set({ airConditioningOn: amount < 0.8, blowerStep: Math.floor(5 * draw('blower')) });
  else if (kind < 0.68)
    car.set({ windowsOpen: amount < 0.5, recirculated: draw('air') < 0.5, sunW: 1000 * draw('sun') });
  else if (kind < 0.74) car.set({ roadSpeedMPerS: 35 * amount, sprayKgPerS: draw('spray') < 0.2 ? 0.02 : 0 });
  else if (kind < 0.8) network.setTilt(cans[amount < 0.5 ? 0 : 1], 5 * Math.floor(37 * draw('tilt')));
  else if (kind < 0.84) network.setShaking(cans[amount < 0.5 ? 0 : 1], draw('shaking'));
  else if (kind < 0.88) network.setHeat(cans[amount < 0.5 ? 0 : 1], 0, 100 * draw('hand'));
  else if (kind < 0.94) wear(car, EDIT_NAMES[Math.floor(amount * EDIT_NAMES.length)], draw('wear'));
  else car.setWeather(263.15 + 60 * amount, draw('humidity'));
}

function wear(car: Car, name: EditName, share: number): void {
  const { sound, worst } = EDITS[name];
  car.edit(name, sound + share * (worst - sound));
}

function check({ car }: FuzzCar): string | null {
  const { network } = car;
  for (const v of network.vesselSlots()) {
    const p = network.pressurePa(v);
    if (!(p > 0 && p < 8e6)) return `vessel ${v} at ${p} Pa`;
    for (const species of SPECIES)
      if (!(network.massKg(v, species) >= 0))
        return `vessel ${v}: ${species} ${network.massKg(v, species)} kg`;
    for (let c = 0; c < network.cellCount(v); c++) {
      const t = network.temperatureK(v, c);
      const wall = network.wallTemperatureK(v, c);
      if (!(network.cellMassKg(v, c) > 0))
        return `vessel ${v} cell ${c} holds ${network.cellMassKg(v, c)} kg`;
      if (!(t > 120 && t < 520)) return `vessel ${v} cell ${c} at ${t} K`;
      if (!(wall > 150 && wall < 520)) return `vessel ${v} cell ${c} wall at ${wall} K`;
    }
  }
  return checkBooks(car.network.books());
}

function checkBooks(books: ReturnType<FuzzCar['car']['network']['books']>): string | null {
  for (const species of SPECIES)
    if (!(books.massErrors[species] < MASS_TOLERANCE)) return `${species} error ${books.massErrors[species]}`;
  return books.energyErrorRelative < ENERGY_TOLERANCE ? null : `energy error ${books.energyErrorRelative}`;
}
