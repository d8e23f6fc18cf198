import { describe, expect, it } from 'vitest';
import { hoseSpecs } from '../../src/equipment/hoses';
import { createNetwork } from '../../src/loop/createNetwork';
import { ROOM } from '../../src/loop/networkTypes';
import { addHose } from '../../src/plant/benchVessels';
import { refrigerant } from '../../src/refrigerant/fluids';

const DAY = { pressurePa: 101_325, temperatureK: 305.15 };
const pipe = (id: string, volumeM3: number) => ({
  id,
  cells: [
    { id: 'a', kind: 'pipe', volumeM3, wallHeatCapacityJPerK: 300, insideWPerK: [4, 1, 2], outsideWPerK: 1 },
  ] as const,
});

/** A hose that holds nothing but air still flows: into an evacuated vessel, and a vessel full of air into the room. */
describe('air alone', () => {
  it('leaves a hose for an evacuated vessel until both are level', () => {
    const network = createNetwork(refrigerant('R-134a'));
    network.setRoom(DAY.pressurePa, DAY.temperatureK);
    const hose = addHose(network, hoseSpecs.charging, DAY);
    const empty = network.addVessel(pipe('empty', 1.5e-3), {
      temperatureK: DAY.temperatureK,
      refrigerantKg: 4e-6,
    });
    network.addLink({
      kind: 'valve',
      id: 'core',
      from: { vessel: empty, cell: 0, height: 'bulk' },
      to: { vessel: hose, cell: 0, height: 'bulk' },
      areaM2: 2.2e-6,
      opening: 1,
    });
    for (let i = 0; i < 200; i++) network.step(0.02);
    expect(network.pressurePa(hose)).toBeLessThan(5_000);
    expect(Math.abs(network.pressurePa(hose) - network.pressurePa(empty))).toBeLessThan(200);
  });

  it('comes back into an evacuated vessel that is opened to the room', () => {
    const network = createNetwork(refrigerant('R-134a'));
    network.setRoom(DAY.pressurePa, DAY.temperatureK);
    const empty = network.addVessel(pipe('empty', 1.5e-3), {
      temperatureK: DAY.temperatureK,
      refrigerantKg: 4e-6,
    });
    network.addLink({
      kind: 'valve',
      id: 'hole',
      from: { vessel: empty, cell: 0, height: 'bulk' },
      to: { vessel: ROOM, cell: 0, height: 'bulk' },
      areaM2: 2.2e-6,
      opening: 1,
    });
    for (let i = 0; i < 1500; i++) network.step(0.02);
    expect(network.pressurePa(empty) / DAY.pressurePa).toBeCloseTo(1, 1);
  });
});
