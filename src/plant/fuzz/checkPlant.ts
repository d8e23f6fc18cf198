/**
 * What must never be in a plant: a number that is none, a negative mass, a pressure or temperature out of reason, books
 * that do not balance for every species and for energy. The first such thing in words, or null.
 */
import { SPECIES } from '../../loop/networkTypes';
import type { PlantParts } from '../assemblePlant';
import type { Plant } from '../plantPort';

const MASS_TOLERANCE = 1e-12;
const ENERGY_TOLERANCE = 1e-10;
/** A full cylinder of nitrogen holds 15 to 20 MPa. */
const MOST_PRESSURE_PA = 3e7;
const MOST_LOOP_PRESSURE_PA = 8e6;
const COLDEST_K = 100;
const HOTTEST_K = 600;
const MOST_OF_ANYTHING = 1e12;

/** `all`: books and signals too; an error of the books does not go away again. */
export function checkPlant(plant: Plant, parts: PlantParts, all: boolean): string | null {
  return vesselFault(parts) ?? (all ? (bookFault(parts) ?? signalFault(plant)) : null);
}

function vesselFault({ car }: PlantParts): string | null {
  const { network, loop } = car;
  for (const v of network.vesselSlots()) {
    const most = v === loop.low || v === loop.high ? MOST_LOOP_PRESSURE_PA : MOST_PRESSURE_PA;
    const p = network.pressurePa(v);
    if (!(p > 0 && p < most)) return `vessel ${v} at ${p} Pa`;
    for (const species of SPECIES) {
      const kg = network.massKg(v, species);
      if (!(kg >= 0)) return `vessel ${v} holds ${kg} kg of ${species}`;
    }
    for (let c = 0; c < network.cellCount(v); c++) {
      const kg = network.cellMassKg(v, c);
      if (!(kg > 0)) return `vessel ${v} cell ${c} holds ${kg} kg`;
      const t = network.temperatureK(v, c);
      const wall = network.wallTemperatureK(v, c);
      if (!(t > COLDEST_K && t < HOTTEST_K)) return `vessel ${v} cell ${c} at ${t} K`;
      if (!(wall > COLDEST_K && wall < HOTTEST_K)) return `vessel ${v} cell ${c}, wall at ${wall} K`;
    }
  }
  return null;
}

function bookFault({ car }: PlantParts): string | null {
  const { massErrors, energyErrorRelative } = car.network.books();
  for (const species of SPECIES)
    if (!(massErrors[species] < MASS_TOLERANCE)) return `mass error of ${species} ${massErrors[species]}`;
  return energyErrorRelative < ENERGY_TOLERANCE ? null : `energy error ${energyErrorRelative}`;
}

/** What an instrument shows may be nothing; all else is a number. */
function signalFault(plant: Plant): string | null {
  for (let i = 0; i < plant.signals.length; i++) {
    const { id, kind } = plant.signals[i];
    const value = plant.value(i);
    if (kind === 'reading' && Number.isNaN(value)) continue;
    if (!(value > -MOST_OF_ANYTHING && value < MOST_OF_ANYTHING)) return `${id} is ${value}`;
  }
  return null;
}
