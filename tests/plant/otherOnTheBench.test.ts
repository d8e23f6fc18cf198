/**
 * A car that is to be converted: it holds R-12, the bench has R-134a. Before anything is done the gauges must read what they
 * read where R-12 is the network's own fluid.
 */
import { expect, test } from 'vitest';
import { buildPlant, type PlantOptions } from '../../src/plant/buildPlant';

const options = (bench?: 'R-134a'): PlantOptions => ({
  vehicleId: 'sedan',
  refrigerant: 'R-12',
  chargeKg: 0.8,
  start: 'equalised',
  weather: { temperatureK: 303.15, relativeHumidity: 0.5, pressurePa: 101_325 },
  faults: [],
  bench: { hoses: [], cans: [], ...(bench ? { refrigerant: bench } : {}) },
  seed: 1,
});
const read = (plant: ReturnType<typeof buildPlant>, id: string) => plant.value(plant.signalIndex(id));

test('a car full of another refrigerant than the bench has stands and runs on its own pressures', () => {
  const [own, foreign] = [buildPlant(options()), buildPlant(options('R-134a'))];
  expect(read(foreign, 'lowSide.gaugePressurePa')).toBeCloseTo(read(own, 'lowSide.gaugePressurePa'), -3);
  for (const plant of [own, foreign]) {
    plant.apply({ do: 'windows', to: 'open' });
    plant.apply({ do: 'blower', speed: 4 });
    plant.apply({ do: 'engine', rpm: 1500 });
    plant.apply({ do: 'ac', to: 'on' });
    for (let step = 0; step < 3000; step++) plant.advance();
  }
  for (const side of ['lowSide', 'highSide']) {
    const ratio = read(foreign, `${side}.gaugePressurePa`) / read(own, `${side}.gaugePressurePa`);
    expect(ratio).toBeGreaterThan(0.95);
    expect(ratio).toBeLessThan(1.05);
  }
  expect(foreign.books().massErrorRelative).toBeLessThan(1e-12);
});

test('a third refrigerant beside the two is refused', () => {
  const faults = [{ id: 'mixed-refrigerant', severity: 0.5, onsetStep: 0 }];
  expect(() => buildPlant({ ...options('R-134a'), faults })).toThrow(/third refrigerant/);
});
