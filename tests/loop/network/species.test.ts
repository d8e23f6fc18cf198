import { describe, expect, it } from 'vitest';
import { createNetwork } from '../../../src/loop/createNetwork';
import type { ForeignId } from '../../../src/loop/foreign';
import type { Network } from '../../../src/loop/network';
import { type Contents, ROOM, type VesselIndex } from '../../../src/loop/networkTypes';
import { refrigerant } from '../../../src/refrigerant/fluids';
import { canSpec, pot, run, WARM_K } from './vessels';

const PA_PER_PSI = 6894.757;
const ATMOSPHERE_PA = 101_325;
const PA_PER_MICRON = 0.133322;
const AIR_GAS_CONSTANT = 287.05;
const bulk = (vessel: VesselIndex) => ({ vessel, cell: 0, height: 'bulk' }) as const;

function balanced(network: Network): void {
  const { massErrors, energyErrorRelative } = network.books();
  for (const [species, error] of Object.entries(massErrors)) expect(error, species).toBeLessThan(1e-12);
  expect(energyErrorRelative).toBeLessThan(1e-10);
}

describe('a can with oil, sealant and water in it', () => {
  function feed(degrees: number) {
    const network = createNetwork(refrigerant('R-134a'));
    const can = network.addVessel(canSpec(), {
      temperatureK: WARM_K,
      refrigerantKg: 0.34,
      oilKg: 0.03,
      sealantKg: 0.02,
      waterKg: 0.0003,
    });
    const tank = network.addVessel(pot('tank', 3), { temperatureK: WARM_K, refrigerantKg: 0.002 });
    const from = { vessel: can, cell: 0, height: 1 } as const;
    network.addLink({ kind: 'valve', id: 'tap', from, to: bulk(tank), areaM2: 0.9e-6, opening: 1 });
    network.setTilt(can, degrees);
    run(network, 60);
    balanced(network);
    return (species: 'refrigerant' | 'oil' | 'sealant' | 'water') => network.massKg(tank, species);
  }

  it('gives only refrigerant and water when it stands upright, everything upside down', () => {
    const upright = feed(0);
    expect(upright('refrigerant')).toBeGreaterThan(0.03);
    expect(upright('oil')).toBe(0);
    expect(upright('sealant')).toBe(0);
    expect(upright('water')).toBeGreaterThan(0);
    const inverted = feed(180);
    expect(inverted('refrigerant')).toBeGreaterThan(0.2);
    expect(inverted('oil') / 0.03).toBeGreaterThan(0.6);
    expect(inverted('sealant') / 0.02).toBeCloseTo(inverted('oil') / 0.03, 9);
  });
});

describe('another refrigerant', () => {
  function gaugePsi(fluid: ForeignId, share: number, celsius: number, kg = 0.3): number {
    const network = createNetwork(refrigerant('R-134a'));
    network.setForeign(fluid);
    const contents: Contents = {
      temperatureK: celsius + 273.15,
      refrigerantKg: (1 - share) * kg,
      foreignKg: share * kg,
    };
    return (network.pressurePa(network.addVessel(pot('pot', 1), contents)) - ATMOSPHERE_PA) / PA_PER_PSI;
  }

  it('shows its own pressure when it is alone (reckoned from saturation tables, psi gauge)', () => {
    for (const [fluid, celsius, psi] of [
      ['R-134a', 10, 45.4],
      ['R-12', 10, 46.6],
      ['R-134a', 20, 68.2],
      ['R-12', 20, 67.5],
      ['R-1234yf', 30, 99.0],
      ['R-1234yf', 35, 115.2],
    ] as const)
      expect(Math.abs(gaugePsi(fluid, fluid === 'R-134a' ? 0 : 1, celsius) - psi)).toBeLessThan(0.15);
  });

  it('mixed with R-134a lies between the two lines, so a gauge at rest does not tell it', () => {
    for (const celsius of [10, 17, 30]) {
      const own = gaugePsi('R-12', 0, celsius);
      const other = gaugePsi('R-12', 1, celsius);
      const mixed = gaugePsi('R-12', 0.35, celsius);
      expect((mixed - own) * (mixed - other)).toBeLessThan(0.01);
      expect(Math.abs(mixed - own)).toBeLessThan(2);
    }
  });

  it('as vapour alone adds its moles', () => {
    const kelvin = 300;
    const kg = 0.002;
    const pa = gaugePsi('hydrocarbon', 0.5, kelvin - 273.15, kg) * PA_PER_PSI + ATMOSPHERE_PA;
    const moles = (0.5 * kg) / 0.102032 + (0.5 * kg) / 0.0504;
    // within what this little gas departs from an ideal one
    expect(Math.abs(pa / ((moles * 8.314462 * kelvin) / 1e-3) - 1)).toBeLessThan(0.015);
  });

  it('goes where the refrigerant goes, in the same share, and balances', () => {
    const network = createNetwork(refrigerant('R-134a'));
    network.setForeign('hydrocarbon');
    const full = network.addVessel(pot('full', 1), {
      temperatureK: WARM_K,
      refrigerantKg: 0.2,
      foreignKg: 0.1,
    });
    const tank = network.addVessel(pot('tank', 3), { temperatureK: WARM_K, refrigerantKg: 0 });
    network.addLink({
      kind: 'valve',
      id: 'tap',
      from: bulk(full),
      to: bulk(tank),
      areaM2: 1e-6,
      opening: 1,
    });
    network.addLink({
      kind: 'valve',
      id: 'out',
      from: bulk(tank),
      to: bulk(ROOM),
      areaM2: 1e-7,
      opening: 1,
    });
    run(network, 120);
    for (const vessel of [full, tank])
      expect(network.massKg(vessel, 'foreign') / network.chargeKg(vessel)).toBeCloseTo(1 / 3, 9);
    expect(network.books().ventedKg.foreign / network.books().ventedKg.refrigerant).toBeCloseTo(0.5, 9);
    balanced(network);
  });
});

describe('water', () => {
  function wetPot(waterKg: number) {
    const network = createNetwork(refrigerant('R-134a'));
    const wet = network.addVessel(pot('wet', 2, 400, 1.2), {
      temperatureK: 293.15,
      refrigerantKg: 1e-6,
      waterKg,
    });
    const pump = network.addLink({
      kind: 'pump',
      id: 'pump',
      from: bulk(wet),
      to: bulk(ROOM),
      speedM3PerS: 0.5e-3,
      ultimatePa: 8,
      opening: 0,
    });
    return { network, wet, pump, micron: () => network.pressurePa(wet) / PA_PER_MICRON };
  }

  it('stands in a vacuum at 17,500 micron at 20 °C (IAPWS saturation: 17,545)', () => {
    const { network, micron } = wetPot(0.003);
    run(network, 60);
    expect(Math.abs(micron() / 17_545 - 1)).toBeLessThan(0.03);
    balanced(network);
  });

  it('boils away under a pump on a plateau that its own cold lowers, and only then the pressure falls', () => {
    const { network, wet, pump, micron } = wetPot(0.003);
    network.setOpening(pump, 1);
    const at: number[] = [];
    run(network, 1500, (second) => {
      if (second % 60 === 0) at.push(micron());
      if (second === 240) expect(network.wallTemperatureK(wet, 0)).toBeLessThan(288);
    });
    expect(at[1]).toBeGreaterThan(6_000);
    expect(at[1] / at[4]).toBeGreaterThan(1);
    expect(at[4]).toBeGreaterThan(4_588);
    expect(at.at(-1)).toBeLessThan(200);
    expect(network.massKg(wet, 'water')).toBeLessThan(1e-6);
    balanced(network);
  });

  it('comes in with the room’s air, as much as is in it', () => {
    const network = createNetwork(refrigerant('R-134a'));
    network.setRoom(ATMOSPHERE_PA, 298.15, 0.012);
    const open = network.addVessel(pot('open', 2), { temperatureK: 298.15, refrigerantKg: 1e-6 });
    network.addLink({
      kind: 'valve',
      id: 'open',
      from: bulk(ROOM),
      to: bulk(open),
      areaM2: 3e-6,
      opening: 1,
    });
    run(network, 30);
    const air = network.massKg(open, 'air');
    expect(Math.abs((air * AIR_GAS_CONSTANT * 298.15) / 2e-3 / ATMOSPHERE_PA - 1)).toBeLessThan(0.03);
    expect(network.massKg(open, 'water') / air).toBeCloseTo(0.012, 9);
    balanced(network);
  });

  it('is taken up by a desiccant until it is full, and leaves with it when it is renewed', () => {
    const network = createNetwork(refrigerant('R-134a'));
    const spec = pot('drier', 0.5);
    const drier = network.addVessel(
      { ...spec, cells: spec.cells.map((cell) => ({ ...cell, desiccantKg: 0.002 })) },
      { temperatureK: WARM_K, refrigerantKg: 0.2 },
    );
    network.bringIn(drier, 'water', 0.0015);
    expect(network.waterMgPerKg(drier)).toBeGreaterThan(7000);
    const stand = (): void => {
      for (let i = 0; i < 28_800; i++) network.step(0.5);
    };
    stand();
    expect(network.waterMgPerKg(drier)).toBeLessThan(1000);
    network.bringIn(drier, 'water', 0.0015);
    stand();
    expect(network.adsorbedKg(drier)).toBeGreaterThan(0.0019);
    expect(network.waterMgPerKg(drier)).toBeGreaterThan(4500);
    network.renewDesiccant(drier, 0.002, 0);
    expect(network.adsorbedKg(drier)).toBe(0);
    expect(network.massKg(drier, 'water')).toBeLessThan(0.0012);
    expect(network.books().massErrorRelative).toBeLessThan(1e-12);
  });
});
